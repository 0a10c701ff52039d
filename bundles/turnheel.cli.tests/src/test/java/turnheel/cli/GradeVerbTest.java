package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GradeVerbTest {

    @TempDir
    private Path folder;

    @ParameterizedTest(name = "{0} is {1} {2} and {3}")
    @CsvSource(delimiter = '|', textBlock = """
            # worked by hand from domain §§ 1 to 8: 240/225 mm and 260/250 mm, 32 x 44 over 10 cm
            fit.easeAround     | %        | −10.0 | −10.0
            fit.easeLength     | mm       | −10.8 | −11.7
            fit.circumference  | mm       | 202.5 | 225.0
            fit.length         | mm       | 229.2 | 248.3
            foot.ideal         | stitches | 64.8  | 72.0
            foot.stitches      | stitches | 64    | 72
            foot.instep        | stitches | 32    | 36
            foot.sole          | stitches | 32    | 36
            toe.castOn         | stitches | 8     | 8
            toe.alternateFrom  | stitches | 20    | 24
            toe.everyRound     | times    | 3     | 4
            toe.alternate      | times    | 11    | 12
            toe.rounds         | rounds   | 26    | 29
            toe.depth          | mm       | 61.4  | 68.2
            heel.stitches      | stitches | 32    | 36
            heel.centre        | stitches | 10    | 12
            heel.rows          | rows     | 44    | 48
            heel.depth         | mm       | 50.0  | 54.5
            foot.rounds        | rounds   | 52    | 55
            cuff.height        | mm       | 39.0  | 42.2
            leg.rounds         | rounds   | 58    | 63
            cuff.stitches      | stitches | 64    | 72
            fit.stretch        | ratio    | 1.55  | 1.51
            """)
    void matchesTheFiguresWorkedByHand(String key, String unit, String m, String l) {
        assertEquals(List.of(key, unit, m, l), Run.of("grade", Patterns.toeUp(folder)).clean().row(key));
    }

    @ParameterizedTest(name = "{0} is {1} and {2}")
    @CsvSource(textBlock = """
            # by hand: a quarter of 72 is 18, midway between 16 and 20, and the smaller is taken; 5 + 2 x 9 rounds
            toe.tip,           16, 16
            toe.alternateFrom, 32, 36
            toe.rounds,        20, 23
            """)
    void gradesAWedgeToeFromTheCuff(String key, String m, String l) {
        List<String> row = Run.of("grade", Patterns.cuffDown(folder)).clean().row(key);
        assertEquals(List.of(m, l), row.subList(2, 4));
    }

    @Test
    void givesScriptsUnroundedValuesWithTheirSources() {
        Path file = Patterns.toeUp(folder);
        Run.of("set", file, "foot.stitches[L]=76").clean();
        JsonNode json = Run.of("grade", file, "--json").clean().json();
        assertEquals("schema", json.fieldNames().next());
        assertEquals("turnheel-grade/1", json.get("schema").asText());
        assertEquals("[\"M\",\"L\"]", json.get("sizes").toString());
        JsonNode stitches = row(json, "foot.stitches");
        assertEquals("{\"key\":\"foot.stitches\",\"part\":\"foot\",\"unit\":\"stitches\",\"values\":[64,76],"
                + "\"sources\":[\"chosen\",\"override\"]}", stitches.toString());
        // 27 rounds at 44 over 100 mm
        assertEquals(2700 / 44.0, row(json, "toe.depth").get("values").get(0).asDouble(), 1e-12);
    }

    @Test
    void predictsWhatWasNotMeasured() {
        Path file = folder.resolve("few.turnheel");
        Run.of("new", file, "--size", "M: foot-length=240mm foot-circumference=225mm").clean();
        // 1.1504 × 240 + 30.04
        assertEquals("306.1", Run.of("grade", file).clean().row("body.heelCircumference").getLast());
        JsonNode heel = row(Run.of("grade", file, "--json").json(), "body.heelCircumference");
        assertEquals("[\"predicted\"]", heel.get("sources").toString());
    }

    private static JsonNode row(JsonNode json, String key) {
        for (JsonNode row : json.get("rows")) {
            if (row.get("key").asText().equals(key)) {
                return row;
            }
        }
        throw new AssertionError("no " + key + " in " + json);
    }

    @Test
    void saysWhyANumberIsWhatItIs() {
        Path file = Patterns.toeUp(folder);
        Run why = Run.of("grade", file, "--why", "toe.alternateFrom[M]").clean();
        assertTrue(why.lines().getFirst().contains("20"), why.out());
        assertTrue(why.out().contains("64 ÷ 3"), why.out());
        assertTrue(why.out().contains("Made from: toe.castOn, foot.stitches, toe.points"), why.out());
        assertTrue(why.out().contains("toe.everyRound"), why.out());
    }

    @Test
    void saysWhatAnOverrideReplaced() {
        Path file = Patterns.toeUp(folder);
        Run.of("set", file, "foot.stitches[M]=72").clean();
        JsonNode why = Run.of("grade", file, "--why", "foot.stitches[M]", "--json").clean().json();
        assertEquals("turnheel-why/1", why.get("schema").asText());
        assertEquals(72, why.get("value").asInt());
        assertEquals("override", why.get("source").asText());
        assertTrue(why.get("lines").toString().contains("64.8"), why.toString());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            foot.stitches      | KEY[SIZE]
            foot.stitches[N]   | the sizes are M, L
            foot.stitchs[M]    | Did you mean foot.stitches?
            toe.tip[M]         | toe.tip
            [M]                | there is no key
            """)
    void refusesAReasonOfWhatIsNotThere(String cell, String says) {
        Run.of("grade", Patterns.toeUp(folder), "--why", cell).refused(says);
    }

    @Test
    void marksOverridesOnlyWhereThereAreSome() {
        Path file = Patterns.toeUp(folder);
        assertFalse(Run.of("grade", file).out().contains("*"));
        Run.of("set", file, "foot.stitches[L]=76").clean();
        Run grade = Run.of("grade", file);
        assertEquals(List.of("foot.stitches", "stitches", "64", "76*"), grade.row("foot.stitches"));
        assertEquals("* overridden", grade.lines().getLast());
    }

    @Test
    void endsWithOneWhenThePatternHasErrors() {
        Path file = Patterns.toeUp(folder);
        Run.of("set", file, "foot.stitches[M]=66");
        Run grade = Run.of("grade", file);
        assertEquals(1, grade.exitCode());
        assertEquals(1, grade.err().lines().count());
        assertEquals("66*", grade.row("foot.stitches").get(2));
    }
}
