package turnheel.engine.shaping;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Increase;
import turnheel.engine.design.Part;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.writing.RoundText;

class WedgeToeRoundsTest {

    private static final Draft CUFF_DOWN = Designs.cuffDown64();

    @ParameterizedTest(name = "round {0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # by hand for 64 stitches: ssk after the side, k2tog before it; at 32 every round begins
            1  | *k1, ssk, k26, k2tog, k1; rep from * to end | 60
            2  | k to end                                    | 60
            15 | *k1, ssk, k12, k2tog, k1; rep from * to end | 32
            16 | k to end                                    | 32
            17 | *k1, ssk, k10, k2tog, k1; rep from * to end | 28
            20 | *k1, ssk, k4, k2tog, k1; rep from * to end  | 16
            """)
    void shrinksCuffDown(int number, String text, int stitches) {
        Round round = Parts.round(CUFF_DOWN, Part.TOE, number);
        assertEquals(text, RoundText.of(round));
        assertEquals(stitches, round.stitches());
    }

    @ParameterizedTest(name = "{0}: round {1} {2}")
    @CsvSource(delimiter = '|', textBlock = """
            # by hand for 64 stitches from 16: increase, round, text, stitches
            YARN_OVER      | 1  | *k1, yo, k6, yo, k1; rep from * to end                 | 20
            YARN_OVER      | 2  | *k1, yo, k1 tbl, k6, k1 tbl, yo, k1; rep from * to end | 24
            YARN_OVER      | 5  | *k1, k1 tbl, k12, k1 tbl, k1; rep from * to end        | 32
            YARN_OVER      | 6  | *k1, yo, k14, yo, k1; rep from * to end                | 36
            YARN_OVER      | 21 | *k1, k1 tbl, k28, k1 tbl, k1; rep from * to end        | 64
            MAKE_ONE       | 1  | *k1, m1r, k6, m1l, k1; rep from * to end               | 20
            MAKE_ONE       | 5  | k to end                                               | 32
            LIFTED         | 1  | *k1, rli, k6, lli, k1; rep from * to end               | 20
            FRONT_AND_BACK | 1  | *kfb, k5, kfb, k1; rep from * to end                   | 20
            """)
    void growsToeUp(Increase increase, int number, String text, int stitches) {
        Round round = Parts.round(CUFF_DOWN.with(Direction.TOE_UP).with(new WedgeToe(increase)), Part.TOE, number);
        assertEquals(text, RoundText.of(round));
        assertEquals(stitches, round.stitches());
    }

    @ParameterizedTest(name = "{0} at the tip: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # sides below 6 are drawn up: domain § 3
            8  | draw the yarn through the last 8 sts
            12 | graft 6 sts to 6 sts
            16 | graft 8 sts to 8 sts
            """)
    void endsCuffDownWithoutAHole(int tip, String text) {
        Round last = Parts.rounds(CUFF_DOWN.with("toe.tip = " + tip), Part.TOE).getLast();
        assertEquals(text, RoundText.of(last));
        assertEquals(0, last.stitches());
    }
}
