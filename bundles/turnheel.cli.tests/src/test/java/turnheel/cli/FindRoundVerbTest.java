package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FindRoundVerbTest {

    @TempDir
    private Path folder;

    @Test
    void namesTheRoundJustWorkedAndTheNext() {
        JsonNode json = Run.of("find-round", Patterns.toeUp(folder), "--size", "M", "--stitches", "44",
                "--open-yarn-overs", "4", "--json").clean().json();
        assertEquals("turnheel-find-round/1", json.get("schema").asText());
        assertEquals(1, json.get("places").size());
        JsonNode place = json.get("places").get(0);
        // by hand: 20 after three rounds, 24 after the fifth, four more in every second
        assertEquals(15, place.get("from").asInt());
        assertEquals(16, place.get("next").get("number").asInt());
        assertEquals("*k1 tbl, k10; rep from * to end", place.get("next").get("text").asText());
    }

    @Test
    void listsEveryPlaceOfTheSizeWithoutACount() {
        String table = Run.of("find-round", Patterns.toeUp(folder), "--size", "M").clean().out();
        assertTrue(table.contains("1–52"), table);
        assertTrue(table.contains("open yarn-overs on the needle"), table);
    }

    @Test
    void tellsHowToMendACountThatNoRoundHas() {
        JsonNode json = Run.of("find-round", Patterns.toeUp(folder), "--size", "M", "--stitches", "43", "--json")
                .clean().json();
        assertEquals(0, json.get("places").size());
        assertEquals("yarn-over-omitted", json.get("slips").get(0).get("slip").asText());
        assertTrue(json.get("slips").get(0).get("message").asText().startsWith("A yarn-over was left out."));
    }

    @Test
    void refusesCountsThatNoNeedleHolds() {
        Path file = Patterns.toeUp(folder);
        Run.of("find-round", file, "--size", "M", "--stitches", "0").refused("--stitches must be at least 1");
        Run.of("find-round", file, "--size", "M", "--open-yarn-overs", "4").refused("add --stitches");
        Run.of("find-round", file, "--size", "nobody", "--stitches", "8").refused("nobody", "M, L");
    }
}
