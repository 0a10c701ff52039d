package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

    @ParameterizedTest(name = "{0}")
    @MethodSource("turnheel.exchange.sizes.SizeTables#ids")
    void everyTableMakesAPatternWithoutErrors(String id) {
        Path file = folder.resolve(id + ".turnheel");
        Run.of("new", file, "--sizes", id).clean();
        Run.of("grade", file).clean();
    }
}
