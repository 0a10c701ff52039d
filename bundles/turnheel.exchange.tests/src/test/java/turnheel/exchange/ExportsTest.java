package turnheel.exchange;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

import turnheel.engine.grading.Graded;
import turnheel.engine.yarn.Patterns;

class ExportsTest {

    private static final Graded GRADED = Patterns.grade(Designs.cuffDown());
    private static final byte[] PRECIOUS = {1, 2, 3};

    @TempDir
    Path folder;

    private static byte[] expected(ExportFormat format) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        format.write(GRADED, Edition.usual(), out);
        return out.toByteArray();
    }

    private List<String> namesInFolder() throws IOException {
        try (Stream<Path> names = Files.list(folder)) {
            return names.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    private static String refusal(Path target, boolean force) {
        return assertThrows(ExportException.class, () -> Exports.write(GRADED, target, force)).getMessage();
    }

    @ParameterizedTest
    @EnumSource(ExportFormat.class)
    void writesEveryFormatAndNothingElse(ExportFormat format) throws IOException, ExportException {
        Exports.write(GRADED, folder.resolve("out" + format.ending()), false);
        assertArrayEquals(expected(format), Files.readAllBytes(folder.resolve("out" + format.ending())));
        assertEquals(List.of("out" + format.ending()), namesInFolder());
    }

    @Test
    void takesAPathWithoutAFolderFromTheWorkingFolder() throws ExportException {
        assertEquals(ExportFormat.TABLE, ExportFormat.of(Path.of("out.csv")));
    }

    @ParameterizedTest
    @CsvSource({"socks.xlsx, WORKBOOK", "SOCKS.XLSX, WORKBOOK", "a.b.csv, TABLE", "a.xlsx.csv, TABLE"})
    void theEndingNamesTheFormat(String name, ExportFormat format) throws ExportException {
        assertEquals(format, ExportFormat.of(Path.of(name)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"socks", "socks.", "socks.doc", "xlsx", ".xlsx", "socks.xlsx.bak", "csv/"})
    void anUnknownEndingIsRefusedAndTheKnownOnesAreListed(String name) throws IOException {
        String message = refusal(folder.resolve(name), true);
        assertTrue(message.contains(".xlsx, .csv, .svg"), message);
        assertEquals(List.of(), namesInFolder());
    }

    @Test
    void aMistypedEndingSuggestsTheNearest() {
        String message = refusal(folder.resolve("socks.xslx"), false);
        assertTrue(message.contains("did you mean .xlsx?"), message);
    }

    @Test
    void anExistingFileStaysAsItIs() throws IOException {
        Path target = Files.write(folder.resolve("out.xlsx"), PRECIOUS);
        String message = refusal(target, false);
        assertTrue(message.contains(target.toString()) && message.contains("exists"), message);
        assertArrayEquals(PRECIOUS, Files.readAllBytes(target));
        assertEquals(List.of("out.xlsx"), namesInFolder());
    }

    @Test
    void anExistingFileIsReplacedWhenAskedFor() throws IOException, ExportException {
        Path target = Files.write(folder.resolve("out.csv"), PRECIOUS);
        Exports.write(GRADED, target, true);
        assertArrayEquals(expected(ExportFormat.TABLE), Files.readAllBytes(target));
        assertEquals(List.of("out.csv"), namesInFolder());
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void aReplacedFileKeepsItsPermissionsAndALinkStaysALink() throws IOException, ExportException {
        Path file = Files.write(folder.resolve("real.csv"), PRECIOUS);
        Set<PosixFilePermission> permissions = PosixFilePermissions.fromString("rw-r-----");
        Files.setPosixFilePermissions(file, permissions);
        Path link = Files.createSymbolicLink(folder.resolve("link.csv"), file);
        Exports.write(GRADED, link, true);
        assertTrue(Files.isSymbolicLink(link));
        assertArrayEquals(expected(ExportFormat.TABLE), Files.readAllBytes(file));
        assertEquals(permissions, Files.getPosixFilePermissions(file, LinkOption.NOFOLLOW_LINKS));
    }

    @Test
    void aFolderIsNoTarget() throws IOException {
        Path target = Files.createDirectory(folder.resolve("out.xlsx"));
        String message = refusal(target, true);
        assertTrue(message.contains("folder"), message);
        assertEquals(List.of("out.xlsx"), namesInFolder());
    }

    @Test
    void aFolderThatIsNotThereIsNamed() throws IOException {
        String message = refusal(folder.resolve("nowhere/out.xlsx"), false);
        assertTrue(message.contains(folder.resolve("nowhere").toString()), message);
        assertEquals(List.of(), namesInFolder());
    }

    @Test
    void aFileInPlaceOfTheFolderIsNamed() throws IOException {
        Path file = Files.write(folder.resolve("file"), PRECIOUS);
        String message = refusal(file.resolve("out.xlsx"), false);
        assertTrue(message.contains(file.toString()), message);
        assertArrayEquals(PRECIOUS, Files.readAllBytes(file));
    }

    /** The kernel's own folder takes files from nobody, not even from root, who could write to any other. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void aFolderThatCannotBeWrittenToIsReported() {
        String message = refusal(Path.of("/proc/out.xlsx"), true);
        assertTrue(message.contains("/proc/out.xlsx") && message.contains("Choose another place"), message);
    }

    @Test
    void aFileThatAppearsMeanwhileIsLeftAlone() throws IOException {
        Path target = Files.write(folder.resolve("out.csv"), PRECIOUS);
        assertThrows(FileAlreadyExistsException.class, () -> WholeFile.write(target, new byte[] {9}, false));
        assertArrayEquals(PRECIOUS, Files.readAllBytes(target));
        assertEquals(List.of("out.csv"), namesInFolder());
    }

    @Test
    void everyFormatHasAnEndingOfItsOwn() {
        assertEquals(ExportFormat.values().length, Set.copyOf(ExportFormat.endings()).size());
        ExportFormat.endings().forEach(ending -> assertTrue(ending.matches("\\.[a-z]+"), ending));
    }
}
