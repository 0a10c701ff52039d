package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.fixture.Repeatable;

class LatticeTest {

    /** Longer than two periods of any two congruences with steps up to 12. */
    private static final int FAR = 300;

    @Repeatable
    void holdsTheCountsOfAnyOneOfItsCongruences(@ForAll("unions") List<Congruence> congruences) {
        assertEquals(counts(congruences), counts(Lattice.anyOf(congruences)));
    }

    @Repeatable
    void whatBothReachIsWhatEachReaches(@ForAll("unions") List<Congruence> one,
            @ForAll("unions") List<Congruence> other) {
        List<Integer> both = counts(one).stream().filter(counts(other)::contains).toList();
        assertEquals(both, counts(Lattice.anyOf(one).and(Lattice.anyOf(other))));
    }

    @Repeatable
    void findsWhatLiesNearALimit(@ForAll("unions") List<Congruence> congruences,
            @ForAll @IntRange(min = 100, max = 400) int halves) {
        double limit = halves / 2.0;
        Lattice lattice = Lattice.anyOf(congruences);
        List<Integer> counts = counts(congruences);
        int below = counts.stream().filter(count -> count <= limit).reduce((first, last) -> last).orElseThrow();
        int above = counts.stream().filter(count -> count >= limit).findFirst().orElseThrow();
        assertEquals(below, lattice.atMost(limit));
        assertEquals(above, lattice.atLeast(limit));
        assertEquals(2 * limit <= below + above ? below : above, lattice.nearest(limit));
        assertEquals(counts.stream().filter(count -> count >= limit - 20 && count <= limit + 20).toList(),
                lattice.between(limit - 20, limit + 20));
    }

    @Repeatable
    void theWidestGapIsTheWidestThatOnePasses(@ForAll("unions") List<Congruence> congruences) {
        List<Integer> counts = counts(congruences);
        int widest = IntStream.range(1, counts.size()).map(i -> counts.get(i) - counts.get(i - 1)).max().orElseThrow();
        assertEquals(widest, Lattice.anyOf(congruences).widestGap());
    }

    /** Half of it reaches a count from anywhere, and two ideals that far apart have different nearest counts. */
    @Repeatable
    void theWidestGapIsAStep(@ForAll("unions") List<Congruence> congruences,
            @ForAll @IntRange(min = 0, max = 600) int halves) {
        Lattice lattice = Lattice.anyOf(congruences);
        double ideal = halves / 2.0;
        int gap = lattice.widestGap();
        assertTrue(Math.abs(lattice.nearest(ideal) - ideal) <= gap / 2.0);
        assertTrue(lattice.nearest(ideal) < lattice.nearest(ideal + gap));
    }

    @ParameterizedTest(name = "repeat {0}, edge {1}: {2} modulo {3}")
    @CsvSource(textBlock = """
            # repeat, edge, residues, step: twice what half of the count may be, by hand
            12, 1,  0 2 4,    24
            12, 0,  0 2 22,   24
            6,  5,  0 8 10,   12
            # a stitch either way reaches every even count
            3,  1,  0,        2
            2,  0,  0,        2
            1,  0,  0,        2
            4,  2,  2 4 6,    8
            """)
    void wholeRepeatsOnTheInstep(int repeat, int edge, String residues, int step) {
        Lattice lattice = Lattice.ofAll(List.of(SizeLists.wholeRepeats(repeat, edge)));
        assertEquals(step, lattice.step());
        assertEquals(residues, String.join(" ", lattice.residues().stream().map(String::valueOf).toList()));
    }

    @Test
    void isEmptyWhereNeedsExcludeEachOther() {
        Lattice odd = Lattice.anyOf(List.of(new Congruence(1, 4)));
        Lattice none = odd.and(Lattice.anyOf(List.of(Congruence.multipleOf(2))));
        assertTrue(none.isEmpty());
        assertFalse(none.contains(1));
        assertEquals(List.of(), none.between(0, 100));
        assertThrows(IllegalStateException.class, () -> none.nearest(60));
        assertTrue(none.and(Lattice.ALL).isEmpty());
    }

    private static List<Integer> counts(List<Congruence> congruences) {
        return IntStream.range(0, FAR + 1).boxed().filter(count -> congruences.stream()
                .anyMatch(congruence -> (count - congruence.residue()) % congruence.step() == 0)).toList();
    }

    private static List<Integer> counts(Lattice lattice) {
        return IntStream.range(0, FAR + 1).boxed().filter(lattice::contains).toList();
    }

    @Provide
    Arbitrary<List<Congruence>> unions() {
        Arbitrary<Congruence> congruences = Combinators.combine(Arbitraries.integers().between(0, 11),
                Arbitraries.of(1, 2, 3, 4, 5, 6, 8, 12)).as(Congruence::new);
        return congruences.list().ofMinSize(1).ofMaxSize(3);
    }
}
