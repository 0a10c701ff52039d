package turnheel.engine.design;

/**
 * A leg that widens evenly from ankle to calf and, in sizes that have a knee circumference, narrows evenly again to the
 * cuff.
 */
public record CalfLeg(SockLength length, LegCount count) implements Leg {
}
