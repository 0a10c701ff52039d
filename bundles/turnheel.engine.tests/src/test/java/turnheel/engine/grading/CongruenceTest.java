package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import net.jqwik.api.ForAll;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import turnheel.engine.fixture.Repeatable;

class CongruenceTest {

    @ParameterizedTest(name = "{0} is nearest to {1}, among {2} mod {3}")
    @CsvSource(textBlock = """
            # nearest, ideal, residue, step: read off a number line, a tie goes to the smaller
            56,   57.99, 0, 4
            56,   58,    0, 4
            60,   58.01, 0, 4
            0,    2,     0, 4
            -4,   -2,    0, 4
            0,    -1.99, 0, 4
            -1,   1,     3, 4
            """)
    void nearestTakesTheSmallerAtATie(int nearest, double ideal, int residue, int step) {
        assertEquals(nearest, new Congruence(residue, step).nearest(ideal));
    }

    @ParameterizedTest(name = "{0} mod {1} up to {2}: {3}")
    @CsvSource({"0,4,63.9,60", "0,4,64,64", "3,4,64,63", "1,2,0,-1", "0,4,-0.5,-4"})
    void theLargestUpToALimit(int residue, int step, double limit, int expected) {
        assertEquals(expected, new Congruence(residue, step).atMost(limit));
    }

    @Repeatable
    void whatBothReachIsWhatEachReaches(@ForAll @IntRange(min = -30, max = 30) int one,
            @ForAll @IntRange(min = 1, max = 24) int oneStep, @ForAll @IntRange(min = -30, max = 30) int other,
            @ForAll @IntRange(min = 1, max = 24) int otherStep) {
        Congruence first = new Congruence(one, oneStep);
        Congruence second = new Congruence(other, otherStep);
        Optional<Congruence> both = first.and(second);
        List<Integer> counted = IntStream.range(-600, 600).boxed()
                .filter(count -> Math.floorMod(count - one, oneStep) == 0
                        && Math.floorMod(count - other, otherStep) == 0)
                .toList();
        List<Integer> told = IntStream.range(-600, 600).boxed()
                .filter(count -> both.isPresent() && both.get().contains(count)).toList();
        assertEquals(counted, told);
    }

    @Test
    void tellsWhenTwoExcludeEachOther() {
        assertEquals(Optional.empty(), new Congruence(1, 4).and(new Congruence(0, 2)));
        assertEquals(Optional.of(new Congruence(9, 12)), new Congruence(1, 4).and(new Congruence(3, 6)));
    }

    @Test
    void refusesACommonStepThatNoIntHolds() {
        assertThrows(ArithmeticException.class,
                () -> new Congruence(0, 65_537).and(new Congruence(0, 65_536)));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -1})
    void refusesAStepBelowOne(int step) {
        assertThrows(IllegalArgumentException.class, () -> new Congruence(0, step));
    }
}
