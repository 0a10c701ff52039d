package turnheel.engine.shaping;

import static turnheel.engine.shaping.Needle.steps;
import static turnheel.engine.shaping.Needle.work;
import static turnheel.engine.stitch.Stitch.DRAW_CLOSED;
import static turnheel.engine.stitch.Stitch.FRONT_AND_BACK;
import static turnheel.engine.stitch.Stitch.GRAFT;
import static turnheel.engine.stitch.Stitch.KNIT;
import static turnheel.engine.stitch.Stitch.KNIT_THROUGH_BACK;
import static turnheel.engine.stitch.Stitch.KNIT_TWO_TOGETHER;
import static turnheel.engine.stitch.Stitch.LIFTED_LEFT;
import static turnheel.engine.stitch.Stitch.MAKE_ONE_LEFT;
import static turnheel.engine.stitch.Stitch.YARN_OVER;

import java.util.List;

import turnheel.engine.design.Increase;
import turnheel.engine.stitch.Step;

/** A spiral of shaping lines, round by round: a round toe, or the cap of an afterthought heel. Domain § 3. */
final class RoundTaperShaping {

    /** So few stitches are drawn closed with the yarn's end; more are grafted. */
    private static final int MOST_DRAWN_CLOSED = 8;

    private final Increase increase;
    private final int lines;
    private final int castOn;
    private final int everyRound;
    private final int alternate;
    private final int plainBetween;

    /** @throws Whole.NotKnittable when the tip does not divide into the lines */
    RoundTaperShaping(Increase increase, int lines, int castOn, int everyRound, int alternate, int plainBetween) {
        this.increase = increase;
        this.lines = lines;
        this.castOn = castOn;
        this.everyRound = everyRound;
        this.alternate = alternate;
        this.plainBetween = plainBetween;
        Whole.share(castOn, lines);
    }

    List<Round> toeUp() {
        Needle needle = new Needle(0);
        ClosedCastOn.begin(needle, castOn);
        for (int i = 0; i < everyRound; i++) {
            widen(needle, i > 0);
        }
        if (everyRound > 0) {
            close(needle);
        }
        for (int i = 0; i < alternate; i++) {
            widen(needle, false);
            close(needle);
            needle.plain(plainBetween - 1);
        }
        return needle.rounds();
    }

    /** @param overOpen whether the round before left open yarn-overs, which this one closes after its new ones */
    private void widen(Needle needle, boolean overOpen) {
        int section = needle.stitches() / lines;
        List<Step> steps = switch (increase) {
            case YARN_OVER -> overOpen ? steps(work(YARN_OVER), work(KNIT_THROUGH_BACK), work(KNIT, section - 1))
                    : steps(work(YARN_OVER), work(KNIT, section));
            case MAKE_ONE -> steps(work(MAKE_ONE_LEFT), work(KNIT, section));
            case LIFTED -> steps(work(LIFTED_LEFT), work(KNIT, section));
            case FRONT_AND_BACK -> steps(work(FRONT_AND_BACK), work(KNIT, section - 1));
        };
        needle.round(RoundKind.INCREASE, new Step.Repeat(steps, lines));
    }

    private void close(Needle needle) {
        if (increase == Increase.YARN_OVER) {
            int section = needle.stitches() / lines;
            needle.round(RoundKind.PLAIN,
                    new Step.Repeat(steps(work(KNIT_THROUGH_BACK), work(KNIT, section - 1)), lines));
        } else {
            needle.plain(1);
        }
    }

    /** Narrows what is on the needle to the tip and closes it. */
    void narrow(Needle needle) {
        Whole.share(needle.stitches(), lines);
        for (int i = 0; i < alternate; i++) {
            decrease(needle);
            needle.plain(plainBetween);
        }
        for (int i = 0; i < everyRound; i++) {
            decrease(needle);
        }
        if (castOn <= MOST_DRAWN_CLOSED) {
            needle.unnumbered(RoundKind.GRAFT, steps(work(DRAW_CLOSED, castOn)));
        } else {
            needle.unnumbered(RoundKind.GRAFT, steps(work(GRAFT, Whole.share(castOn, 2))));
        }
    }

    private void decrease(Needle needle) {
        int section = needle.stitches() / lines;
        needle.round(RoundKind.DECREASE,
                new Step.Repeat(steps(work(KNIT, section - 2), work(KNIT_TWO_TOGETHER)), lines));
    }
}
