package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.FOOT_FEWEST;
import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.GAUGE_ROUNDS;
import static turnheel.engine.design.Catalogue.HEEL_CORNER;
import static turnheel.engine.design.Catalogue.HEEL_DEPTH;
import static turnheel.engine.design.Catalogue.HEEL_EACH_SIDE;
import static turnheel.engine.design.Catalogue.HEEL_HEIGHT;
import static turnheel.engine.design.Catalogue.HEEL_PICK_UP;
import static turnheel.engine.design.Catalogue.HEEL_ROWS;
import static turnheel.engine.design.Catalogue.HEEL_STITCHES;
import static turnheel.engine.term.Terms.ceiling;
import static turnheel.engine.term.Terms.dividedBy;
import static turnheel.engine.term.Terms.greatest;
import static turnheel.engine.term.Terms.minus;
import static turnheel.engine.term.Terms.nearest;
import static turnheel.engine.term.Terms.number;
import static turnheel.engine.term.Terms.plus;
import static turnheel.engine.term.Terms.times;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.term.Term;

/** Heels: domain § 5. Every kind says how far it reaches along the foot and up the leg, and what the foot must hold. */
final class HeelRules {

    private static final Term FEWEST_FOOT_ROUNDS = number(4);
    private static final RoundTaper ROUND_CAP = new RoundTaper(Catalogue.HEEL_POINTS, Catalogue.HEEL_TIP,
            Catalogue.HEEL_ALTERNATE_FROM, Catalogue.HEEL_EVERY_ROUND, Catalogue.HEEL_ALTERNATE,
            Catalogue.HEEL_PLAIN_BETWEEN, HEEL_ROWS);
    private static final WedgeTaper WEDGE_CAP = new WedgeTaper(Catalogue.HEEL_TIP, Catalogue.HEEL_ALTERNATE_FROM,
            Catalogue.HEEL_EVERY_ROUND, Catalogue.HEEL_ALTERNATE, HEEL_ROWS);
    private static final int CAP_LINES = 4;

    private HeelRules() {
    }

    static void contribute(RuleBook book, Design design) {
        switch (design.heel()) {
            case ShortRowHeel heel -> shortRow(book, heel);
            case FlapHeel heel when design.direction() == Direction.CUFF_DOWN -> FlapHeelRules.cuffDown(book, heel);
            case FlapHeel heel -> FlapHeelRules.toeUp(book, heel);
            case AfterthoughtHeel heel -> afterthought(book, heel.cap());
        }
    }

    /** The cup folds, so of its rows half lie along the foot. */
    private static void shortRow(RuleBook book, ShortRowHeel heel) {
        new ShortRowCup(HEEL_STITCHES, Catalogue.HEEL_CENTRE, HEEL_EACH_SIDE, HEEL_ROWS).contribute(book, heel.turn());
        book.rule(HEEL_CORNER, number(0));
        reach(book, times(number(2), HEEL_EACH_SIDE.term()), number(0));
        book.rule(HEEL_HEIGHT, HEEL_DEPTH.term());
    }

    /**
     * The opening has a loop above and below each held stitch, and a few more at its corners against a hole: as few as its
     * cap can be worked on. Its rounds and the pick-up round lie along the foot.
     */
    private static void afterthought(RuleBook book, AfterthoughtHeel.Cap cap) {
        Term opening = times(number(2), HEEL_STITCHES.term());
        book.rule(HEEL_STITCHES, nearest(dividedBy(FOOT_STITCHES.term(), number(2))));
        Term step = switch (cap) {
            case WEDGE -> WedgeTaper.STITCHES_PER_ROUND;
            case ROUND -> RoundTaper.twoSides(Catalogue.HEEL_POINTS.term());
        };
        Term fewest = times(step, ceiling(dividedBy(plus(opening, number(2)), step)));
        book.rule(HEEL_CORNER, minus(dividedBy(fewest, number(2)), HEEL_STITCHES.term()));
        book.rule(HEEL_PICK_UP, plus(opening, times(number(2), HEEL_CORNER.term())));
        switch (cap) {
            case WEDGE -> WEDGE_CAP.contribute(book, HEEL_PICK_UP.term(), Direction.CUFF_DOWN);
            case ROUND -> ROUND_CAP.contribute(book, HEEL_PICK_UP.term(), CAP_LINES, Direction.CUFF_DOWN);
        }
        reach(book, plus(HEEL_ROWS.term(), number(1)), number(0));
        book.rule(HEEL_HEIGHT, HEEL_DEPTH.term());
    }

    /** How many rows lie along the foot, and how many rounds of the foot the gusset takes. */
    static void reach(RuleBook book, Term rowsAlongFoot, Term gussetRounds) {
        book.rule(HEEL_DEPTH, dividedBy(times(rowsAlongFoot, number(100)), GAUGE_ROUNDS.term()));
        book.rule(FOOT_FEWEST, greatest(FEWEST_FOOT_ROUNDS, gussetRounds));
    }
}
