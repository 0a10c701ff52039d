package turnheel.engine.design;

/** How the designer says how long a heel flap is. */
public sealed interface FlapLength {

    /** As long as the heel circumference asks for, within the usual share of the foot. */
    record FromBody() implements FlapLength {
    }

    /**
     * Rows as a multiple of the flap's stitches; 1 is a square flap in slipped stitches.
     *
     * @throws IllegalArgumentException when the ratio is not 0.4 to 2
     */
    record RowsPerStitch(double ratio) implements FlapLength {
        public RowsPerStitch {
            if (!(ratio >= 0.4 && ratio <= 2)) {
                throw new IllegalArgumentException("a flap has 0.4 to 2 rows for each of its stitches, not %s".formatted(ratio));
            }
        }
    }

    /**
     * A measured height.
     *
     * @throws IllegalArgumentException when it is not above 0
     */
    record Height(Length height) implements FlapLength {
        public Height {
            if (!(height.mm() > 0)) {
                throw new IllegalArgumentException("a flap is higher than 0, not %s".formatted(height));
            }
        }
    }
}
