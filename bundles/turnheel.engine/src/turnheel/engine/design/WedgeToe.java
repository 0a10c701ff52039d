package turnheel.engine.design;

/**
 * A flat toe with two side lines, four stitches a shaping round.
 *
 * @param increase how it grows toe-up; cuff-down it decreases
 */
public record WedgeToe(Increase increase) implements Toe {
}
