package turnheel.engine.term;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static turnheel.engine.term.Terms.atLeast;
import static turnheel.engine.term.Terms.atMost;
import static turnheel.engine.term.Terms.choose;
import static turnheel.engine.term.Terms.dividedBy;
import static turnheel.engine.term.Terms.equal;
import static turnheel.engine.term.Terms.floor;
import static turnheel.engine.term.Terms.greatest;
import static turnheel.engine.term.Terms.least;
import static turnheel.engine.term.Terms.minus;
import static turnheel.engine.term.Terms.nearest;
import static turnheel.engine.term.Terms.number;
import static turnheel.engine.term.Terms.plus;
import static turnheel.engine.term.Terms.remainder;
import static turnheel.engine.term.Terms.rounded;
import static turnheel.engine.term.Terms.times;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.term.Condition.Comparison;

class TermTest {

    private static final Key SOLE = new Key("foot.sole");
    private static final Key INSTEP = new Key("foot.instep");
    private static final Term SOLE_TERM = new Term.Reference(SOLE);
    private static final Term INSTEP_TERM = new Term.Reference(INSTEP);
    private static final Map<Key, Double> VALUES = Map.of(SOLE, 30.0, INSTEP, 34.0);

    @Test
    void evaluatesTheFourOperationsInTheWrittenOrder() {
        assertEquals(64, value(plus(SOLE_TERM, INSTEP_TERM)));
        assertEquals(-4, value(minus(SOLE_TERM, INSTEP_TERM)));
        assertEquals(1020, value(times(SOLE_TERM, INSTEP_TERM)));
        assertEquals(0.75, value(dividedBy(SOLE_TERM, number(40))));
        // 0.1 + 0.2 + 0.3 differs from 0.1 + (0.2 + 0.3) in the last bit
        assertEquals(0.6000000000000001, value(plus(plus(number(0.1), number(0.2)), number(0.3))));
        assertEquals(0.6, value(plus(number(0.1), plus(number(0.2), number(0.3)))));
    }

    @Test
    void takesTheLeastAndTheGreatestOfAny() {
        assertEquals(-7, value(least(number(3), number(-7), SOLE_TERM)));
        assertEquals(30, value(greatest(number(3), number(-7), SOLE_TERM)));
        assertEquals(3, value(least(number(3))));
        assertThrows(IllegalArgumentException.class, Terms::least);
        assertThrows(IllegalArgumentException.class, () -> new Term.Greatest(List.of()));
    }

    @ParameterizedTest(name = "floor of {0} is {1}")
    @CsvSource(textBlock = """
            2.5,           2
            3,             3
            2.999999999,   3
            2.99999999,    2
            0,             0
            -0.0000000001, 0
            -0.00000001,  -1
            -2.5,         -3
            -3,           -3
            """)
    void floorsWithAMarginOfABillionth(double operand, int expected) {
        assertEquals(expected, value(floor(number(operand))));
    }

    @ParameterizedTest(name = "{0} mod {1} is {2}")
    @CsvSource(textBlock = """
            # the sign is that of the divisor, as ECMA-376 says of MOD
            7,    4,   3
            8,    4,   0
            -7,   4,   1
            -8,   4,   0
            7,   -4,  -1
            5.5,  2,   1.5
            0,    3,   0
            """)
    void leavesARemainderWithTheSignOfTheDivisor(double dividend, double divisor, double expected) {
        assertEquals(expected, value(remainder(number(dividend), number(divisor))));
    }

    @ParameterizedTest(name = "{0} to {1} places is {2}, {3}, {4}")
    @CsvSource(textBlock = """
            # operand,           places, nearest, up,    down
            2.5,                  0,     3,       3,     2
            -2.5,                 0,     -3,      -3,    -2
            2.4999999999,         0,     3,       3,     2
            2.49999999,           0,     2,       3,     2
            2.0000000001,         0,     2,       2,     2
            1.005,                2,     1.01,    1.01,  1
            1234.5,               -2,    1200,    1300,  1200
            0,                    0,     0,       0,     0
            """)
    void roundsAwayFromZeroAtATie(double operand, int places, double nearest, double up, double down) {
        assertEquals(nearest, value(rounded(Rounding.NEAREST, number(operand), places)));
        assertEquals(up, value(rounded(Rounding.UP, number(operand), places)));
        assertEquals(down, value(rounded(Rounding.DOWN, number(operand), places)));
    }

    @Test
    void refusesPlacesThatItsMarginDoesNotReach() {
        assertThrows(IllegalArgumentException.class, () -> rounded(Rounding.UP, SOLE_TERM, 10));
        assertThrows(IllegalArgumentException.class, () -> rounded(Rounding.UP, SOLE_TERM, -10));
    }

    @ParameterizedTest(name = "{0} to the {1} is {2}")
    @CsvSource(textBlock = """
            2,  10,  1024
            2,  -1,  0.5
            -2, 3,   -8
            9,  0.5, 3
            5,  0,   1
            0,  0,   NaN
            0,  -1,  NaN
            -8, 0.5, NaN
            10, 400, NaN
            """)
    void takesAPower(double base, double exponent, double expected) {
        assertEquals(expected, value(new Term.Arithmetic(Operation.POWER, number(base), number(exponent))));
    }

    @Test
    void whatCannotBeComputedStaysUndefinedWhateverFollows() {
        Term undefined = dividedBy(SOLE_TERM, number(0));
        Term.Arithmetic zerothPower = new Term.Arithmetic(Operation.POWER, undefined, number(0));
        for (Term term : List.of(undefined, dividedBy(number(0), number(0)), times(number(1e200), number(1e200)),
                dividedBy(number(1), undefined), zerothPower, least(number(5), undefined),
                greatest(undefined, number(5)), floor(undefined), nearest(undefined),
                rounded(Rounding.UP, undefined, 0), remainder(number(5), number(0)), choose(atLeast(undefined, number(5)), number(1), number(2)),
                choose(equal(number(5), undefined), number(1), number(2)))) {
            assertEquals(Double.NaN, value(term), term::toString);
        }
    }

    @ParameterizedTest(name = "{0} against 30")
    @CsvSource(textBlock = """
            # left,              less, at most, equal, at least, more
            29.99999999999999,   true,  true,   false, false,    false
            30,                  false, true,   true,  true,     false
            30.00000000000001,   false, false,  false, true,     true
            """)
    void comparesExactly(double left, boolean less, boolean atMost, boolean same, boolean atLeast, boolean more) {
        assertEquals(less, holds(left, Comparison.LESS));
        assertEquals(atMost, holds(left, Comparison.AT_MOST));
        assertEquals(same, holds(left, Comparison.EQUAL));
        assertEquals(atLeast, holds(left, Comparison.AT_LEAST));
        assertEquals(more, holds(left, Comparison.MORE));
    }

    private static boolean holds(double left, Comparison comparison) {
        return value(choose(new Condition(number(left), comparison, SOLE_TERM), number(1), number(0))) == 1;
    }

    @Test
    void evaluatesOnlyTheChosenTerm() {
        Term absent = new Term.Reference(new Key("toe.absent"));
        assertEquals(1, value(choose(atLeast(SOLE_TERM, number(30)), number(1), absent)));
        assertEquals(2, value(choose(atMost(SOLE_TERM, number(29)), absent, number(2))));
        assertThrows(NullPointerException.class, () -> value(choose(equal(SOLE_TERM, number(1)), number(2), absent)));
    }

    @Test
    void namesItsKeysOnceInTheWrittenOrder() {
        Term term = choose(atLeast(INSTEP_TERM, SOLE_TERM), nearest(SOLE_TERM, number(0), INSTEP_TERM),
                remainder(floor(new Term.Reference(new Key("heel.rows"))), number(2)));
        assertEquals(List.of(INSTEP, SOLE, new Key("heel.rows")), List.copyOf(term.keys()));
        assertEquals(List.of(), List.copyOf(plus(number(1), number(2)).keys()));
    }

    private static double value(Term term) {
        return term.evaluate(VALUES::get);
    }
}
