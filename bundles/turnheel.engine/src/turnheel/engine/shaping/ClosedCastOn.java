package turnheel.engine.shaping;

import static turnheel.engine.shaping.Needle.steps;
import static turnheel.engine.shaping.Needle.work;

import turnheel.engine.design.CastOn;
import turnheel.engine.stitch.Stitch;

/**
 * How a toe-up sock begins: a cast-on that is closed below, and the round on which its stitches are first worked, or
 * the half of it that the cast-on left to be worked.
 */
final class ClosedCastOn {

    private ClosedCastOn() {
    }

    /** @throws Whole.NotKnittable when half of the stitches are worked and there is no half */
    static void begin(Needle needle, CastOn castOn, int stitches) {
        needle.unnumbered(RoundKind.CAST_ON, steps(work(Stitch.CAST_ON, stitches)));
        needle.unnumbered(RoundKind.SET_UP, steps(work(Stitch.KNIT, switch (castOn) {
            case UNWORKED -> stitches;
            case HALF_WORKED -> Whole.share(stitches, 2);
        })));
    }
}
