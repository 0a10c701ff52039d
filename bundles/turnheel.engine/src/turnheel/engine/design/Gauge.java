package turnheel.engine.design;

/**
 * A gauge as it was measured: {@code count} stitches or rounds over {@code over}. Stored, never converted.
 *
 * @throws IllegalArgumentException outside 4 to 200 per 100 mm; the thickest hand yarns give about 5 stitches, the
 *     finest thread about 120 rounds (range from memory, wide on purpose). Below 1 stitch an inch a gauge could not be told
 *     from a fraction of an inch
 */
public record Gauge(double count, Length over) implements Quantity {

    /** The length that counts are compared over: 100 mm. */
    public static final double SPAN_MM = 100;
    private static final double FEWEST = 4;
    private static final double MOST = 200;

    public Gauge {
        if (!(over.mm() > 0)) {
            throw new IllegalArgumentException("a gauge is measured over a length above 0, not over " + over);
        }
        double density = count * SPAN_MM / over.mm();
        if (!(density >= FEWEST && density <= MOST)) {
            throw new IllegalArgumentException(
                    "a gauge of %s over %s is %s per 10 cm; it must lie between %s and %s".formatted(
                            QuantityText.number(count), over, QuantityText.number(Math.round(density * 10) / 10.0),
                            QuantityText.number(FEWEST), QuantityText.number(MOST)));
        }
    }

    /** The count per 100 mm, unrounded. */
    public double per100mm() {
        return count * SPAN_MM / over.mm();
    }

    @Override
    public double inside() {
        return per100mm();
    }

    @Override
    public String toString() {
        return QuantityText.number(count) + "/" + over;
    }
}
