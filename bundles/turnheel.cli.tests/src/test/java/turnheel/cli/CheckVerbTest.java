package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckVerbTest {

    @TempDir
    private Path folder;

    @Test
    void saysThatAPatternIsClean() {
        Path file = Patterns.toeUp(folder);
        assertEquals("no queries\n", Run.of("check", file).clean().out());
        assertEquals("{\"schema\":\"turnheel-queries/1\",\"queries\":[],\"relaxations\":[]}",
                Run.of("check", file, "--json").clean().json().toString());
    }

    @Test
    void endsWithOneWhenAnyQueryIsAnError() {
        Path file = Patterns.toeUp(folder);
        Run.of("set", file, "foot.stitches[M]=66");
        Run check = Run.of("check", file);
        assertEquals(1, check.exitCode());
        assertEquals("", check.err());
        assertTrue(check.lines().stream().anyMatch(line -> line.startsWith("error") && line.contains("  M  ")
                && line.contains("counts.override-breaks")), check.out());

        JsonNode json = Run.of("check", file, "--json").json();
        assertEquals("schema", json.fieldNames().next());
        JsonNode query = query(json, "counts.override-breaks");
        assertEquals("error", query.get("severity").asText());
        assertEquals("foot.stitches", query.get("key").asText());
        assertEquals("[\"M\"]", query.get("sizes").toString());
        assertEquals("66", query.get("found").asText());
        assertTrue(query.get("expected").asText().contains("4"), query.toString());
    }

    @Test
    void endsWithZeroWhenThereAreWarningsOnly() {
        Path file = Patterns.toeUp(folder);
        // 440 mm at 32 over 10 cm stretch 72 stitches 1.96 times: beyond what plain knitting does
        Run.of("set", file, "body.heelCircumference[L]=440mm").clean();
        Run check = Run.of("check", file).clean();
        assertTrue(check.out().contains("warning"), check.out());
        assertEquals("errors: 0, warnings: 1", check.lines().getLast());
    }

    @Test
    void listsASizeWithoutMeasurements() throws IOException {
        Path file = Patterns.toeUp(folder);
        String unmeasured = Files.readString(file).replaceAll("\\s*<input key=\"body.foot[^>]*>", "");
        Files.writeString(file, unmeasured);
        JsonNode json = Run.of("check", file, "--json").json();
        assertEquals(1, Run.of("check", file).exitCode());
        assertEquals("[\"M\",\"L\"]", query(json, "size.measurement-missing").get("sizes").toString());
    }

    private static JsonNode query(JsonNode json, String id) {
        for (JsonNode query : json.get("queries")) {
            if (query.get("id").asText().equals(id)) {
                return query;
            }
        }
        throw new AssertionError("no " + id + " in " + json);
    }
}
