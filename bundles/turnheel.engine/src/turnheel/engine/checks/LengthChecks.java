package turnheel.engine.checks;

import static turnheel.engine.design.Catalogue.CUFF_HEIGHT;
import static turnheel.engine.design.Catalogue.CUFF_ROUNDS;
import static turnheel.engine.design.Catalogue.FOOT_MEASURE;
import static turnheel.engine.design.Catalogue.FOOT_PATTERN_LAST_ROW;
import static turnheel.engine.design.Catalogue.FOOT_ROUNDS;
import static turnheel.engine.design.Catalogue.GAUGE_CUFF;
import static turnheel.engine.design.Catalogue.GAUGE_ROUNDS;
import static turnheel.engine.design.Catalogue.LEG_MEASURE;
import static turnheel.engine.design.Catalogue.LEG_PATTERN_LAST_ROW;
import static turnheel.engine.design.Catalogue.LEG_ROUNDS;

import java.util.List;
import java.util.Optional;

import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.LengthMode;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;
import turnheel.engine.term.Notation;

/** Where the even stretches of one size end: domain §§ 4 and 7. */
final class LengthChecks {

    private static final double FURTHEST_ROUNDS = 0.5;
    /** Half a round is half a round, however the division came out. */
    private static final double SLACK = 1e-6;

    private final Design design;
    private final GradedSize size;
    private final Findings findings;

    LengthChecks(Design design, GradedSize size) {
        this.design = design;
        this.size = size;
        this.findings = new Findings(size.label());
    }

    List<Query> check() {
        if (isMeasured(design.lengths().foot())) {
            agree(FOOT_MEASURE, FOOT_ROUNDS, GAUGE_ROUNDS);
        }
        if (isMeasured(design.lengths().leg())) {
            agree(LEG_MEASURE, LEG_ROUNDS, GAUGE_ROUNDS);
        }
        // the leg is as high as the cuff's height leaves it, however the cuff is said
        agree(CUFF_HEIGHT, CUFF_ROUNDS, GAUGE_CUFF);
        patternEnds();
        return findings.queries();
    }

    /** Whether the measure of its rounds is printed; to fit, it is the wearer's own length. */
    private static boolean isMeasured(LengthMode mode) {
        return switch (mode) {
            case MEASURE, BOTH -> true;
            case ROUNDS, TO_FIT -> false;
        };
    }

    private void agree(Parameter measure, Parameter rounds, Parameter gauge) {
        if (size.cell(measure).isEmpty() || size.cell(rounds).isEmpty() || size.value(rounds) < 0) {
            return;
        }
        double apart = size.value(measure) * size.value(gauge) / 100 - size.value(rounds);
        if (Math.abs(apart) > FURTHEST_ROUNDS + SLACK) {
            double measured = size.value(rounds) * 100 / size.value(gauge);
            findings.add(Check.MEASURE_DIFFERS, measure, Notation.number(Findings.oneDecimal(measured)),
                    Findings.oneDecimal(size.value(measure)));
        }
    }

    /** A stitch pattern that goes on at the heel ends where the other part does. */
    private void patternEnds() {
        Optional<StitchPattern> foot = design.stitchPattern(Zone.INSTEP);
        Optional<StitchPattern> leg = design.stitchPattern(Zone.LEG);
        boolean goesOn = foot.equals(leg);
        boolean toeUp = design.direction() == Direction.TOE_UP;
        if (!(goesOn && toeUp)) {
            foot.ifPresent(pattern -> wholeRepeat(pattern, FOOT_PATTERN_LAST_ROW, FOOT_ROUNDS));
        }
        if (!goesOn || toeUp) {
            leg.ifPresent(pattern -> wholeRepeat(pattern, LEG_PATTERN_LAST_ROW, LEG_ROUNDS));
        }
    }

    private void wholeRepeat(StitchPattern pattern, Parameter last, Parameter rounds) {
        size.cell(last).filter(cell -> size.value(rounds) >= 0 && cell.value() != pattern.rows())
                .ifPresent(cell -> findings.add(Check.PATTERN_CUT, last, Notation.number(pattern.rows()), cell.value()));
    }
}
