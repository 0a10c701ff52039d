package turnheel.engine.design;

/**
 * A toe of equal sections that each lose a stitch in a shaping round, with fewer plain rounds between as it narrows.
 *
 * @param increase how it grows toe-up; cuff-down it decreases
 * @param castOn how it begins toe-up
 * @param lean which way its lines lean
 */
public record StarToe(Increase increase, CastOn castOn, Lean lean) implements Toe {

    /** From a cast-on that is still to be worked, leaning right. */
    public StarToe(Increase increase) {
        this(increase, CastOn.UNWORKED, Lean.RIGHT);
    }

    /** What its number of sections is a multiple of: a cast-on of which half is worked has two equal halves. */
    public int sectionStep(Direction direction) {
        return direction == Direction.TOE_UP && castOn == CastOn.HALF_WORKED ? 2 : 1;
    }

    /** Stitches that a section must grow to: a plain round closes yarn-overs, which sections of two do not have. */
    public int fewestInSection(Direction direction) {
        return direction == Direction.TOE_UP && increase == Increase.YARN_OVER ? 3 : 2;
    }
}
