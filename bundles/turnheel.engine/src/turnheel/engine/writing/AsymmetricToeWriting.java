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
import static turnheel.engine.writing.Doing.slipMarker;
import static turnheel.engine.writing.Doing.toEnd;
import static turnheel.engine.writing.Doing.toLast;
import static turnheel.engine.writing.Doing.toMarker;
import static turnheel.engine.writing.Doing.work;

import turnheel.engine.design.Increase;
import turnheel.engine.instruction.Line.Fabric;
import turnheel.engine.stitch.Stitch;

/**
 * An asymmetric wedge from the big toe on, a marker after each half. Next to the foot only the little toe's line
 * shapes, which lies at the first marker.
 */
final class AsymmetricToeWriting {

    private static final int BOTH_LINES = 4;
    private static final int ONE_LINE = 2;

    private final Increase increase;
    private final EachSize everyRound;
    private final EachSize alternate;
    private final EachSize alone;
    private final Names names;

    /** @param alone shaping rounds next to the foot in which only the little toe's line shapes */
    AsymmetricToeWriting(Increase increase, EachSize everyRound, EachSize alternate, EachSize alone, Names names) {
        this.increase = increase;
        this.everyRound = everyRound;
        this.alternate = alternate;
        this.alone = alone;
        this.names = names;
    }

    void widen(Passage passage) {
        EachSize together = everyRound.plus(alternate).minus(alone);
        EachSize everyTogether = everyRound.least(together);
        EachSize everyAlone = everyRound.minus(everyTogether);
        every(passage, everyTogether, true, everyTogether.map(rounds -> 0));
        close(passage.only(everyTogether.atLeast(1)).only(everyAlone.where(rounds -> rounds == 0)), true);
        every(passage, everyAlone, false, everyTogether);
        close(passage.only(everyAlone.atLeast(1)), false);
        EachSize spacedTogether = together.minus(everyTogether);
        spaced(passage, spacedTogether, true);
        spaced(passage, alternate.minus(spacedTogether), false);
    }

    /** @param before shaping rounds directly before these, whose yarn-overs are open */
    private void every(Passage passage, EachSize rounds, boolean both, EachSize before) {
        int change = both ? BOTH_LINES : ONE_LINE;
        Passage some = passage.only(rounds.atLeast(1));
        if (increase != Increase.YARN_OVER) {
            int first = some.round(change, widen(both));
            some.again(Fabric.ROUND, first, first, rounds.minus(1), change);
            return;
        }
        some.only(before.where(earlier -> earlier == 0)).round(change, widen(both));
        EachSize overOpen = rounds.with(before, (all, earlier) -> earlier == 0 ? all - 1 : all);
        Passage more = passage.only(overOpen.atLeast(1));
        int again = more.round(change, widenOverOpen(both));
        more.again(Fabric.ROUND, again, again, overOpen.minus(1), change);
    }

    private void spaced(Passage passage, EachSize rounds, boolean both) {
        Passage some = passage.only(rounds.atLeast(1));
        int change = both ? BOTH_LINES : ONE_LINE;
        some.named(names.increase(), change, widen(both));
        close(some, both);
        some.againLast(rounds.map(count -> 2), rounds.minus(1), rounds.map(count -> change));
    }

    private Doing[] widen(boolean both) {
        if (both) {
            return new Doing[] {WedgeWriting.widen(increase)};
        }
        return switch (increase) {
            case YARN_OVER -> alone(YARN_OVER, YARN_OVER);
            case MAKE_ONE -> alone(MAKE_ONE_LEFT, MAKE_ONE_RIGHT);
            case LIFTED -> alone(LIFTED_LEFT, LIFTED_RIGHT);
            case FRONT_AND_BACK -> new Doing[] {toMarker(KNIT, 2), work(FRONT_AND_BACK), work(KNIT), slipMarker(),
                work(FRONT_AND_BACK), toEnd(KNIT)};
        };
    }

    private static Doing[] alone(Stitch before, Stitch after) {
        return new Doing[] {toMarker(KNIT, 1), work(before), work(KNIT), slipMarker(), work(KNIT), work(after),
            toEnd(KNIT)};
    }

    private Doing[] widenOverOpen(boolean both) {
        if (both) {
            return new Doing[] {WedgeWriting.widenOverOpen()};
        }
        EachSize two = alternate.map(rounds -> 2);
        return new Doing[] {work(KNIT), work(KNIT_THROUGH_BACK), toMarker(KNIT, 2), work(KNIT_THROUGH_BACK),
            work(YARN_OVER), work(KNIT), slipMarker(), work(KNIT), work(YARN_OVER), work(KNIT_THROUGH_BACK),
            toLast(KNIT, two), work(KNIT_THROUGH_BACK), work(KNIT)};
    }

    private void close(Passage passage, boolean both) {
        if (increase != Increase.YARN_OVER) {
            passage.even(alternate.map(rounds -> 1), false);
        } else if (both) {
            passage.named(names.closing(), 0, WedgeWriting.close());
        } else {
            passage.named(names.closing(), 0, toMarker(KNIT, 2), work(KNIT_THROUGH_BACK), work(KNIT), slipMarker(),
                    work(KNIT), work(KNIT_THROUGH_BACK), toEnd(KNIT));
        }
    }

    void narrow(Passage passage) {
        EachSize aloneSpaced = alone.least(alternate);
        narrowSpaced(passage, aloneSpaced, false);
        narrowSpaced(passage, alternate.minus(aloneSpaced), true);
        EachSize aloneEvery = alone.minus(aloneSpaced);
        narrowEvery(passage, aloneEvery, false);
        narrowEvery(passage, everyRound.minus(aloneEvery), true);
    }

    private static void narrowSpaced(Passage passage, EachSize rounds, boolean both) {
        Passage some = passage.only(rounds.atLeast(1));
        int change = both ? -BOTH_LINES : -ONE_LINE;
        int shaped = some.round(change, narrow(both));
        int plain = some.round(0, toEnd(KNIT));
        some.again(Fabric.ROUND, shaped, plain, rounds.minus(1), change);
    }

    private static void narrowEvery(Passage passage, EachSize rounds, boolean both) {
        Passage some = passage.only(rounds.atLeast(1));
        int change = both ? -BOTH_LINES : -ONE_LINE;
        int shaped = some.round(change, narrow(both));
        some.again(Fabric.ROUND, shaped, shaped, rounds.minus(1), change);
    }

    private static Doing[] narrow(boolean both) {
        return both ? new Doing[] {WedgeWriting.narrow()}
                : new Doing[] {toMarker(KNIT, 3), work(KNIT_TWO_TOGETHER), work(KNIT), slipMarker(), work(KNIT),
                    work(SLIP_SLIP_KNIT), toEnd(KNIT)};
    }
}
