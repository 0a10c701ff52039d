package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import turnheel.engine.fixture.Repeatable;

class CostTest {

    @Test
    void isTheSumOfSquaredRelativeDeviations() {
        // (4/60)² + (6/60)² = 52/3600
        assertEquals(52.0 / 3600, Cost.NONE.plus(64, 60).plus(54, 60).rounded(), 1e-15);
    }

    /** (1/40)² + (2/40)² + (5/40)² in doubles depends on the order by its last bit. */
    @Test
    void doesNotDependOnTheOrder() {
        Cost rising = Cost.NONE.plus(41, 40).plus(42, 40).plus(45, 40);
        Cost falling = Cost.NONE.plus(45, 40).plus(42, 40).plus(41, 40);
        assertNotEquals(rising.rounded(), falling.rounded());
        assertEquals(0, rising.compareTo(falling));
    }

    @Repeatable
    void shuffledSummandsCostTheSame(@ForAll("summands") List<Summand> summands, @ForAll Random random) {
        List<Summand> shuffled = new ArrayList<>(summands);
        Collections.shuffle(shuffled, random);
        assertEquals(0, cost(summands).compareTo(cost(shuffled)));
    }

    @Repeatable
    void comparesAsFractionsDo(@ForAll("summands") List<Summand> one, @ForAll("summands") List<Summand> other) {
        assertEquals(Integer.signum(exactly(one, other)), Integer.signum(cost(one).compareTo(cost(other))));
    }

    /** The smallest difference there is, a billionth of a stitch in one of many sizes. */
    @Repeatable
    void seesTheSmallestDifference(@ForAll("summands") List<Summand> summands) {
        List<Summand> nearer = new ArrayList<>(summands);
        Summand last = nearer.removeLast();
        nearer.add(new Summand(last.count(), last.ideal() + 1e-9));
        assertEquals(Integer.signum(exactly(summands, nearer)), Integer.signum(cost(summands).compareTo(cost(nearer))));
        assertNotEquals(0, cost(summands).compareTo(cost(nearer)));
    }

    /** @param ideal in billionths at most */
    record Summand(int count, double ideal) {
    }

    private static Cost cost(List<Summand> summands) {
        Cost cost = Cost.NONE;
        for (Summand summand : summands) {
            cost = cost.plus(summand.count(), summand.ideal());
        }
        return cost;
    }

    private static int exactly(List<Summand> one, List<Summand> other) {
        return EveryVector.compare(EveryVector.cost(wishes(one), counts(one)),
                EveryVector.cost(wishes(other), counts(other)));
    }

    private static List<SizeWish> wishes(List<Summand> summands) {
        return summands.stream().map(summand -> SizeWish.of("", summand.ideal(), List.of())).toList();
    }

    private static List<Integer> counts(List<Summand> summands) {
        return summands.stream().map(Summand::count).toList();
    }

    @Provide
    Arbitrary<List<Summand>> summands() {
        Arbitrary<Double> ideals = Arbitraries.oneOf(Arbitraries.doubles().between(20, 400).ofScale(9),
                Arbitraries.integers().between(40, 200).map(halves -> halves / 2.0));
        return Combinators.combine(Arbitraries.integers().between(20, 400), ideals).as(Summand::new).list().ofMinSize(1)
                .ofMaxSize(24);
    }
}
