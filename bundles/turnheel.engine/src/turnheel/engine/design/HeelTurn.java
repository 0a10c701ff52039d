package turnheel.engine.design;

/** How a flap heel worked cuff-down is turned. */
public enum HeelTurn {
    /** The turn widens by one stitch a row from a narrow middle. */
    ROUND,
    /** A straight band of the middle third takes in the sides. */
    SQUARE
}
