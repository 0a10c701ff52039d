package turnheel.engine.design;

/** Where the stitches of the leg above the heel come from. */
public enum LegCount {
    /** As many as the foot has. */
    AS_FOOT,
    /** From the ankle's own circumference, never too few to pass over the heel. */
    FROM_ANKLE
}
