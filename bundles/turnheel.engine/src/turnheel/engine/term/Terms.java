package turnheel.engine.term;

import java.util.List;

import turnheel.engine.term.Condition.Comparison;

/** Short names for building terms, so that a rule in code reads like the rule on paper. */
public final class Terms {

    private Terms() {
    }

    public static Term number(double value) {
        return new Term.Number(value);
    }

    public static Term plus(Term left, Term right) {
        return new Term.Arithmetic(Operation.PLUS, left, right);
    }

    public static Term minus(Term left, Term right) {
        return new Term.Arithmetic(Operation.MINUS, left, right);
    }

    public static Term times(Term left, Term right) {
        return new Term.Arithmetic(Operation.TIMES, left, right);
    }

    public static Term dividedBy(Term left, Term right) {
        return new Term.Arithmetic(Operation.DIVIDED_BY, left, right);
    }

    public static Term least(Term... operands) {
        return new Term.Least(List.of(operands));
    }

    public static Term greatest(Term... operands) {
        return new Term.Greatest(List.of(operands));
    }

    public static Term floor(Term operand) {
        return new Term.Floor(operand);
    }

    /** The smallest whole number not below the operand. */
    public static Term ceiling(Term operand) {
        return minus(number(0), floor(minus(number(0), operand)));
    }

    /** The nearest whole number; a tie goes to the smaller. */
    public static Term nearest(Term ideal) {
        return nearest(ideal, number(0), number(1));
    }

    /** The nearest {@code v ≡ residue (mod step)}; a tie goes to the smaller. */
    public static Term nearest(Term ideal, Term residue, Term step) {
        return new Term.Nearest(ideal, residue, step);
    }

    public static Term root(Term operand) {
        return new Term.Root(operand);
    }

    /** To {@code places} decimals; a tie goes away from zero. */
    public static Term rounded(Rounding way, Term operand, int places) {
        return new Term.Rounded(way, operand, places);
    }

    public static Term remainder(Term dividend, Term divisor) {
        return new Term.Remainder(dividend, divisor);
    }

    public static Condition atLeast(Term left, Term right) {
        return new Condition(left, Comparison.AT_LEAST, right);
    }

    public static Condition atMost(Term left, Term right) {
        return new Condition(left, Comparison.AT_MOST, right);
    }

    public static Condition equal(Term left, Term right) {
        return new Condition(left, Comparison.EQUAL, right);
    }

    public static Term choose(Condition condition, Term then, Term otherwise) {
        return new Term.If(condition, then, otherwise);
    }
}
