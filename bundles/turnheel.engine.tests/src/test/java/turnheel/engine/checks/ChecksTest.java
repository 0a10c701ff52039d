package turnheel.engine.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Parameter;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.RandomDesigns;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;

class ChecksTest {

    static List<CheckFixture> fixtures() {
        return CheckFixture.all();
    }

    @Test
    void haveAFixtureForEveryCheck() {
        Set<Check> withoutYarn = EnumSet.allOf(Check.class);
        withoutYarn.removeAll(Set.of(Check.SWATCH_DIFFERS, Check.YARN_GAUGE, Check.YARN_BALLS, Check.YARN_END,
                Check.YARN_UNUSED));
        withoutYarn.removeAll(OwnRowChecksTest.OWN);
        // what is checked in texts has its slips in the corpus of manuscripts
        withoutYarn.removeIf(check -> check.id().startsWith("text."));
        assertEquals(withoutYarn,
                CheckFixture.all().stream().map(CheckFixture::check).collect(Collectors.toSet()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("fixtures")
    void askAboutTheSlip(CheckFixture fixture) {
        List<Query> queries = Checks.of(fixture.slip().graded());
        assertEquals(List.of(fixture.query()),
                queries.stream().filter(query -> query.check() == fixture.check()).toList(), queries::toString);
    }

    /** One slip is one query, but for those that are listed beside the fixture. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("fixtures")
    void askAboutNothingElse(CheckFixture fixture) {
        Set<Check> expected = new HashSet<>(fixture.others());
        expected.add(fixture.check());
        List<Query> queries = Checks.of(fixture.slip().graded());
        assertEquals(expected, queries.stream().map(Query::check).collect(Collectors.toSet()), queries::toString);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("fixtures")
    void doNotAskWhereThereIsNoSlip(CheckFixture fixture) {
        List<Query> queries = Checks.of(fixture.sound().graded());
        assertFalse(queries.stream().anyMatch(query -> query.check() == fixture.check()), queries::toString);
    }

    @Test
    void sayOnceWhatConcernsSeveralSizes() {
        Draft draft = Designs.withoutSizes();
        for (String label : List.of("M", "M long", "M longer")) {
            draft = draft.withSize(label,
                    "body.footLength = 240 mm; body.footCircumference = 222 mm; foot.instep = 34");
        }
        assertEquals(List.of(new Query(Check.FOOT_SPLIT, Catalogue.FOOT_INSTEP.key(),
                List.of("M", "M long", "M longer"), "2", "4")), Checks.of(draft.graded()));
    }

    @Test
    void askInTheOrderOfTheRows() {
        Draft draft = Designs.toeUp64()
                .with("cuff.stitches = 62; heel.stitches = 31; foot.instep = 34; toe.castOn = 10");
        assertEquals(List.of(Check.NOT_WHOLE, Check.FOOT_SPLIT, Check.HEEL_SHARE, Check.CUFF_REPEAT),
                Checks.of(draft.graded()).stream().map(Query::check).toList());
    }

    @Test
    void askForWhatIsMissingAndJudgeTheOtherSizes() {
        Draft draft = Designs.withoutSizes().withSize("S", "").withSize("M",
                "body.footLength = 240 mm; body.footCircumference = 222 mm; foot.instep = 34");
        assertEquals(List.of(
                new Query(Check.MEASUREMENT_MISSING, Catalogue.FOOT_LENGTH.key(), List.of("S"), "", ""),
                new Query(Check.FOOT_SPLIT, Catalogue.FOOT_INSTEP.key(), List.of("M"), "2", "4")),
                Checks.of(draft.graded()));
    }

    /** All but the length is estimated from it. */
    @Test
    void askForTheFootLengthOnly() {
        Draft draft = Designs.withoutSizes().withSize("M", "body.footLength = 240 mm");
        assertEquals(List.of(), Checks.of(draft.graded()));
        Draft girthOnly = Designs.withoutSizes().withSize("M", "body.footCircumference = 222 mm");
        assertEquals(List.of(new Query(Check.MEASUREMENT_MISSING, Catalogue.FOOT_LENGTH.key(), List.of("M"), "", "")),
                Checks.of(girthOnly.graded()));
    }

    /** Nothing that a designer can write makes the checks fail, and every query names a row and sizes of the design. */
    @Repeatable
    void placeEveryQuery(@ForAll("unusual") Draft draft) {
        var graded = draft.graded();
        Set<String> labels = draft.sizes().stream().map(size -> size.label()).collect(Collectors.toSet());
        for (Query query : Checks.of(graded)) {
            assertTrue(graded.parameters().stream().map(Parameter::key).anyMatch(query.key()::equals), query::toString);
            assertFalse(query.sizes().isEmpty(), query::toString);
            assertTrue(labels.containsAll(query.sizes()), query::toString);
        }
    }

    @Provide
    Arbitrary<Draft> unusual() {
        return RandomDesigns.unusual();
    }
}
