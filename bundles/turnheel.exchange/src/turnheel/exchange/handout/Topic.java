package turnheel.exchange.handout;

/** What a page of a hand-out teaches. */
public enum Topic {
    CAST_ON, TOE, HEEL,
    /** The triangles beside a heel flap. */
    GUSSET, CUFF,
    /** Where stitches leave the needle for good: grafted, drawn closed, bound off or sewn down. */
    CLOSING
}
