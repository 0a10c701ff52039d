package turnheel.engine.design;

/**
 * A spiral of {@code lines} shaping lines from a closed cast-on, growing every round up to the turning point, then
 * every second round.
 *
 * @param lines shaping lines, 2 to 12; 4 is usual
 * @param increase how it grows toe-up; cuff-down it decreases
 * @param castOn how it begins toe-up
 * @param lean which way its lines lean
 * @throws IllegalArgumentException when the number of lines is out of range
 */
public record RoundToe(int lines, Increase increase, CastOn castOn, Lean lean) implements Toe {

    private static final int FEWEST_LINES = 2;
    private static final int MOST_LINES = 12;

    public RoundToe {
        if (lines < FEWEST_LINES || lines > MOST_LINES) {
            throw new IllegalArgumentException("a round toe has %d to %d shaping lines, not %d".formatted(FEWEST_LINES,
                    MOST_LINES, lines));
        }
    }

    /** From a cast-on that is still to be worked, leaning right. */
    public RoundToe(int lines, Increase increase) {
        this(lines, increase, CastOn.UNWORKED, Lean.RIGHT);
    }
}
