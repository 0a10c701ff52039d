package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.term.Terms.dividedBy;
import static turnheel.engine.term.Terms.greatest;
import static turnheel.engine.term.Terms.minus;
import static turnheel.engine.term.Terms.nearest;
import static turnheel.engine.term.Terms.number;
import static turnheel.engine.term.Terms.plus;
import static turnheel.engine.term.Terms.remainder;
import static turnheel.engine.term.Terms.times;

import turnheel.engine.design.Parameter;
import turnheel.engine.design.TurnMethod;
import turnheel.engine.term.Term;

/**
 * A cup of short rows over half of the foot: a heel or a toe. A third left unturned in the middle is what most tutorials
 * say. Worked: a cup of 32 has a centre of 10, turns 11 a side and takes 44 rows.
 */
record ShortRowCup(Parameter stitches, Parameter centre, Parameter eachSide, Parameter rows) {

    void contribute(RuleBook book, TurnMethod turn) {
        book.rule(stitches, nearest(dividedBy(FOOT_STITCHES.term(), number(2))));
        centre(book, stitches.term(), centre, dividedBy(stitches.term(), number(3)));
        book.rule(eachSide, dividedBy(minus(stitches.term(), centre.term()), number(2)));
        Term outAndBack = times(number(4), eachSide.term());
        book.rule(rows, switch (turn) {
            case WRAPPED, TWIN, YARN_OVER -> outAndBack;
            // the first row runs to the end, so that its turn already makes a double stitch
            case GERMAN -> plus(outAndBack, number(1));
        });
    }

    /** The middle that is never turned: near {@code ideal}, of the cup's parity, at least 2. */
    static void centre(RuleBook book, Term stitches, Parameter centre, Term ideal) {
        Term parity = remainder(stitches, number(2));
        book.rule(centre, greatest(plus(number(2), parity), nearest(ideal, parity, number(2))));
    }
}
