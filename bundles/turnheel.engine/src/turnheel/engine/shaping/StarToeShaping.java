package turnheel.engine.shaping;

import static turnheel.engine.shaping.Needle.steps;
import static turnheel.engine.shaping.Needle.work;

import java.util.List;

import turnheel.engine.design.Increase;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;

/**
 * A star toe, round by round: every section gains or loses a stitch, with as many plain rounds between as its stitches
 * allow. Domain § 3.
 */
final class StarToeShaping {

    private final Increase increase;
    private final int sections;
    private final int plainMost;
    private final int widest;

    StarToeShaping(Increase increase, int sections, int plainMost, int widest) {
        this.increase = increase;
        this.sections = sections;
        this.plainMost = plainMost;
        this.widest = widest;
    }

    /** Begins with one stitch a section; plain rounds follow their increase, so that it ends plain. */
    List<Round> toeUp(int foot) {
        Needle needle = new Needle(0);
        ClosedCastOn.begin(needle, sections);
        int section = Whole.share(widest, sections);
        boolean open = false;
        for (int after = 2; after <= section; after++) {
            widen(needle, after - 1, open);
            open = increase == Increase.YARN_OVER;
            int plain = Math.min(plainMost, after - 2);
            if (plain > 0 && open) {
                needle.round(RoundKind.PLAIN, repeated(steps(work(Stitch.KNIT_THROUGH_BACK), work(Stitch.KNIT, after - 1))));
                needle.plain(plain - 1);
                open = false;
            } else {
                needle.plain(plain);
            }
        }
        if (needle.stitches() != foot) {
            EvenSpread.adjust(needle, foot);
        }
        return needle.rounds();
    }

    private void widen(Needle needle, int section, boolean overOpen) {
        List<Step> steps = switch (increase) {
            case YARN_OVER -> overOpen
                    ? steps(work(Stitch.YARN_OVER), work(Stitch.KNIT_THROUGH_BACK), work(Stitch.KNIT, section - 1))
                    : steps(work(Stitch.YARN_OVER), work(Stitch.KNIT, section));
            case MAKE_ONE -> steps(work(Stitch.MAKE_ONE_LEFT), work(Stitch.KNIT, section));
            case LIFTED -> steps(work(Stitch.LIFTED_LEFT), work(Stitch.KNIT, section));
            case FRONT_AND_BACK -> steps(work(Stitch.FRONT_AND_BACK), work(Stitch.KNIT, section - 1));
        };
        needle.round(RoundKind.INCREASE, repeated(steps));
    }

    private Step repeated(List<Step> steps) {
        return new Step.Repeat(steps, sections);
    }

    /** Narrows what is on the needle to one stitch a section and draws them closed. */
    void narrow(Needle needle) {
        if (needle.stitches() != widest) {
            EvenSpread.adjust(needle, widest);
        }
        for (int section = Whole.share(widest, sections); section >= 2; section--) {
            needle.round(RoundKind.DECREASE,
                    repeated(steps(work(Stitch.KNIT, section - 2), work(Stitch.KNIT_TWO_TOGETHER))));
            needle.plain(Math.min(plainMost, section - 2));
        }
        needle.unnumbered(RoundKind.GRAFT, steps(work(Stitch.DRAW_CLOSED, sections)));
    }
}
