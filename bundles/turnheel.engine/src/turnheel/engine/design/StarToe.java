package turnheel.engine.design;

/**
 * A toe of equal sections that each lose a stitch in a shaping round, with fewer plain rounds between as it narrows.
 *
 * @param increase how it grows toe-up; cuff-down it decreases
 */
public record StarToe(Increase increase) implements Toe {
}
