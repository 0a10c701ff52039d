package turnheel.engine.writing;

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
import static turnheel.engine.writing.Doing.repeated;
import static turnheel.engine.writing.Doing.slipMarker;
import static turnheel.engine.writing.Doing.toMarker;
import static turnheel.engine.writing.Doing.work;

import java.util.List;

import turnheel.engine.design.Increase;
import turnheel.engine.instruction.Line.Fabric;
import turnheel.engine.stitch.Stitch;

/** Two side lines, a marker after each half: a wedge toe, or the wedge cap of an afterthought heel. */
final class WedgeWriting {

    private static final int EACH_ROUND = 4;
    /** A tip with sides as narrow as this is drawn up, not grafted. */
    private static final int NARROWEST_GRAFT = 6;

    private final Increase increase;
    private final EachSize everyRound;
    private final EachSize alternate;
    private final Names names;

    WedgeWriting(Increase increase, EachSize everyRound, EachSize alternate, Names names) {
        this.increase = increase;
        this.everyRound = everyRound;
        this.alternate = alternate;
        this.names = names;
    }

    void widen(Passage passage) {
        Passage some = passage.only(everyRound.atLeast(1));
        int first = some.round(EACH_ROUND, widen(increase));
        if (increase == Increase.YARN_OVER) {
            Passage more = passage.only(everyRound.atLeast(2));
            int second = more.round(EACH_ROUND, widenOverOpen());
            more.again(Fabric.ROUND, second, second, everyRound.minus(2), EACH_ROUND);
        } else {
            some.again(Fabric.ROUND, first, first, everyRound.minus(1), EACH_ROUND);
        }
        close(some);
        Passage spaced = passage.only(alternate.atLeast(1));
        spaced.named(names.increase(), EACH_ROUND, widen(increase));
        close(spaced);
        EachSize more = alternate.minus(1);
        if (increase == Increase.YARN_OVER) {
            spaced.again(List.of(names.increase(), names.closing()), more, more.times(EACH_ROUND));
        } else {
            spaced.againLast(more.map(times -> 2), more, more.map(times -> EACH_ROUND));
        }
    }

    private void close(Passage passage) {
        if (increase == Increase.YARN_OVER) {
            passage.named(names.closing(), 0, close());
        } else {
            passage.even(alternate.map(times -> 1), false);
        }
    }

    /** A half between two markers, widened beside its edge stitches. */
    static Doing widen(Increase increase) {
        return switch (increase) {
            case YARN_OVER -> edged(YARN_OVER, YARN_OVER);
            case MAKE_ONE -> edged(MAKE_ONE_RIGHT, MAKE_ONE_LEFT);
            case LIFTED -> edged(LIFTED_RIGHT, LIFTED_LEFT);
            case FRONT_AND_BACK -> repeated(work(FRONT_AND_BACK), toMarker(KNIT, 2), work(FRONT_AND_BACK), work(KNIT),
                    slipMarker());
        };
    }

    private static Doing edged(Stitch first, Stitch last) {
        return repeated(work(KNIT), work(first), toMarker(KNIT, 1), work(last), work(KNIT), slipMarker());
    }

    /** New yarn-overs outside the open ones, which are closed. */
    static Doing widenOverOpen() {
        return repeated(work(KNIT), work(YARN_OVER), work(KNIT_THROUGH_BACK), toMarker(KNIT, 2), work(KNIT_THROUGH_BACK),
                work(YARN_OVER), work(KNIT), slipMarker());
    }

    static Doing close() {
        return repeated(work(KNIT), work(KNIT_THROUGH_BACK), toMarker(KNIT, 2), work(KNIT_THROUGH_BACK), work(KNIT),
                slipMarker());
    }

    static Doing narrow() {
        return repeated(work(KNIT), work(SLIP_SLIP_KNIT), toMarker(KNIT, 3), work(KNIT_TWO_TOGETHER), work(KNIT),
                slipMarker());
    }

    void narrow(Passage passage) {
        Passage some = passage.only(alternate.plus(everyRound).atLeast(1));
        int shaped = some.round(-EACH_ROUND, narrow());
        Passage spaced = passage.only(alternate.atLeast(1));
        int plain = spaced.round(0, Doing.toEnd(KNIT));
        spaced.again(Fabric.ROUND, shaped, plain, alternate.minus(1), -EACH_ROUND);
        // the first shaping round of a size without spaced ones is one of those that follow each other
        some.again(Fabric.ROUND, shaped, shaped,
                everyRound.with(alternate, (every, apart) -> apart > 0 ? every : every - 1), -EACH_ROUND);
    }

    /** Grafts half to half, or draws a tip closed that is too narrow for it. */
    static void closeTip(Passage passage) {
        EachSize side = passage.stitches().half();
        RoundTaperWriting.draw(passage.only(side.where(stitches -> stitches < NARROWEST_GRAFT)));
        RoundTaperWriting.graft(passage.only(side.atLeast(NARROWEST_GRAFT)));
    }
}
