package turnheel.engine.term;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static turnheel.engine.term.Terms.greatest;
import static turnheel.engine.term.Terms.least;
import static turnheel.engine.term.Terms.number;

import java.util.Map;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import turnheel.engine.fixture.Deep;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.fixture.Spreadsheet;
import turnheel.engine.term.Condition.Comparison;

/** What a spreadsheet program reads in a written formula is what the engine computes. */
class FormulaRoundTripTest {

    private static final Map<Key, Double> VALUES = Map.of(new Key("foot.a"), 64.0, new Key("foot.b"), 7.5,
            new Key("foot.c"), -3.25, new Key("foot.d"), 0.0);

    private final Spreadsheet spreadsheet = new Spreadsheet();

    @Property(seed = Repeatable.SEED, tries = 2000)
    void aSpreadsheetComputesTheSame(@ForAll("terms") Term term) {
        check(term);
    }

    @Deep
    void aSpreadsheetComputesTheSameOfManyMore(@ForAll("terms") Term term) {
        check(term);
    }

    private void check(Term term) {
        double expected = term.evaluate(VALUES::get);
        // the other side cuts factors to 15 digits
        assertEquals(expected, spreadsheet.evaluate(term, VALUES), 1e-10 * Math.max(1, Math.abs(expected)),
                () -> Notation.formula(term, Key::name));
    }

    /** Divisors and steps are above zero: what divides by zero is an error in one and infinite in the other. */
    @Provide
    Arbitrary<Term> terms() {
        return terms(4);
    }

    private static Arbitrary<Term> terms(int depth) {
        Arbitrary<Term> leaves = Arbitraries.oneOf(Arbitraries.of(VALUES.keySet()).map(Term.Reference::new),
                Arbitraries.integers().between(-20, 20).map(quarters -> number(quarters / 4.0)));
        if (depth == 0) {
            return leaves;
        }
        Arbitrary<Term> inner = Arbitraries.lazy(() -> terms(depth - 1));
        Arbitrary<Term> divisors = Arbitraries.lazy(() -> positive(depth - 1));
        // a remainder of fractions, or a comparison of two, may fall on the other side by their last bit
        Arbitrary<Term> whole = inner.map(Terms::nearest);
        Arbitrary<Term> step = Arbitraries.integers().between(1, 12).map(Terms::number);
        Arbitrary<Condition> conditions = Combinators.combine(whole, Arbitraries.of(Comparison.class), whole)
                .as(Condition::new);
        return Arbitraries.oneOf(leaves,
                Combinators.combine(inner, inner).as(Terms::plus),
                Combinators.combine(inner, inner).as(Terms::minus),
                Combinators.combine(inner, leaves).as(Terms::times),
                Combinators.combine(leaves, inner).as(Terms::times),
                Combinators.combine(inner, divisors).as(Terms::dividedBy),
                Combinators.combine(inner, inner).as((one, other) -> least(one, other, number(5))),
                Combinators.combine(inner, inner).as((one, other) -> greatest(one, other)),
                inner.map(Terms::floor),
                Combinators.combine(Arbitraries.of(Rounding.class), inner, Arbitraries.integers().between(-2, 3))
                        .as(Terms::rounded),
                Combinators.combine(whole, Arbitraries.integers().between(1, 3).map(Terms::number))
                        .as((base, exponent) -> new Term.Arithmetic(Operation.POWER, base, exponent)),
                Combinators.combine(inner, whole, step).as(Terms::nearest),
                Combinators.combine(whole, step).as(Terms::remainder),
                Combinators.combine(conditions, inner, inner).as(Terms::choose));
    }

    private static Arbitrary<Term> positive(int depth) {
        Arbitrary<Term> leaves = Arbitraries.integers().between(2, 20).map(quarters -> number(quarters / 4.0));
        if (depth == 0) {
            return leaves;
        }
        Arbitrary<Term> inner = Arbitraries.lazy(() -> positive(depth - 1));
        return Arbitraries.oneOf(leaves,
                Combinators.combine(inner, inner).as(Terms::plus),
                Combinators.combine(inner, inner).as(Terms::times),
                Combinators.combine(inner, inner).as(Terms::dividedBy));
    }
}
