package turnheel.engine.shaping;

import java.util.List;

import turnheel.engine.stitch.Step;

/**
 * One round, or one row where the part is worked flat.
 *
 * @param number counted within the part from 1; 0 where patterns do not number it (cast-on, set-up, closing)
 * @param stitches loops on the needle after it, open yarn-overs included; in flat rows all loops of the part
 * @param openYarnOvers how many of them are yarn-overs that the next round closes
 */
public record Round(int number, RoundKind kind, List<Step> steps, int stitches, int openYarnOvers) {
    public Round {
        steps = List.copyOf(steps);
    }
}
