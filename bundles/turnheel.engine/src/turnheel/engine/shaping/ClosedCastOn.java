package turnheel.engine.shaping;

import static turnheel.engine.shaping.Needle.steps;
import static turnheel.engine.shaping.Needle.work;

import turnheel.engine.stitch.Stitch;

/** How a toe-up sock begins: a cast-on that is closed below, and the round on which its stitches are first worked. */
final class ClosedCastOn {

    private ClosedCastOn() {
    }

    static void begin(Needle needle, int stitches) {
        needle.unnumbered(RoundKind.CAST_ON, steps(work(Stitch.CAST_ON, stitches)));
        needle.unnumbered(RoundKind.SET_UP, steps(work(Stitch.KNIT, stitches)));
    }
}
