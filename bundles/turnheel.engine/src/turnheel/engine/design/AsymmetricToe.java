package turnheel.engine.design;

/**
 * A wedge toe shaped to the foot: the line at the little toe shapes in every shaping round, the line at the big toe joins
 * later. The second sock of the pair is its mirror.
 *
 * @param increase how it grows toe-up; cuff-down it decreases
 * @param castOn how it begins toe-up
 */
public record AsymmetricToe(Increase increase, CastOn castOn) implements Toe {

    /** From a cast-on that is still to be worked. */
    public AsymmetricToe(Increase increase) {
        this(increase, CastOn.UNWORKED);
    }
}
