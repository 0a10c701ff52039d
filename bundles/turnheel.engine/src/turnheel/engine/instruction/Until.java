package turnheel.engine.instruction;

/** A place on the left needle up to which something is worked. */
public sealed interface Until {

    /** To the end of the round, or of the stitches that the row is worked on. */
    record End() implements Until {
    }

    /** Over the next {@code stitches}. */
    record Next(Sized<Integer> stitches) implements Until {
    }

    /** To the last {@code stitches} of the round or row, at least 1. */
    record Last(Sized<Integer> stitches) implements Until {
    }

    /** To {@code stitches} before the next marker; 0 is the marker itself. */
    record Marker(Sized<Integer> stitches) implements Until {
    }

    /**
     * To {@code stitches} before the gap that an earlier turn left; 0 is the gap itself. A yarn-over that was made at
     * the turn belongs to the gap: it is neither worked nor counted.
     */
    record Gap(Sized<Integer> stitches) implements Until {
    }

    /**
     * To {@code stitches} before the next stitch that a turn marked: wrapped, with its twin, or double; 0 is that
     * stitch.
     */
    record TurnedStitch(Mark mark, Sized<Integer> stitches) implements Until {
    }

    /** Over all stitches on hold, which come back onto the needle. */
    record Held() implements Until {
    }

    /** How a turn marked a stitch. */
    enum Mark {
        WRAPPED, TWIN, DOUBLE
    }
}
