package turnheel.engine.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;

import net.jqwik.api.ForAll;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import turnheel.engine.fixture.Repeatable;

class SpreadTest {

    @Test
    void leavesWhatHasRoom() {
        assertEquals(List.of(30.0, 10.0), Spread.apart(List.of(30.0, 10.0), List.of(4.0, 4.0)));
    }

    @Test
    void movesNeighboursApartAlike() {
        assertEquals(List.of(8.0, 12.0), Spread.apart(List.of(10.0, 10.0), List.of(4.0, 4.0)));
    }

    @Test
    void raisesWhatLiesTooLowAndWhateverIsInItsWay() {
        assertEquals(List.of(30.0, 20.0, 10.0, -40.0), Spread.above(30, List.of(50.0, 29.0, 11.0, -40.0), 10));
        assertEquals(List.of(-8.0, 2.0), Spread.above(2, List.of(4.0, 4.5), 10));
        assertEquals(List.of(1.0, 9.0), Spread.above(10, List.of(1.0, 9.0), 5));
    }

    @Repeatable
    void noTwoOverlapAndTheOrderStays(
            @ForAll @Size(min = 1, max = 24) List<@DoubleRange(min = -500, max = 500) Double> wanted) {
        List<Double> heights = Collections.nCopies(wanted.size(), 7.0);
        List<Double> middles = Spread.apart(wanted, heights);
        List<Double> sorted = middles.stream().sorted().toList();
        for (int i = 1; i < sorted.size(); i++) {
            assertTrue(sorted.get(i) - sorted.get(i - 1) >= 7 - 1e-6, middles::toString);
        }
        for (int i = 0; i < wanted.size(); i++) {
            for (int j = 0; j < wanted.size(); j++) {
                assertTrue(wanted.get(i) >= wanted.get(j) || middles.get(i) < middles.get(j), middles::toString);
            }
        }
    }
}
