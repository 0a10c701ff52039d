package turnheel.engine.term;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static turnheel.engine.term.Terms.nearest;
import static turnheel.engine.term.Terms.number;

import java.math.BigDecimal;

import net.jqwik.api.ForAll;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.fixture.Repeatable;

class NearestTest {

    @ParameterizedTest(name = "{0} on {1} mod {2} is {3}")
    @CsvSource(textBlock = """
            # ideal, residue, step, nearest: read off a number line; a tie goes to the smaller, domain § 0
            57.99,     0, 4,  56
            58,        0, 4,  56
            58.01,     0, 4,  60
            60,        0, 4,  60
            # on both sides of zero
            1.99,      0, 4,   0
            2,         0, 4,   0
            2.01,      0, 4,   4
            0,         0, 4,   0
            -1.99,     0, 4,   0
            -2,        0, 4,  -4
            -2.01,     0, 4,  -4
            -6,        0, 4,  -8
            # ..., -5, -1, 3, 7, ... whichever residue names it
            1,        -1, 4,  -1
            1.01,     -1, 4,   3
            5,        -1, 4,   3
            -3,       -1, 4,  -5
            1,         3, 4,  -1
            5,         7, 4,   3
            -3,      -13, 4,  -5
            # odd numbers
            2,         1, 2,   1
            0,         1, 2,  -1
            -2,        1, 2,  -3
            10.7,      1, 2,  11
            # whole numbers
            0.5,       0, 1,   0
            1.5,       0, 1,   1
            2.5,       0, 1,   2
            -0.5,      0, 1,  -1
            -1.5,      0, 1,  -2
            """)
    void isTheClosestAndTheSmallerAtATie(double ideal, int residue, int step, int expected) {
        assertEquals(expected, nearestOf(ideal, residue, step));
    }

    @ParameterizedTest(name = "58 + {0} is {1}")
    @CsvSource(textBlock = """
            # the margin is 1E-9 of a step, here 4E-9 of a stitch
            0,      56
            1E-14,  56
            3E-9,   56
            5E-9,   60
            """)
    void looksPastTheLastDigitsOfASum(double above, int expected) {
        assertEquals(expected, nearestOf(58 + above, 0, 4));
    }

    @ParameterizedTest(name = "{0} ÷ {1} is {2}")
    @CsvSource(textBlock = """
            # 14, 222 and 494 on paper; in binary 14.000000000000002, 222.00000000000003, 494.00000000000006
            0.14, 0.01,  12
            2.22, 0.01, 220
            4.94, 0.01, 492
            # 58 on paper, 57.99999999999999 in binary
            0.58, 0.01,  56
            """)
    void fallsAsOnPaperWhereBinaryFractionsMissATie(double one, double other, int expected) {
        assertEquals(expected, nearestOf(one / other, 0, 4));
    }

    @Repeatable
    void agreesWithASearchAlongTheNumberLine(@ForAll @IntRange(min = -4000, max = 4000) int sixteenths,
            @ForAll @IntRange(min = -20, max = 20) int residue, @ForAll @IntRange(min = 1, max = 24) int step) {
        BigDecimal ideal = BigDecimal.valueOf(sixteenths).divide(BigDecimal.valueOf(16));
        int best = Integer.MIN_VALUE;
        for (int candidate = -300; candidate <= 300; candidate++) {
            boolean reachable = Math.floorMod(candidate - residue, step) == 0;
            if (reachable && (best == Integer.MIN_VALUE
                    || distance(candidate, ideal).compareTo(distance(best, ideal)) < 0)) {
                best = candidate;
            }
        }
        assertEquals(best, nearestOf(ideal.doubleValue(), residue, step));
    }

    private static BigDecimal distance(int candidate, BigDecimal ideal) {
        return BigDecimal.valueOf(candidate).subtract(ideal).abs();
    }

    private static double nearestOf(double ideal, double residue, double step) {
        return nearest(number(ideal), number(residue), number(step)).evaluate(key -> Double.NaN);
    }
}
