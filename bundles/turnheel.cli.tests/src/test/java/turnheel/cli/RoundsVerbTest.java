package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RoundsVerbTest {

    @TempDir
    private Path folder;

    private static List<String> parts(JsonNode json) {
        List<String> parts = new ArrayList<>();
        json.get("parts").forEach(part -> parts.add(part.get("part").asText()));
        return parts;
    }

    private static List<String> rounds(JsonNode json, String part) {
        List<String> rounds = new ArrayList<>();
        for (JsonNode each : json.get("parts")) {
            if (each.get("part").asText().equals(part)) {
                each.get("rounds").forEach(round -> rounds.add(round.get("number").asInt() + " "
                        + round.get("kind").asText() + " " + round.get("stitches").asInt() + " "
                        + round.get("openYarnOvers").asInt()));
            }
        }
        return rounds;
    }

    @Test
    void givesEveryRoundOfEveryPartInTheOrderOfKnitting() {
        JsonNode json = Run.of("rounds", Patterns.toeUp(folder), "--size", "M", "--json").clean().json();
        assertEquals("schema", json.fieldNames().next());
        assertEquals("turnheel-rounds/1", json.get("schema").asText());
        assertEquals("M", json.get("size").asText());
        assertEquals(List.of("toe", "foot", "heel", "leg", "cuff"), parts(json));

        // by hand: cast on 8, one set-up round, up to 20 every round, one plain, then every second round up to 64
        List<String> toe = new ArrayList<>(List.of("0 cast-on 8 0", "0 set-up 8 0", "1 increase 12 4",
                "2 increase 16 4", "3 increase 20 4", "4 plain 20 0"));
        for (int number = 5, stitches = 24; stitches <= 64; number += 2, stitches += 4) {
            toe.add(number + " increase " + stitches + " 4");
            toe.add(number + 1 + " plain " + stitches + " 0");
        }
        assertEquals(toe, rounds(json, "toe"));
        assertEquals(28, toe.size());
        assertEquals(52, rounds(json, "foot").size());
        assertEquals(44, rounds(json, "heel").size());
        assertEquals(58, rounds(json, "leg").size());
    }

    @Test
    void endsACuffDownSockWithTheToe() {
        JsonNode json = Run.of("rounds", Patterns.cuffDown(folder), "--size", "M", "--json").clean().json();
        assertEquals(List.of("cuff", "leg", "heel", "foot", "toe"), parts(json));
        List<String> toe = rounds(json, "toe");
        // by hand: from 64 eight times with a plain round to 32, then four times to 16, then grafted
        assertEquals("1 decrease 60 0", toe.getFirst());
        assertTrue(toe.contains("16 plain 32 0"), toe.toString());
        assertTrue(toe.contains("20 decrease 16 0"), toe.toString());
        assertEquals("graft", toe.getLast().split(" ")[1]);
    }

    @Test
    void showsPeopleATableForEachPart() {
        Run run = Run.of("rounds", Patterns.toeUp(folder), "--size", "M").clean();
        assertEquals("gull, size M", run.lines().getFirst());
        assertTrue(run.out().contains("\ntoe\nround  stitches  open  kind      worked\n"), run.out());
        assertTrue(run.out().contains("\n    1        12     4  increase  *yo, k2; rep from * to end\n"), run.out());
    }

    @Test
    void needsASizeThatIsThere() {
        Path file = Patterns.toeUp(folder);
        Run.of("rounds", file).refused("--size SIZE");
        Run.of("rounds", file, "--size", "XXL").refused("XXL", "M, L");
    }

    @Test
    void endsWithOneForTheSizeThatHasErrorsOnly() {
        Path file = Patterns.toeUp(folder);
        Run.of("set", file, "foot.stitches[M]=66");
        assertEquals(1, Run.of("rounds", file, "--size", "M").exitCode());
        Run.of("rounds", file, "--size", "L").clean();
    }
}
