package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.EASE_REACHED;
import static turnheel.engine.design.Catalogue.FINISHED_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.FOOT_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.FOOT_STITCHES;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

import turnheel.engine.design.Design;
import turnheel.engine.design.Parameter;
import turnheel.engine.term.Key;
import turnheel.engine.term.Term;

/**
 * A pattern over gauge and size, for knitters whose gauge is not the printed one: the counts that each size would
 * have been given, what the printed counts come to, and which of them fits whose foot.
 *
 * @param rows by rising gauge, from a fifth below the printed gauge to a fifth above
 */
public record GaugeTable(List<Row> rows) {

    /** How far the gauges reach: beyond a fifth the fabric is another one. <em>Common practice.</em> */
    public static final double REACH = 0.2;
    /** How many gauges stand on either side of the printed one, at most: a table must fit a page. */
    private static final int MOST_A_SIDE = 8;
    /** Steps that a person measures in, stitches over 100 mm; the last is wide enough for every gauge there is. */
    private static final List<BigDecimal> STEPS = List.of(new BigDecimal("0.1"), new BigDecimal("0.2"),
            new BigDecimal("0.5"), BigDecimal.ONE, BigDecimal.TWO, BigDecimal.valueOf(5));
    /** No swatch tells gauges apart that differ by less than this share of a step. */
    private static final double TOO_NEAR = 0.25;

    public GaugeTable {
        rows = List.copyOf(rows);
    }

    /**
     * One gauge.
     *
     * @param stitches over 100 mm
     * @param isPrinted whether it is the pattern's own
     * @param sizes in the order of the pattern
     */
    public record Row(double stitches, boolean isPrinted, List<AtGauge> sizes) {
        public Row {
            sizes = List.copyOf(sizes);
        }
    }

    /**
     * One size at one gauge.
     *
     * @param size its label
     * @param regraded the count that the pattern would give it at this gauge, with the ease that it asks for there;
     *     empty when the size is not measured, or no count near its ideal suits all parts
     * @param printed what its printed count comes to; empty when it has none
     * @param closest whose printed counts come closest to this size's foot; empty when that foot is unknown, or
     *     no size has numbers
     */
    public record AtGauge(String size, Optional<SizeFit> regraded, Optional<Printed> printed,
            Optional<Closest> closest) {
    }

    /**
     * The printed count of a size, knitted at another gauge.
     *
     * @param circumferenceMm finished, around the foot
     * @param fitsFootMm the circumference of the foot that it fits with the ease that the size asks for
     */
    public record Printed(double circumferenceMm, double fitsFootMm) {
    }

    /**
     * The size to knit.
     *
     * @param size its label
     * @param easePercent finished circumference against the foot's; negative is smaller than the foot
     */
    public record Closest(String size, double easePercent) {
    }

    /** The table of a graded pattern; the same pattern gives the same table. */
    public static GaugeTable of(Graded graded) {
        double own = graded.design().stitchGauge().per100mm();
        return new GaugeTable(gauges(own).stream().filter(stitches -> new OtherGauge(graded, stitches).isPossible())
                .map(stitches -> row(graded, stitches, stitches == own)).toList());
    }

    /**
     * Whole steps around the printed gauge, and itself. Of the steps 0.1, 0.2, 0.5, 1, 2 and 5 it is the finest that
     * needs no more than eight on a side: ½ above 8 stitches over 100 mm, 1 above 20, 2 above 40.
     */
    static List<Double> gauges(double printed) {
        BigDecimal step = STEPS.stream()
                .filter(width -> REACH * printed / width.doubleValue() <= MOST_A_SIDE + Term.MARGIN)
                .findFirst().orElse(STEPS.getLast());
        List<Double> gauges = new ArrayList<>(List.of(printed));
        BigDecimal first = BigDecimal.valueOf(printed * (1 - REACH) - Term.MARGIN)
                .divide(step, 0, RoundingMode.CEILING).multiply(step);
        for (BigDecimal gauge = first; gauge.doubleValue() <= printed * (1 + REACH) + Term.MARGIN;
                gauge = gauge.add(step)) {
            if (Math.abs(gauge.doubleValue() - printed) >= TOO_NEAR * step.doubleValue()) {
                gauges.add(gauge.doubleValue());
            }
        }
        gauges.sort(Comparator.naturalOrder());
        return gauges;
    }

    private static Row row(Graded graded, double stitches, boolean isPrinted) {
        OtherGauge gauge = new OtherGauge(graded, stitches);
        Map<String, SizeFit> regraded = regraded(gauge.design());
        List<AtGauge> sizes = graded.sizes().stream().map(size -> {
            // what is printed stands in print, whether it suits or not
            Optional<SizeFit> fit = gauge.isThatOf(size) ? fit(size) : Optional.ofNullable(regraded.get(size.label()));
            Optional<Closest> closest = size.cell(FOOT_CIRCUMFERENCE)
                    .flatMap(foot -> closest(graded, stitches, foot.value()));
            return new AtGauge(size.label(), fit, printed(size, stitches), closest);
        }).toList();
        return new Row(stitches, isPrinted, sizes);
    }

    /** What the solver gives the sizes that have a count which suits all parts, by their labels. */
    private static Map<String, SizeFit> regraded(Design design) {
        CountWishes wishes = CountWishes.of(design);
        CountAnswer answer = CountSolver.solve(wishes.sizes());
        List<String> without = switch (answer) {
            case CountAnswer.Counts counts -> List.of();
            case CountAnswer.Unsolvable unsolvable -> unsolvable.sizes();
        };
        return wishes.fits(answer.perSize()).stream().filter(fit -> !without.contains(fit.size()))
                .collect(Collectors.toMap(SizeFit::size, Function.identity()));
    }

    private static Optional<SizeFit> fit(GradedSize size) {
        return has(size, FOOT_STITCHES, FINISHED_CIRCUMFERENCE, EASE_REACHED)
                ? Optional.of(new SizeFit(size.label(), (int) Math.rint(size.value(FOOT_STITCHES)),
                        size.value(FINISHED_CIRCUMFERENCE), size.value(EASE_REACHED)))
                : Optional.empty();
    }

    private static boolean has(GradedSize size, Parameter... parameters) {
        return List.of(parameters).stream().allMatch(parameter -> size.cell(parameter).isPresent());
    }

    private static Optional<Printed> printed(GradedSize size, double stitches) {
        double circumference = evaluate(KnitterRules.CIRCUMFERENCE, size, stitches, Double.NaN);
        double fits = evaluate(KnitterRules.FITS, size, stitches, Double.NaN);
        return Double.isFinite(fits) ? Optional.of(new Printed(circumference, fits)) : Optional.empty();
    }

    /**
     * The size whose printed counts come closest to a foot, by {@link KnitterRules#OFF}; of two as near the first one,
     * which is the snugger as a rule. Empty when no size has numbers.
     *
     * @param stitches the knitter's gauge over 100 mm
     * @param footMm circumference of the knitter's foot
     */
    public static Optional<Closest> closest(Graded graded, double stitches, double footMm) {
        return graded.sizes().stream().filter(size -> printed(size, stitches).isPresent())
                .min(Comparator.comparingDouble(size -> evaluate(KnitterRules.OFF, size, stitches, footMm)))
                .map(size -> new Closest(size.label(), evaluate(KnitterRules.EASE, size, stitches, footMm)));
    }

    private static double evaluate(Term rule, GradedSize size, double stitches, double foot) {
        return rule.evaluate((Key key) -> {
            if (key.equals(KnitterRules.GAUGE)) {
                return stitches;
            }
            return key.equals(KnitterRules.FOOT) ? foot : size.cell(key).map(Cell::value).orElse(Double.NaN);
        });
    }
}
