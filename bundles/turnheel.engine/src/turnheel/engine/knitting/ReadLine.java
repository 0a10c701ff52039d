package turnheel.engine.knitting;

/**
 * A line of a text, and how it was read.
 *
 * @param number from 1
 * @param kind what it is; the lines of one paragraph share it
 * @param section the heading that it stands under; empty before the first
 */
public record ReadLine(int number, Kind kind, String section) {

    /** What a line is. */
    public enum Kind {
        /** Nothing is written. */
        EMPTY, TITLE, HEADING,
        /** Sizes, materials, notes and the like. */
        FRONT,
        /** Read, and knitted. */
        INSTRUCTION,
        /** Tells nothing to do. */
        REMARK,
        /** Tells something to do that was not understood, at least in part. */
        UNREAD
    }
}
