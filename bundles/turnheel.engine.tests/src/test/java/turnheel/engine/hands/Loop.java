package turnheel.engine.hands;

/**
 * A loop on the needle.
 *
 * @param open a yarn-over that nothing has closed yet
 * @param wraps how often the yarn lies around it since it was last worked
 * @param origin how it came to be in the round that was worked last
 */
public record Loop(boolean open, int wraps, Origin origin) {

    /** What was done to make it. */
    public enum Origin {
        /** Worked from one loop, or not worked at all. */
        ONE_FROM_ONE,
        /** There was no loop before. */
        NEW,
        /** Two became one, the right one on top: leans right. */
        JOINED_RIGHT,
        /** Two became one, the left one on top: leans left. */
        JOINED_LEFT
    }

    static final Loop PLAIN = new Loop(false, 0, Origin.ONE_FROM_ONE);
    static final Loop ADDED = new Loop(false, 0, Origin.NEW);
    static final Loop OPEN = new Loop(true, 0, Origin.NEW);

    Loop wrapped() {
        return new Loop(open, wraps + 1, origin);
    }
}
