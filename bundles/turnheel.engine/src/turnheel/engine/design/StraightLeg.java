package turnheel.engine.design;

/** A leg of one stitch count from heel to cuff. */
public record StraightLeg(SockLength length, LegCount count) implements Leg {

    /** A leg of as many stitches as the foot. */
    public StraightLeg(SockLength length) {
        this(length, LegCount.AS_FOOT);
    }
}
