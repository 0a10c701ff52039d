package turnheel.engine.shaping;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.design.CastOn;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Increase;
import turnheel.engine.design.Lean;
import turnheel.engine.design.Part;
import turnheel.engine.design.RoundToe;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.Numbers;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;
import turnheel.engine.writing.RoundText;

class RoundToeRoundsTest {

    private static final Draft TOE_UP = Designs.toeUp64();
    private static final Draft CUFF_DOWN = TOE_UP.with(Direction.CUFF_DOWN);

    @ParameterizedTest(name = "round {0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # round, text, stitches, open yarn-overs: domain § 3, written out by hand for 64 stitches
            1  | *yo, k2; rep from * to end          | 12 | 4
            2  | *yo, k1 tbl, k2; rep from * to end  | 16 | 4
            3  | *yo, k1 tbl, k3; rep from * to end  | 20 | 4
            4  | *k1 tbl, k4; rep from * to end      | 20 | 0
            5  | *yo, k5; rep from * to end          | 24 | 4
            6  | *k1 tbl, k5; rep from * to end      | 24 | 0
            25 | *yo, k15; rep from * to end         | 64 | 4
            26 | *k1 tbl, k15; rep from * to end     | 64 | 0
            """)
    void growsByYarnOversThatAreClosedOneRoundLater(int number, String text, int stitches, int open) {
        Round round = Parts.round(TOE_UP, Part.TOE, number);
        assertEquals(text, RoundText.of(round));
        assertEquals(stitches, round.stitches());
        assertEquals(open, round.openYarnOvers());
    }

    @Test
    void beginsWithACastOnAndTheRoundThatFirstWorksIt() {
        List<Round> rounds = Parts.rounds(TOE_UP, Part.TOE);
        assertEquals(List.of("cast on 8 sts: 8", "k to end: 8"), Parts.inWords(rounds.subList(0, 2)));
        assertEquals(List.of(RoundKind.CAST_ON, RoundKind.SET_UP), rounds.subList(0, 2).stream().map(Round::kind)
                .toList());
        assertEquals(List.of(0, 0, 1), rounds.subList(0, 3).stream().map(Round::number).toList());
    }

    @ParameterizedTest(name = "{0}: {1}, {2}, {3}")
    @CsvSource(delimiter = '|', textBlock = """
            # increase     | round 1  | round 2  | round 5
            MAKE_ONE       | m1l, k2  | m1l, k3  | m1l, k5
            LIFTED         | lli, k2  | lli, k3  | lli, k5
            FRONT_AND_BACK | kfb, k1  | kfb, k2  | kfb, k4
            """)
    void growsByOtherIncreasesThatNeedNoClosing(Increase increase, String first, String second, String fifth) {
        Draft draft = TOE_UP.with(new RoundToe(4, increase));
        assertEquals("*%s; rep from * to end".formatted(first), RoundText.of(Parts.round(draft, Part.TOE, 1)));
        assertEquals("*%s; rep from * to end".formatted(second), RoundText.of(Parts.round(draft, Part.TOE, 2)));
        assertEquals("k to end", RoundText.of(Parts.round(draft, Part.TOE, 4)));
        assertEquals("*%s; rep from * to end".formatted(fifth), RoundText.of(Parts.round(draft, Part.TOE, 5)));
    }

    @ParameterizedTest(name = "{0}, round {1}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            # mirror images, by hand: domain § 3, "k s, yo"
            YARN_OVER      | 1 | k2, yo
            YARN_OVER      | 2 | k2, k1 tbl, yo
            YARN_OVER      | 3 | k3, k1 tbl, yo
            YARN_OVER      | 4 | k4, k1 tbl
            YARN_OVER      | 5 | k5, yo
            MAKE_ONE       | 1 | k2, m1r
            LIFTED         | 2 | k3, rli
            FRONT_AND_BACK | 1 | kfb, k1
            FRONT_AND_BACK | 2 | k1, kfb, k1
            """)
    void mayLeanTheOtherWay(Increase increase, int number, String text) {
        Draft draft = TOE_UP.with(new RoundToe(4, increase, CastOn.UNWORKED, Lean.LEFT));
        assertEquals("*%s; rep from * to end".formatted(text), RoundText.of(Parts.round(draft, Part.TOE, number)));
    }

    @Test
    void leansLeftCuffDownBySlipSlipKnits() {
        Draft draft = CUFF_DOWN.with(new RoundToe(4, Increase.YARN_OVER, CastOn.UNWORKED, Lean.LEFT));
        assertEquals("*ssk, k14; rep from * to end", RoundText.of(Parts.round(draft, Part.TOE, 1)));
        assertEquals("*ssk, k1; rep from * to end", RoundText.of(Parts.round(draft, Part.TOE, 25)));
    }

    /** Half of the eight is worked by the cast-on; the round that completes it is none of its own. */
    @Test
    void mayBeginWithACastOnOfWhichHalfIsWorked() {
        Draft draft = TOE_UP.with(new RoundToe(4, Increase.YARN_OVER, CastOn.HALF_WORKED, Lean.RIGHT));
        List<Round> rounds = Parts.rounds(draft, Part.TOE);
        assertEquals(List.of(RoundKind.CAST_ON, RoundKind.SET_UP, RoundKind.INCREASE), rounds.subList(0, 3).stream()
                .map(Round::kind).toList());
        assertEquals(List.of(new Step.Work(Stitch.KNIT, 4)), rounds.get(1).steps());
        assertEquals(8, rounds.get(1).stitches());
        // 26 rounds lie along the foot, one less than beside a set-up round
        assertEquals(2600 / 44.0, Numbers.of(draft, "toe.depth"), 1e-9);
        assertEquals(2700 / 44.0, Numbers.of(TOE_UP, "toe.depth"), 1e-9);
    }

    @Test
    void hasAsManyPlainRoundsAsItsLinesAskFor() {
        // 6 lines on 66: from 6, turn at 24, two plain rounds, one of which closes the yarn-overs
        Draft draft = TOE_UP.with(new RoundToe(6, Increase.YARN_OVER)).with("foot.stitches = 66");
        assertEquals(List.of("*yo, k4; rep from * to end: 30", "*k1 tbl, k4; rep from * to end: 30", "k to end: 30",
                "*yo, k5; rep from * to end: 36"),
                Parts.inWords(List.of(Parts.round(draft, Part.TOE, 5), Parts.round(draft, Part.TOE, 6),
                        Parts.round(draft, Part.TOE, 7), Parts.round(draft, Part.TOE, 8))));
    }

    @ParameterizedTest(name = "round {0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # by hand for 64 stitches
            1  | *k14, k2tog; rep from * to end | 60
            2  | k to end                       | 60
            21 | *k4, k2tog; rep from * to end  | 20
            22 | k to end                       | 20
            23 | *k3, k2tog; rep from * to end  | 16
            25 | *k1, k2tog; rep from * to end  | 8
            """)
    void shrinksCuffDown(int number, String text, int stitches) {
        Round round = Parts.round(CUFF_DOWN, Part.TOE, number);
        assertEquals(text, RoundText.of(round));
        assertEquals(stitches, round.stitches());
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # so few are drawn closed, more are grafted half to half: domain § 3
            toe.castOn = 4  | draw the yarn through the last 4 sts
            toe.castOn = 8  | draw the yarn through the last 8 sts
            toe.castOn = 12 | graft 6 sts to 6 sts
            """)
    void endsCuffDownWithoutAHole(String override, String text) {
        Round last = Parts.rounds(CUFF_DOWN.with(override), Part.TOE).getLast();
        assertEquals(text, RoundText.of(last));
        assertEquals(RoundKind.GRAFT, last.kind());
        assertEquals(0, last.stitches());
    }
}
