package turnheel.engine.design;

/** A leg that widens evenly from ankle to calf. */
public record CalfLeg(SockLength length, LegCount count) implements Leg {
}
