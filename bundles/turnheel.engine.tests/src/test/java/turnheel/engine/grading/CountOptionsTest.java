package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Count;
import turnheel.engine.design.Parameter;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.RandomDesigns;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.grading.CountOptions.Option;
import turnheel.engine.grading.Relaxation.OwnCount;

class CountOptionsTest {

    /** M of the six sizes has an ideal of 63.936; 8 % of it are 5.115, a quarter is 15.984. */
    @Test
    void offersAHandfulOnEachSideOfTheIdeal() {
        CountOptions options = CountOptions.of(Designs.toeUpInSixSizes().graded(), "M");
        assertEquals(63.936, options.ideal(), 1e-9);
        assertEquals(58.82112, options.least(), 1e-9);
        assertEquals(69.05088, options.most(), 1e-9);
        assertEquals(List.of(48, 52, 56, 60, 64, 68, 72, 76), counts(options));
        assertEquals(List.of(64),
                options.options().stream().filter(Option::chosen).map(option -> option.fit().count()).toList());
        assertEquals(List.of(60, 64, 68),
                options.options().stream().filter(Option::withinWindow).map(option -> option.fit().count()).toList());
        assertEquals(List.of(), options.options().stream().flatMap(option -> option.broken().stream()).toList());
    }

    @Test
    void tellsWhatACountMeansOnTheFoot() {
        Option sixty = option(CountOptions.of(Designs.toeUpInSixSizes().graded(), "M"), 60);
        // 60 at 32 over 100 mm are 187.5 mm, 15.54 % less than 222
        assertEquals("M", sixty.fit().size());
        assertEquals(187.5, sixty.fit().circumferenceMm(), 1e-9);
        assertEquals(-15.5405, sixty.fit().easePercent(), 1e-4);
    }

    /** With a denser gauge on the instep: half of the count at 40 over 100 mm, half at 32. */
    @Test
    void countsTheInstepAtItsOwnGauge() {
        Draft draft = Designs.toeUp64().with(StitchPatterns.instep(2, 0)).with("gauge.instepStitches = 40/10 cm");
        CountOptions options = CountOptions.of(draft.graded(), "M");
        // 199.8 mm at 36; 36 stitches at 40 and 36 at 32 are 90 and 112.5 mm
        assertEquals(71.928, options.ideal(), 1e-9);
        assertEquals(202.5, option(options, 72).fit().circumferenceMm(), 1e-9);
    }

    /** Ideals: S 59.04, M 63.936, L 68.544, XL 72.576, each more than a step of 4 apart. */
    @Test
    void tellsWhatTheOtherSizesWouldHave() {
        CountOptions options = CountOptions.of(Designs.toeUpInSixSizes().graded(), "M");
        assertEquals("2 48, 4 52, S 56, L 68, XL 72", others(option(options, 60)));
        assertEquals(List.of(), option(options, 60).crowded());
        assertEquals("2 48, 4 52, S 60, L 72, XL 76", others(option(options, 68)));
        // 76 in L is beyond its window of 63.1 to 74.0
        assertEquals(List.of("M", "L"), option(options, 72).crowded());
    }

    @Test
    void showsTheDesignersOwnCountWithWhatItBreaks() {
        CountOptions options = CountOptions.of(Designs.toeUp64().with("foot.stitches = 66").graded(), "M");
        Option own = option(options, 66);
        assertTrue(own.chosen());
        assertEquals(List.of(Need.Kind.TOE_LINES, Need.Kind.RIB), own.broken().stream().map(Need::kind).toList());
    }

    /** Instep: 4, 6 or 8 more than a multiple of 24; leg: multiples of 12. What the first needs allow is offered. */
    @Test
    void offersWhatCanBeMetWhereNeedsFight() {
        Draft draft = Designs.toeUp64().with(StitchPatterns.instep(12, 3), StitchPatterns.leg(12));
        CountOptions options = CountOptions.of(draft.graded(), "M");
        assertEquals(List.of(52, 56, 76), counts(options));
        options.options().forEach(option ->
            assertEquals(List.of(Need.Kind.LEG_REPEATS), option.broken().stream().map(Need::kind).toList()));
    }

    /** Toe and rib on 77s and halves: 154 is more than twice the ideal, and 0 is no sock. */
    @Test
    void offersNoCountThatIsNoSock() {
        Draft draft = Designs.toeUp64().with(StitchPatterns.leg(77)).with("toe.points = 2");
        CountOptions options = CountOptions.of(draft.graded(), "M");
        assertTrue(counts(options).stream().allMatch(count -> count >= 8 && count <= 128),
                () -> counts(options).toString());
    }

    @Test
    void hasNoOptionsBeforeTheSizeIsMeasured() {
        Graded graded = Designs.toeUp64().without(Catalogue.FOOT_LENGTH.key())
                .without(Catalogue.FOOT_CIRCUMFERENCE.key()).graded();
        assertEquals(new CountOptions("M", 0, 0, 0, List.of()), CountOptions.of(graded, "M"));
    }

    @Test
    void refusesASizeThatThereIsNot() {
        Graded graded = Designs.toeUp64().graded();
        assertThrows(IllegalArgumentException.class, () -> CountOptions.of(graded, "XXL"));
    }

    /** Taking an option over is the same as having been told what it gives. */
    @Property(seed = Repeatable.SEED, tries = 100, edgeCases = EdgeCasesMode.NONE)
    void takenOverAnOptionGivesWhatItPromised(@ForAll("drafts") Draft draft) {
        Graded graded = draft.graded();
        String label = draft.sizes().getLast().label();
        for (Option option : CountOptions.of(graded, label).options()) {
            Graded taken = Grader.grade(Relaxed.with(draft.design(), new Relaxation.Change.Window(0,
                    List.of(new OwnCount(label, new Count(option.fit().count()))))));
            assertFit(option.fit(), taken);
            option.others().forEach(other -> assertFit(other, taken));
        }
    }

    private static void assertFit(SizeFit expected, Graded graded) {
        GradedSize size = graded.size(expected.size());
        assertEquals(expected, new SizeFit(size.label(), (int) value(size, Catalogue.FOOT_STITCHES),
                value(size, Catalogue.FINISHED_CIRCUMFERENCE), value(size, Catalogue.EASE_REACHED)));
    }

    private static double value(GradedSize size, Parameter parameter) {
        return size.value(parameter);
    }

    @Provide
    Arbitrary<Draft> drafts() {
        return Combinators.combine(RandomDesigns.usual(), StitchPatterns.insteps()).as(Draft::with);
    }

    private static List<Integer> counts(CountOptions options) {
        return options.options().stream().map(option -> option.fit().count()).toList();
    }

    private static Option option(CountOptions options, int count) {
        return options.options().stream().filter(option -> option.fit().count() == count).findFirst().orElseThrow();
    }

    private static String others(Option option) {
        return option.others().stream().map(fit -> fit.size() + " " + fit.count()).collect(Collectors.joining(", "));
    }
}
