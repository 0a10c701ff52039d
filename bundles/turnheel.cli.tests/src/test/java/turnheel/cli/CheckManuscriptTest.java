package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckManuscriptTest {

    private static final String MANUSCRIPT = """
            Sizes: M (L)

            Toe
            Cast on 8 sts; place a marker after every 2 sts.
            Rnd 1: *Yo, k to marker, sm; rep from * to end. 12 sts.
            Closing rnd: *K1 tbl, k to marker, sm; rep from * to end. 12 (12) sts.
            """;

    @TempDir
    private Path folder;

    private Path manuscript(String text) throws IOException {
        return Files.writeString(folder.resolve("toe.txt"), text);
    }

    @Test
    void findsNothingInAManuscriptThatKnits() throws IOException {
        assertEquals("no queries\n", Run.of("check", manuscript(MANUSCRIPT)).clean().out());
    }

    @Test
    void quotesTheLineMarksTheSpanAndSaysWhatToWrite() throws IOException {
        Path file = manuscript(MANUSCRIPT.replace("12 (12)", "12 (13)"));
        Run check = Run.of("check", file);
        assertEquals(1, check.exitCode());
        assertEquals(List.of(file + ":6:59: error text.count-differs (L)",
                "    Closing rnd: *K1 tbl, k to marker, sm; rep from * to end. 12 (13) sts.",
                "    " + " ".repeat(58) + "^^^^^^^",
                "    The instructions give 12 stitches; the text states 13. Write 12.", "", "errors: 1, warnings: 0"),
                check.lines());
        assertFalse(check.out().contains("\u001B"));
    }

    @Test
    void givesPlaceAndCorrectionAsData() throws IOException {
        Path file = manuscript(MANUSCRIPT.replace("12 (12)", "12 (13)"));
        JsonNode query = Run.of("check", file, "--json").json().get("queries").get(0);
        assertEquals(6, query.get("line").asInt());
        assertEquals(59, query.get("column").asInt());
        assertEquals("12", query.get("correction").asText());
        assertEquals("[\"L\"]", query.get("sizes").toString());
    }

    @Test
    void keepsTheListOfQueriesFromVersionToVersion() throws IOException {
        Path list = folder.resolve("queries.csv");
        Path file = manuscript(MANUSCRIPT.replace("12 (12)", "12 (13)"));
        assertEquals(1, Run.of("check", file, "--list", list).exitCode());
        assertTrue(Files.readString(list).contains("1,new,6,"), Files.readString(list));
        assertEquals(1, Run.of("check", file, "--list", list).exitCode());
        assertTrue(Files.readString(list).contains("1,open,6,"), Files.readString(list));
        Run.of("check", manuscript(MANUSCRIPT), "--list", list).clean();
        assertTrue(Files.readString(list).contains("1,gone,6,"), Files.readString(list));
    }

    @Test
    void refusesAListThatIsSomethingElseAndLeavesItAlone() throws IOException {
        Path other = Files.writeString(folder.resolve("other.csv"), "size,foot\nM,24\n");
        Run.of("check", manuscript(MANUSCRIPT), "--list", other).refused("other.csv", "column");
        assertEquals("size,foot\nM,24\n", Files.readString(other));
        Run.of("check", Patterns.toeUp(folder), "--list", other).refused("--list");
    }

    @Test
    void saysWhyAFileCannotBeRead() throws IOException {
        Run.of("check", folder.resolve("nowhere.docx")).refused("nowhere.docx", "no file");
        Path pdf = Files.writeString(folder.resolve("broken.pdf"), "no pages");
        Run.of("check", pdf).refused("broken.pdf", "cannot be read");
        Run.of("check", Files.writeString(folder.resolve("broken.docx"), "no pages")).refused("broken.docx");
    }

    @Test
    void readsAnyBytesOfATextWithoutAFault() throws IOException {
        byte[] bytes = new byte[4096];
        new Random(7).nextBytes(bytes);
        Run check = Run.of("check", Files.write(folder.resolve("noise.txt"), bytes));
        assertTrue(check.exitCode() != Main.REFUSED, check.err());
    }
}
