package turnheel.engine.knitting;

/** What lies on a needle. */
enum Loop {
    /** Asks for nothing but to be worked. */
    REGULAR,
    /** Like {@link #REGULAR}, but not worked since the work went flat: a turn before it leaves an edge, no gap. */
    RESTING,
    /** A yarn-over that must be closed. */
    OPEN,
    /** A yarn-over of lace, simply worked in the next round. */
    LACE,
    /** A yarn-over made at a turn; worked together with a neighbour it closes the gap. */
    OPEN_AT_TURN,
    /** One or more wraps lie around it; they are lifted together. */
    WRAPPED,
    /** A second loop was worked into it from below where a row turned. */
    TWIN,
    /** Slipped and pulled over after a turn, so that both its legs lie on the needle. */
    DOUBLE,
    /** No loop: a marker between two. */
    MARKER,
    /** No loop: the hole that a turn left between two. */
    GAP,
    /** No loop: where rounds began before the work went flat. */
    START;

    /** Whether it is a loop at all. */
    boolean isLoop() {
        return ordinal() < MARKER.ordinal();
    }

    /** Whether it is a yarn-over of the round before. */
    boolean isOpen() {
        return this == OPEN || this == LACE || this == OPEN_AT_TURN;
    }

    /** Whether it is worked like any other. */
    boolean isPlain() {
        return this == REGULAR || this == RESTING || this == LACE;
    }

    /** Whether a turn marked it. */
    boolean isMarked() {
        return this == WRAPPED || this == TWIN || this == DOUBLE;
    }
}
