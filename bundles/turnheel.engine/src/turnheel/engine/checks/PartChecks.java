package turnheel.engine.checks;

import static turnheel.engine.design.Catalogue.CALF_CIRCUMFERENCE;
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
import static turnheel.engine.design.Catalogue.HEEL_CORNER;
import static turnheel.engine.design.Catalogue.HEEL_FLAP_ROWS;
import static turnheel.engine.design.Catalogue.HEEL_GUSSET_INCREASES;
import static turnheel.engine.design.Catalogue.HEEL_PICK_UP;
import static turnheel.engine.design.Catalogue.HEEL_POINTS;
import static turnheel.engine.design.Catalogue.HEEL_STITCHES;
import static turnheel.engine.design.Catalogue.HEEL_TIP;
import static turnheel.engine.design.Catalogue.HEEL_TURN_OFFSET;
import static turnheel.engine.design.Catalogue.HEEL_TURN_ROWS;
import static turnheel.engine.design.Catalogue.KNEE_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.LEG_DECREASES;
import static turnheel.engine.design.Catalogue.LEG_DECREASE_OVER;
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
import java.util.stream.Stream;

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
import turnheel.engine.grading.ToeDepth;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;
import turnheel.engine.term.Notation;

/** Toe, heel, foot, leg and cuff of one size: domain §§ 3–8. All usual ranges are <em>common practice</em>. */
final class PartChecks {

    private static final double SHALLOWEST_TOE_PERCENT = 100 * ToeDepth.SHALLOWEST;
    private static final double DEEPEST_TOE_PERCENT = 100 * ToeDepth.DEEPEST;
    private static final double NARROWEST_HEEL_PERCENT = 50;
    private static final double WIDEST_HEEL_PERCENT = 60;
    private static final double WORN_STRETCH = 1.25;
    private static final int NARROWEST_CENTRE = 2;
    private static final int SIDES = 2;
    private static final int NARROWEST_SOLE = 4;
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

    /** A number is absent where a measurement is that it needs; what needs the number is not judged then. */
    private boolean has(Parameter... parameters) {
        return Stream.of(parameters).allMatch(parameter -> size.cell(parameter).isPresent());
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
            case StarToe toe -> sections(toe);
            case ShortRowToe toe -> {
                centre(TOE_CENTRE, TOE_STITCHES);
                cupOfHalf();
            }
        }
        if (has(TOE_DEPTH) && has(WANTED_LENGTH)) {
            double share = value(TOE_DEPTH) / value(WANTED_LENGTH) * 100;
            if (share < SHALLOWEST_TOE_PERCENT || share > DEEPEST_TOE_PERCENT) {
                findings.add(Check.TOE_DEPTH, TOE_DEPTH, Findings.range(SHALLOWEST_TOE_PERCENT, DEEPEST_TOE_PERCENT),
                        Findings.beyond(share, 1, SHALLOWEST_TOE_PERCENT, DEEPEST_TOE_PERCENT));
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
        if (!has(TOE_SECOND_LINE_AFTER, TOE_EVERY_ROUND, TOE_ALTERNATE)) {
            return;
        }
        double shaped = value(TOE_EVERY_ROUND) + value(TOE_ALTERNATE);
        if (value(TOE_SECOND_LINE_AFTER) > shaped) {
            findings.add(Check.TOE_ORDER, TOE_SECOND_LINE_AFTER, Findings.range(0, shaped), value(TOE_SECOND_LINE_AFTER));
        }
    }

    private void sections(StarToe toe) {
        int step = toe.sectionStep(design.direction());
        if (has(TOE_POINTS) && value(TOE_POINTS) % step != 0) {
            findings.add(Check.OVERRIDE_BREAKS, TOE_POINTS, Multiples.of(step), value(TOE_POINTS));
        }
        int fewest = toe.fewestInSection(design.direction());
        if (has(TOE_POINTS) && value(TOE_SECTIONS_FROM) < fewest * value(TOE_POINTS)) {
            findings.add(Check.TOE_ORDER, TOE_POINTS, Findings.range(2, Math.floor(value(FOOT_STITCHES) / fewest)),
                    value(TOE_POINTS));
        }
    }

    /** Toe-up a corner may give or take a stitch; cuff-down stitch is grafted to stitch. */
    private void cupOfHalf() {
        double half = value(FOOT_STITCHES) / SIDES;
        double play = design.direction() == Direction.TOE_UP ? 1 : 0;
        if (Math.abs(value(TOE_STITCHES) - half) > play) {
            findings.add(Check.TOE_ORDER, TOE_STITCHES, Findings.range(half - play, half + play), value(TOE_STITCHES));
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
        if (!has(HEEL_STITCHES)) {
            return;
        }
        double heel = value(HEEL_STITCHES);
        double share = heel / value(FOOT_STITCHES) * 100;
        double around = value(FOOT_STITCHES);
        boolean flapOnLeg = design.heel() instanceof FlapHeel && design.direction() == Direction.CUFF_DOWN;
        if (flapOnLeg && has(LEG_STITCHES)) {
            around = value(LEG_STITCHES);
        }
        if (heel > around) {
            findings.add(Check.HEEL_TOO_WIDE, HEEL_STITCHES, Notation.number(around), heel);
        } else if (heel < Math.floor(value(FOOT_STITCHES) * NARROWEST_HEEL_PERCENT / 100)
                || share > WIDEST_HEEL_PERCENT) {
            findings.add(Check.HEEL_SHARE, HEEL_STITCHES, Findings.range(NARROWEST_HEEL_PERCENT, WIDEST_HEEL_PERCENT),
                    Findings.beyond(share, 1, NARROWEST_HEEL_PERCENT, WIDEST_HEEL_PERCENT));
        }
        switch (design.heel()) {
            case ShortRowHeel shortRow -> {
                centre(HEEL_CENTRE, HEEL_STITCHES);
                within(HEEL_CORNER, 0, Math.floor(heel / SIDES));
            }
            case FlapHeel flap -> flap(flap.turn());
            case AfterthoughtHeel afterthought -> {
                taper(HEEL_TIP, HEEL_ALTERNATE_FROM, HEEL_PICK_UP);
                // every held stitch has a loop above and below
                within(HEEL_PICK_UP, SIDES * heel, 2 * SIDES * heel);
                if (value(HEEL_PICK_UP) % SIDES != 0) {
                    findings.add(Check.OVERRIDE_BREAKS, HEEL_PICK_UP, Multiples.of(SIDES), value(HEEL_PICK_UP));
                }
                tip(afterthought.cap());
            }
        }
    }

    private void within(Parameter parameter, double least, double most) {
        if (value(parameter) < least || value(parameter) > most) {
            findings.add(Check.TURN_NARROW, parameter, Findings.range(least, most), value(parameter));
        }
    }

    /** A wedge needs room for its decreases; what a spiral leaves is as many stitches on every line, and has two halves. */
    private void tip(AfterthoughtHeel.Cap cap) {
        double tip = value(HEEL_TIP);
        switch (cap) {
            case WEDGE -> within(HEEL_TIP, TOE_TIP.least(), value(HEEL_PICK_UP));
            case ROUND -> {
                int lines = (int) value(HEEL_POINTS);
                int even = lines % SIDES == 0 ? lines : lines * SIDES;
                if (tip % even != 0) {
                    findings.add(Check.OVERRIDE_BREAKS, HEEL_TIP, Multiples.of(even), tip);
                }
            }
        }
    }

    private void flap(HeelTurn turn) {
        boolean toeUp = design.direction() == Direction.TOE_UP;
        if (!has(HEEL_FLAP_ROWS, toeUp ? HEEL_GUSSET_INCREASES : HEEL_STITCHES)) {
            return;
        }
        if (value(HEEL_FLAP_ROWS) % SIDES != 0) {
            findings.add(Check.FLAP_ROWS, HEEL_FLAP_ROWS, Multiples.of(SIDES), value(HEEL_FLAP_ROWS));
        }
        if (toeUp) {
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
            case ROUND -> within(HEEL_TURN_OFFSET, 0, Math.floor(value(HEEL_STITCHES) / SIDES) - 3);
            case SQUARE -> {
                centre(HEEL_CENTRE, HEEL_STITCHES);
                if (value(HEEL_TURN_ROWS) % SIDES != 0) {
                    findings.add(Check.FLAP_ROWS, HEEL_TURN_ROWS, Multiples.of(SIDES), value(HEEL_TURN_ROWS));
                }
            }
        }
        // beside the instep that the leg hands on, the foot must keep a sole to decrease in
        if (has(LEG_STITCHES) && value(HEEL_STITCHES) <= value(LEG_STITCHES)) {
            within(HEEL_STITCHES, Math.max(0, value(LEG_STITCHES) - value(FOOT_STITCHES) + NARROWEST_SOLE),
                    value(LEG_STITCHES));
        }
        worn();
    }

    /** A flap's gusset is the widest place of the sock; worn, it should hardly stretch over the heel. */
    private void worn() {
        if (!has(HEEL_CIRCUMFERENCE, HEEL_AFTER_PICK_UP)) {
            return;
        }
        double stretch = value(HEEL_CIRCUMFERENCE) * value(GAUGE_STITCHES) / (100 * value(HEEL_AFTER_PICK_UP));
        if (stretch > WORN_STRETCH) {
            findings.add(Check.GUSSET_TIGHT, HEEL_AFTER_PICK_UP, Notation.number(WORN_STRETCH),
                    Findings.beyond(stretch, 2, WORN_STRETCH));
        }
    }

    private void leg() {
        if (has(LEG_ROUNDS) && value(LEG_ROUNDS) < 0) {
            findings.add(Check.LEG_SHORT, LEG_ROUNDS, "0", value(LEG_ROUNDS));
        }
        if (has(LEG_STITCHES)) {
            changeOver(value(FOOT_STITCHES), LEG_STITCHES);
        }
        switch (design.leg()) {
            case StraightLeg straight -> { }
            case CalfLeg calf -> {
                if (has(LEG_DECREASES, LEG_DECREASE_OVER, LEG_ROUNDS) && value(LEG_ROUNDS) >= 0) {
                    calf();
                }
                if (has(KNEE_CIRCUMFERENCE, CALF_CIRCUMFERENCE)
                        && value(KNEE_CIRCUMFERENCE) > value(CALF_CIRCUMFERENCE)) {
                    findings.add(Check.KNEE_WIDE, KNEE_CIRCUMFERENCE, Notation.number(value(CALF_CIRCUMFERENCE)),
                            value(KNEE_CIRCUMFERENCE));
                }
            }
        }
    }

    /** Below the calf and above it; rounds that the one takes are lost to the other. */
    private void calf() {
        double rounds = value(LEG_ROUNDS);
        double below = value(LEG_INCREASES) > 0 ? value(LEG_INCREASE_OVER) : 0;
        if (!steep(LEG_INCREASES, LEG_INCREASE_OVER, rounds)) {
            steep(LEG_DECREASES, LEG_DECREASE_OVER, rounds - below);
        }
    }

    private boolean steep(Parameter pairs, Parameter over, double room) {
        boolean steep = value(pairs) > 0 && (value(pairs) > value(over) || value(over) > room);
        if (steep) {
            findings.add(Check.CALF_STEEP, over, Findings.range(value(pairs), Math.max(value(pairs), room)),
                    value(over));
        }
        return steep;
    }

    private void cuff() {
        if (!has(CUFF_STITCHES)) {
            return;
        }
        double stitches = value(CUFF_STITCHES);
        int repeat = design.cuff().repeat();
        if (stitches % repeat != 0 || stitches < repeat) {
            findings.add(Check.CUFF_REPEAT, CUFF_STITCHES, Multiples.of(repeat), stitches);
        } else if (has(top())) {
            changeOver(value(top()), CUFF_STITCHES);
        }
    }

    private Parameter top() {
        return switch (design.leg()) {
            case StraightLeg straight -> LEG_STITCHES;
            case CalfLeg calf -> LEG_TOP;
        };
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
