package turnheel.engine.design;

/**
 * A piece of the main fabric that was weighed, knitted with the pattern's yarn at the pattern's gauge.
 *
 * @param stitches its width, at least 1
 * @param rounds its height, at least 1
 * @param grams its weight without yarn ends, above 0, at most 10 000
 * @throws IllegalArgumentException outside these ranges
 */
public record Swatch(int stitches, int rounds, double grams) {

    public Swatch {
        if (stitches < 1 || rounds < 1) {
            throw new IllegalArgumentException("a swatch has at least 1 stitch and 1 round, not %d and %d"
                    .formatted(stitches, rounds));
        }
        if (!(grams > 0 && grams <= Materials.MOST)) {
            throw new IllegalArgumentException("a swatch must weigh above 0 and at most %s g, not %s".formatted(
                    QuantityText.number(Materials.MOST), grams));
        }
    }

    /** The loops that were weighed. */
    public double loops() {
        return (double) stitches * rounds;
    }
}
