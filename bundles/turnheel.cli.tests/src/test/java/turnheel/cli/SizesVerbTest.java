package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.exchange.sizes.SizeTables;

class SizesVerbTest {

    @TempDir
    private Path folder;

    @Test
    void listsTheTablesWithTheirSource() {
        Run run = Run.of("sizes").clean();
        SizeTables.ids().forEach(id -> assertTrue(run.row(id).size() >= 3, run.out()));
        assertTrue(run.lines().getLast().startsWith("Source: "), run.out());
    }

    @Test
    void showsOneTable() {
        // the survey's medians: reference, anthropometry-summary
        assertEquals(List.of("M", "246 mm", "227 mm", "215 mm", "310 mm"), Run.of("sizes", "women").clean().row("M"));
    }

    @Test
    void givesScriptsTheQuantitiesByKey() {
        JsonNode table = Run.of("sizes", "women", "--json").clean().json().get("tables").get(0);
        assertEquals("women", table.get("name").asText());
        assertEquals("body", table.get("measured").asText());
        assertEquals("246 mm", table.get("sizes").get(2).get("measurements").get("body.footLength").asText());
    }

    @Test
    void suggestsTheTableThatWasMeant() {
        Run.of("sizes", "womne").refused("womne", "did you mean women?");
        Run.of("sizes", "hats").refused("hats", "women", "men");
    }

    private Path own(String table) throws IOException {
        return Files.writeString(folder.resolve("own.csv"), table);
    }

    @Test
    void aTableOfOnesOwnMakesAPattern() throws IOException {
        Path table = own("size;Foot length (cm);foot-circumference\n36/37;23,5;22 cm\n38/39;9 1/2 in;23 cm\n");
        assertEquals(List.of("38/39", "9.5 in", "23 cm"), Run.of("sizes", table).clean().row("38/39"));
        Path file = folder.resolve("own.turnheel");
        Run.of("new", file, "--sizes", table).clean();
        assertEquals(List.of("235.0", "241.3"), Run.of("grade", file).clean().row("body.footLength").subList(2, 4));
    }

    @Test
    void allThatIsWrongWithATableIsShownAndNothingIsMadeOfIt() throws IOException {
        Path table = own("size,foot-length\nM,24 cm\nL,26\nXL,long\n");
        Run run = Run.of("sizes", table);
        assertEquals(1, run.exitCode());
        assertTrue(run.out().contains("row 3, column 2: ") && run.out().contains("row 4, column 2: "), run.out());
        assertEquals("no-unit", Run.of("sizes", table, "--json").json().get("problems").get(0).get("kind").asText());
        Path file = folder.resolve("own.turnheel");
        Run.of("new", file, "--sizes", table).refused("own.csv: row 3, column 2", "More to put right: 1");
        assertFalse(Files.exists(file));
        Run.of("sizes", folder.resolve("none.xlsx")).refused("none.xlsx", "no file");
    }

    @Test
    void showsAShoeSizeInOtherSystems() {
        List<String> lines = Run.of("sizes", "--shoe", "EU 38").clean().lines();
        assertEquals(List.of("A foot of 240.0 mm wears about:", "Mondopoint 240", "EU 38"), lines.subList(0, 3));
        Run.of("sizes", "--shoe", "EU x").refused("--shoe", "EU x", "Mondopoint");
        Run.of("sizes", "women", "--shoe", "EU 38").refused("not both");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("turnheel.exchange.sizes.SizeTables#ids")
    void everyTableMakesAPatternWithoutErrors(String id) {
        Path file = folder.resolve(id + ".turnheel");
        Run.of("new", file, "--sizes", id).clean();
        Run.of("grade", file).clean();
    }
}
