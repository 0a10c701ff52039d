package turnheel.engine.checks;

import static turnheel.engine.design.Catalogue.CUFF_STITCHES;
import static turnheel.engine.design.Catalogue.FOOT_FEWEST;
import static turnheel.engine.design.Catalogue.FOOT_INSTEP;
import static turnheel.engine.design.Catalogue.FOOT_ROUNDS;
import static turnheel.engine.design.Catalogue.FOOT_SOLE;
import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.GAUGE_STITCHES;
import static turnheel.engine.design.Catalogue.HEEL_AFTER_PICK_UP;
import static turnheel.engine.design.Catalogue.HEEL_ALTERNATE_FROM;
import static turnheel.engine.design.Catalogue.HEEL_CENTRE;
import static turnheel.engine.design.Catalogue.HEEL_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.HEEL_FLAP_ROWS;
import static turnheel.engine.design.Catalogue.HEEL_GUSSET_INCREASES;
import static turnheel.engine.design.Catalogue.HEEL_PICK_UP;
import static turnheel.engine.design.Catalogue.HEEL_STITCHES;
import static turnheel.engine.design.Catalogue.HEEL_TIP;
import static turnheel.engine.design.Catalogue.HEEL_TURN_OFFSET;
import static turnheel.engine.design.Catalogue.LEG_INCREASES;
import static turnheel.engine.design.Catalogue.LEG_INCREASE_OVER;
import static turnheel.engine.design.Catalogue.LEG_ROUNDS;
import static turnheel.engine.design.Catalogue.LEG_STITCHES;
import static turnheel.engine.design.Catalogue.LEG_TOP;
import static turnheel.engine.design.Catalogue.TOE_ALTERNATE;
import static turnheel.engine.design.Catalogue.TOE_ALTERNATE_FROM;
import static turnheel.engine.design.Catalogue.TOE_CAST_ON;
import static turnheel.engine.design.Catalogue.TOE_CENTRE;
import static turnheel.engine.design.Catalogue.TOE_DEPTH;
import static turnheel.engine.design.Catalogue.TOE_EVERY_ROUND;
import static turnheel.engine.design.Catalogue.TOE_POINTS;
import static turnheel.engine.design.Catalogue.TOE_SECOND_LINE_AFTER;
import static turnheel.engine.design.Catalogue.TOE_SECTIONS_FROM;
import static turnheel.engine.design.Catalogue.TOE_STITCHES;
import static turnheel.engine.design.Catalogue.TOE_TIP;
import static turnheel.engine.design.Catalogue.WANTED_LENGTH;

import java.util.List;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.AsymmetricToe;
import turnheel.engine.design.CalfLeg;
import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.HeelTurn;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.ShortRowToe;
import turnheel.engine.design.StarToe;
import turnheel.engine.design.StraightLeg;
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
    private static final int FEWEST_SECTION_STITCHES = 2;
    private static final double WORN_STRETCH = 1.25;
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
        switch (design.toe()) {
            case RoundToe toe -> {
                castOnSides();
                taper(TOE_CAST_ON, TOE_ALTERNATE_FROM, FOOT_STITCHES);
            }
            case WedgeToe toe -> taper(TOE_TIP, TOE_ALTERNATE_FROM, FOOT_STITCHES);
            case AsymmetricToe toe -> {
                taper(TOE_TIP, TOE_ALTERNATE_FROM, FOOT_STITCHES);
                secondLine();
            }
            case StarToe toe -> sections();
            case ShortRowToe toe -> centre(TOE_CENTRE, TOE_STITCHES);
        }
        if (has(TOE_DEPTH) && has(WANTED_LENGTH)) {
            double share = value(TOE_DEPTH) / value(WANTED_LENGTH) * 100;
            if (share < SHALLOWEST_TOE_PERCENT || share > DEEPEST_TOE_PERCENT) {
                findings.add(Check.TOE_DEPTH, TOE_DEPTH, Findings.range(SHALLOWEST_TOE_PERCENT, DEEPEST_TOE_PERCENT),
                        Findings.oneDecimal(share));
            }
        }
    }

    private void taper(Parameter tip, Parameter turn, Parameter widest) {
        double most = value(widest);
        if (value(tip) > most) {
            findings.add(Check.TOE_ORDER, tip, Findings.range(tip.least(), most), value(tip));
        } else if (value(turn) < value(tip) || value(turn) > most) {
            findings.add(Check.TOE_ORDER, turn, Findings.range(value(tip), most), value(turn));
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

    private void secondLine() {
        double shaped = value(TOE_EVERY_ROUND) + value(TOE_ALTERNATE);
        if (value(TOE_SECOND_LINE_AFTER) > shaped) {
            findings.add(Check.TOE_ORDER, TOE_SECOND_LINE_AFTER, Findings.range(0, shaped), value(TOE_SECOND_LINE_AFTER));
        }
    }

    private void sections() {
        if (value(TOE_SECTIONS_FROM) < FEWEST_SECTION_STITCHES * value(TOE_POINTS)) {
            findings.add(Check.TOE_ORDER, TOE_POINTS,
                    Findings.range(2, Math.floor(value(FOOT_STITCHES) / FEWEST_SECTION_STITCHES)), value(TOE_POINTS));
        }
    }

    private void centre(Parameter centre, Parameter of) {
        double most = value(of) - SIDES;
        if (value(centre) < NARROWEST_CENTRE) {
            findings.add(Check.HEEL_CENTRE, centre, Notation.number(NARROWEST_CENTRE), value(centre));
        } else if (value(centre) > most) {
            findings.add(Check.HEEL_CENTRE_WIDE, centre, Notation.number(most), value(centre));
        }
    }

    private void foot() {
        if (has(FOOT_ROUNDS) && has(FOOT_FEWEST) && value(FOOT_ROUNDS) < value(FOOT_FEWEST)) {
            findings.add(Check.FOOT_SHORT, FOOT_ROUNDS, Notation.number(value(FOOT_FEWEST)), value(FOOT_ROUNDS));
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
            case ShortRowHeel shortRow -> centre(HEEL_CENTRE, HEEL_STITCHES);
            case FlapHeel flap -> flap(flap.turn());
            case AfterthoughtHeel afterthought -> taper(HEEL_TIP, HEEL_ALTERNATE_FROM, HEEL_PICK_UP);
        }
    }

    private void flap(HeelTurn turn) {
        if (value(HEEL_FLAP_ROWS) % 2 != 0) {
            findings.add(Check.FLAP_ROWS, HEEL_FLAP_ROWS, Multiples.of(2), value(HEEL_FLAP_ROWS));
        }
        if (design.direction() == Direction.TOE_UP) {
            centre(HEEL_CENTRE, HEEL_STITCHES);
            if (value(HEEL_GUSSET_INCREASES) < 1) {
                findings.add(Check.GUSSET_NONE, HEEL_GUSSET_INCREASES, "1", value(HEEL_GUSSET_INCREASES));
            }
            double joined = 2 * value(HEEL_GUSSET_INCREASES);
            if (value(HEEL_FLAP_ROWS) != joined) {
                findings.add(Check.GUSSET_LEFT, HEEL_FLAP_ROWS, Notation.number(joined), value(HEEL_FLAP_ROWS));
            }
            return;
        }
        switch (turn) {
            case ROUND -> {
                double widestOffset = Math.floor(value(HEEL_STITCHES) / 2) - 3;
                if (value(HEEL_TURN_OFFSET) > widestOffset) {
                    findings.add(Check.TURN_NARROW, HEEL_TURN_OFFSET, Findings.range(0, widestOffset),
                            value(HEEL_TURN_OFFSET));
                }
            }
            case SQUARE -> centre(HEEL_CENTRE, HEEL_STITCHES);
        }
        worn();
    }

    /** A flap's gusset is the widest place of the sock; worn, it should hardly stretch over the heel. */
    private void worn() {
        double stretch = value(HEEL_CIRCUMFERENCE) * value(GAUGE_STITCHES) / (100 * value(HEEL_AFTER_PICK_UP));
        if (stretch > WORN_STRETCH) {
            findings.add(Check.GUSSET_TIGHT, HEEL_AFTER_PICK_UP, Notation.number(WORN_STRETCH),
                    Math.rint(stretch * 100) / 100);
        }
    }

    private void leg() {
        if (has(LEG_ROUNDS) && value(LEG_ROUNDS) < 0) {
            findings.add(Check.LEG_SHORT, LEG_ROUNDS, "0", value(LEG_ROUNDS));
        }
        changeOver(value(FOOT_STITCHES), LEG_STITCHES);
        switch (design.leg()) {
            case StraightLeg straight -> { }
            case CalfLeg calf -> {
                if (value(LEG_INCREASES) > value(LEG_INCREASE_OVER)) {
                    findings.add(Check.CALF_STEEP, LEG_INCREASE_OVER, Notation.number(value(LEG_INCREASES)),
                            value(LEG_INCREASE_OVER));
                }
            }
        }
    }

    private void cuff() {
        double stitches = value(CUFF_STITCHES);
        int repeat = design.cuff().repeat();
        if (stitches % repeat != 0 || stitches < repeat) {
            findings.add(Check.CUFF_REPEAT, CUFF_STITCHES, Multiples.of(repeat), stitches);
        } else {
            changeOver(value(switch (design.leg()) {
                case StraightLeg straight -> LEG_STITCHES;
                case CalfLeg calf -> LEG_TOP;
            }), CUFF_STITCHES);
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
