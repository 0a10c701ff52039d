package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.GAUGE_ROUNDS;
import static turnheel.engine.design.Catalogue.GAUGE_STITCHES;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.Gauge;
import turnheel.engine.design.Length;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.Size;
import turnheel.engine.design.Unit;
import turnheel.engine.term.Key;

/**
 * A design as its designer would have begun it at another stitch gauge: every gauge of a size changes in the same
 * ratio, bodies and what was asked for in ease, lengths and lines of a toe stay. Counts that the designer set belong
 * to the printed gauge and are left to the rules elsewhere.
 */
final class OtherGauge {

    /** Gauges that differ by less are the same, however they were measured. */
    private static final double SAME = 1e-9;

    private final Graded printed;
    private final double stitches;

    /** @param stitches over 100 mm, of the main fabric, in every size */
    OtherGauge(Graded printed, double stitches) {
        this.printed = printed;
        this.stitches = stitches;
    }

    /** Whether a size is printed at this gauge. */
    boolean isThatOf(GradedSize size) {
        return Math.abs(size.value(GAUGE_STITCHES) - stitches) < SAME;
    }

    /** Whether all gauges of all sizes then lie within their ranges. */
    boolean isPossible() {
        return printed.sizes().stream().allMatch(size -> size.cells().values().stream()
                .filter(cell -> cell.parameter().unit() == Unit.PER_100_MM)
                .allMatch(cell -> isInRange(cell.parameter(), cell.value() * ratio(size))));
    }

    private static boolean isInRange(Parameter gauge, double value) {
        return value >= gauge.least() && value <= gauge.most();
    }

    private double ratio(GradedSize size) {
        return stitches / size.value(GAUGE_STITCHES);
    }

    /** The design at this gauge. Must be {@linkplain #isPossible possible}. */
    Design design() {
        Design design = printed.design();
        return new Design(design.title(), design.direction(), design.stitchGauge(), design.roundGauge(), design.toe(),
                design.heel(), design.leg(), design.cuff(), design.stitchPatterns(), design.materials(),
                design.lengths(), printed.sizes().stream().map(this::size).toList(), List.of());
    }

    private Size size(GradedSize graded) {
        Size size = graded.size();
        if (isThatOf(graded)) {
            return size;
        }
        Map<Key, Quantity> inputs = new LinkedHashMap<>(size.inputs());
        List<Key> gauges = new ArrayList<>(List.of(GAUGE_ROUNDS.key()));
        size.inputs().keySet().stream().filter(key -> Catalogue.parameter(key).unit() == Unit.PER_100_MM)
                .forEach(gauges::add);
        for (Key gauge : gauges) {
            // a gauge of a part that the pattern does not have is no number of the size
            graded.cell(gauge).ifPresent(cell -> inputs.put(gauge, per100mm(cell.value() * ratio(graded))));
        }
        inputs.put(GAUGE_STITCHES.key(), per100mm(stitches));
        Map<Key, Quantity> overrides = new LinkedHashMap<>(size.overrides());
        overrides.keySet().removeIf(key -> isCounted(Catalogue.parameter(key).unit()));
        return new Size(size.id(), size.label(), inputs, overrides);
    }

    private static Gauge per100mm(double count) {
        return new Gauge(count, Length.ofMm(Gauge.SPAN_MM));
    }

    /** Whether a number of this unit grows with the gauge. */
    private static boolean isCounted(Unit unit) {
        return switch (unit) {
            case STITCHES, ROUNDS, ROWS, TIMES, IDEAL_STITCHES, LOOPS, PLAIN_LOOPS -> true;
            case LINES, MILLIMETRES, PERCENT, PER_100_MM, RATIO, METRES, GRAMS, TEX, BALLS, NUMBER -> false;
        };
    }
}
