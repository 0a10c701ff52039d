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
import static turnheel.engine.stitch.Stitch.LIFTED_RIGHT;
import static turnheel.engine.stitch.Stitch.MAKE_ONE_LEFT;
import static turnheel.engine.stitch.Stitch.MAKE_ONE_RIGHT;
import static turnheel.engine.stitch.Stitch.SLIP_SLIP_KNIT;
import static turnheel.engine.stitch.Stitch.YARN_OVER;

import java.util.List;

import turnheel.engine.design.CastOn;
import turnheel.engine.design.Increase;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;

/** Two side lines, round by round, from the side of the foot: a wedge toe, or the cap of an afterthought heel. */
final class WedgeTaperShaping {

    private static final int SIDES = 2;
    /** A side as narrow as this is drawn up, not grafted. */
    private static final int NARROWEST_GRAFT = 6;

    private final Increase increase;
    private final int tip;
    private final int everyRound;
    private final int alternate;

    /** @throws Whole.NotKnittable when the tip has no halves */
    WedgeTaperShaping(Increase increase, int tip, int everyRound, int alternate) {
        this.increase = increase;
        this.tip = tip;
        this.everyRound = everyRound;
        this.alternate = alternate;
        Whole.share(tip, SIDES);
    }

    List<Round> toeUp(CastOn castOn) {
        Needle needle = new Needle(0);
        ClosedCastOn.begin(needle, castOn, tip);
        for (int i = 0; i < everyRound; i++) {
            widen(needle, i > 0);
        }
        if (everyRound > 0) {
            close(needle);
        }
        for (int i = 0; i < alternate; i++) {
            widen(needle, false);
            close(needle);
        }
        return needle.rounds();
    }

    /** @param overOpen whether the round before left open yarn-overs, which this one closes inside its new ones */
    private void widen(Needle needle, boolean overOpen) {
        int side = needle.stitches() / SIDES;
        List<Step> steps = switch (increase) {
            case YARN_OVER -> overOpen
                    ? steps(work(KNIT), work(YARN_OVER), work(KNIT_THROUGH_BACK), work(KNIT, side - 4),
                            work(KNIT_THROUGH_BACK), work(YARN_OVER), work(KNIT))
                    : edged(YARN_OVER, side, YARN_OVER);
            case MAKE_ONE -> edged(MAKE_ONE_RIGHT, side, MAKE_ONE_LEFT);
            case LIFTED -> edged(LIFTED_RIGHT, side, LIFTED_LEFT);
            // the new stitch lies after the one it is made in, so the second is made one stitch earlier
            case FRONT_AND_BACK -> steps(work(FRONT_AND_BACK), work(KNIT, side - 3), work(FRONT_AND_BACK), work(KNIT));
        };
        needle.round(RoundKind.INCREASE, new Step.Repeat(steps, SIDES));
    }

    static List<Step> edged(Stitch first, int side, Stitch last) {
        return steps(work(KNIT), work(first), work(KNIT, side - 2), work(last), work(KNIT));
    }

    private void close(Needle needle) {
        if (increase == Increase.YARN_OVER) {
            int side = needle.stitches() / SIDES;
            needle.round(RoundKind.PLAIN, new Step.Repeat(steps(work(KNIT), work(KNIT_THROUGH_BACK),
                    work(KNIT, side - 4), work(KNIT_THROUGH_BACK), work(KNIT)), SIDES));
        } else {
            needle.plain(1);
        }
    }

    /** Narrows what is on the needle to the tip and closes it. */
    void narrow(Needle needle) {
        Whole.share(needle.stitches(), SIDES);
        for (int i = 0; i < alternate; i++) {
            decrease(needle);
            needle.plain(1);
        }
        for (int i = 0; i < everyRound; i++) {
            decrease(needle);
        }
        closeTip(needle);
    }

    /** Grafts side to side, or draws a tip closed that is too narrow for it. */
    static void closeTip(Needle needle) {
        int side = Whole.share(needle.stitches(), SIDES);
        needle.unnumbered(RoundKind.GRAFT,
                side < NARROWEST_GRAFT ? steps(work(DRAW_CLOSED, needle.stitches())) : steps(work(GRAFT, side)));
    }

    /** Lines lean towards each other: ssk after the side, k2tog before it. */
    static void decrease(Needle needle) {
        int side = needle.stitches() / SIDES;
        needle.round(RoundKind.DECREASE, new Step.Repeat(steps(work(KNIT), work(SLIP_SLIP_KNIT), work(KNIT, side - 6),
                work(KNIT_TWO_TOGETHER), work(KNIT)), SIDES));
    }
}
