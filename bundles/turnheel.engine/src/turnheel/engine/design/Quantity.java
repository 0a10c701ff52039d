package turnheel.engine.design;

/**
 * A number with its unit, kept as a person wrote it. {@link #toString} gives the same text back in its shortest form,
 * and {@link #parse} reads it; pattern files hold that text.
 */
public sealed interface Quantity permits Count, Length, Share, Gauge {

    /**
     * The number that rules work with: a count as it is, millimetres of a length, per cent of a share, stitches or
     * rounds per 100 mm of a gauge. Unrounded.
     */
    double inside();

    /**
     * Reads {@code 64}, {@code 240 mm}, {@code 24.5cm}, {@code 9 1/2 in}, {@code -10 %} or {@code 32/10 cm}.
     *
     * @throws IllegalArgumentException when the text is none of these; the message quotes it and says what would do
     */
    static Quantity parse(String text) {
        return QuantityText.parse(text);
    }
}
