package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TestKnitVerbTest {

    @TempDir
    private Path folder;

    @Test
    void showsASheetWithPredictionsAndBlanks() {
        Path file = Patterns.toeUp(folder);
        String sheet = Run.of("test-knit", file, "--size", "M").clean().out();
        assertTrue(sheet.contains("Size M") && !sheet.contains("Size L"), sheet);
        assertTrue(sheet.lines().anyMatch(line -> line.matches("Foot stitches +64 +_+ +_+")), sheet);
        assertTrue(Run.of("test-knit", file).clean().out().contains("Size L"));
    }

    @Test
    void resultsThatWereFilledInAreSetAgainstThePredictions() throws IOException {
        Path file = Patterns.toeUp(folder);
        Path results = folder.resolve("results.csv");
        Run.of("test-knit", file, "--to", results).clean();
        String sheet = Files.readString(results);
        Files.writeString(results, sheet
                .replace("M,foot.stitches,Foot stitches,,64,,", "M,foot.stitches,Foot stitches,,64,66,")
                .replace("M,gauge.stitches,Stitch gauge,per 10 cm,32,,",
                        "M,gauge.stitches,Stitch gauge,per 10 cm,32,35,"));
        String compared = Run.of("test-knit", file, "--results", results).clean().out();
        assertTrue(compared.contains("+2") && compared.contains("Tighter by 9.4 %"), compared);
        JsonNode json = Run.of("test-knit", file, "--results", results, "--json").clean().json();
        assertEquals(2, json.get("results").size());
        assertEquals(35, json.get("results").get(0).get("actual").asInt());
        assertTrue(json.get("yarnFactor").isNull());
    }

    @Test
    void aWorkbookDoesAsWell() {
        Path file = Patterns.toeUp(folder);
        Path book = folder.resolve("results.xlsx");
        Run.of("test-knit", file, "--size", "L", "--to", book).clean();
        Run.of("test-knit", file, "--results", book).refused("results.xlsx", "nothing is filled in");
    }

    @Test
    void whatIsWrongInTheResultsIsNamedWithRowAndColumn() throws IOException {
        Path file = Patterns.toeUp(folder);
        Path results = Files.writeString(folder.resolve("results.csv"),
                "size,key,actual\nM,foot.stitches,64\nM,foot.rounds,many\nQ,foot.rounds,3\n");
        Run.of("test-knit", file, "--results", results).refused("results.csv", "row 3, column 3", "\"many\"",
                "More to put right: 1");
        Run.of("test-knit", file, "--results", folder.resolve("none.csv")).refused("none.csv", "there is no file");
        Run.of("test-knit", file, "--results", folder.resolve("none.ods")).refused(".csv or .xlsx");
        Run.of("test-knit", file, "--results", results, "--size", "M").refused("--size", "--results");
        Run.of("test-knit", file, "--size", "Q").refused("Q", "M, L");
    }

    @Test
    void nothingIsWrittenOverAFileThatIsThere() throws IOException {
        Path file = Patterns.toeUp(folder);
        Path results = Files.writeString(folder.resolve("results.csv"), "filled in");
        Run.of("test-knit", file, "--to", results).refused("results.csv", "--force");
        assertEquals("filled in", Files.readString(results));
        Run.of("test-knit", file, "--to", results, "--force").clean();
        assertFalse(Files.readString(results).contains("filled in"));
    }
}
