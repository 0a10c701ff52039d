package turnheel.engine.design;

/**
 * A flat toe with two side lines, four stitches a shaping round.
 *
 * @param increase how it grows toe-up; cuff-down it decreases
 * @param castOn how it begins toe-up
 */
public record WedgeToe(Increase increase, CastOn castOn) implements Toe {

    /** From a cast-on that is still to be worked. */
    public WedgeToe(Increase increase) {
        this(increase, CastOn.UNWORKED);
    }
}
