package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.GAUGE_ROUNDS;
import static turnheel.engine.design.Catalogue.HEEL_CENTRE;
import static turnheel.engine.design.Catalogue.HEEL_DEPTH;
import static turnheel.engine.design.Catalogue.HEEL_EACH_SIDE;
import static turnheel.engine.design.Catalogue.HEEL_ROWS;
import static turnheel.engine.design.Catalogue.HEEL_STITCHES;
import static turnheel.engine.term.Terms.dividedBy;
import static turnheel.engine.term.Terms.greatest;
import static turnheel.engine.term.Terms.minus;
import static turnheel.engine.term.Terms.nearest;
import static turnheel.engine.term.Terms.number;
import static turnheel.engine.term.Terms.plus;
import static turnheel.engine.term.Terms.remainder;
import static turnheel.engine.term.Terms.times;

import turnheel.engine.design.Design;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.TurnMethod;
import turnheel.engine.term.Term;

/** Heels: domain § 5. */
final class HeelRules {

    private HeelRules() {
    }

    static void contribute(RuleBook book, Design design) {
        switch (design.heel()) {
            case ShortRowHeel heel -> shortRow(book, heel.turn());
        }
    }

    /**
     * A third of the heel left unturned is what most tutorials say. The cup folds, so of its rows half lie along the foot.
     * Worked: a heel of 32 has a centre of 10, turns 11 a side and takes 44 rows; 22 of them count.
     */
    private static void shortRow(RuleBook book, TurnMethod turn) {
        Term heel = HEEL_STITCHES.term();
        Term eachSide = HEEL_EACH_SIDE.term();
        Term parity = remainder(heel, number(2));
        book.rule(HEEL_STITCHES, nearest(dividedBy(FOOT_STITCHES.term(), number(2))));
        book.rule(HEEL_CENTRE,
                greatest(plus(number(2), parity), nearest(dividedBy(heel, number(3)), parity, number(2))));
        book.rule(HEEL_EACH_SIDE, dividedBy(minus(heel, HEEL_CENTRE.term()), number(2)));
        book.rule(HEEL_ROWS, switch (turn) {
            case WRAPPED -> times(number(4), eachSide);
        });
        book.rule(HEEL_DEPTH, dividedBy(times(times(number(2), eachSide), number(100)), GAUGE_ROUNDS.term()));
    }
}
