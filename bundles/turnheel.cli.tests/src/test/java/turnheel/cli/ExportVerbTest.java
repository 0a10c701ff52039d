package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ExportVerbTest {

    @TempDir
    private Path folder;

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void writesAWorkbookThatASpreadsheetProgramReads() throws IOException {
        Path target = folder.resolve("gull.xlsx");
        assertEquals(target + ": written.\n", Run.of("export", Patterns.toeUp(folder), "--to", target).clean().out());
        try (InputStream in = Files.newInputStream(target); XSSFWorkbook workbook = new XSSFWorkbook(in)) {
            assertTrue(workbook.getNumberOfSheets() >= 4);
        }
    }

    @Test
    void writesTheGradingTable() throws IOException {
        Path target = folder.resolve("GULL.CSV");
        Run.of("export", Patterns.toeUp(folder), "--to", target).clean();
        assertTrue(Files.readString(target).contains("foot.stitches,foot,"), Files.readString(target));
        assertTrue(Files.readString(target).contains(",64,72\r\n"), Files.readString(target));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"gull.xlsx", "gull.csv", "gull.svg", "gull.png"})
    void givesTheSameBytesForTheSamePattern(String name) throws IOException {
        Path file = Patterns.toeUp(folder);
        Path target = folder.resolve(name);
        Run.of("export", file, "--to", target).clean();
        byte[] first = Files.readAllBytes(target);
        Run.of("export", file, "--to", target, "--force").clean();
        assertArrayEquals(first, Files.readAllBytes(target));
    }

    @Test
    void leavesAFileThatIsThereUnlessForced() throws IOException {
        Path file = Patterns.toeUp(folder);
        Path target = Files.writeString(folder.resolve("gull.csv"), "mine");
        Run.of("export", file, "--to", target).refused(target, "--force");
        assertEquals("mine", Files.readString(target));
        Run.of("export", file, "--to", target, "--force").clean();
        assertFalse(Files.readString(target).contains("mine"));
        assertEquals(List.of("gull.csv", "gull.turnheel"), names());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"out.ods, .xlsx", "out.cvs, .csv", "out, .csv", ".csv, .xlsx", "out.turnheel, .xlsx"})
    void refusesAnEndingThatItDoesNotKnow(String name, String says) throws IOException {
        Path file = Patterns.toeUp(folder);
        Run.of("export", file, "--to", folder.resolve(name)).refused(name, says);
        assertEquals(List.of("gull.turnheel"), names());
    }

    @Test
    void refusesATargetThatCannotBeWritten() throws IOException {
        Path file = Patterns.toeUp(folder);
        Path missing = folder.resolve("missing/gull.csv");
        Run.of("export", file, "--to", missing).refused(missing, "folder");
        Path insideAFile = file.resolve("gull.csv");
        Run.of("export", file, "--to", insideAFile).refused(insideAFile);
        Path isAFolder = Files.createDirectory(folder.resolve("folder.csv"));
        Run.of("export", file, "--to", isAFolder, "--force").refused(isAFolder, "folder");
        assertEquals(List.of("folder.csv", "gull.turnheel"), names());
    }

    @Test
    void refusesAPatternWithoutMeasurements() throws IOException {
        Path file = Patterns.toeUp(folder);
        Files.writeString(file, Files.readString(file).replaceFirst("\\s*<input key=\"body.footLength[^>]*>", ""));
        Path target = folder.resolve("gull.csv");
        Run.of("export", file, "--to", target).refused("size M", "body.footLength", "turnheel set");
        assertFalse(Files.exists(target));
        // the other size has all it needs
        Run.of("grade", file).refused("size M", "body.footLength");
        Run.of("rounds", file, "--size", "M").refused("size M", "body.footLength");
        Run.of("set", file, "body.footLength[M]=240mm").clean();
        Run.of("export", file, "--to", target).clean();
    }

    @Test
    void endsWithOneButWritesWhenThePatternHasErrors() {
        Path file = Patterns.toeUp(folder);
        Run.of("set", file, "foot.stitches[M]=66");
        Path target = folder.resolve("gull.csv");
        assertEquals(1, Run.of("export", file, "--to", target).exitCode());
        assertTrue(Files.exists(target));
    }

    private String drawing(Path pattern, Object... options) throws IOException {
        Path target = folder.resolve("drawn.svg");
        Object[] command = new Object[options.length + 5];
        System.arraycopy(new Object[] {"export", pattern, "--to", target, "--force"}, 0, command, 0, 5);
        System.arraycopy(options, 0, command, 5, options.length);
        Run.of(command).clean();
        return Files.readString(target);
    }

    @Test
    void writesAFileForEverySize() throws IOException {
        Path file = Patterns.toeUp(folder);
        Path large = folder.resolve("gull-L.svg");
        Run run = Run.of("export", file, "--each-size", "--to", folder.resolve("gull.svg"), "--json").clean();
        assertEquals(large.toString(), run.json().get("files").get(1).asText());
        Path alone = folder.resolve("alone.svg");
        Run.of("export", file, "--size", "L", "--to", alone).clean();
        assertEquals(Files.readString(alone), Files.readString(large));
        Run.of("export", file, "--each-size", "--to", folder.resolve("gull.svg")).refused("gull-M.svg", "--force");
        Run.of("export", file, "--each-size", "--to", folder.resolve("gull.csv")).refused("gull.csv", "every size");
        Run.of("export", file, "--each-size", "--size", "L", "--to", folder.resolve("x.svg")).refused("--each-size");
    }

    @Test
    void drawsTheOutlinesOfAllSizesUnlessToldOtherwise() throws IOException {
        Path file = Patterns.toeUp(folder);
        assertTrue(drawing(file).contains("finished measurements, all sizes</title>"));
        assertEquals(drawing(file), drawing(file, "--part", "outline"));
        assertTrue(drawing(file, "--size", "L").contains("finished measurements, size L</title>"));
        assertTrue(drawing(file, "--part", "toe", "--size", "M").contains("Toe, size M</title>"));
        String everySize = drawing(file, "--part", "heel");
        assertTrue(everySize.contains(">Heel, size M<") && everySize.contains(">Heel, size L<"), everySize);
    }

    @Test
    void refusesADrawingOfWhatIsNotThere() throws IOException {
        Path file = Patterns.toeUp(folder);
        Path target = folder.resolve("out.svg");
        Run.of("export", file, "--to", target, "--part", "gusset").refused(target, "no gusset");
        Run.of("export", file, "--to", target, "--part", "tow").refused("\"tow\"", "Did you mean toe?");
        Run.of("export", file, "--to", target, "--size", "Q").refused("\"Q\"", "M, L");
        assertFalse(Files.exists(target));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"--part, toe", "--size, M"})
    void refusesToExportLessThanTheWholePatternElsewhere(String option, String value) {
        Path target = folder.resolve("gull.csv");
        Run.of("export", Patterns.toeUp(folder), "--to", target, option, value).refused(option, target, ".svg");
        assertFalse(Files.exists(target));
    }

    @Test
    void aSizeThatIsDrawnAloneNeedsItsOwnMeasurementsOnly() throws IOException {
        Path file = Patterns.toeUp(folder);
        Files.writeString(file, Files.readString(file).replaceFirst("\\s*<input key=\"body.footLength[^>]*>", ""));
        Path target = folder.resolve("gull.svg");
        Run.of("export", file, "--to", target, "--size", "M").refused("size M", "body.footLength");
        Run.of("export", file, "--to", target, "--size", "L");
        assertTrue(Files.readString(target).contains("size L</title>"));
    }

    @Test
    void needsATarget() {
        Run.of("export", Patterns.toeUp(folder)).refused("--to OUT");
    }
}
