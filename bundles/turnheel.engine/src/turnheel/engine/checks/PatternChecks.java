package turnheel.engine.checks;

import static turnheel.engine.design.Catalogue.FOOT_LENGTH;
import static turnheel.engine.design.Catalogue.FOOT_PANEL;
import static turnheel.engine.design.Catalogue.GAUGE_INSTEP;
import static turnheel.engine.design.Catalogue.GAUGE_LEG;
import static turnheel.engine.design.Catalogue.GAUGE_STITCHES;
import static turnheel.engine.design.Catalogue.LEG_STITCHES;

import java.util.List;

import turnheel.engine.design.Design;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;
import turnheel.engine.term.Notation;

/** The stitch patterns of one size. */
final class PatternChecks {

    /** Beyond this a float sags or draws in, whatever the gauge: <em>common practice</em>. */
    private static final int LONGEST_FLOAT_STITCHES = 5;
    /** Beyond this a toe is caught: <em>common practice</em>. */
    private static final double LONGEST_FLOAT_MM = 25;
    private static final double LONGEST_CHILDS_FLOAT_MM = 20;
    /** Feet up to this length are a child's, as for the ease in length: domain § 1. */
    private static final double CHILDS_FOOT_MM = 200;
    private static final double TOLERANCE = 1e-9;

    private final Design design;
    private final GradedSize size;
    private final Findings findings;

    PatternChecks(Design design, GradedSize size) {
        this.design = design;
        this.size = size;
        this.findings = new Findings(size.label());
    }

    List<Query> check() {
        design.stitchPatterns().forEach(this::floats);
        return findings.queries();
    }

    private void floats(StitchPattern pattern) {
        switch (pattern.zone()) {
            case INSTEP -> floats(pattern, FOOT_PANEL, GAUGE_INSTEP);
            case LEG -> floats(pattern, LEG_STITCHES, GAUGE_LEG);
            // one chart all over: it is said once, where the foot is shown
            case ALL -> floats(pattern, FOOT_PANEL, GAUGE_INSTEP);
        }
    }

    private void floats(StitchPattern pattern, Parameter row, Parameter gauge) {
        if (pattern.stranding().isEmpty() || pattern.stranding().get().longestFloat().isEmpty()
                || size.cell(row).isEmpty()) {
            return;
        }
        int stitches = pattern.stranding().get().longestFloat().getAsInt();
        double per100mm = size.cell(gauge).or(() -> size.cell(GAUGE_STITCHES)).orElseThrow().value();
        int most = (int) Math.min(LONGEST_FLOAT_STITCHES, Math.floor(longestMm() * per100mm / 100 + TOLERANCE));
        if (stitches > most) {
            findings.add(Check.FLOAT_LONG, row, Notation.number(most), stitches);
        }
    }

    private double longestMm() {
        return size.cell(FOOT_LENGTH).filter(cell -> cell.value() <= CHILDS_FOOT_MM).isPresent() ? LONGEST_CHILDS_FLOAT_MM
                : LONGEST_FLOAT_MM;
    }
}
