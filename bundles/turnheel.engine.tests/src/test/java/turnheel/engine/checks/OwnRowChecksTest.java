package turnheel.engine.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import turnheel.engine.design.Design;
import turnheel.engine.design.OwnRow;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.grading.Graded;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;
import turnheel.engine.query.Sentences;
import turnheel.engine.term.Key;
import turnheel.engine.yarn.Patterns;

/** What is asked about own rows: each slip beside a neighbour that is none. A row is written {@code name=formula}. */
class OwnRowChecksTest {

    private record Fixture(Check check, List<String> slip, List<String> sound, String row, String expected,
            String found) {
    }

    /** Their fixtures are not among those that {@link ChecksTest} grades without the yarn. */
    static final Set<Check> OWN = Set.of(Check.OWN_UNREAD, Check.OWN_UNKNOWN_KEY, Check.OWN_CIRCULAR,
            Check.OWN_NO_NUMBER);

    private static Fixture of(Check check, String slip, String sound, String row, String expected, String found) {
        return new Fixture(check, List.of(slip.split("\\|")), List.of(sound.split("\\|")), row, expected, found);
    }

    /** The sock has 64 stitches, 32 of them on the instep. */
    static List<Fixture> fixtures() {
        return List.of(
                of(Check.OWN_UNREAD, "a=foot.stitches/", "a=foot.stitches/2", "a",
                        "The formula ends too early: a number, a key, a function or a parenthesis must follow.", ""),
                of(Check.OWN_UNREAD, "a=LOG(foot.stitches)", "a=INT(foot.stitches)", "a",
                        "Character 1: the function LOG is not known here. There are ROUND ROUNDUP ROUNDDOWN TRUNC INT"
                                + " CEILING FLOOR EVEN ODD ABS SQRT MIN MAX SUM AVERAGE MOD QUOTIENT IF.", "LOG"),
                of(Check.OWN_UNKNOWN_KEY, "a=foot.stiches/2", "a=foot.stitches/2", "a", "foot.stitches",
                        "foot.stiches"),
                // a key of the catalogue that no part of this sock contributes
                of(Check.OWN_UNKNOWN_KEY, "a=heel.flapRows", "a=heel.rows", "a", "heel.rows", "heel.flapRows"),
                of(Check.OWN_UNKNOWN_KEY, "aB=1|b=own.ab*2", "aB=1|b=own.aB*2", "b", "own.aB", "own.ab"),
                of(Check.OWN_CIRCULAR, "a=own.a+1", "a=own.b+1|b=1", "a", "", "own.a → own.a"),
                of(Check.OWN_CIRCULAR, "x=1|a=own.b|b=own.x+own.c|c=own.a", "x=1|a=own.b|b=own.x+own.c|c=own.x", "a",
                        "", "own.a → own.b → own.c → own.a"),
                of(Check.OWN_NO_NUMBER, "a=1/(foot.stitches-64)", "a=1/(foot.stitches-63)", "a", "",
                        "1/(foot.stitches-64)"),
                of(Check.OWN_NO_NUMBER, "a=5+SQRT(foot.instep-foot.stitches)", "a=5+SQRT(foot.stitches-foot.instep)",
                        "a", "", "SQRT(foot.instep-foot.stitches)"),
                of(Check.OWN_NO_NUMBER, "a=IF(foot.stitches>60;10^foot.stitches^9;0)",
                        "a=IF(foot.stitches>66;10^foot.stitches^9;0)", "a", "", "10^foot.stitches^9"));
    }

    private static Design sock(List<String> rows) {
        return Designs.toeUp64().design().withOwnRows(rows.stream().map(row -> row.split("=", 2))
                .map(sides -> new OwnRow(new Key("own." + sides[0]), "", sides[1])).toList());
    }

    private static List<Query> asked(List<String> rows) {
        return Checks.of(Patterns.grade(sock(rows)));
    }

    @Test
    void haveAFixtureForEveryCheck() {
        assertEquals(OWN, fixtures().stream().map(Fixture::check).collect(Collectors.toSet()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("fixtures")
    void askAboutTheSlipAndNothingElse(Fixture fixture) {
        assertEquals(List.of(new Query(fixture.check(), new Key("own." + fixture.row()), List.of(Designs.M),
                fixture.expected(), fixture.found())), asked(fixture.slip()));
        assertEquals(List.of(), asked(fixture.sound()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("fixtures")
    void nameTheRowAndTheOffendingWord(Fixture fixture) {
        String sentence = Sentences.of(asked(fixture.slip()).getFirst());
        assertTrue(sentence.startsWith("The formula of own." + fixture.row() + " "), sentence);
        assertTrue(sentence.contains(fixture.found()), sentence);
    }

    @Test
    void askInTheOrderOfTheRowsAndOnceForAllSizes() {
        Design two = Designs.toeUp64().withSize("L", "body.footLength = 260 mm; body.footCircumference = 238 mm")
                .design()
                .withOwnRows(sock(List.of("z=1/(foot.stitches-foot.stitches)", "b=own.none", "a=(")).ownRows());
        List<Query> queries = Checks.of(Patterns.grade(two));
        assertEquals(List.of("own.z", "own.b", "own.a"), queries.stream().map(query -> query.key().name()).toList());
        queries.forEach(query -> assertEquals(List.of("M", "L"), query.sizes()));
    }

    @Test
    void doNotAskAboutWhatPassesASlipOn() {
        List<Query> queries = asked(List.of("a=(", "b=own.a+1", "c=own.b*2"));
        assertEquals(List.of("own.a"), queries.stream().map(query -> query.key().name()).toList());
    }

    @Test
    void askOnceAboutEachCircle() {
        List<Query> queries = asked(List.of("a=own.b", "b=own.a", "c=own.a+1", "d=own.e", "e=own.d"));
        assertEquals(List.of("own.a → own.b → own.a", "own.d → own.e → own.d"),
                queries.stream().map(Query::found).toList());
    }

    /** Whatever is written in formulas, each row has its numbers or passes on a slip that is asked about. */
    @Repeatable
    void leaveNoRowUnexplained(@ForAll("formulas") List<String> formulas) {
        List<String> rows = new ArrayList<>();
        formulas.forEach(formula -> rows.add((char) ('a' + rows.size()) + "=" + formula));
        Graded graded = Patterns.grade(sock(rows));
        Set<String> asked = Checks.of(graded).stream().map(query -> query.key().name()).collect(Collectors.toSet());
        for (OwnRow row : graded.design().ownRows()) {
            boolean isEmpty = graded.size(Designs.M).cell(row.key()).isEmpty();
            boolean readsOwn = row.formula().toLowerCase(Locale.ROOT).contains("own.");
            assertTrue(!isEmpty || readsOwn || asked.contains(row.key().name()), row::toString);
            assertFalse(!isEmpty && asked.contains(row.key().name()), row::toString);
        }
    }

    @Provide
    Arbitrary<List<String>> formulas() {
        Arbitrary<String> pieces = Arbitraries.of("own.a", "own.b", "own.c", "own.d", "foot.stitches", "foot.nothing",
                "2", "0", "+", "-", "*", "/", "(", ")", "SQRT(", "IF(", ";", ">", "%");
        Arbitrary<String> any = pieces.list().ofMaxSize(7).map(list -> String.join("", list));
        Arbitrary<String> sum = Arbitraries.of("own.a", "own.b", "own.c", "foot.stitches", "yarn.metres", "2", "0")
                .list().ofMinSize(1).ofMaxSize(3).map(list -> String.join("/", list));
        return Arbitraries.oneOf(sum, any).list().ofMinSize(1).ofMaxSize(4);
    }
}
