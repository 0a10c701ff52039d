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
import static turnheel.engine.writing.Doing.toMarker;
import static turnheel.engine.writing.Doing.work;

import java.util.List;
import java.util.SortedSet;
import java.util.stream.Stream;

import turnheel.engine.design.Increase;
import turnheel.engine.design.Lean;
import turnheel.engine.instruction.Line.Fabric;
import turnheel.engine.stitch.Stitch;

/**
 * Rounds of equal sections, a marker after each, in which every section gains or loses one stitch.
 *
 * @param sections how many there are
 */
record SectionsWriting(Increase increase, Lean lean, EachSize sections) {

    /** A shaping round after a plain one. */
    private Doing widen() {
        return switch (lean) {
            case RIGHT -> section(work(first()), toMarker(KNIT, 0));
            case LEFT ->
                increase == Increase.FRONT_AND_BACK ? section(toMarker(KNIT, 2), work(FRONT_AND_BACK), work(KNIT))
                    : section(toMarker(KNIT, 0), work(last()));
        };
    }

    private Stitch first() {
        return switch (increase) {
            case YARN_OVER -> YARN_OVER;
            case MAKE_ONE -> MAKE_ONE_LEFT;
            case LIFTED -> LIFTED_LEFT;
            case FRONT_AND_BACK -> FRONT_AND_BACK;
        };
    }

    private Stitch last() {
        return switch (increase) {
            case YARN_OVER -> YARN_OVER;
            case MAKE_ONE -> MAKE_ONE_RIGHT;
            case LIFTED -> LIFTED_RIGHT;
            case FRONT_AND_BACK -> FRONT_AND_BACK;
        };
    }

    /** A shaping round after another, whose yarn-overs it closes beside its new ones. */
    private Doing widenOverOpen() {
        return switch (lean) {
            case RIGHT -> section(work(YARN_OVER), work(KNIT_THROUGH_BACK), toMarker(KNIT, 0));
            case LEFT -> section(toMarker(KNIT, 1), work(KNIT_THROUGH_BACK), work(YARN_OVER));
        };
    }

    /** Whether the round after a shaping round has something to close. */
    boolean closes() {
        return increase == Increase.YARN_OVER;
    }

    /** The plain round after a shaping round. */
    private Doing close() {
        return switch (lean) {
            case RIGHT -> section(work(KNIT_THROUGH_BACK), toMarker(KNIT, 0));
            case LEFT -> section(toMarker(KNIT, 1), work(KNIT_THROUGH_BACK));
        };
    }

    Doing narrow() {
        return switch (lean) {
            case RIGHT -> section(toMarker(KNIT, 2), work(KNIT_TWO_TOGETHER));
            case LEFT -> section(work(SLIP_SLIP_KNIT), toMarker(KNIT, 0));
        };
    }

    private static Doing section(Doing... doings) {
        return Doing.repeated(Stream.concat(Stream.of(doings), Stream.of(Doing.slipMarker())).toArray(Doing[]::new));
    }

    /** Sizes whose sections are a single stitch that has no room beside it for the mirror of a kfb. */
    private SortedSet<Integer> tooNarrow(Passage passage) {
        boolean roomNeeded = lean == Lean.LEFT && increase == Increase.FRONT_AND_BACK;
        return passage.stitches().minus(sections).where(more -> roomNeeded && more == 0);
    }

    /** The first shaping rounds, one directly after the other, and what closes the last of them. */
    void widenEveryRound(Passage passage, EachSize rounds, Names names) {
        Passage some = passage.only(rounds.atLeast(1));
        SortedSet<Integer> narrow = tooNarrow(some);
        some.only(narrow).round(sections, section(work(FRONT_AND_BACK)));
        EachSize others = rounds.without(narrow, 1);
        Passage wide = some.only(others.atLeast(1));
        int first = wide.round(sections, widen());
        if (closes()) {
            Passage more = passage.only(rounds.atLeast(2));
            int second = more.round(sections, widenOverOpen());
            more.again(Fabric.ROUND, second, second, rounds.minus(2), sections);
            some.named(names.closing(), 0, close());
        } else {
            wide.again(Fabric.ROUND, first, first, others.minus(1), sections);
            some.even(rounds.map(count -> 1), false);
        }
    }

    /**
     * {@code times} shaping rounds with {@code plain} rounds after each, the first of which closes it.
     */
    void widenSpaced(Passage passage, EachSize times, EachSize plain, Names names) {
        Passage some = passage.only(times.atLeast(1));
        SortedSet<Integer> narrow = tooNarrow(some);
        Passage first = some.only(narrow);
        first.round(sections, section(work(FRONT_AND_BACK)));
        first.even(plain, false);
        EachSize others = times.without(narrow, 1);
        Passage wide = some.only(others.atLeast(1));
        wide.named(names.increase(), sections, widen());
        if (closes()) {
            wide.only(plain.atLeast(1)).named(names.closing(), 0, close());
            wide.even(plain.minus(1), false);
        } else {
            wide.even(plain, false);
        }
        if (closes() && plain.greatest() == 1) {
            wide.again(List.of(names.increase(), names.closing()), others.minus(1), others.minus(1).times(sections));
        } else {
            wide.againLast(plain.plus(1), others.minus(1), sections);
        }
    }
}
