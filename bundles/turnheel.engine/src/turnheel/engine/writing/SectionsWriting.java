package turnheel.engine.writing;

import static turnheel.engine.stitch.Stitch.FRONT_AND_BACK;
import static turnheel.engine.stitch.Stitch.KNIT;
import static turnheel.engine.stitch.Stitch.KNIT_THROUGH_BACK;
import static turnheel.engine.stitch.Stitch.KNIT_TWO_TOGETHER;
import static turnheel.engine.stitch.Stitch.LIFTED_LEFT;
import static turnheel.engine.stitch.Stitch.MAKE_ONE_LEFT;
import static turnheel.engine.stitch.Stitch.YARN_OVER;

import turnheel.engine.design.Increase;
import turnheel.engine.instruction.Line.Fabric;
import turnheel.engine.stitch.Stitch;

/**
 * Rounds of equal sections, a marker after each, in which every section gains or loses one stitch.
 *
 * @param sections how many there are
 */
record SectionsWriting(Increase increase, EachSize sections) {

    /** A shaping round after a plain one. */
    Doing widen() {
        return switch (increase) {
            case YARN_OVER -> section(YARN_OVER);
            case MAKE_ONE -> section(MAKE_ONE_LEFT);
            case LIFTED -> section(LIFTED_LEFT);
            case FRONT_AND_BACK -> section(FRONT_AND_BACK);
        };
    }

    /** A shaping round after another, whose yarn-overs it closes after its new ones. */
    Doing widenOverOpen() {
        return Doing.repeated(Doing.work(YARN_OVER), Doing.work(KNIT_THROUGH_BACK), Doing.toMarker(KNIT, 0),
                Doing.slipMarker());
    }

    /** Whether the round after a shaping round has something to close. */
    boolean closes() {
        return increase == Increase.YARN_OVER;
    }

    /** The plain round after a shaping round. */
    Doing close() {
        return section(KNIT_THROUGH_BACK);
    }

    private static Doing section(Stitch first) {
        return Doing.repeated(Doing.work(first), Doing.toMarker(KNIT, 0), Doing.slipMarker());
    }

    Doing narrow() {
        return Doing.repeated(Doing.toMarker(KNIT, 2), Doing.work(KNIT_TWO_TOGETHER), Doing.slipMarker());
    }

    /** The first shaping rounds, one directly after the other, and what closes the last of them. */
    void widenEveryRound(Passage passage, EachSize rounds, Names names) {
        Passage some = passage.only(rounds.atLeast(1));
        int first = some.round(sections, widen());
        if (closes()) {
            Passage more = passage.only(rounds.atLeast(2));
            int second = more.round(sections, widenOverOpen());
            more.again(Fabric.ROUND, second, second, rounds.minus(2), sections);
            some.named(names.closing(), 0, close());
        } else {
            some.again(Fabric.ROUND, first, first, rounds.minus(1), sections);
            some.even(rounds.map(count -> 1), false);
        }
    }

    /** One shaping round and {@code plain} rounds after it, the first of which closes it. */
    void widenOnce(Passage passage, EachSize plain, Names names) {
        passage.named(names.increase(), sections, widen());
        if (closes()) {
            passage.only(plain.atLeast(1)).named(names.closing(), 0, close());
            passage.even(plain.minus(1), false);
        } else {
            passage.even(plain, false);
        }
    }
}
