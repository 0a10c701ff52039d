package turnheel.engine.hands;

/**
 * A loop on the needle.
 *
 * @param open a yarn-over that nothing has closed yet
 * @param wraps how often the yarn lies around it since it was last worked
 * @param more what it is besides one plain loop
 * @param origin how it came to be in the round that was worked last
 */
public record Loop(boolean open, int wraps, More more, Origin origin) {

    /** A loop that asks for more than to be worked. */
    public enum More {
        NOTHING,
        /** A second loop was worked into it from below, where a row turned; both are worked as one. */
        TWIN,
        /** It was slipped and pulled over after a turn, so that both its legs lie on the needle. */
        DOUBLE,
        /** A yarn-over at the beginning of a row; it closes the gap when it is worked together with a neighbour. */
        OVER_AT_TURN
    }

    /** What was done to make it. */
    public enum Origin {
        /** Worked from one loop, or not worked at all. */
        ONE_FROM_ONE,
        /** There was no loop before. */
        NEW,
        /** Several became one, the right one on top: leans right. */
        JOINED_RIGHT,
        /** Several became one, the left one on top: leans left. */
        JOINED_LEFT
    }

    static final Loop PLAIN = new Loop(false, 0, More.NOTHING, Origin.ONE_FROM_ONE);
    static final Loop ADDED = new Loop(false, 0, More.NOTHING, Origin.NEW);
    static final Loop OPEN = new Loop(true, 0, More.NOTHING, Origin.NEW);
    static final Loop OPEN_AT_TURN = new Loop(true, 0, More.OVER_AT_TURN, Origin.NEW);
    static final Loop DOUBLED = new Loop(false, 0, More.DOUBLE, Origin.ONE_FROM_ONE);

    static Loop joined(Origin origin) {
        return new Loop(false, 0, More.NOTHING, origin);
    }

    Loop wrapped() {
        return new Loop(open, wraps + 1, more, origin);
    }

    Loop twinned() {
        return new Loop(open, wraps, More.TWIN, origin);
    }

    /** Whether hands may work it like any other. */
    boolean isPlain() {
        return !open && wraps == 0 && more == More.NOTHING;
    }

    /** Whether it asks for its wraps to be worked with it, and for nothing else. */
    boolean isOnlyWrapped() {
        return !open && wraps > 0 && more == More.NOTHING;
    }
}
