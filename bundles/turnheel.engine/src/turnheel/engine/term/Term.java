package turnheel.engine.term;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * A rule: numbers, keys of the same size, and the few operations that every spreadsheet program shares. All arithmetic
 * is that of IEEE 754 doubles in the written order, as in a spreadsheet, so that engine and workbook cannot differ.
 */
public sealed interface Term {

    /**
     * What a rounding looks past. Sums of millimetres and gauges carry errors near 1E-15, and spreadsheet programs
     * already repair some of them; without a margin of its own a tie could fall differently in two programs.
     */
    double MARGIN = 1e-9;

    /** The decimal places of {@link #MARGIN}. */
    int MARGIN_PLACES = 9;

    /**
     * The value of this rule when each key has the value that {@code valueOf} tells. It is NaN, as it is an error in a
     * spreadsheet, when anything that it is computed from is NaN, divides by zero or grows past every number.
     */
    double evaluate(ToDoubleFunction<Key> valueOf);

    /** The terms that this one is made of, in written order; empty for a number or a key. */
    List<Term> operands();

    /** The keys that this rule reads, in written order. */
    default Set<Key> keys() {
        Set<Key> keys = new LinkedHashSet<>();
        collectKeys(this, keys);
        return keys;
    }

    private static void collectKeys(Term term, Set<Key> keys) {
        if (term instanceof Reference reference) {
            keys.add(reference.key());
        }
        term.operands().forEach(operand -> collectKeys(operand, keys));
    }

    /** A constant of the rule. */
    record Number(double value) implements Term {
        @Override
        public double evaluate(ToDoubleFunction<Key> valueOf) {
            return value;
        }

        @Override
        public List<Term> operands() {
            return List.of();
        }
    }

    /** The value of another key in the same size. */
    record Reference(Key key) implements Term {
        @Override
        public double evaluate(ToDoubleFunction<Key> valueOf) {
            return valueOf.applyAsDouble(key);
        }

        @Override
        public List<Term> operands() {
            return List.of();
        }
    }

    /** One of the basic operations on two terms. */
    record Arithmetic(Operation operation, Term left, Term right) implements Term {
        @Override
        public double evaluate(ToDoubleFunction<Key> valueOf) {
            double result = operation.apply(left.evaluate(valueOf), right.evaluate(valueOf));
            return Double.isFinite(result) ? result : Double.NaN;
        }

        @Override
        public List<Term> operands() {
            return List.of(left, right);
        }
    }

    /** The smallest of several terms. */
    record Least(List<Term> operands) implements Term {
        public Least {
            operands = atLeastOne(operands);
        }

        @Override
        public double evaluate(ToDoubleFunction<Key> valueOf) {
            return operands.stream().mapToDouble(term -> term.evaluate(valueOf)).min().getAsDouble();
        }
    }

    /** The largest of several terms. */
    record Greatest(List<Term> operands) implements Term {
        public Greatest {
            operands = atLeastOne(operands);
        }

        @Override
        public double evaluate(ToDoubleFunction<Key> valueOf) {
            return operands.stream().mapToDouble(term -> term.evaluate(valueOf)).max().getAsDouble();
        }
    }

    /** The largest whole number not above the operand; what lies {@link #MARGIN} below a whole number counts as it. */
    record Floor(Term operand) implements Term {
        @Override
        public double evaluate(ToDoubleFunction<Key> valueOf) {
            return Math.floor(operand.evaluate(valueOf) + MARGIN);
        }

        @Override
        public List<Term> operands() {
            return List.of(operand);
        }
    }

    /**
     * The whole number {@code v ≡ residue (mod step)} closest to {@code ideal}; a tie goes to the smaller {@code v}.
     * A sock is worn stretched: the snugger count is the safer one.
     */
    record Nearest(Term ideal, Term residue, Term step) implements Term {
        @Override
        public double evaluate(ToDoubleFunction<Key> valueOf) {
            double r = residue.evaluate(valueOf);
            double m = step.evaluate(valueOf);
            return r - m * Math.floor(0.5 - (ideal.evaluate(valueOf) - r) / m + MARGIN);
        }

        @Override
        public List<Term> operands() {
            return List.of(ideal, residue, step);
        }
    }

    /** The square root; below zero not a number, as in a spreadsheet. Rounded correctly by every program (IEEE 754). */
    record Root(Term operand) implements Term {
        @Override
        public double evaluate(ToDoubleFunction<Key> valueOf) {
            return Math.sqrt(operand.evaluate(valueOf));
        }

        @Override
        public List<Term> operands() {
            return List.of(operand);
        }
    }

    /**
     * The operand to {@code places} decimals; below zero, to tens, hundreds and so on. A tie goes away from zero, as in
     * every spreadsheet. First of all it is rounded to {@link #MARGIN_PLACES}, so that a tie is one in every program.
     */
    record Rounded(Rounding way, Term operand, int places) implements Term {
        public Rounded {
            if (Math.abs(places) > MARGIN_PLACES) {
                throw new IllegalArgumentException("places (%d) must lie within %d".formatted(places, MARGIN_PLACES));
            }
        }

        @Override
        public double evaluate(ToDoubleFunction<Key> valueOf) {
            double value = operand.evaluate(valueOf);
            return Double.isFinite(value) ? way.round(Rounding.NEAREST.round(value, MARGIN_PLACES), places)
                    : Double.NaN;
        }

        @Override
        public List<Term> operands() {
            return List.of(operand);
        }
    }

    /** What is left of {@code dividend} after whole {@code divisor}s; takes the sign of the divisor. */
    record Remainder(Term dividend, Term divisor) implements Term {
        @Override
        public double evaluate(ToDoubleFunction<Key> valueOf) {
            double x = dividend.evaluate(valueOf);
            double m = divisor.evaluate(valueOf);
            return x - m * Math.floor(x / m);
        }

        @Override
        public List<Term> operands() {
            return List.of(dividend, divisor);
        }
    }

    /** One of two terms, by a comparison. Only the term that is taken is evaluated. */
    record If(Condition condition, Term then, Term otherwise) implements Term {
        @Override
        public double evaluate(ToDoubleFunction<Key> valueOf) {
            double left = condition.left().evaluate(valueOf);
            double right = condition.right().evaluate(valueOf);
            if (Double.isNaN(left) || Double.isNaN(right)) {
                return Double.NaN;
            }
            return condition.comparison().holds(left, right) ? then.evaluate(valueOf) : otherwise.evaluate(valueOf);
        }

        @Override
        public List<Term> operands() {
            return List.of(condition.left(), condition.right(), then, otherwise);
        }
    }

    private static List<Term> atLeastOne(List<Term> operands) {
        if (operands.isEmpty()) {
            throw new IllegalArgumentException("a least or greatest needs at least one term");
        }
        return List.copyOf(operands);
    }
}
