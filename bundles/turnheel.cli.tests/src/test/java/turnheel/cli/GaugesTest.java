package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code grade --gauges} tells: feet of 225 (M) and 250 mm (L) have 64 and 72 stitches at 32 over 10 cm. */
class GaugesTest {

    @TempDir
    private Path folder;

    /** The fields of the lines of one gauge, a line for each table. */
    private static List<List<String>> lines(Run run, String gauge) {
        return run.lines().stream().map(line -> List.of(line.strip().split(" {2,}")))
                .filter(fields -> fields.getFirst().equals(gauge)).toList();
    }

    @Test
    void answersEachQuestionInATableOfItsOwn() {
        Run run = Run.of("grade", Patterns.toeUp(folder), "--gauges").clean();
        assertEquals(List.of(List.of("32.0*", "64", "72"), List.of("32.0*", "200.0", "225.0"),
                List.of("32.0*", "222.2", "250.0"), List.of("32.0*", "M −11.1", "L −10.0")), lines(run, "32.0*"));
        // 202.5 and 225 mm at 30 are 60.75 and 67.5 stitches; 64 and 72 are 213.3 and 240 mm there
        assertEquals(List.of(List.of("30.0", "60", "68"), List.of("30.0", "213.3", "240.0"),
                List.of("30.0", "237.0", "266.7"), List.of("30.0", "M −5.2", "M −14.7")), lines(run, "30.0"));
        // 72 stitches are 189.5 mm at 38, which is 24.2 % less than 250
        assertEquals(List.of("38.0", "L −15.8", "L −24.2!"), lines(run, "38.0").getLast());
        assertTrue(run.lines().getLast().startsWith("* printed gauge"), run.out());
    }

    @Test
    void tellsTheSameToOtherPrograms() {
        JsonNode json = Run.of("grade", Patterns.toeUp(folder), "--gauges", "--json").clean().json();
        JsonNode thirty = json.get("gauges").get(4);
        assertEquals(30, thirty.get("stitches").asDouble());
        assertFalse(thirty.get("isPrinted").asBoolean());
        JsonNode large = thirty.get("sizes").get(1);
        assertEquals("L", large.get("size").asText());
        assertEquals(68, large.get("regraded").get("stitches").asInt());
        assertEquals(240, large.get("printed").get("circumferenceMm").asDouble(), 1e-9);
        assertEquals("M", large.get("closest").get("size").asText());
    }

    @Test
    void isOneQuestionOfSeveral() {
        Run.of("grade", Patterns.toeUp(folder), "--gauges", "--options", "M").refused("--gauges");
    }
}
