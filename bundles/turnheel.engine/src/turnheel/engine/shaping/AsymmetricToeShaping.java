package turnheel.engine.shaping;

import static turnheel.engine.shaping.Needle.steps;
import static turnheel.engine.shaping.Needle.work;

import java.util.ArrayList;
import java.util.List;

import turnheel.engine.design.CastOn;
import turnheel.engine.design.Increase;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;

/**
 * An asymmetric wedge, round by round, of the sock whose rounds begin at the big toe: instep, little toe, sole. The other
 * sock begins its rounds at the little toe. Domain § 3.
 */
final class AsymmetricToeShaping {

    private static final int SIDES = 2;

    private final Increase increase;
    private final int tip;
    private final int everyRound;
    private final int alternate;
    private final int alone;

    /**
     * @param alone shaping rounds next to the foot in which only the little toe's line shapes
     * @throws Whole.NotKnittable when there are fewer shaping rounds than that
     */
    AsymmetricToeShaping(Increase increase, int tip, int everyRound, int alternate, int alone) {
        this.increase = increase;
        this.tip = tip;
        this.everyRound = everyRound;
        this.alternate = alternate;
        this.alone = alone;
        if (alone > everyRound + alternate) {
            throw new Whole.NotKnittable();
        }
        Whole.share(tip, SIDES);
    }

    List<Round> toeUp(CastOn castOn) {
        Needle needle = new Needle(0);
        ClosedCastOn.begin(needle, castOn, tip);
        int together = everyRound + alternate - alone;
        for (int i = 0; i < everyRound + alternate; i++) {
            boolean bothLines = i < together;
            widen(needle, bothLines, i > 0 && i < everyRound);
            boolean plainFollows = i >= everyRound - 1;
            if (plainFollows) {
                close(needle, bothLines);
            }
        }
        return needle.rounds();
    }

    /** @param overOpen whether both lines' yarn-overs of the round before are still open; the lines only part later */
    private void widen(Needle needle, boolean bothLines, boolean overOpen) {
        int side = needle.stitches() / SIDES;
        Stitch first = first();
        Stitch last = last();
        if (increase == Increase.YARN_OVER && overOpen) {
            needle.round(RoundKind.INCREASE, reopened(side, bothLines));
            return;
        }
        if (increase == Increase.FRONT_AND_BACK) {
            needle.round(RoundKind.INCREASE, frontAndBack(side, bothLines));
            return;
        }
        needle.round(RoundKind.INCREASE, bothLines
                ? List.of(new Step.Repeat(WedgeTaperShaping.edged(first, side, last), SIDES))
                : steps(work(Stitch.KNIT, side - 1), work(last), work(Stitch.KNIT, 2), work(first),
                        work(Stitch.KNIT, side - 1)));
    }

    private static List<Step> frontAndBack(int side, boolean bothLines) {
        return bothLines
                ? List.of(new Step.Repeat(steps(work(Stitch.FRONT_AND_BACK), work(Stitch.KNIT, side - 3),
                        work(Stitch.FRONT_AND_BACK), work(Stitch.KNIT)), SIDES))
                : steps(work(Stitch.KNIT, side - 2), work(Stitch.FRONT_AND_BACK), work(Stitch.KNIT),
                        work(Stitch.FRONT_AND_BACK), work(Stitch.KNIT, side - 1));
    }

    /** New yarn-overs outside the open ones, which are closed; where the lines part, the big toe's are only closed. */
    private static List<Step> reopened(int side, boolean bothLines) {
        List<Step> steps = new ArrayList<>();
        int big = bothLines ? 1 : 0;
        steps.addAll(steps(work(Stitch.KNIT), work(Stitch.YARN_OVER, big), work(Stitch.KNIT_THROUGH_BACK),
                work(Stitch.KNIT, side - 4), work(Stitch.KNIT_THROUGH_BACK), work(Stitch.YARN_OVER),
                work(Stitch.KNIT, 2), work(Stitch.YARN_OVER), work(Stitch.KNIT_THROUGH_BACK), work(Stitch.KNIT, side - 4),
                work(Stitch.KNIT_THROUGH_BACK), work(Stitch.YARN_OVER, big), work(Stitch.KNIT)));
        return steps;
    }

    private Stitch first() {
        return switch (increase) {
            case YARN_OVER -> Stitch.YARN_OVER;
            case MAKE_ONE -> Stitch.MAKE_ONE_RIGHT;
            case LIFTED -> Stitch.LIFTED_RIGHT;
            case FRONT_AND_BACK -> Stitch.FRONT_AND_BACK;
        };
    }

    private Stitch last() {
        return switch (increase) {
            case YARN_OVER -> Stitch.YARN_OVER;
            case MAKE_ONE -> Stitch.MAKE_ONE_LEFT;
            case LIFTED -> Stitch.LIFTED_LEFT;
            case FRONT_AND_BACK -> Stitch.FRONT_AND_BACK;
        };
    }

    private void close(Needle needle, boolean bothLines) {
        if (increase != Increase.YARN_OVER) {
            needle.plain(1);
            return;
        }
        int side = needle.stitches() / SIDES;
        needle.round(RoundKind.PLAIN, bothLines
                ? List.of(new Step.Repeat(steps(work(Stitch.KNIT), work(Stitch.KNIT_THROUGH_BACK),
                        work(Stitch.KNIT, side - 4), work(Stitch.KNIT_THROUGH_BACK), work(Stitch.KNIT)), SIDES))
                : steps(work(Stitch.KNIT, side - 2), work(Stitch.KNIT_THROUGH_BACK), work(Stitch.KNIT, 2),
                        work(Stitch.KNIT_THROUGH_BACK), work(Stitch.KNIT, side - 2)));
    }

    /** Narrows what is on the needle to the tip and closes it. */
    void narrow(Needle needle) {
        Whole.share(needle.stitches(), SIDES);
        for (int i = 0; i < everyRound + alternate; i++) {
            if (i < alone) {
                int side = needle.stitches() / SIDES;
                needle.round(RoundKind.DECREASE, steps(work(Stitch.KNIT, side - 3), work(Stitch.KNIT_TWO_TOGETHER),
                        work(Stitch.KNIT, 2), work(Stitch.SLIP_SLIP_KNIT), work(Stitch.KNIT, side - 3)));
            } else {
                WedgeTaperShaping.decrease(needle);
            }
            if (i < alternate) {
                needle.plain(1);
            }
        }
        WedgeTaperShaping.closeTip(needle);
    }
}
