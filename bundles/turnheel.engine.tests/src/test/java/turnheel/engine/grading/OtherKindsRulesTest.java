package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.AsymmetricToe;
import turnheel.engine.design.CalfLeg;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Increase;
import turnheel.engine.design.LegCount;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.ShortRowToe;
import turnheel.engine.design.SockLength;
import turnheel.engine.design.StarToe;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Fit;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.design.TurnMethod;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.Numbers;

/** Toes, heels, legs and stitch patterns beside the plain ones, by figures worked by hand. */
class OtherKindsRulesTest {

    private static final Draft CUFF_DOWN = Designs.cuffDown64();

    @ParameterizedTest(name = "{0} stitches in {1} sections, at most {2} plain: {3} rounds")
    @CsvSource(textBlock = """
            # domain § 3
            64, 8, 6, 28
            # sections of 8: 7 shaping rounds, plain 0 1 2 2 2 2 2
            64, 8, 2, 18
            # sections of 16: 15 shaping rounds, plain 0 1 and 13 times 2
            64, 4, 2, 42
            # sections of 2: a shaping round each, no plain one
            8,  4, 3, 1
            """)
    void aStarToeTakesTheRoundsThatItsSectionsAllow(int foot, int sections, int plain, int rounds) {
        Draft draft = CUFF_DOWN.with(new StarToe(Increase.MAKE_ONE)).with("foot.stitches = " + foot + "; toe.points = "
                + sections + "; toe.plainMost = " + plain);
        assertEquals(rounds, Numbers.of(draft, "toe.rounds"));
    }

    /** 229.2 mm × 0.23 at 44 rounds are 23.2 rounds; eight sections with 4 plain rounds take 7 + 0 1 2 3 4 4 4 = 25. */
    @Test
    void sectionsAndPlainRoundsAreChosenTogether() {
        Draft draft = CUFF_DOWN.with(new StarToe(Increase.MAKE_ONE)).with("foot.stitches = 64; toe.points = 8");
        double four = Math.abs(25 - 0.23 * 229.2 * 0.44);
        double three = Math.abs(22 - 0.23 * 229.2 * 0.44);
        assertEquals(four < three ? 4 : 3, Numbers.of(draft, "toe.plainMost"));
    }

    /** Eight divides 64 and 72; four would too, but its sections of 16 take 29 rounds at least. */
    @Test
    void starToesOfAllSizesHaveTheSameSections() {
        List<GradedSize> sizes = starToes("foot.stitches = 64", "foot.stitches = 72").graded().sizes();
        assertEquals(8, Numbers.of(sizes.get(0), "toe.points"));
        assertEquals(8, Numbers.of(sizes.get(1), "toe.points"));
        List<GradedSize> own = starToes("foot.stitches = 64; toe.points = 4", "foot.stitches = 72").graded().sizes();
        assertEquals(4, Numbers.of(own.get(0), "toe.points"));
        assertEquals(0, 72 % Numbers.of(own.get(1), "toe.points"));
    }

    /** 63 is divided by 7 and 9, 64 by 4 and 8. */
    @Test
    void starToesThatCannotShareSectionsHaveTheirOwn() {
        List<GradedSize> sizes = starToes("foot.stitches = 63", "foot.stitches = 64").graded().sizes();
        assertEquals(0, 63 % Numbers.of(sizes.get(0), "toe.points"));
        assertEquals(0, 64 % Numbers.of(sizes.get(1), "toe.points"));
    }

    private static Draft starToes(String small, String large) {
        return Designs.withoutSizes().with(Direction.CUFF_DOWN).with(new StarToe(Increase.MAKE_ONE))
                .withSize("M", "body.footLength = 240 mm; body.footCircumference = 222 mm; " + small)
                .withSize("L", "body.footLength = 260 mm; body.footCircumference = 245 mm; " + large);
    }

    @Test
    void aStarToeAdjustsACountThatItsSectionsDoNotDivide() {
        Draft draft = CUFF_DOWN.with(new StarToe(Increase.MAKE_ONE)).with("foot.stitches = 62; toe.points = 8");
        assertEquals(56, Numbers.of(draft, "toe.sectionsFrom"));
        double toe = Numbers.of(draft, "toe.rounds");
        assertEquals((toe + 1) * 100 / 44, Numbers.of(draft, "toe.depth"), 1e-9);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"WRAPPED, 44", "TWIN, 44", "YARN_OVER, 44", "GERMAN, 45"})
    void aShortRowToeIsAHeelAtTheOtherEnd(TurnMethod turn, int rows) {
        Draft draft = CUFF_DOWN.with(new ShortRowToe(turn)).with("foot.stitches = 64");
        assertEquals(32, Numbers.of(draft, "toe.stitches"));
        assertEquals(10, Numbers.of(draft, "toe.centre"));
        assertEquals(11, Numbers.of(draft, "toe.eachSide"));
        assertEquals(rows, Numbers.of(draft, "toe.rounds"));
        assertEquals(22 * 100 / 44.0, Numbers.of(draft, "toe.depth"), 1e-9);
    }

    /**
     * 64 to 16 with the second line after 4: 4 × 2 + 10 × 4 = 48 stitches in 14 shaping rounds; those that leave 32 or more
     * are 4 (64 to 56) and 6 (56 to 32), so 10 with a plain round and 4 without: 24 rounds.
     */
    @Test
    void anAsymmetricToeShapesOneLineFirst() {
        Draft draft = CUFF_DOWN.with(new AsymmetricToe(Increase.MAKE_ONE))
                .with("foot.stitches = 64; toe.secondLineAfter = 4");
        assertEquals(10, Numbers.of(draft, "toe.alternate"));
        assertEquals(4, Numbers.of(draft, "toe.everyRound"));
        assertEquals(24, Numbers.of(draft, "toe.rounds"));
    }

    @ParameterizedTest(name = "{0} stitches, {1} held: {2} picked up")
    @CsvSource(textBlock = """
            # 2 × 32 and one at each corner are 66; the next multiple of 4 is 68
            64, 32, 68, 2
            # 2 × 33 + 2 are 68 already
            66, 33, 68, 1
            """)
    void anAfterthoughtHeelPicksUpWhatItsCapNeeds(int foot, int held, int pickUp, int corner) {
        Draft draft = CUFF_DOWN.with(new AfterthoughtHeel(AfterthoughtHeel.Cap.WEDGE))
                .with("foot.stitches = " + foot + "; heel.stitches = " + held);
        assertEquals(corner, Numbers.of(draft, "heel.corner"));
        assertEquals(pickUp, Numbers.of(draft, "heel.pickUp"));
    }

    @ParameterizedTest(name = "{0} lines: {1} picked up")
    @CsvSource(textBlock = """
            # of 32 held stitches at least 66; as many on every line, and two equal sides
            3, 66, 1
            4, 68, 2
            5, 70, 3
            6, 66, 1
            8, 72, 4
            """)
    void aRoundCapHasItsOwnLines(int lines, int pickUp, int corner) {
        Draft draft = CUFF_DOWN.with(new AfterthoughtHeel(AfterthoughtHeel.Cap.ROUND))
                .with("foot.stitches = 64; heel.points = " + lines);
        assertEquals(corner, Numbers.of(draft, "heel.corner"));
        assertEquals(pickUp, Numbers.of(draft, "heel.pickUp"));
    }

    /** 240 × 0.28 are 67 mm; a heel of 22 rounds is 50 mm, a cuff of 18 mm comes on top. Ankle height is 101 mm. */
    @Test
    void aNoShowIsAsHighAsHeelAndCuff() {
        Draft noShow = CUFF_DOWN.with(new StraightLeg(SockLength.NO_SHOW, LegCount.AS_FOOT));
        assertEquals(18, Numbers.of(noShow, "cuff.height"));
        assertEquals(68, Numbers.of(noShow, "body.legHeight"), 1e-9);
        assertEquals(0, Numbers.of(noShow, "leg.rounds"));
        Draft ankle = CUFF_DOWN.with(new StraightLeg(SockLength.ANKLE, LegCount.AS_FOOT));
        assertEquals(100.8, Numbers.of(ankle, "body.legHeight"), 1e-9);
    }

    /** 250 mm less 10 % at 32 stitches are 72; of 119 rounds 110 are below the calf. Without a knee it stays wide. */
    @Test
    void aKneeSockNarrowsToTheKnee() {
        Draft wide = CUFF_DOWN.with(new CalfLeg(SockLength.KNEE, LegCount.AS_FOOT))
                .with("foot.stitches = 64; leg.calfStitches = 80; body.calfHeight = 300 mm");
        assertEquals(0, Numbers.of(wide, "leg.decreases"));
        assertEquals(80, Numbers.of(wide, "leg.topStitches"));
        assertEquals(9, Numbers.of(wide, "leg.evenRounds"));
        Draft narrow = wide.with("body.kneeCircumference = 250 mm");
        assertEquals(72, Numbers.of(narrow, "leg.topStitches"));
        assertEquals(72, Numbers.of(narrow, "cuff.stitches"));
        assertEquals(4, Numbers.of(narrow, "leg.decreases"));
        assertEquals(9, Numbers.of(narrow, "leg.decreaseOver"));
        assertEquals(0, Numbers.of(narrow, "leg.evenRounds"));
        assertEquals(3, Numbers.of(narrow.with("leg.decreaseOver = 6"), "leg.evenRounds"));
    }

    /** From 64 to 80 are 8 pairs; the calf is 300 mm up, the heel 50 mm high: 110 rounds, of which there are enough. */
    @Test
    void aCalfIsWidenedInPairs() {
        Draft draft = CUFF_DOWN.with(new CalfLeg(SockLength.KNEE, LegCount.AS_FOOT))
                .with("foot.stitches = 64; leg.calfStitches = 80; body.calfHeight = 300 mm");
        assertEquals(8, Numbers.of(draft, "leg.increases"));
        assertEquals(110, Numbers.of(draft, "leg.increaseOver"));
        assertEquals(80, Numbers.of(draft, "cuff.stitches"));
    }

    /** 200 mm less 10 % at 32 stitches are 57.6; in whole 2×2 ribs 56, which passes over 310 mm (310 × 0.32 / 1.6 = 62): 64. */
    @Test
    void aLegFromTheAnkleStillPassesOverTheHeel() {
        Draft draft = CUFF_DOWN.with(new StraightLeg(SockLength.CREW, LegCount.FROM_ANKLE))
                .with("body.ankleCircumference = 200 mm; body.heelCircumference = 310 mm");
        assertEquals(64, Numbers.of(draft, "leg.stitches"));
        assertEquals(56, Numbers.of(draft.with("body.heelCircumference = 270 mm"), "leg.stitches"));
    }

    /** 6 + 1 on the instep: 31 are five repeats and the edge; the half of 64 is 32, so the marker moves by one. */
    @Test
    void wholeRepeatsMoveTheMarkerByAStitch() {
        Draft draft = CUFF_DOWN.with(new StitchPattern(Zone.INSTEP, 6, 1, 8, Fit.WHOLE_REPEATS, 1));
        assertEquals(64, Numbers.of(draft, "foot.stitches"));
        assertEquals(31, Numbers.of(draft, "foot.instep"));
        assertEquals(33, Numbers.of(draft, "foot.sole"));
        assertEquals(5, Numbers.of(draft, "foot.repeats"));
        assertEquals(0, Numbers.of(draft, "foot.filler"));
    }

    /** 10 + 1 with a stitch each side: two repeats are 21 of 32, and an odd panel needs an odd instep: 33, 6 a side. */
    @Test
    void aPanelIsCentredBetweenEqualStitches() {
        Draft draft = CUFF_DOWN.with(new StitchPattern(Zone.INSTEP, 10, 1, 8, Fit.CENTRED_PANEL, 1))
                .with("foot.stitches = 64");
        assertEquals(2, Numbers.of(draft, "foot.repeats"));
        assertEquals(21, Numbers.of(draft, "foot.panel"));
        assertEquals(33, Numbers.of(draft, "foot.instep"));
        assertEquals(6, Numbers.of(draft, "foot.filler"));
    }

    /** Whole repeats of 12 around the leg leave 60 or 72 near 63.9; the nearer is 60. */
    @Test
    void repeatsAroundTheLegRuleTheCount() {
        Draft draft = CUFF_DOWN.with(new StitchPattern(Zone.LEG, 12, 0, 8, Fit.WHOLE_REPEATS, 1)).with(new RibCuff(1, 1));
        assertEquals(60, Numbers.of(draft, "foot.stitches"));
        assertEquals(5, Numbers.of(draft, "leg.repeats"));
    }
}
