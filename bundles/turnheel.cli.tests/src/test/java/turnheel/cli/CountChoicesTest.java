package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The counts that a size could have, and what to give up where there are none. */
class CountChoicesTest {

    private static final String RELAXATIONS = "Ways to make the counts fit";

    @TempDir
    private Path folder;

    /** The fields of the line of a count; an empty note is none. */
    private static List<String> line(Run run, String count) {
        return run.lines().stream().map(line -> List.of(line.strip().split(" {2,}")))
                .filter(fields -> fields.getFirst().equals(count)).findFirst()
                .orElseThrow(() -> new AssertionError(run.out()));
    }

    /** 225 mm less 10 % at 32 stitches are 64.8, 8 % around it 59.6 to 70.0; toe and rib take multiples of 4. */
    @Test
    void showTheCountsOfASizeWithWhatTheyGive() {
        Run run = Run.of("grade", Patterns.toeUp(folder), "--options", "M").clean();
        assertEquals("Size M: the ideal is 64.8 stitches around the foot; counts from 59.6 to 70.0 are near enough.",
                run.lines().getFirst());
        // 60 stitches are 187.5 mm, five sixths of 225
        assertEquals(List.of("60", "187.5", "−16.7", "72"), line(run, "60"));
        assertEquals(List.of("64", "200.0", "−11.1", "72", "chosen now"), line(run, "64"));
        assertEquals(List.of("68", "212.5", "−5.6", "72"), line(run, "68"));
        // L is wider by more than a step of four, so it cannot have 72 as well, and 76 is its last near enough: 77.8
        assertEquals(List.of("72", "225.0", "0.0", "76", "far from the ideal"), line(run, "72"));
        assertEquals(List.of("76", "237.5", "5.6", "72", "far from the ideal; no counts that suit and grow in M, L"),
                line(run, "76"));
    }

    @Test
    void showWhatOtherSizesWouldHave() {
        JsonNode json = Run.of("grade", Patterns.toeUp(folder), "--options", "L", "--json").clean().json();
        assertEquals("turnheel-options/1", json.get("schema").asText());
        assertEquals(72, json.get("ideal").asDouble(), 1e-9);
        JsonNode least = json.get("options").get(0);
        // the fourth multiple of 4 from 72 downwards, itself counted
        assertEquals(60, least.get("stitches").asInt());
        for (JsonNode option : json.get("options")) {
            assertEquals(option.get("stitches").asInt() == 72, option.get("chosen").asBoolean(), option.toString());
            assertEquals("M", option.get("others").get(0).get("size").asText());
            assertTrue(option.get("broken").isEmpty(), option.toString());
        }
    }

    @Test
    void nameWhatACountOfTheDesignersOwnDoesNotSuit() {
        Path file = Patterns.toeUp(folder);
        Run.of("set", file, "foot.stitches[M]=66");
        Run run = Run.of("grade", file, "--options", "M");
        assertTrue(line(run, "66").getLast().startsWith("chosen now; does not suit the toe"), run.out());
    }

    @Test
    void areRefusedForWhatIsNotThere() {
        Path file = Patterns.toeUp(folder);
        Run.of("grade", file, "--options", "N").refused("M, L");
        Run.of("grade", file, "--options", "M", "--why", "foot.stitches[M]").refused("one of --why, --options");
    }

    /** A rib of six, a toe of four and an instep of 3 more than a multiple of six stitches fight whatever the size. */
    private Path unsolvable() {
        Path file = folder.resolve("fight.turnheel");
        Run run = Run.of("new", file, "--size", Patterns.M, "--size", Patterns.L, "--cuff", "rib-3x3",
                "--stitch-pattern", "instep: 6+3");
        assertEquals(1, run.exitCode());
        return file;
    }

    /**
     * By hand: without the rib, multiples of 4 that are 4 or 8 more than a multiple of 12, 64 and 68 (a tie goes to the
     * smaller); without the edge or as a panel, multiples of 12, 60 and 72. The first lie 0.8 of 64.8 and 4 of 72 off,
     * 4.0 % together, the next 4.8 of 64.8, 5.2 %. On three lines multiples of 6 that are 6 more than one of 12, 66 for
     * both sizes: 1.2 of 64.8 and 6 of 72, 6.0 %.
     */
    @ParameterizedTest
    @ValueSource(strings = {"check", "grade"})
    void namesWaysOutBelowAConflict(String verb) {
        Run run = Run.of(verb, unsolvable());
        assertEquals(1, run.exitCode());
        List<String> ways = run.lines().subList(run.lines().indexOf(
                RELAXATIONS + ", the nearest to the ideal counts first:") + 2, run.lines().size());
        assertEquals("""
                 M   L  off, %  what to give up
                64  68     4.0  Let a round below the cuff adjust the count to whole rib repeats.
                64  68     4.0  Count the leg from the ankle, not from the foot.
                60  72     5.2  Leave the edge out of the stitch pattern on the instep.
                60  72     5.2  Work the stitch pattern on the instep as a centred panel between plain stitches.
                66  66     6.0  Shape the toe on 3 lines in place of 4.
                """.lines().toList(), ways);
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "grade"})
    void namesWaysOutForScripts(String verb) {
        JsonNode ways = Run.of(verb, unsolvable(), "--json").json().get("relaxations");
        assertEquals(5, ways.size());
        JsonNode first = ways.get(0);
        assertEquals(1, first.get("changes").size());
        // 64 at 32 over 10 cm are 200 mm, eight ninths of 225
        assertEquals(200, first.get("sizes").get(0).get("circumferenceMm").asDouble(), 1e-9);
        assertEquals(-100 / 9.0, first.get("sizes").get(0).get("easePercent").asDouble(), 1e-9);
        assertEquals(68, first.get("sizes").get(1).get("stitches").asInt());
    }

    @Test
    void saysNothingOfWaysOutWhereNoneIsNeeded() {
        Path file = Patterns.toeUp(folder);
        assertTrue(Run.of("check", file, "--json").json().get("relaxations").isEmpty());
        assertEquals(-1, Run.of("grade", file).out().indexOf(RELAXATIONS));
    }
}
