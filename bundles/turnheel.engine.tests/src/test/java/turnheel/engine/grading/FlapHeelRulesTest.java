package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapEdge;
import turnheel.engine.design.FlapFabric;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.FlapLength;
import turnheel.engine.design.HeelTurn;
import turnheel.engine.design.Length;
import turnheel.engine.design.PickUp;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.Numbers;

class FlapHeelRulesTest {

    private static final Draft ROUND = Designs.cuffDown64().with(new FlapHeel(HeelTurn.ROUND, new FlapLength.FromBody()));
    private static final Draft SQUARE = Designs.cuffDown64().with(new FlapHeel(HeelTurn.SQUARE, new FlapLength.FromBody()));
    private static final Draft TOE_UP = ROUND.with(Direction.TOE_UP);

    @ParameterizedTest(name = "{0} stitches, flap of {1} × {2}")
    @CsvSource(textBlock = """
            # foot, flap, rows, turn rows, left, picked up, around, decreases
            # domain § 5
            64,     32,   32,   14,        18,   17,        84,     10
            # by hand: 30 stitches leave 30/2 - 1 - 3 = 11 a side, 12 more rows
            60,     30,   30,   14,        16,   16,        78,      9
            # an odd flap: (33 - 1)/2 - 1 - 3 = 12 a side, 12 more rows
            64,     33,   32,   14,        19,   17,        84,     10
            # 36/2 - 1 - 3 = 14 a side
            72,     36,   36,   16,        20,   19,        94,     11
            """)
    void aRoundTurnMatchesTheFiguresWorkedByHand(int foot, int flap, int rows, int turnRows, int left, int pickUp,
            int around, int decreases) {
        Draft draft = ROUND.with("foot.stitches = " + foot + "; heel.stitches = " + flap + "; heel.flapRows = " + rows);
        assertEquals(turnRows, Numbers.of(draft, "heel.turnRows"));
        assertEquals(left, Numbers.of(draft, "heel.afterTurn"));
        assertEquals(pickUp, Numbers.of(draft, "heel.pickUp"));
        assertEquals(around, Numbers.of(draft, "heel.afterPickUp"));
        assertEquals(decreases, Numbers.of(draft, "heel.gussetDecreases"));
    }

    /**
     * Published: a tutorial's three flaps (reference example O08) begin 1, 3 and 4 stitches past the middle, leave ten
     * unworked after each of the first two rows, and 16, 20 and 22 after twelve rows.
     */
    @ParameterizedTest(name = "{0} stitches from {1} past the middle leave {2}")
    @CsvSource({"28, 1, 16", "32, 3, 20", "34, 4, 22"})
    void matchesPublishedRoundTurns(int flap, int offset, int left) {
        Draft draft = ROUND.with("heel.stitches = " + flap + "; heel.turnOffset = " + offset);
        assertEquals(12, Numbers.of(draft, "heel.turnRows"));
        assertEquals(left, Numbers.of(draft, "heel.afterTurn"));
    }

    @Test
    void aSquareTurnLeavesItsMiddleThird() {
        Draft draft = SQUARE.with("foot.stitches = 64");
        assertEquals(10, Numbers.of(draft, "heel.centre"));
        assertEquals(22, Numbers.of(draft, "heel.turnRows"));
        assertEquals(10, Numbers.of(draft, "heel.afterTurn"));
    }

    /**
     * Published: directions of 1915 (reference example O15) turn a flap of 40 on a middle of 12, pick up 17 a side and have
     * 86 stitches with the 40 of the instep.
     */
    @Test
    void matchesAPublishedSquareHeel() {
        Draft draft = SQUARE.with("foot.stitches = 80; heel.stitches = 40; heel.centre = 12; heel.flapRows = 32; "
                + "heel.corner = 1");
        assertEquals(12, Numbers.of(draft, "heel.afterTurn"));
        assertEquals(17, Numbers.of(draft, "heel.pickUp"));
        assertEquals(86, Numbers.of(draft, "heel.afterPickUp"));
    }

    /** Published: a flap of 32 of 64 stitches and 32 rows picks up 16 a side, corner stitches apart (reference O09). */
    @Test
    void matchesAPublishedPickUp() {
        Draft draft = ROUND.with("foot.stitches = 64; heel.flapRows = 32; heel.corner = 0");
        assertEquals(32, Numbers.of(draft, "heel.stitches"));
        assertEquals(16, Numbers.of(draft, "heel.pickUp"));
    }

    /** Published: 18 left, 18 picked up a side, 32 instep: 86 around, 11 decrease rounds to 64 (reference O10). */
    @Test
    void matchesAPublishedGusset() {
        Draft draft = ROUND.with("foot.stitches = 64; heel.flapRows = 32; heel.pickUp = 18");
        assertEquals(18, Numbers.of(draft, "heel.afterTurn"));
        assertEquals(86, Numbers.of(draft, "heel.afterPickUp"));
        assertEquals(11, Numbers.of(draft, "heel.gussetDecreases"));
    }

    private static Draft pickedUp(FlapLength length, double perRow) {
        return Designs.cuffDown64().with(new FlapHeel(HeelTurn.ROUND, length, FlapFabric.SLIPPED, FlapEdge.SLIPPED,
                new PickUp.StitchesPerRow(perRow)));
    }

    @ParameterizedTest(name = "{0} for each of {1} rows are {2}")
    @CsvSource(textBlock = """
            # a tie goes to the smaller
            0.5,  32, 16
            0.75, 32, 24
            0.75, 30, 22
            0.75, 26, 19
            0.7,  28, 20
            1,    24, 24
            """)
    void picksUpByARatioToTheRows(double perRow, int rows, int pickUp) {
        Draft draft = pickedUp(new FlapLength.FromBody(), perRow).with("foot.stitches = 64; heel.flapRows = " + rows);
        assertEquals(pickUp, Numbers.of(draft, "heel.pickUp"));
        // the turn of 32 leaves 18; 32 instep stitches
        assertEquals((18 + 2 * pickUp + 32 - 64) / 2, Numbers.of(draft, "heel.gussetDecreases"));
    }

    /** A ratio has its corner stitches in it: there is no number for them. */
    @Test
    void aRatioKnowsNoCornerStitches() {
        assertTrue(ROUND.graded().sizes().getFirst().cell(Catalogue.HEEL_CORNER).isPresent());
        assertTrue(pickedUp(new FlapLength.FromBody(), 0.5).graded().sizes().getFirst().cell(Catalogue.HEEL_CORNER)
                .isEmpty());
    }

    /**
     * (310 × 0.32 / 1.2 − 64) / 2 = 9.3 asks for 10 pairs: 17 a side beside a turn of 14 rows that leaves 18. By three
     * quarters 17 are picked up along 22.7 rows; the finished 229.2 mm ask for 26 at least. By half 34 are too many,
     * so 32.
     */
    @ParameterizedTest(name = "{0} a row: {1} rows, {2} pairs")
    @CsvSource({"0.75, 26, 12", "0.6, 28, 10", "0.5, 32, 9"})
    void theFlapFollowsTheHeelByWhatIsPickedUp(double perRow, int rows, int pairs) {
        Draft draft = pickedUp(new FlapLength.FromBody(), perRow)
                .with("foot.stitches = 64; body.heelCircumference = 310 mm");
        assertEquals(rows, Numbers.of(draft, "heel.flapRows"));
        assertEquals(pairs, Numbers.of(draft, "heel.gussetDecreases"));
    }

    /**
     * Published: a quarter of the cast-on a side (reference table of trade practice), which is half of a square flap's
     * rows.
     */
    @ParameterizedTest(name = "{0} stitches: {1} a side")
    @CsvSource({"56, 14", "64, 16", "72, 18"})
    void matchesAPublishedQuarterOfTheCastOn(int castOn, int pickUp) {
        Draft draft = pickedUp(new FlapLength.RowsPerStitch(1), 0.5).with("foot.stitches = " + castOn);
        assertEquals(pickUp, Numbers.of(draft, "heel.pickUp"));
    }

    /** Domain § 5: a heel of 310 mm at 32 stitches asks for 10 pairs, widest 84, and a flap of 20 rows. */
    @Test
    void toeUpTheGussetFollowsTheHeelCircumference() {
        Draft draft = TOE_UP.with("foot.stitches = 64; body.heelCircumference = 310 mm");
        assertEquals(10, Numbers.of(draft, "heel.gussetIncreases"));
        assertEquals(84, Numbers.of(draft, "heel.widest"));
        assertEquals(20, Numbers.of(draft, "heel.flapRows"));
        // 0.4 of 32 is 12.8, so 12, and ten a side
        assertEquals(12, Numbers.of(draft, "heel.centre"));
        assertEquals(20, Numbers.of(draft, "heel.turnRows"));
    }

    /** The flap gives the gusset that was wanted: (310 × 0.32 / 1.2 − 64) / 2 = 9.3, so 10 pairs. */
    @Test
    void cuffDownTheFlapFollowsTheHeelCircumference() {
        Draft draft = ROUND.with("foot.stitches = 64; body.heelCircumference = 310 mm");
        assertEquals(10, Numbers.of(draft, "heel.gussetDecreases"));
        assertEquals(32, Numbers.of(draft, "heel.flapRows"));
    }

    @ParameterizedTest(name = "heel of {0} mm: {1} rows")
    @CsvSource(textBlock = """
            # 229.2 mm finished at 44 rows: at least 0.24 of it, 24.2 rows, so 26; at most 0.32, 32.3, so 32
            250, 26
            400, 32
            """)
    void theFlapStaysWithinItsUsualShareOfTheFoot(int heel, int rows) {
        assertEquals(rows, Numbers.of(ROUND.with("foot.stitches = 64; body.heelCircumference = " + heel + " mm"),
                "heel.flapRows"));
    }

    @Test
    void theDesignerMaySayHowLongTheFlapIs() {
        Draft square = Designs.cuffDown64().with(new FlapHeel(HeelTurn.ROUND, new FlapLength.RowsPerStitch(1)));
        assertEquals(32, Numbers.of(square.with("foot.stitches = 64"), "heel.flapRows"));
        Draft measured = Designs.cuffDown64()
                .with(new FlapHeel(HeelTurn.ROUND, new FlapLength.Height(Length.ofMm(60))));
        // 60 mm at 44 rows are 26.4, at a flap gauge of 48 they are 28.8
        assertEquals(26, Numbers.of(measured, "heel.flapRows"));
        assertEquals(28, Numbers.of(measured.with("gauge.flapRows = 48/10 cm"), "heel.flapRows"));
    }

    @Test
    void onlyTheTurnLiesAlongTheFootAndOnlyTheFlapUpTheLeg() {
        Draft draft = ROUND.with("foot.stitches = 64; heel.flapRows = 32");
        assertEquals(14 * 100 / 44.0, Numbers.of(draft, "heel.depth"), 1e-9);
        assertEquals(32 * 100 / 44.0, Numbers.of(draft, "heel.height"), 1e-9);
        assertEquals(20, Numbers.of(draft, "foot.fewestRounds"));
    }
}
