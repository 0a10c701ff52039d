package turnheel.engine.shaping;

import static turnheel.engine.shaping.Needle.steps;
import static turnheel.engine.shaping.Needle.work;
import static turnheel.engine.stitch.Stitch.FRONT_AND_BACK;
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

import turnheel.engine.design.Increase;
import turnheel.engine.design.Lean;
import turnheel.engine.stitch.Step;

/** A round of equal sections that each gain or lose one stitch in a shaping round, as in round and star toes. */
record Sections(Increase increase, Lean lean, int count) {

    /** @param overOpen whether the round before left open yarn-overs, which this one closes beside its new ones */
    void widen(Needle needle, boolean overOpen) {
        int section = needle.stitches() / count;
        round(needle, RoundKind.INCREASE, switch (lean) {
            case RIGHT -> widenAtBeginning(section, overOpen);
            case LEFT -> widenAtEnd(section, overOpen);
        });
    }

    private List<Step> widenAtBeginning(int section, boolean overOpen) {
        return switch (increase) {
            case YARN_OVER -> overOpen ? steps(work(YARN_OVER), work(KNIT_THROUGH_BACK), work(KNIT, section - 1))
                    : steps(work(YARN_OVER), work(KNIT, section));
            case MAKE_ONE -> steps(work(MAKE_ONE_LEFT), work(KNIT, section));
            case LIFTED -> steps(work(LIFTED_LEFT), work(KNIT, section));
            case FRONT_AND_BACK -> steps(work(FRONT_AND_BACK), work(KNIT, section - 1));
        };
    }

    private List<Step> widenAtEnd(int section, boolean overOpen) {
        return switch (increase) {
            case YARN_OVER -> overOpen ? steps(work(KNIT, section - 1), work(KNIT_THROUGH_BACK), work(YARN_OVER))
                    : steps(work(KNIT, section), work(YARN_OVER));
            case MAKE_ONE -> steps(work(KNIT, section), work(MAKE_ONE_RIGHT));
            case LIFTED -> steps(work(KNIT, section), work(LIFTED_RIGHT));
            // the new stitch lies after the one it is made in, so one more is left to mirror it; one alone has no side
            case FRONT_AND_BACK -> section == 1 ? steps(work(FRONT_AND_BACK))
                    : steps(work(KNIT, section - 2), work(FRONT_AND_BACK), work(KNIT));
        };
    }

    /** The plain round after a shaping round; it closes yarn-overs where there are any. */
    void close(Needle needle) {
        if (increase == Increase.YARN_OVER) {
            int others = needle.stitches() / count - 1;
            round(needle, RoundKind.PLAIN, switch (lean) {
                case RIGHT -> steps(work(KNIT_THROUGH_BACK), work(KNIT, others));
                case LEFT -> steps(work(KNIT, others), work(KNIT_THROUGH_BACK));
            });
        } else {
            needle.plain(1);
        }
    }

    void narrow(Needle needle) {
        int others = needle.stitches() / count - 2;
        round(needle, RoundKind.DECREASE, switch (lean) {
            case RIGHT -> steps(work(KNIT, others), work(KNIT_TWO_TOGETHER));
            case LEFT -> steps(work(SLIP_SLIP_KNIT), work(KNIT, others));
        });
    }

    private void round(Needle needle, RoundKind kind, List<Step> steps) {
        needle.round(kind, new Step.Repeat(steps, count));
    }
}
