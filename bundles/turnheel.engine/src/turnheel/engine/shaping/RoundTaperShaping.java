package turnheel.engine.shaping;

import static turnheel.engine.shaping.Needle.steps;
import static turnheel.engine.shaping.Needle.work;
import static turnheel.engine.stitch.Stitch.DRAW_CLOSED;
import static turnheel.engine.stitch.Stitch.GRAFT;

import java.util.List;

import turnheel.engine.design.CastOn;

/** A spiral of shaping lines, round by round: a round toe, or the cap of an afterthought heel. Domain § 3. */
final class RoundTaperShaping {

    /** So few stitches are drawn closed with the yarn's end; more are grafted. */
    private static final int MOST_DRAWN_CLOSED = 8;

    private final Sections sections;
    private final int tip;
    private final int everyRound;
    private final int alternate;
    private final int plainBetween;

    /** @throws Whole.NotKnittable when the tip does not divide into the lines */
    RoundTaperShaping(Sections sections, int tip, int everyRound, int alternate, int plainBetween) {
        this.sections = sections;
        this.tip = tip;
        this.everyRound = everyRound;
        this.alternate = alternate;
        this.plainBetween = plainBetween;
        Whole.share(tip, sections.count());
    }

    List<Round> toeUp(CastOn castOn) {
        Needle needle = new Needle(0);
        ClosedCastOn.begin(needle, castOn, tip);
        for (int i = 0; i < everyRound; i++) {
            sections.widen(needle, i > 0);
        }
        if (everyRound > 0) {
            sections.close(needle);
        }
        for (int i = 0; i < alternate; i++) {
            sections.widen(needle, false);
            sections.close(needle);
            needle.plain(plainBetween - 1);
        }
        return needle.rounds();
    }

    /** Narrows what is on the needle to the tip and closes it. */
    void narrow(Needle needle) {
        Whole.share(needle.stitches(), sections.count());
        for (int i = 0; i < alternate; i++) {
            sections.narrow(needle);
            needle.plain(plainBetween);
        }
        for (int i = 0; i < everyRound; i++) {
            sections.narrow(needle);
        }
        if (tip <= MOST_DRAWN_CLOSED) {
            needle.unnumbered(RoundKind.GRAFT, steps(work(DRAW_CLOSED, tip)));
        } else {
            needle.unnumbered(RoundKind.GRAFT, steps(work(GRAFT, Whole.share(tip, 2))));
        }
    }
}
