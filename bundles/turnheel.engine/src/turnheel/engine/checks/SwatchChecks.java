package turnheel.engine.checks;

import static turnheel.engine.design.Catalogue.GAUGE_ROUNDS;
import static turnheel.engine.design.Catalogue.GAUGE_STITCHES;

import java.util.List;
import java.util.Optional;

import turnheel.engine.design.Gauge;
import turnheel.engine.design.Materials;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Swatch;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;
import turnheel.engine.term.Notation;

/**
 * Whether the gauge of the pattern is that of its swatch. A size with a gauge of its own has another needle, and another
 * swatch.
 */
final class SwatchChecks {

    /** One stitch in thirty-three: what a ruler on knitted fabric can tell, <em>common practice</em>. */
    private static final double FURTHEST_PERCENT = 3;

    private final Materials materials;
    private final GradedSize size;
    private final Findings findings;

    SwatchChecks(Materials materials, GradedSize size) {
        this.materials = materials;
        this.size = size;
        this.findings = new Findings(size.label());
    }

    List<Query> check() {
        compare(materials.swatch().flatMap(Swatch::stitchGauge), GAUGE_STITCHES);
        compare(materials.swatch().flatMap(Swatch::roundGauge), GAUGE_ROUNDS);
        return findings.queries();
    }

    private void compare(Optional<Gauge> ofSwatch, Parameter gauge) {
        if (ofSwatch.isEmpty() || size.size().inputs().containsKey(gauge.key())) {
            return;
        }
        double measured = ofSwatch.get().per100mm();
        double worked = size.value(gauge);
        if (Math.abs(worked - measured) > measured * FURTHEST_PERCENT / 100) {
            findings.add(Check.SWATCH_DIFFERS, gauge, Notation.number(Findings.oneDecimal(measured)),
                    Findings.oneDecimal(worked));
        }
    }
}
