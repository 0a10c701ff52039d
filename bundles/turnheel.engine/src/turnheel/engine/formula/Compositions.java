package turnheel.engine.formula;

import static turnheel.engine.term.Terms.choose;
import static turnheel.engine.term.Terms.dividedBy;
import static turnheel.engine.term.Terms.floor;
import static turnheel.engine.term.Terms.minus;
import static turnheel.engine.term.Terms.number;
import static turnheel.engine.term.Terms.plus;
import static turnheel.engine.term.Terms.times;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

import turnheel.engine.term.Condition;
import turnheel.engine.term.Rounding;
import turnheel.engine.term.Term;
import turnheel.engine.term.Terms;

/** What the notation can say and a term says in several steps. */
final class Compositions {

    private static final Term ZERO = number(0);
    private static final Term ONE = number(1);
    private static final Term TWO = number(2);

    private Compositions() {
    }

    /** The value of a term without keys. */
    static OptionalDouble fixed(Term term) {
        return term.keys().isEmpty() ? OptionalDouble.of(term.evaluate(key -> Double.NaN)) : OptionalDouble.empty();
    }

    /**
     * A choice that looks past what a rounding looks past: whether 0.1+0.2 is 0.3 is told differently by two programs,
     * but not whether their difference to nine places is zero.
     */
    static Term choice(Term left, Comparator comparator, Term right, Term then, Term otherwise) {
        Term difference = Terms.rounded(Rounding.NEAREST, right.equals(ZERO) ? left : minus(left, right),
                Term.MARGIN_PLACES);
        Condition condition = new Condition(difference, comparator.comparison(), ZERO);
        return comparator.otherWayRound() ? choose(condition, otherwise, then) : choose(condition, then, otherwise);
    }

    /** The multiple of the step that {@code round} chooses; none for a step of zero or below. */
    static Term inSteps(List<Term> arguments, UnaryOperator<Term> round) {
        Term operand = arguments.getFirst();
        if (arguments.size() == 1) {
            return round.apply(operand);
        }
        Term step = arguments.get(1);
        Term multiple = times(round.apply(dividedBy(operand, step)), step);
        return fixed(step).isPresent() ? multiple
                : choice(step, Comparator.MORE_THAN, ZERO, multiple, dividedBy(ZERO, ZERO));
    }

    /** Away from zero on both sides of it. */
    static Term odd(Term operand) {
        Term above = plus(times(Terms.ceiling(dividedBy(minus(operand, ONE), TWO)), TWO), ONE);
        Term below = minus(times(floor(dividedBy(plus(operand, ONE), TWO)), TWO), ONE);
        return choice(operand, Comparator.AT_LEAST, ZERO, above, below);
    }

    static Term sum(List<Term> operands) {
        return operands.stream().reduce(Terms::plus).orElseThrow();
    }

    /**
     * Unlike {@link Term.Remainder}, which is for whole numbers, it looks past what a rounding looks past: 0.3 holds
     * three times 0.1, whatever the last bit says.
     */
    static Term remainder(Term dividend, Term divisor) {
        return minus(dividend, times(divisor, floor(dividedBy(dividend, divisor))));
    }
}
