package turnheel.engine.design;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A piece of the main fabric, knitted with the main yarn at the pattern's gauge: measured, weighed, or both.
 *
 * @param stitches its width, at least 1
 * @param rounds its height, at least 1
 * @param grams its weight without yarn ends, above 0, at most 10 000; empty when it was not weighed
 * @param measured how large it is; empty when it was not measured
 * @param worked how it was knitted
 * @param washed whether it was washed and dried before it was measured
 * @throws IllegalArgumentException outside these ranges, or when it was neither weighed nor measured
 */
public record Swatch(int stitches, int rounds, OptionalDouble grams, Optional<Measured> measured, Worked worked,
        boolean washed) {

    /** How a swatch is knitted; fabric worked flat often has another gauge than the same yarn in the round. */
    public enum Worked {
        IN_THE_ROUND, FLAT
    }

    /**
     * What the stitches and rounds of a swatch measure.
     *
     * @throws IllegalArgumentException unless both are above 0
     */
    public record Measured(Length width, Length height) {
        public Measured {
            if (!(width.mm() > 0 && height.mm() > 0)) {
                throw new IllegalArgumentException("a swatch measures above 0 each way, not %s × %s".formatted(width,
                        height));
            }
        }
    }

    public Swatch {
        if (stitches < 1 || rounds < 1) {
            throw new IllegalArgumentException("a swatch has at least 1 stitch and 1 round, not %d and %d"
                    .formatted(stitches, rounds));
        }
        if (grams.isPresent() && !(grams.getAsDouble() > 0 && grams.getAsDouble() <= Materials.MOST)) {
            throw new IllegalArgumentException("a swatch must weigh above 0 and at most %s g, not %s".formatted(
                    QuantityText.number(Materials.MOST), grams.getAsDouble()));
        }
        if (grams.isEmpty() && measured.isEmpty()) {
            throw new IllegalArgumentException("a swatch is measured or weighed, or nothing is known from it");
        }
        // a gauge that no fabric has is refused here and now
        measured.ifPresent(size -> {
            new Gauge(stitches, size.width());
            new Gauge(rounds, size.height());
        });
    }

    /** A piece that was weighed and not measured. */
    public static Swatch weighed(int stitches, int rounds, double grams) {
        return new Swatch(stitches, rounds, OptionalDouble.of(grams), Optional.empty(), Worked.IN_THE_ROUND, false);
    }

    /** The loops that were weighed. */
    public double loops() {
        return (double) stitches * rounds;
    }

    /** The stitch gauge that it shows, where it was measured. */
    public Optional<Gauge> stitchGauge() {
        return measured.map(size -> new Gauge(stitches, size.width()));
    }

    /** The round gauge that it shows, where it was measured. */
    public Optional<Gauge> roundGauge() {
        return measured.map(size -> new Gauge(rounds, size.height()));
    }
}
