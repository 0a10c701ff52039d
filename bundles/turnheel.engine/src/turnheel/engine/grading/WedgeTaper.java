package turnheel.engine.grading;

import static turnheel.engine.term.Terms.dividedBy;
import static turnheel.engine.term.Terms.greatest;
import static turnheel.engine.term.Terms.minus;
import static turnheel.engine.term.Terms.nearest;
import static turnheel.engine.term.Terms.number;
import static turnheel.engine.term.Terms.plus;
import static turnheel.engine.term.Terms.remainder;
import static turnheel.engine.term.Terms.times;

import turnheel.engine.design.Direction;
import turnheel.engine.design.Parameter;
import turnheel.engine.term.Term;

/**
 * Two side lines between a flat tip and {@code widest} stitches, four stitches a shaping round: every round next to the
 * tip, every second round beyond. Worked: 64 stitches have 16 at the tip, change at 32 and take 21 rounds toe-up, 20
 * cuff-down.
 */
record WedgeTaper(Parameter tip, Parameter alternateFrom, Parameter everyRound, Parameter alternate, Parameter rounds) {

    static final Term STITCHES_PER_ROUND = number(4);

    void contribute(RuleBook book, Term widest, Direction direction) {
        Term four = STITCHES_PER_ROUND;
        tipAndTurn(book, tip, alternateFrom, widest);
        book.rule(everyRound, dividedBy(minus(alternateFrom.term(), tip.term()), four));
        book.rule(alternate, dividedBy(minus(widest, alternateFrom.term()), four));
        book.rule(rounds, RoundTaper.taperRounds(direction, everyRound.term(), times(alternate.term(), number(2))));
    }

    /** Tip at a quarter, turning point at half of the stitches, both with the remainder that steps of four reach. */
    static void tipAndTurn(RuleBook book, Parameter tip, Parameter alternateFrom, Term widest) {
        Term residue = remainder(widest, STITCHES_PER_ROUND);
        // a side of at least 6 before a decrease round leaves at least 4, so 8 at the tip, or 10 to keep the remainder
        book.rule(tip, greatest(plus(number(8), residue),
                nearest(dividedBy(widest, number(4)), residue, STITCHES_PER_ROUND)));
        book.rule(alternateFrom, greatest(tip.term(),
                nearest(dividedBy(widest, number(2)), residue, STITCHES_PER_ROUND)));
    }
}
