package turnheel.engine.design;

/** How a toe that grows gains a stitch. */
public enum Increase {
    /** A yarn-over, closed one round later by knitting it through the back loop. */
    YARN_OVER,
    /** The strand between two stitches, lifted and knitted twisted. */
    MAKE_ONE,
    /** Knit into front and back of one stitch. */
    FRONT_AND_BACK,
    /** The stitch below, lifted and knitted. */
    LIFTED
}
