package turnheel.engine.shaping;

import static turnheel.engine.shaping.Needle.steps;
import static turnheel.engine.shaping.Needle.work;
import static turnheel.engine.stitch.Stitch.FRONT_AND_BACK;
import static turnheel.engine.stitch.Stitch.KNIT;
import static turnheel.engine.stitch.Stitch.KNIT_THROUGH_BACK;
import static turnheel.engine.stitch.Stitch.KNIT_TWO_TOGETHER;
import static turnheel.engine.stitch.Stitch.LIFTED_LEFT;
import static turnheel.engine.stitch.Stitch.MAKE_ONE_LEFT;
import static turnheel.engine.stitch.Stitch.YARN_OVER;

import java.util.List;

import turnheel.engine.design.Increase;
import turnheel.engine.stitch.Step;

/** A round of equal sections that each gain or lose one stitch in a shaping round, as in round and star toes. */
record Sections(Increase increase, int count) {

    /** @param overOpen whether the round before left open yarn-overs, which this one closes after its new ones */
    void widen(Needle needle, boolean overOpen) {
        int section = needle.stitches() / count;
        round(needle, RoundKind.INCREASE, switch (increase) {
            case YARN_OVER -> overOpen ? steps(work(YARN_OVER), work(KNIT_THROUGH_BACK), work(KNIT, section - 1))
                    : steps(work(YARN_OVER), work(KNIT, section));
            case MAKE_ONE -> steps(work(MAKE_ONE_LEFT), work(KNIT, section));
            case LIFTED -> steps(work(LIFTED_LEFT), work(KNIT, section));
            case FRONT_AND_BACK -> steps(work(FRONT_AND_BACK), work(KNIT, section - 1));
        });
    }

    /** The plain round after a shaping round; it closes yarn-overs where there are any. */
    void close(Needle needle) {
        if (increase == Increase.YARN_OVER) {
            int section = needle.stitches() / count;
            round(needle, RoundKind.PLAIN, steps(work(KNIT_THROUGH_BACK), work(KNIT, section - 1)));
        } else {
            needle.plain(1);
        }
    }

    void narrow(Needle needle) {
        int section = needle.stitches() / count;
        round(needle, RoundKind.DECREASE, steps(work(KNIT, section - 2), work(KNIT_TWO_TOGETHER)));
    }

    private void round(Needle needle, RoundKind kind, List<Step> steps) {
        needle.round(kind, new Step.Repeat(steps, count));
    }
}
