package turnheel.engine.design;

/** The stitch pattern of a heel flap, worked on its right side; the wrong side is purled. */
public enum FlapFabric {
    /** Knitted throughout. */
    PLAIN,
    /** Every second stitch is slipped, one above the other: thick, and drawn in. */
    SLIPPED,
    /** Every second stitch is slipped, on the next right side those between. */
    SLIPPED_IN_TURN
}
