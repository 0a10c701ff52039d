package turnheel.engine.design;

import java.util.OptionalInt;

/**
 * A yarn, as its label tells.
 *
 * @param name what people call it; may be empty
 * @param metresPerBall above 0, at most 10 000
 * @param gramsPerBall above 0, at most 10 000
 * @param category 0 (lace) to 7 (jumbo) of the standard yarn weights, where it is known
 * @throws IllegalArgumentException outside these ranges
 */
public record Yarn(String name, double metresPerBall, double gramsPerBall, OptionalInt category) {

    private static final int THICKEST_CATEGORY = 7;

    public Yarn {
        requireOfABall("metres", metresPerBall);
        requireOfABall("grams", gramsPerBall);
        if (category.isPresent() && (category.getAsInt() < 0 || category.getAsInt() > THICKEST_CATEGORY)) {
            throw new IllegalArgumentException("a yarn's category is a number from 0 to %d, not %d"
                    .formatted(THICKEST_CATEGORY, category.getAsInt()));
        }
    }

    private static void requireOfABall(String what, double amount) {
        if (!(amount > 0 && amount <= Materials.MOST)) {
            throw new IllegalArgumentException("the %s of a ball must lie above 0 and be at most %s, not %s"
                    .formatted(what, QuantityText.number(Materials.MOST), amount));
        }
    }

    /** A yarn of unknown category. */
    public static Yarn of(String name, double metresPerBall, double gramsPerBall) {
        return new Yarn(name, metresPerBall, gramsPerBall, OptionalInt.empty());
    }
}
