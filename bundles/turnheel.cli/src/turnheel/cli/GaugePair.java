package turnheel.cli;

import java.util.Optional;
import java.util.regex.Matcher;

import turnheel.engine.design.Gauge;
import turnheel.engine.design.Swatch;
import turnheel.model.Literals;
import turnheel.model.pattern.Pattern;

/** Stitch and round gauge as they are given together: {@code 32x44/10cm}, or {@code 8x11/1in}. */
record GaugePair(Gauge stitches, Gauge rounds) {

    private static final java.util.regex.Pattern SHAPE = java.util.regex.Pattern.compile(
            "\\s*([^\\s/]+?)\\s*[x×*]\\s*([^\\s/]+?)\\s*/\\s*(.+)");

    /** The gauge that the swatch shows. */
    private static final String OF_SWATCH = "swatch";

    static GaugePair of(Pattern document) {
        return new GaugePair(document.getStitchGauge(), document.getRoundGauge());
    }

    /**
     * The gauges that a text says.
     *
     * @param swatch what the word {@code swatch} takes them from
     */
    static GaugePair parse(String given, String value, Optional<Swatch> swatch) throws Refusal {
        if (value.strip().equals(OF_SWATCH)) {
            Swatch measured = swatch.filter(piece -> piece.measured().isPresent())
                    .orElseThrow(() -> new Refusal(Words.NO_MEASURED_SWATCH.with(given)));
            return new GaugePair(measured.stitchGauge().orElseThrow(), measured.roundGauge().orElseThrow());
        }
        Matcher matcher = SHAPE.matcher(value);
        if (!matcher.matches()) {
            throw new Refusal(Words.NOT_A_GAUGE.with(given, value));
        }
        try {
            return new GaugePair(Literals.gauge(matcher.group(1) + "/" + matcher.group(3)),
                    Literals.gauge(matcher.group(2) + "/" + matcher.group(3)));
        } catch (IllegalArgumentException refused) {
            throw new Refusal(Words.VALUE_REFUSED.with(given, refused.getMessage()));
        }
    }

    void writeTo(Pattern document) {
        document.setStitchGauge(stitches);
        document.setRoundGauge(rounds);
    }

    /** Both for a person. */
    String sentence() {
        return stitches.over().equals(rounds.over())
                ? Words.GAUGE_TOGETHER.with(count(stitches), count(rounds), stitches.over())
                : Words.GAUGE_APART.with(count(stitches), stitches.over(), count(rounds), rounds.over());
    }

    /** The count as it was written. */
    private static String count(Gauge gauge) {
        return gauge.toString().split("/", 2)[0];
    }

    /** Both in one where they were measured over the same length. */
    @Override
    public String toString() {
        return stitches.over().equals(rounds.over()) ? count(stitches) + "x" + rounds : stitches + ", " + rounds;
    }
}
