package turnheel.engine.checks;

import static turnheel.engine.design.Catalogue.CUFF_STITCHES;
import static turnheel.engine.design.Catalogue.EASE_REACHED;
import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.GAUGE_STITCHES;
import static turnheel.engine.design.Catalogue.HEEL_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.LEG_STITCHES;
import static turnheel.engine.design.Catalogue.STRETCH;

import java.util.List;

import turnheel.engine.design.Design;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;
import turnheel.engine.term.Notation;

/** How one size sits on the foot: domain §§ 1, 6 and 11. Judged by the counts reached, not by the ease asked for. */
final class FitChecks {

    /** Tutorials ask for 0 to 15 % less than the foot, most of them for 10: reference table of trade practice. */
    private static final double TIGHTEST_USUAL_PERCENT = -15;
    private static final double LOOSEST_USUAL_PERCENT = 0;
    private static final double HARMFUL_PERCENT = -20;
    /** How far fabric goes over the heel before it is forced: <em>common practice</em>. */
    private static final double PLAIN_STRETCH = 1.6;
    private static final double RIB_STRETCH = 1.8;

    /** Floats hold the fabric: <em>common practice</em>. */
    private static final double STRANDED_STRETCH = 1.3;

    private final Design design;
    private final GradedSize size;
    private final Findings findings;

    FitChecks(Design design, GradedSize size) {
        this.design = design;
        this.size = size;
        this.findings = new Findings(size.label());
    }

    List<Query> check() {
        size.cell(EASE_REACHED).ifPresent(cell -> ease(Findings.oneDecimal(cell.value())));
        size.cell(STRETCH).ifPresent(cell -> stretch());
        return findings.queries();
    }

    private void ease(double percent) {
        if (percent < HARMFUL_PERCENT) {
            findings.add(Check.TIGHT, EASE_REACHED, Notation.number(HARMFUL_PERCENT), -percent);
        } else if (percent < TIGHTEST_USUAL_PERCENT || percent > LOOSEST_USUAL_PERCENT) {
            findings.add(Check.EASE, EASE_REACHED,
                    Notation.number(TIGHTEST_USUAL_PERCENT) + " … " + Notation.number(LOOSEST_USUAL_PERCENT), percent);
        }
    }

    /** The heel passes down the leg; a stitch pattern on the instep alone lies beside its way. */
    private void stretch() {
        boolean strandedLeg = design.stitchPattern(Zone.LEG).filter(pattern -> pattern.stranding().isPresent()).isPresent();
        boolean tooFar = strandedLeg && stretch(size.value(LEG_STITCHES), STRANDED_STRETCH)
                || stretch(Math.min(size.value(FOOT_STITCHES), size.value(LEG_STITCHES)), PLAIN_STRETCH);
        if (!tooFar) {
            stretch(size.value(CUFF_STITCHES), RIB_STRETCH);
        }
    }

    /** Whether the sock is forced over the heel at a place of so many stitches; one such place is said, not every one. */
    private boolean stretch(double stitches, double limit) {
        double needed = size.value(HEEL_CIRCUMFERENCE) * size.value(GAUGE_STITCHES) / (100 * stitches);
        if (needed > limit) {
            findings.add(Check.STRETCH, STRETCH, Notation.number(limit), Findings.beyond(needed, 2, limit));
        }
        return needed > limit;
    }
}
