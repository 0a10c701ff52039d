package turnheel.engine.design;

import java.util.regex.Pattern;

/** How the designer says how many stitches are picked up along each side of a heel flap. */
public sealed interface PickUp {

    /**
     * Reads {@code half-the-rows} or {@code 0.75 stitches/row}; {@link #toString} gives the same text back.
     *
     * @throws IllegalArgumentException when the text is neither; the message quotes it and says what would do
     */
    static PickUp parse(String text) {
        String trimmed = text.strip();
        if (trimmed.equals(HalfTheRows.TEXT)) {
            return new HalfTheRows();
        }
        if (trimmed.endsWith(StitchesPerRow.UNIT)) {
            String ratio = trimmed.substring(0, trimmed.length() - StitchesPerRow.UNIT.length()).strip();
            if (StitchesPerRow.SHAPE.matcher(ratio).matches()) {
                return new StitchesPerRow(Double.parseDouble(ratio));
            }
        }
        throw new IllegalArgumentException(
                "\"%s\" is no pick-up along a flap; write half-the-rows or 0.75 stitches/row".formatted(trimmed));
    }

    /** One for every loop of the edge chain, which has one for two rows, and the corner stitches. */
    record HalfTheRows() implements PickUp {
        private static final String TEXT = "half-the-rows";

        @Override
        public String toString() {
            return TEXT;
        }
    }

    /**
     * Stitches as a share of the rows, corner included. A published table of fifteen sizes has 0.71 to 0.79.
     *
     * @throws IllegalArgumentException when the ratio is not 0.4 to 1
     */
    record StitchesPerRow(double ratio) implements PickUp {
        private static final String UNIT = "stitches/row";
        private static final Pattern SHAPE = Pattern.compile("\\d{1,3}(?:\\.\\d{1,6})?");

        public StitchesPerRow {
            if (!(ratio >= 0.4 && ratio <= 1)) {
                throw new IllegalArgumentException("along a flap 0.4 to 1 stitches are picked up for each row, not %s"
                        .formatted(ratio));
            }
        }

        @Override
        public String toString() {
            return QuantityText.number(ratio) + " " + UNIT;
        }
    }
}
