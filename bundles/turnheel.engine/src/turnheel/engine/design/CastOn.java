package turnheel.engine.design;

/** The closed cast-on of a toe that is knitted first. */
public enum CastOn {
    /** Leaves all its stitches to be worked: a plain set-up round comes before the first shaping round. */
    UNWORKED,
    /** Leaves half of a round worked: the other half is knitted as set-up, which makes no round of its own. */
    HALF_WORKED
}
