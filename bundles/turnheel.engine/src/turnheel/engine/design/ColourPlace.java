package turnheel.engine.design;

/** Where a yarn other than the main one can be worked. The two patterns have it as the colour of their figures. */
public enum ColourPlace {
    CUFF, LEG, HEEL, FOOT, TOE,
    /**
     * The stitch pattern on the instep: of a stranded one the second colour, of another one all its stitches. A pattern
     * of the whole sock has one here for the foot, and one on the leg.
     */
    INSTEP_PATTERN,
    /** The stitch pattern on the leg, likewise. */
    LEG_PATTERN
}
