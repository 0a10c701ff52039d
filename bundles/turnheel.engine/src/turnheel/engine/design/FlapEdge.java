package turnheel.engine.design;

/** The sides of a heel flap worked cuff-down, along which the gusset is picked up: either has a loop for two rows. */
public enum FlapEdge {
    /** The first stitch of every row is slipped, which makes a chain. */
    SLIPPED,
    /** The first and last two stitches are knitted on both sides, which makes ridges. */
    GARTER
}
