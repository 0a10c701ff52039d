package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.design.CalfLeg;
import turnheel.engine.design.Increase;
import turnheel.engine.design.Leg;
import turnheel.engine.design.LegCount;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.SockLength;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.Numbers;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;
import turnheel.engine.term.Key;

/** The counts of whole designs: what toe, halves and rib ask for together, domain § 2. */
class ChosenCountsTest {

    private static final Leg FROM_ANKLE = new StraightLeg(SockLength.CREW, LegCount.FROM_ANKLE);

    @ParameterizedTest(name = "{0} around, {1}, {2}: {3} on paper")
    @CsvSource(textBlock = """
            # foot, ease, gauge, ideal on paper, chosen: by hand. Each is a tie between two fours, so the smaller,
            # although the first five come out as 54.00000000000001 and the like in binary
            7.5 in,     -10 %,  8/1 in,   54, 52
            10 in,      -7.5 %, 8/1 in,   74, 72
            8.8 in,     0 %,    7.5/1 in, 66, 64
            6.25 in,    -8 %,   8/1 in,   46, 44
            254 mm,     -12 %,  7.5/1 in, 66, 64
            7.25 in,    0 %,    8/1 in,   58, 56
            250 mm,     -10 %,  24/10 cm, 54, 52
            """)
    void aTieOnPaperIsATie(String foot, String ease, String gauge, double ideal, int chosen) {
        Draft draft = Designs.toeUp64().withGauge(gauge, "44/10 cm")
                .with("body.footCircumference = %s; fit.easeAround = %s".formatted(foot, ease));
        assertEquals(ideal, Numbers.of(draft, "foot.ideal"), 1e-9);
        assertEquals(chosen, Numbers.of(draft, "foot.stitches"));
    }

    @ParameterizedTest(name = "{0} lines and {1}×{2} rib: {3}")
    @CsvSource(textBlock = """
            # lines, knit, purl, chosen: by hand, the multiple of lines, 2 and repeat that is nearest to 63.936
            4, 2, 2, 64
            # multiples of 2, 6 and 12
            2, 1, 1, 64
            6, 1, 1, 66
            6, 2, 2, 60
            # of 20: 60 and 80; of 24: 48 and 72, a little nearer to 72; of 14 with three lines of 42: 42 and 84
            5, 2, 2, 60
            8, 3, 3, 72
            3, 4, 3, 84
            """)
    void suitsToeHalvesAndRibAtOnce(int lines, int knit, int purl, int chosen) {
        Draft draft = Designs.toeUp64().with(new RoundToe(lines, Increase.YARN_OVER))
                .with(new RibCuff(knit, purl, false));
        assertEquals(chosen, Numbers.of(draft, "foot.stitches"));
    }

    @Test
    void aLegOfItsOwnTakesTheRibOffTheFoot() {
        Draft draft = Designs.toeUp64().with(new RibCuff(4, 3, false));
        // fours and sevens: 56 and 84; fours alone: 64
        assertEquals(56, Numbers.of(draft, "foot.stitches"));
        assertEquals(64, Numbers.of(draft.with("leg.stitches = 63"), "foot.stitches"));
    }

    @Test
    void onlyALegThatTakesTheFootsCountUpToTheCuffBringsTheRib() {
        Draft draft = Designs.toeUp64().with(new RibCuff(4, 3, false));
        assertEquals(56, Numbers.of(draft, "foot.stitches"));
        assertEquals(64, Numbers.of(draft.with(new RibCuff(4, 3, true)), "foot.stitches"));
        assertEquals(64, Numbers.of(draft.with(FROM_ANKLE), "foot.stitches"));
        // a calf leg meets the rib at its top
        assertEquals(64, Numbers.of(draft.with(new CalfLeg(SockLength.KNEE, LegCount.AS_FOOT)), "foot.stitches"));
    }

    @Test
    void aStitchPatternOnTheLegRulesTheCountThatTheLegTakesOver() {
        Draft draft = Designs.toeUp64().with(StitchPatterns.leg(10));
        // toe and rib ask for fours, halves of tens for twenties: 60 and 80
        assertEquals(60, Numbers.of(draft, "foot.stitches"));
        assertEquals(60, Numbers.of(draft.with(new CalfLeg(SockLength.KNEE, LegCount.AS_FOOT)), "foot.stitches"));
        assertEquals(64, Numbers.of(draft.with("leg.stitches = 60"), "foot.stitches"));
        assertEquals(64, Numbers.of(draft.with(FROM_ANKLE), "foot.stitches"));
    }

    @ParameterizedTest(name = "repeat {0}, edge {1}: {2} around, {3} on the instep, {4} on the sole")
    @CsvSource(textBlock = """
            # repeat, edge, foot, instep, sole: by hand from 63.936 on fours
            # halves of 0, 1, 2 and 12, 13, 14 and so on: 52 and 72, which is nearer; half of it is 36, a stitch short
            12, 1, 72, 37, 35
            # halves of 25 to 27 and 33 to 35: 52 and 68; 34 is just right
            8,  2, 68, 34, 34
            # 31, 32 and 33: 64; halves would be even, the edge is odd
            10, 1, 64, 31, 33
            10, 2, 64, 32, 32
            10, 3, 64, 33, 31
            """)
    void wholeRepeatsOnTheInstepMayMoveTheMarkersByAStitch(int repeat, int edge, int foot, int instep, int sole) {
        Graded graded = Designs.toeUp64().with(StitchPatterns.instep(repeat, edge)).graded();
        assertEquals(List.of(foot, instep, sole), List.of((int) Numbers.of(graded, "foot.stitches"),
                (int) Numbers.of(graded, "foot.instep"), (int) Numbers.of(graded, "foot.sole")));
    }

    @Test
    void asksWhichNeedsFight() {
        Graded graded = Designs.toeUp64().with(StitchPatterns.instep(12, 3), StitchPatterns.leg(12))
                .withSize("L", "body.footLength = 260 mm; body.footCircumference = 238 mm").graded();
        assertEquals(List.of(new Query(Check.NEEDS_EXCLUDE, new Key("foot.stitches"), List.of("M", "L"), """
                the instep, whole pattern repeats and the edge: a multiple of 24 plus 4, 6 or 8; \
                the leg, whole pattern repeats: a multiple of 12""", "")), graded.queries());
        // toe and instep are kept: 52 56 76 80; of rib and leg the rib
        assertEquals("M 56, L 76", counts(graded));
    }

    @Test
    void asksWhoseCountIsOutOfReach() {
        Graded graded = Designs.toeUp64().with("toe.castOn = 100").graded();
        assertEquals(List.of(new Query(Check.COUNTS_OUT_OF_REACH, new Key("foot.stitches"), List.of("M"), "58.8–69.1",
                "100")), graded.queries());
    }

    /** M and L differ by more than a step of 4, and L is the designer's; below 48 nothing is in M's window from 59. */
    @Test
    void asksWhichNeighboursAreCrowded() {
        Graded graded = Designs.toeUp64().withSize("L", """
                body.footLength = 260 mm; body.footCircumference = 238 mm; foot.stitches = 48""").graded();
        assertEquals(List.of(new Query(Check.COUNTS_CLASH, new Key("foot.stitches"), List.of("M", "L"), "", "")),
                graded.queries());
        assertEquals("M 64, L 48", counts(graded));
    }

    @ParameterizedTest(name = "{0} stitches: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            # foot | patterns | needed
            66 | no  | a multiple of 4, at least 8
            60 | yes | a multiple of 24 plus 0 or 4
            """)
    void asksWhatAnOverrideBreaks(int count, String pattern, String needed) {
        Draft draft = Designs.toeUp64().with("foot.stitches = " + count);
        Graded graded = (pattern.equals("yes") ? draft.with(StitchPatterns.instep(12, 1)) : draft).graded();
        assertEquals(List.of(new Query(Check.OVERRIDE_BREAKS, new Key("foot.stitches"), List.of("M"), needed,
                Integer.toString(count))), graded.queries());
    }

    /** Beside the override stands what the size would take alone. */
    @Test
    void keepsTheChoiceBesideAnOverride() {
        Cell cell = Designs.toeUp64().with("foot.stitches = 66").graded().size("M").cell(new Key("foot.stitches"))
                .orElseThrow();
        assertEquals(66, cell.value());
        Reason.Overridden reason = assertInstanceOf(Reason.Overridden.class, cell.reason());
        assertEquals(64, reason.instead().orElseThrow().value());
    }

    @Test
    void linesOfOneSizeAloneCountInThatSize() {
        Graded graded = Designs.toeUp64().withSize("L", """
                body.footLength = 260 mm; body.footCircumference = 238 mm; toe.points = 6""").graded();
        // 238 × 0.9 × 0.32 = 68.5 on twelves
        assertEquals("M 64, L 72", counts(graded));
    }

    @Test
    void sizesGrowTogether() {
        // ideals by hand: 49.0 53.3 59.0 63.9 68.5 72.6
        assertEquals("2 48, 4 52, S 60, M 64, L 68, XL 72", counts(Designs.toeUpInSixSizes().graded()));
    }

    @Test
    void sizesThatDifferInLengthOnlyShareACount() {
        Draft draft = Designs.withoutSizes();
        for (int length = 220; length <= 260; length += 20) {
            draft = draft.withSize("M/" + length,
                    "body.footLength = %d mm; body.footCircumference = 202 mm".formatted(length));
        }
        // 202 × 0.9 × 0.32 = 58.2
        assertEquals("M/220 60, M/240 60, M/260 60", counts(draft.graded()));
    }

    @Test
    void neighboursMakeRoomForADesignersOwnCount() {
        Draft draft = Designs.withoutSizes()
                .withSize("S", "body.footLength = 220 mm; body.footCircumference = 205 mm")
                .withSize("M", "body.footLength = 240 mm; body.footCircumference = 222 mm; foot.stitches = 60")
                .withSize("L", "body.footLength = 260 mm; body.footCircumference = 238 mm");
        // S would take 60 alone; 59.04 and 63.936 are more than a step of 4 apart
        assertEquals("S 56, M 60, L 68", counts(draft.graded()));
    }

    @Test
    void tellsIdealWindowAndNeedsOfItsChoice() {
        Cell cell = Designs.toeUp64().graded().size("M").cell(new Key("foot.stitches")).orElseThrow();
        Reason.Chosen chosen = assertInstanceOf(Reason.Chosen.class, cell.reason());
        assertEquals(Source.CHOSEN, cell.source());
        assertEquals(63.936, chosen.ideal(), 1e-9);
        // 8 % of 63.936 is 5.11488
        assertEquals(58.82112, chosen.fewest(), 1e-9);
        assertEquals(69.05088, chosen.most(), 1e-9);
        assertEquals(List.of(new Need(Need.Kind.HALVES, List.of(Congruence.multipleOf(2)), 2),
                new Need(Need.Kind.TOE_LINES, List.of(Congruence.multipleOf(4)), 8),
                new Need(Need.Kind.RIB, List.of(Congruence.multipleOf(4)), 4)), chosen.needs());
        assertEquals(List.of("foot.ideal", "toe.castOn", "toe.points"), chosen.keys().stream().map(Object::toString).toList());
    }

    @ParameterizedTest(name = "a wedge toe on an ideal of {1}: {2}")
    @CsvSource(textBlock = """
            # at 10 stitches over 10 cm: round, ideal, chosen; a wedge toe needs 16, domain § 3
            160 mm, 16,   16
            142 mm, 14.2, 16
            """)
    void aWedgeToeHasSixteenStitchesAtLeast(String round, double ideal, int chosen) {
        Draft draft = Designs.cuffDown64().withGauge("10/10 cm", "14/10 cm").with(new RibCuff(1, 1))
                .with("fit.easeAround = 0 %; body.footCircumference = " + round);
        assertEquals(ideal, Numbers.of(draft, "foot.ideal"), 1e-9);
        assertEquals(chosen, Numbers.of(draft, "foot.stitches"));
        Reason.Chosen reason = (Reason.Chosen) draft.graded().sizes().getFirst().cell(new Key("foot.stitches"))
                .orElseThrow().reason();
        assertEquals(new Need(Need.Kind.TOE_LINES, List.of(Congruence.multipleOf(2)), 16), reason.needs().get(1));
    }

    private static String counts(Graded graded) {
        return graded.sizes().stream()
                .map(size -> size.label() + " " + (int) Numbers.of(size, "foot.stitches"))
                .collect(Collectors.joining(", "));
    }
}
