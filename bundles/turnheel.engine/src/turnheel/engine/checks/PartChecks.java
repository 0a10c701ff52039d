package turnheel.engine.checks;

import static turnheel.engine.design.Catalogue.CUFF_STITCHES;
import static turnheel.engine.design.Catalogue.FOOT_INSTEP;
import static turnheel.engine.design.Catalogue.FOOT_ROUNDS;
import static turnheel.engine.design.Catalogue.FOOT_SOLE;
import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.HEEL_CENTRE;
import static turnheel.engine.design.Catalogue.HEEL_STITCHES;
import static turnheel.engine.design.Catalogue.LEG_ROUNDS;
import static turnheel.engine.design.Catalogue.LEG_STITCHES;
import static turnheel.engine.design.Catalogue.TOE_ALTERNATE_FROM;
import static turnheel.engine.design.Catalogue.TOE_CAST_ON;
import static turnheel.engine.design.Catalogue.TOE_DEPTH;
import static turnheel.engine.design.Catalogue.TOE_POINTS;
import static turnheel.engine.design.Catalogue.TOE_TIP;
import static turnheel.engine.design.Catalogue.WANTED_LENGTH;

import java.util.List;

import turnheel.engine.design.Design;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;
import turnheel.engine.term.Notation;

/** Toe, heel, foot, leg and cuff of one size: domain §§ 3–8. All usual ranges are <em>common practice</em>. */
final class PartChecks {

    private static final double SHALLOWEST_TOE_PERCENT = 18;
    private static final double DEEPEST_TOE_PERCENT = 30;
    private static final double NARROWEST_HEEL_PERCENT = 50;
    private static final double WIDEST_HEEL_PERCENT = 60;
    private static final int FEWEST_FOOT_ROUNDS = 4;
    private static final int NARROWEST_CENTRE = 2;
    private static final int SIDES = 2;
    private static final int UNEVENEST_SPLIT = 2;

    private final Design design;
    private final GradedSize size;
    private final Findings findings;

    PartChecks(Design design, GradedSize size) {
        this.design = design;
        this.size = size;
        this.findings = new Findings(size.label());
    }

    List<Query> check() {
        if (has(FOOT_STITCHES)) {
            toe();
            foot();
            heel();
            leg();
            cuff();
        }
        return findings.queries();
    }

    private boolean has(Parameter parameter) {
        return size.cell(parameter).isPresent();
    }

    private double value(Parameter parameter) {
        return size.value(parameter);
    }

    private void toe() {
        Parameter tip = switch (design.toe()) {
            case RoundToe toe -> {
                castOnSides();
                yield TOE_CAST_ON;
            }
            case WedgeToe toe -> TOE_TIP;
        };
        double foot = value(FOOT_STITCHES);
        double turn = value(TOE_ALTERNATE_FROM);
        if (value(tip) > foot) {
            findings.add(Check.TOE_ORDER, tip, Findings.range(tip.least(), foot), value(tip));
        } else if (turn < value(tip) || turn > foot) {
            findings.add(Check.TOE_ORDER, TOE_ALTERNATE_FROM, Findings.range(value(tip), foot), turn);
        }
        if (has(TOE_DEPTH) && has(WANTED_LENGTH)) {
            double share = value(TOE_DEPTH) / value(WANTED_LENGTH) * 100;
            if (share < SHALLOWEST_TOE_PERCENT || share > DEEPEST_TOE_PERCENT) {
                findings.add(Check.TOE_DEPTH, TOE_DEPTH, Findings.range(SHALLOWEST_TOE_PERCENT, DEEPEST_TOE_PERCENT),
                        Findings.oneDecimal(share));
            }
        }
    }

    /** A closed cast-on has two equal sides; a number that is no multiple of the lines either shows in the rounds. */
    private void castOnSides() {
        double castOn = value(TOE_CAST_ON);
        double lines = value(TOE_POINTS);
        if (castOn % lines == 0 && castOn % SIDES != 0) {
            findings.add(Check.OVERRIDE_BREAKS, TOE_CAST_ON, Multiples.of((int) lines * SIDES), castOn);
        }
    }

    private void foot() {
        if (has(FOOT_ROUNDS) && value(FOOT_ROUNDS) < FEWEST_FOOT_ROUNDS) {
            findings.add(Check.FOOT_SHORT, FOOT_ROUNDS, Notation.number(FEWEST_FOOT_ROUNDS), value(FOOT_ROUNDS));
        }
        double difference = Math.abs(value(FOOT_INSTEP) - value(FOOT_SOLE));
        if (difference > UNEVENEST_SPLIT && value(FOOT_SOLE) >= 0) {
            findings.add(Check.FOOT_SPLIT, FOOT_INSTEP, Notation.number(UNEVENEST_SPLIT), difference);
        }
    }

    private void heel() {
        double heel = value(HEEL_STITCHES);
        double share = heel / value(FOOT_STITCHES) * 100;
        if (heel > value(FOOT_STITCHES)) {
            findings.add(Check.HEEL_TOO_WIDE, HEEL_STITCHES, Notation.number(value(FOOT_STITCHES)), heel);
        } else if (share < NARROWEST_HEEL_PERCENT || share > WIDEST_HEEL_PERCENT) {
            findings.add(Check.HEEL_SHARE, HEEL_STITCHES, Findings.range(NARROWEST_HEEL_PERCENT, WIDEST_HEEL_PERCENT),
                    Findings.oneDecimal(share));
        }
        switch (design.heel()) {
            case ShortRowHeel shortRow -> {
                double centre = value(HEEL_CENTRE);
                if (centre < NARROWEST_CENTRE) {
                    findings.add(Check.HEEL_CENTRE, HEEL_CENTRE, Notation.number(NARROWEST_CENTRE), centre);
                } else if (centre > heel - SIDES) {
                    findings.add(Check.HEEL_CENTRE_WIDE, HEEL_CENTRE, Notation.number(heel - SIDES), centre);
                }
            }
        }
    }

    private void leg() {
        if (has(LEG_ROUNDS) && value(LEG_ROUNDS) < 0) {
            findings.add(Check.LEG_SHORT, LEG_ROUNDS, "0", value(LEG_ROUNDS));
        }
        changeOver(value(FOOT_STITCHES), LEG_STITCHES);
    }

    private void cuff() {
        switch (design.cuff()) {
            case RibCuff rib -> {
                double stitches = value(CUFF_STITCHES);
                if (stitches % rib.repeat() != 0 || stitches < rib.repeat()) {
                    findings.add(Check.CUFF_REPEAT, CUFF_STITCHES, Multiples.of(rib.repeat()), stitches);
                } else {
                    changeOver(value(LEG_STITCHES), CUFF_STITCHES);
                }
            }
        }
    }

    /** A round can make one stitch of every strand, or one of every two stitches. */
    private void changeOver(double from, Parameter to) {
        double fewest = Math.ceil(from / 2);
        double most = 2 * from;
        if (value(to) < fewest || value(to) > most) {
            findings.add(Check.CHANGE_OVER, to, Findings.range(fewest, most), value(to));
        }
    }
}
