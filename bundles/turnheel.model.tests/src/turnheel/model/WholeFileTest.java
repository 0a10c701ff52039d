package turnheel.model;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {

    private static final byte[] NEW = "new".getBytes(StandardCharsets.UTF_8);

    @TempDir
    private Path folder;

    @Test
    void writesANewFileAndLeavesNothingElse() throws IOException {
        WholeFile.write(folder.resolve("file"), NEW);
        assertArrayEquals(NEW, Files.readAllBytes(folder.resolve("file")));
        assertEquals(List.of("file"), names());
    }

    @Test
    void replacesWhatWasThere() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "something longer that was there before");
        WholeFile.write(file, NEW);
        assertArrayEquals(NEW, Files.readAllBytes(file));
        assertEquals(List.of("file"), names());
    }

    @Test
    void neverChangesTheOldContentInPlace() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "old");
        assumeTrue(file.getFileSystem().supportedFileAttributeViews().contains("unix"));
        // A second name for the old content: it would show a write in place, which a crash could cut off.
        Files.createLink(folder.resolve("witness"), file);
        WholeFile.write(file, NEW);
        assertEquals("old", Files.readString(folder.resolve("witness")));
    }

    @Test
    void keepsPermissions() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "old");
        assumeTrue(file.getFileSystem().supportedFileAttributeViews().contains("posix"));
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r--"));
        WholeFile.write(file, NEW);
        assertEquals("rw-rw-r--", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    }

    @Test
    void writesThroughALink() throws IOException {
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Path file = Files.writeString(elsewhere.resolve("file"), "old");
        Path link = folder.resolve("link");
        try {
            Files.createSymbolicLink(link, file);
        } catch (IOException | UnsupportedOperationException noLinks) {
            assumeTrue(false, "links cannot be made here: " + noLinks);
        }
        WholeFile.write(link, NEW);
        assertTrue(Files.isSymbolicLink(link));
        assertArrayEquals(NEW, Files.readAllBytes(file));
    }

    @Test
    void aFailureOnTheLastStepLeavesNothingBehind() throws IOException {
        // Everything succeeds but the renaming: a file cannot take the place of a folder.
        Path folderInTheWay = Files.createDirectory(folder.resolve("file"));
        Files.writeString(folderInTheWay.resolve("inside"), "kept");
        assertThrows(IOException.class, () -> WholeFile.write(folderInTheWay, NEW));
        assertEquals(List.of("file"), names());
        assertEquals("kept", Files.readString(folderInTheWay.resolve("inside")));
    }

    @Test
    void refusesAFolderThatIsNotThere() {
        assertThrows(IOException.class, () -> WholeFile.write(folder.resolve("none").resolve("file"), NEW));
        assertTrue(Files.notExists(folder.resolve("none")));
    }

    @Test
    void keepsTheFileInAFolderThatCannotBeWrittenTo() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "old");
        assumeTrue(folder.toFile().setWritable(false));
        try {
            assumeFalse(Files.isWritable(folder), "this user may write anywhere");
            assertThrows(IOException.class, () -> WholeFile.write(file, NEW));
            assertEquals("old", Files.readString(file));
            assertEquals(List.of("file"), names());
        } finally {
            folder.toFile().setWritable(true);
        }
    }

    @Test
    void keepsAFileThatIsWriteProtected() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "old");
        assumeTrue(file.toFile().setWritable(false));
        assumeFalse(Files.isWritable(file), "this user may write anywhere");
        assertThrows(IOException.class, () -> WholeFile.write(file, NEW));
        assertEquals("old", Files.readString(file));
    }

    private List<String> names() throws IOException {
        try (Stream<Path> paths = Files.list(folder)) {
            return paths.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }
}
