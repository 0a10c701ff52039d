package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import turnheel.engine.design.StitchPattern.Zone;
import turnheel.model.DocumentException;
import turnheel.model.Door;
import turnheel.model.PatternFiles;

/** The rows of stitch patterns on the command line, in the file, in the written pattern and drawn. */
class PatternRowsOptionsTest {

    private static final List<String> LACE = List.of("*K1, yo, ssk, k3; rep from * to last st, k1", "K to end");

    @TempDir
    private Path folder;

    private Path file;
    private Path rows;

    @BeforeEach
    void newPattern() throws IOException {
        file = folder.resolve("lace.turnheel");
        rows = folder.resolve("lace.txt");
        Files.writeString(rows, LACE.get(0) + "\r\n\n  " + LACE.get(1) + "\n");
        Run.of("new", file, "--size", Patterns.M, "--stitch-pattern", "instep: 6+1x2 panel; leg: 4x1",
                "--stitch-pattern-rows", "instep: @" + rows, "--stitch-pattern-rows",
                "leg: *K3, p1; rep from * to end");
    }

    private List<String> rows(Zone zone) throws DocumentException {
        return Door.design(PatternFiles.load(file)).stitchPattern(zone).orElseThrow().instructions();
    }

    @Test
    void newReadsThemFromAFileAndFromTheOption() throws DocumentException {
        assertEquals(LACE, rows(Zone.INSTEP));
        assertEquals(List.of("*K3, p1; rep from * to end"), rows(Zone.LEG));
    }

    @Test
    void setReadsWhatItWrites() throws DocumentException {
        String text = "instep: " + String.join(" / ", LACE) + " // leg: *K3, p1; rep from * to end";
        Run run = Run.of("set", file, "stitch-pattern-rows=leg:");
        assertTrue(run.out().contains(text), run.out());
        assertEquals(List.of(), rows(Zone.LEG));
        Run.of("set", file, "stitch-pattern-rows=");
        assertEquals(List.of(), rows(Zone.INSTEP));
        Run.of("set", file, "stitch-pattern-rows=" + text);
        newReadsThemFromAFileAndFromTheOption();
    }

    @Test
    void anotherSizeKeepsThem() throws DocumentException {
        Run.of("set", file, "stitch-pattern=instep: 6+1x2; leg: 8x1");
        newReadsThemFromAFileAndFromTheOption();
        Run.of("set", file, "stitch-pattern=instep: 6+1x3").refused("3 rows", "not 2");
        newReadsThemFromAFileAndFromTheOption();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            K2, p2             | "instep: @lace.txt"
            all: K to end      | "instep: @lace.txt"
            instep: K to end   | has 2 rows, and 1 were given
            leg: K / P         | has 1 rows, and 2 were given
            leg: @nowhere.txt  | nowhere.txt
            """)
    void whatCannotBeMeantIsRefused(String value, String says) throws DocumentException {
        Run.of("set", file, "stitch-pattern-rows=" + value).refused(says);
        newReadsThemFromAFileAndFromTheOption();
    }

    @Test
    void aFileThatIsNoTextIsRefused() throws IOException {
        Files.write(rows, new byte[] {(byte) 0xC3, (byte) 0x28});
        Run.of("set", file, "stitch-pattern-rows=instep: @" + rows).refused(rows, "UTF-8");
        Run.of("set", file, "stitch-pattern-rows=instep: @" + folder).refused(folder, "one row a line");
    }

    @Test
    void aRowThatIsNothingIsRefused() throws IOException {
        Files.writeString(file, Files.readString(file).replace("<row>K to end</row>", "<row></row>"));
        Run.of("check", file).refused("row 2 of a stitch pattern is one line");
    }

    @Test
    void checkTellsWhichRowIsWrong() {
        Run.of("set", file, "stitch-pattern-rows=instep: K to end / *K2, p2; rep from * to end");
        String out = Run.of("check", file).out();
        assertTrue(out.contains("stitchPattern.row-misfit") && out.contains("2: 24"), out);
    }

    @Test
    void writeAndExportShowThem() throws IOException {
        String text = Run.of("write", file).out();
        assertTrue(text.contains("Stitch pattern: Instep pattern (multiple of 6 sts + 1)\nRnd 1: " + LACE.get(0) + ".\n"
                + "Rnd 2: K to end.\n"), text);
        for (String part : List.of("instep-pattern", "leg-pattern")) {
            Path drawing = folder.resolve(part + ".svg");
            Run.of("export", file, "--to", drawing, "--part", part);
            String svg = Files.readString(drawing, StandardCharsets.UTF_8);
            assertTrue(svg.contains(part.startsWith("instep") ? "Instep pattern" : "Leg pattern"), svg);
        }
    }
}
