package turnheel.engine.writing;

import java.util.List;

import turnheel.engine.stitch.Stitch;

/** A spiral of shaping lines: a round toe, or the round cap of an afterthought heel. */
final class RoundTaperWriting {

    /** So few stitches are drawn closed with the yarn's end; more are grafted. */
    private static final int MOST_DRAWN_CLOSED = 8;

    private final SectionsWriting sections;
    private final EachSize everyRound;
    private final EachSize alternate;
    private final EachSize plainBetween;
    private final Names names;

    RoundTaperWriting(SectionsWriting sections, EachSize everyRound, EachSize alternate, EachSize plainBetween,
            Names names) {
        this.sections = sections;
        this.everyRound = everyRound;
        this.alternate = alternate;
        this.plainBetween = plainBetween;
        this.names = names;
    }

    /** From a cast-on whose markers are placed. */
    void widen(Passage passage) {
        sections.widenEveryRound(passage, everyRound, names);
        sections.widenSpaced(passage, alternate, plainBetween, names);
    }

    /** Down to the tip, with markers placed. */
    void narrow(Passage passage) {
        EachSize fewer = sections.sections().times(-1);
        Passage some = passage.only(alternate.plus(everyRound).atLeast(1));
        some.named(names.decrease(), fewer, sections.narrow());
        Passage spaced = passage.only(alternate.atLeast(1));
        spaced.even(plainBetween, false);
        spaced.againLast(plainBetween.plus(1), alternate.minus(1), fewer);
        // the first shaping round of a size without spaced ones is one of those that follow each other
        EachSize more = everyRound.with(alternate, (every, apart) -> apart > 0 ? every : every - 1);
        some.again(List.of(names.decrease()), more, more.times(fewer));
    }

    /** Draws few stitches closed and grafts many. */
    static void close(Passage passage) {
        EachSize tip = passage.stitches();
        draw(passage.only(tip.where(stitches -> stitches <= MOST_DRAWN_CLOSED)));
        graft(passage.only(tip.where(stitches -> stitches > MOST_DRAWN_CLOSED)));
    }

    static void draw(Passage passage) {
        passage.gone(Doing.work(Stitch.DRAW_CLOSED, passage.stitches()));
    }

    static void graft(Passage passage) {
        passage.gone(Doing.work(Stitch.GRAFT, passage.stitches().half()));
    }
}
