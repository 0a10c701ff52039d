package turnheel.engine.grading;

/**
 * What one part needs of the stitches around the foot.
 *
 * @param kind who needs it
 * @param counts the counts that meet it
 * @param fewest the smallest count that it can be worked on
 */
public record Need(Kind kind, Congruence counts, int fewest) {

    /** Who needs it. */
    public enum Kind {
        /** Instep and sole are halves of the round. */
        HALVES,
        /** Every shaping line of the toe gains the same number of stitches. */
        TOE_LINES,
        /** The leg is whole rib repeats, so that the cuff needs no adjusting round. */
        RIB
    }

    boolean isMetBy(int count) {
        return counts.contains(count) && count >= fewest;
    }
}
