package turnheel.engine.design;

/** How a short row turns without leaving a hole. */
public enum TurnMethod {
    /** The stitch beyond the turn is wrapped with the yarn; wrap and stitch are later worked together. */
    WRAPPED,
    /** The stitch beyond the turn is worked into from below, so that it is twin loops until they are worked as one. */
    TWIN,
    /** After the turn the first stitch is slipped and pulled over the needle, so that both its legs show: a double stitch. */
    GERMAN,
    /** The row after the turn begins with a yarn-over, later worked together with the stitch beyond the gap. */
    YARN_OVER
}
