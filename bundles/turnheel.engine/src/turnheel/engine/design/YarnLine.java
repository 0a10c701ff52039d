package turnheel.engine.design;

import java.util.OptionalInt;

/**
 * A line of the list of yarns: one yarn in one colour, and how much of it the pattern asks for.
 *
 * @param colour what people call the colour; may be empty
 * @param balls how many the pattern states for a pair; empty when it states none, else at least 1
 * @throws IllegalArgumentException when fewer than 1 ball is stated, or the colour is longer than {@link #LONGEST_COLOUR}
 */
public record YarnLine(Yarn yarn, String colour, OptionalInt balls) {

    /** In characters. */
    public static final int LONGEST_COLOUR = 60;

    public YarnLine {
        colour = colour.strip();
        if (colour.length() > LONGEST_COLOUR) {
            throw new IllegalArgumentException("the colour \"%s…\" is longer than %d characters".formatted(
                    colour.substring(0, LONGEST_COLOUR), LONGEST_COLOUR));
        }
        if (balls.isPresent() && balls.getAsInt() < 1) {
            throw new IllegalArgumentException("a pair takes at least 1 ball, not %d".formatted(balls.getAsInt()));
        }
    }

    /** A yarn whose colour and amount the pattern leaves open. */
    public static YarnLine of(Yarn yarn) {
        return new YarnLine(yarn, "", OptionalInt.empty());
    }

    public YarnLine withBalls(int stated) {
        return new YarnLine(yarn, colour, OptionalInt.of(stated));
    }
}
