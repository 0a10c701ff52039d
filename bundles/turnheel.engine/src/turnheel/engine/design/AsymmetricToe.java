package turnheel.engine.design;

/**
 * A wedge toe shaped to the foot: the line at the little toe shapes in every shaping round, the line at the big toe joins
 * later. The second sock of the pair is its mirror.
 *
 * @param increase how it grows toe-up; cuff-down it decreases
 */
public record AsymmetricToe(Increase increase) implements Toe {
}
