package turnheel.engine.design;

/** How a pattern says how far a stretch without shaping is worked. */
public enum LengthMode {
    /** So many rounds: what a knitter with the pattern's round gauge needs. */
    ROUNDS,
    /** Until it measures so much: right at every round gauge. */
    MEASURE,
    /** So many rounds, and what they measure. */
    BOTH,
    /** Until it measures so much less than the wearer's own foot; on the foot only. */
    TO_FIT
}
