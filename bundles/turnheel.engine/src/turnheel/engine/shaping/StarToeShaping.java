package turnheel.engine.shaping;

import static turnheel.engine.shaping.Needle.steps;
import static turnheel.engine.shaping.Needle.work;

import java.util.List;

import turnheel.engine.design.CastOn;
import turnheel.engine.stitch.Stitch;

/**
 * A star toe, round by round: every section gains or loses a stitch, with as many plain rounds between as its stitches
 * allow. Domain § 3.
 */
final class StarToeShaping {

    private final Sections sections;
    private final int plainMost;
    private final int widest;

    StarToeShaping(Sections sections, int plainMost, int widest) {
        this.sections = sections;
        this.plainMost = plainMost;
        this.widest = widest;
    }

    /** Begins with one stitch a section; plain rounds follow their increase, so that it ends plain. */
    List<Round> toeUp(CastOn castOn, int foot) {
        Needle needle = new Needle(0);
        ClosedCastOn.begin(needle, castOn, sections.count());
        int section = Whole.share(widest, sections.count());
        for (int after = 2; after <= section; after++) {
            // only the first increase has no plain round after it
            sections.widen(needle, after == 3);
            int plain = Math.min(plainMost, after - 2);
            if (plain > 0) {
                sections.close(needle);
                needle.plain(plain - 1);
            }
        }
        EvenSpread.adjust(needle, foot);
        return needle.rounds();
    }

    /** Narrows what is on the needle to one stitch a section and draws them closed. */
    void narrow(Needle needle) {
        EvenSpread.adjust(needle, widest);
        for (int section = Whole.share(widest, sections.count()); section >= 2; section--) {
            sections.narrow(needle);
            needle.plain(Math.min(plainMost, section - 2));
        }
        needle.unnumbered(RoundKind.GRAFT, steps(work(Stitch.DRAW_CLOSED, sections.count())));
    }
}
