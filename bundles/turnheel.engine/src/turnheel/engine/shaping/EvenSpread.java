package turnheel.engine.shaping;

import java.util.ArrayList;
import java.util.List;

import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;

/**
 * One round that changes a count by spreading increases or decreases evenly: gaps of {@code floor(n/d)} and
 * {@code ceil(n/d)}, the first half a gap in (domain § 8).
 */
final class EvenSpread {

    private EvenSpread() {
    }

    /**
     * The adjusting round from one count to another; the two differ.
     *
     * @throws Whole.NotKnittable when more than every second stitch would have to go, or more than one would have to be made
     *     from a strand
     */
    static void adjust(Needle needle, int to) {
        int from = needle.stitches();
        boolean grows = to > from;
        int changes = Math.abs(to - from);
        if (grows ? from < changes : from < 2 * changes) {
            throw new Whole.NotKnittable();
        }
        needle.unnumbered(grows ? RoundKind.INCREASE : RoundKind.DECREASE, steps(from, changes, grows));
    }

    private static List<Step> steps(int stitches, int changes, boolean grows) {
        List<Needle.Worked> worked = new ArrayList<>();
        int lead = Math.max(stitches / changes / 2, grows ? 1 : 2);
        int done = 0;
        for (int i = 0; i < changes; i++) {
            int upTo = lead + (int) ((long) i * stitches / changes);
            // a decrease is worked on the last two stitches of its gap
            worked.add(Needle.work(Stitch.KNIT, upTo - done - (grows ? 0 : 2)));
            worked.add(Needle.work(grows ? Stitch.MAKE_ONE_LEFT : Stitch.KNIT_TWO_TOGETHER));
            done = upTo;
        }
        worked.add(Needle.work(Stitch.KNIT, stitches - done));
        return Needle.steps(worked.toArray(Needle.Worked[]::new));
    }
}
