package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.GAUGE_ROUNDS;
import static turnheel.engine.design.Catalogue.WANTED_LENGTH;
import static turnheel.engine.term.Terms.atLeast;
import static turnheel.engine.term.Terms.atMost;
import static turnheel.engine.term.Terms.choose;
import static turnheel.engine.term.Terms.dividedBy;
import static turnheel.engine.term.Terms.equal;
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
 * A spiral of shaping lines between a closed tip and {@code widest} stitches: a round toe, or the cap of an afterthought
 * heel. The alternate-from count at a third of the stitches is <em>common practice</em>; counts and rounds follow by
 * counting. Worked: 64 stitches from 8 on 4 lines turn at 20, shape 3 + 11 times and take 26 rounds toe-up.
 */
record RoundTaper(Parameter points, Parameter tip, Parameter alternateFrom, Parameter everyRound, Parameter alternate,
        Parameter plainBetween, Parameter rounds) {

    void contribute(RuleBook book, Term widest, int lineCount, Direction direction) {
        Term lines = points.term();
        book.rule(points, number(lineCount));
        Term whole = twoSides(lines);
        Term twoPerLine = choose(atMost(lines, number(4)), times(number(2), lines), number(0));
        book.rule(tip, greatest(whole, twoPerLine, nearest(number(8), number(0), whole)));
        book.rule(alternateFrom, greatest(tip.term(), nearest(dividedBy(widest, number(3)), number(0), lines)));
        book.rule(everyRound, dividedBy(minus(alternateFrom.term(), tip.term()), lines));
        book.rule(alternate, dividedBy(minus(widest, alternateFrom.term()), lines));
        book.rule(plainBetween, choose(equal(lines, number(4)), number(1), choose(
                atLeast(alternate.term(), number(1)), greatest(number(1), nearest(usualPlain())), number(1))));
        Term wider = times(alternate.term(), plus(number(1), plainBetween.term()));
        book.rule(rounds, taperRounds(direction, everyRound.term(), wider));
    }

    /** The counts that have two equal sides, and as many stitches on every line, are the multiples of this. */
    static Term twoSides(Term lines) {
        return choose(equal(remainder(lines, number(2)), number(0)), lines, times(number(2), lines));
    }

    /** With more or fewer than four lines: as many plain rounds as bring the part nearest to 0.23 of the sock. */
    private Term usualPlain() {
        Term usual = dividedBy(times(times(number(ToeDepth.AIM), WANTED_LENGTH.term()), GAUGE_ROUNDS.term()),
                number(100));
        Term left = minus(minus(usual, everyRound.term()), number(1));
        return minus(dividedBy(left, alternate.term()), number(1));
    }

    /** Toe-up the every-round increases end with a plain round of their own; a toe without them has none. */
    static Term taperRounds(Direction direction, Term everyRound, Term wider) {
        return switch (direction) {
            case TOE_UP -> plus(plus(everyRound, choose(atLeast(everyRound, number(1)), number(1), number(0))), wider);
            case CUFF_DOWN -> plus(everyRound, wider);
        };
    }
}
