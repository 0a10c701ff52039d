package turnheel.engine.design;

import java.util.regex.Pattern;

/** How the designer says how long a heel flap is. */
public sealed interface FlapLength {

    /**
     * Reads {@code from-body}, {@code 1.25 rows/stitch} or a height such as {@code 60 mm}; {@link #toString} gives the same
     * text back.
     *
     * @throws IllegalArgumentException when the text is none of these; the message quotes it and says what would do
     */
    static FlapLength parse(String text) {
        String trimmed = text.strip();
        if (trimmed.equals(FromBody.TEXT)) {
            return new FromBody();
        }
        if (trimmed.endsWith(RowsPerStitch.UNIT)) {
            String ratio = trimmed.substring(0, trimmed.length() - RowsPerStitch.UNIT.length()).strip();
            if (RowsPerStitch.SHAPE.matcher(ratio).matches()) {
                return new RowsPerStitch(Double.parseDouble(ratio));
            }
        } else if (trimmed.contains("m") || trimmed.contains("in")) {
            if (Quantity.parse(trimmed) instanceof Length height) {
                return new Height(height);
            }
        }
        throw new IllegalArgumentException(
                "\"%s\" is not the length of a flap; write from-body, 1.25 rows/stitch or 60 mm".formatted(trimmed));
    }

    /** As long as the heel circumference asks for, within the usual share of the foot. */
    record FromBody() implements FlapLength {
        private static final String TEXT = "from-body";

        @Override
        public String toString() {
            return TEXT;
        }
    }

    /**
     * Rows as a multiple of the flap's stitches; 1 is a square flap in slipped stitches.
     *
     * @throws IllegalArgumentException when the ratio is not 0.4 to 2
     */
    record RowsPerStitch(double ratio) implements FlapLength {
        private static final String UNIT = "rows/stitch";
        private static final Pattern SHAPE = Pattern.compile("\\d{1,3}(?:\\.\\d{1,6})?");

        public RowsPerStitch {
            if (!(ratio >= 0.4 && ratio <= 2)) {
                throw new IllegalArgumentException("a flap has 0.4 to 2 rows for each of its stitches, not %s".formatted(ratio));
            }
        }

        @Override
        public String toString() {
            return QuantityText.number(ratio) + " " + UNIT;
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

        @Override
        public String toString() {
            return height.toString();
        }
    }
}
