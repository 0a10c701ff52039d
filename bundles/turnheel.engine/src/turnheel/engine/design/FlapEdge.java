package turnheel.engine.design;

/** The sides of a heel flap worked cuff-down, along which the gusset is picked up: one loop for two rows with either. */
public enum FlapEdge {
    /** The first stitch of every row is slipped, which makes a chain. */
    SLIPPED,
    /** The first and last two stitches are knitted on both sides, which makes ridges. */
    GARTER
}
