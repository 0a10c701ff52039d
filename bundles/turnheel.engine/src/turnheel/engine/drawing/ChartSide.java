package turnheel.engine.drawing;

/** Which way a row of a chart is worked, and so from which end it is read. */
public enum ChartSide {
    /** Worked in the round, read from the right. */
    ROUND,
    /** Worked flat on the right side, read from the right. */
    RIGHT,
    /** Worked flat on the wrong side, read from the left. */
    WRONG
}
