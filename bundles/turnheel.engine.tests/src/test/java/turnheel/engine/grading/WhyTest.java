package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Increase;
import turnheel.engine.design.StarToe;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.RandomDesigns;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.term.Key;
import turnheel.engine.yarn.Patterns;

class WhyTest {

    private static final String SOCK = "foot.stitches = 64";

    /** Key, overrides, lines; one for every source that a number can have. */
    static Stream<Arguments> derivations() {
        return Stream.of(
                Arguments.of("body.footLength", "body.footLength = 9 1/2 in", List.of(
                        "Foot length in size M is 241.3 mm (input).",
                        "Written as 9.5 in.")),
                Arguments.of("fit.easeLength", "", List.of(
                        "Ease in length in size M is −10.8 mm (default).",
                        "= if(Foot length ≤ 130; 0; if(Foot length ≤ 200; −5; "
                                + "0 − greatest(5; least(12; 0.045 × Foot length))))",
                        "= if(240 ≤ 130; 0; if(240 ≤ 200; −5; 0 − greatest(5; least(12; 0.045 × 240))))")),
                Arguments.of("foot.rounds", "", List.of(
                        "Foot rounds in size M is 52 rounds (rule).",
                        "= nearest((Wanted length − Toe depth − Heel depth) × Round gauge ÷ 100)",
                        "= nearest((229.2 − 61.3636 − 50) × 44 ÷ 100)",
                        "Before rounding: 51.848; a tie goes to the smaller, snugger count.")),
                Arguments.of("toe.points", "", List.of(
                        "Shaping lines in size M is 4 lines (rule).",
                        "= 4")),
                Arguments.of("foot.stitches", "", List.of(
                        "Foot stitches in size M is 64 stitches (chosen).",
                        "The ideal is 63.936 stitches. Counts from 58.8211 to 69.0509 were compared in all sizes at "
                                + "once; this one belongs to the set with the least squared deviation. Every count "
                                + "must suit:",
                        "• instep and sole, two halves: a multiple of 2",
                        "• the toe, the same for every shaping line: a multiple of 4, at least 8",
                        "• the cuff, whole rib repeats: a multiple of 4")),
                Arguments.of("heel.stitches", "heel.stitches = 36", List.of(
                        "Heel stitches in size M is 36 stitches (override).",
                        "The designer set 36 for this size.",
                        "Without the override it would be 32:",
                        "= nearest(Foot stitches ÷ 2)",
                        "= nearest(64 ÷ 2)",
                        "Before rounding: 32; a tie goes to the smaller, snugger count.")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("derivations")
    void derivesANumber(String key, String numbers, List<String> lines) {
        assertEquals(lines, Why.of(Designs.toeUp64().with(numbers).graded(), new Key(key), "M").lines());
    }

    @Test
    void tellsAnOverriddenCountWithTheChoiceThatItReplaces() {
        Graded graded = Designs.toeUp64().with("foot.stitches = 72").graded();
        List<String> lines = Why.of(graded, new Key("foot.stitches"), "M").lines();
        assertEquals("Foot stitches in size M is 72 stitches (override).", lines.getFirst());
        assertEquals("Without the override it would be 64:", lines.get(2));
        assertTrue(lines.get(3).startsWith("The ideal is 63.936 stitches."), lines::toString);
    }

    @Test
    void tellsAPredictionByTheMeasurementItFollows() {
        Graded graded = Designs.toeUp64().without(Catalogue.FOOT_CIRCUMFERENCE.key()).graded();
        Why why = Why.of(graded, Catalogue.FOOT_CIRCUMFERENCE.key(), "M");
        // 0.7541 × 240 + 45.83
        assertEquals("Foot circumference in size M is 226.814 mm (predicted).", why.lines().getFirst());
        assertEquals(List.of(Catalogue.FOOT_LENGTH.key()), why.basis());
    }

    /** 0.23 × 229.2 mm at 44 rounds are 23.195; eight sections of eight with at most 3 plain rounds take 22. */
    @Test
    void tellsWhatWasFittedByWhatItReaches() {
        Graded graded = Designs.cuffDown64().with(new StarToe(Increase.MAKE_ONE))
                .with("foot.stitches = 64; toe.points = 8").graded();
        Why why = Why.of(graded, Catalogue.TOE_PLAIN_MOST.key(), "M");
        assertEquals(List.of("Plain rounds, at most in size M is 3 rounds (chosen).",
                "Sections and plain rounds are chosen together so that the toe comes nearest to 23.195 rounds; "
                        + "this pair gives 22."), why.lines());
        assertEquals(List.of(Catalogue.FOOT_STITCHES.key(), Catalogue.WANTED_LENGTH.key(), Catalogue.GAUGE_ROUNDS.key()),
                why.basis());
        assertTrue(why.dependents().contains(Catalogue.TOE_ROUNDS.key()), why::toString);
    }

    @Test
    void tellsWhatWasCountedStitchByStitch() {
        Graded graded = Patterns.grade(Designs.toeUp64().design());
        Why why = Why.of(graded, Catalogue.YARN_LOOPS.key(), "M");
        assertEquals("Counted from the rounds, each stitch for so many loops:", why.lines().get(1));
        // the round toe: 4 × (3 + 11) yarn-overs; the cast-on of 8
        assertTrue(why.lines().contains("• yarn-over: 56 × 1 = 56"), why.lines()::toString);
        assertTrue(why.lines().contains("• cast-on: 8 × 1 = 8"), why.lines()::toString);
        assertTrue(why.basis().contains(Catalogue.FOOT_ROUNDS.key()), why::toString);
    }

    @Test
    void namesWhatItWasMadeFromAndWhatFollows() {
        Why why = Why.of(Designs.toeUp64().with(SOCK).graded(), new Key("heel.stitches"), "M");
        assertEquals("[foot.stitches]", why.basis().toString());
        assertEquals("[heel.centre, heel.eachSide]", why.dependents().toString());
        assertEquals("M", why.size());
        assertEquals(32, why.cell().value());
    }

    @Test
    void namesWhatAnOverrideWouldHaveBeenMadeFrom() {
        Why why = Why.of(Designs.toeUp64().with("heel.stitches = 36").graded(), new Key("heel.stitches"), "M");
        assertEquals("[foot.stitches]", why.basis().toString());
    }

    /** A number is made from another exactly when the other names it among what follows. */
    @Property(seed = Repeatable.SEED, tries = 60, edgeCases = EdgeCasesMode.NONE)
    void basisAndDependentsAreTheTwoEndsOfOneArrow(@ForAll("unusual") Draft draft) {
        Graded graded = draft.graded();
        Set<String> up = new HashSet<>();
        Set<String> down = new HashSet<>();
        for (GradedSize size : graded.sizes()) {
            for (Key key : size.cells().keySet()) {
                Why why = Why.of(graded, key, size.label());
                why.basis().forEach(basis -> up.add(basis + " → " + key));
                why.dependents().forEach(dependent -> down.add(key + " → " + dependent));
            }
        }
        assertEquals(up, down);
    }

    @Test
    void refusesASizeThatIsNotThereAndListsThoseThatAre() {
        Graded graded = Designs.toeUpInSixSizes().graded();
        assertRefused("there is no size \"XXL\"; the sizes are 2, 4, S, M, L, XL", graded, "foot.stitches", "XXL");
    }

    @Test
    void refusesARowThatThePatternHasNotOrThatHasNoValue() {
        assertRefused("Stitches at the tip (toe.tip) does not occur in this pattern", Designs.toeUp64().graded(),
                "toe.tip", "M");
        assertRefused("Foot stitches (foot.stitches) has no value in size M",
                Designs.toeUp64().without(Catalogue.FOOT_LENGTH.key()).graded(), "foot.stitches", "M");
        assertRefused("there is no \"foot.stiches\"; did you mean foot.stitches?", Designs.toeUp64().graded(),
                "foot.stiches", "M");
    }

    private static void assertRefused(String beginning, Graded graded, String key, String size) {
        var refused = assertThrows(IllegalArgumentException.class, () -> Why.of(graded, new Key(key), size));
        assertTrue(refused.getMessage().startsWith(beginning), refused::getMessage);
    }

    @Provide
    Arbitrary<Draft> unusual() {
        return RandomDesigns.unusual();
    }
}
