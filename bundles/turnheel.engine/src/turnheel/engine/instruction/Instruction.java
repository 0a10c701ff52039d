package turnheel.engine.instruction;

import java.util.List;
import java.util.Optional;

import turnheel.engine.stitch.Stitch;

/** A piece of a round or row, between two commas of a written pattern. */
public sealed interface Instruction {

    /** The pieces that it encloses; empty where it is one of its own. */
    default List<Instruction> body() {
        return List.of();
    }

    /** One stitch, {@code count} times, as in {@code k5 (6, 7)} or {@code k2tog}. */
    record Work(Stitch stitch, Sized<Integer> count) implements Instruction {
    }

    /** One stitch up to a place, as in {@code k to last 2 sts}. */
    record WorkTo(Stitch stitch, Until until) implements Instruction {
    }

    /**
     * The same, where whatever turns left on the way is worked as one stitch: wraps with theirs, twins, double
     * stitches.
     */
    record CloseTo(Stitch stitch, Until until) implements Instruction {
    }

    /** Several pieces in brackets, as in {@code [k6, k2tog] 3 times}. */
    record Times(List<Instruction> body, Sized<Integer> times) implements Instruction {
        public Times {
            body = List.copyOf(body);
        }
    }

    /** Several pieces from an asterisk on, as in {@code *yo, k2; rep from * to end}; worked at least once. */
    record RepeatTo(List<Instruction> body, Until until) implements Instruction {
        public RepeatTo {
            body = List.copyOf(body);
        }
    }

    /**
     * Several pieces from an asterisk on, worked once and {@code more} times, as in {@code *k5, k2tog; rep from * 3
     * more times}.
     */
    record RepeatMore(List<Instruction> body, Sized<Integer> more) implements Instruction {
        public RepeatMore {
            body = List.copyOf(body);
        }
    }

    /** A marker is placed, slipped or taken off. */
    record Marker(MarkerAction action) implements Instruction {
    }

    /** What happens to a marker. */
    enum MarkerAction {
        PLACE, SLIP, REMOVE,
        /** Every marker on the needle is taken off. */
        REMOVE_ALL
    }

    /** A marker after every {@code stitches} of the whole round, the last one at its start. */
    record MarkersAfterEvery(Sized<Integer> stitches) implements Instruction {
    }

    /** Stitches are cast on. */
    record CastOn(CastOnManner manner, Sized<Integer> stitches) implements Instruction {
    }

    /** How stitches are cast on. */
    enum CastOnManner {
        PLAIN,
        /** Closed below, half of the stitches on each side. */
        CLOSED,
        STRETCHY,
        /** Taken out later, so that its loops can be worked. */
        PROVISIONAL
    }

    /** What was worked flat, or cast on, is closed to a ring; the round begins here. */
    record JoinInRound() implements Instruction {
    }

    /** New stitches are knitted out of the edge of the fabric. */
    record PickUp(Sized<Integer> stitches, Edge edge) implements Instruction {
    }

    /** Where stitches are picked up. */
    enum Edge {
        FLAP, CORNER, OPENING
    }

    /** A thread that held loops is taken out. */
    record TakeOut(Thread thread) implements Instruction {
    }

    /** A thread that holds loops for a while. */
    enum Thread {
        PROVISIONAL_CAST_ON, WASTE_YARN
    }

    /** The next {@code stitches} are put on hold, unworked, as in {@code hold the next 32 sts for the instep}. */
    record Hold(Sized<Integer> stitches) implements Instruction {
    }

    /** Stitches go on hold that are not the next ones, as in {@code k32 and hold these 32 sts}. */
    record HoldPart(HoldWhich which, Sized<Integer> stitches) implements Instruction {
    }

    /** Which stitches go on hold. */
    enum HoldWhich {
        /** Those worked just now. */
        WORKED,
        /** Those at the end of the round. */
        LAST
    }

    /** A round of a stitch pattern over the next stitches; its repeats to the end mean the end of those. */
    record Over(List<Instruction> body, Until stitches) implements Instruction {
        public Over {
            body = List.copyOf(body);
        }
    }

    /**
     * All stitches but those of this part are put on hold: what follows is worked flat on {@code stitches}, the next
     * ones.
     *
     * @param others those on hold; empty where the text does not tell their number
     */
    record WorkOnlyOn(Sized<Integer> stitches, Optional<Sized<Integer>> others) implements Instruction {
    }

    /** {@code stitches} held ones are knitted back, in the order in which they lie, as in {@code k the 32 held sts}. */
    record WorkHeld(Stitch stitch, Sized<Integer> stitches) implements Instruction {
    }

    /** The round begins at this place from now on. */
    record StartHere() implements Instruction {
    }

    /**
     * {@code stitches} are worked with waste yarn, slipped back and worked again: the row of waste yarn is later taken
     * out and leaves an opening.
     */
    record WasteYarn(Sized<Integer> stitches) implements Instruction {
    }
}
