package turnheel.engine.design;

/** A kind of cuff with the designer's choices for it. */
public sealed interface Cuff permits RibCuff, HemCuff, RolledCuff {

    /**
     * Stitches of one repeat of the cuff; 1 where it suits every count.
     */
    int repeat();

    /** Whether a round that changes the count may stand between leg and cuff, so that the leg is free of the repeat. */
    boolean mayAdjust();
}
