package turnheel.engine.design;

/** A leg of one stitch count from heel to cuff. */
public record StraightLeg(SockLength length, LegCount count) implements Leg {
}
