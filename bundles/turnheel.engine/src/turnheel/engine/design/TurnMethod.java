package turnheel.engine.design;

/** How a short row turns without leaving a hole. */
public enum TurnMethod {
    /** The stitch beyond the turn is wrapped with the yarn; wrap and stitch are later worked together. */
    WRAPPED
}
