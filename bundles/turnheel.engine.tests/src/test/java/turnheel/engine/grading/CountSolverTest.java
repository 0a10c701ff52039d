package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static turnheel.engine.grading.SizeLists.fixed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import net.jqwik.api.statistics.StatisticsReport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.fixture.Deep;
import turnheel.engine.fixture.Repeatable;

class CountSolverTest {

    private static final Congruence FOURS = Congruence.multipleOf(4);

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # ideals          | counts: by hand, whole fours
            63.9              | 64
            # a tie goes to the smaller
            58                | 56
            # each nearest alone, and they grow
            52 56.5 61 66.2   | 52 56 60 68
            # less than a step apart may share, equals always do
            64 65 66          | 64 64 64
            58 58 58          | 56 56 56
            # a whole step apart never share: 58 and 62 would both be nearest to 60, were 58 not a tie
            58 62             | 56 60
            # one after the other 57.9 takes 56, 58.1 takes 60
            57.9 58.1         | 56 60
            # a list that the designer did not sort: nothing grows, nothing must
            72 56             | 72 56
            """)
    void picksTheNearestCountsThatGrow(String ideals, String counts) {
        assertEquals(numbers(counts), CountSolver.solve(sizes(ideals, FOURS)).perSize());
    }

    /**
     * 60.2 alone takes 64 of 56 and 64 (toe of 8 lines); 64 has nothing but 60 in its window of 58 to 70 (toe of 12
     * lines). One size after the other would be stuck at 64.
     */
    @Test
    void givesUpTheNearestOfOneSizeForAllOfThem() {
        SizeWish small = SizeLists.size("S", 60.2, Congruence.multipleOf(8), 8);
        SizeWish medium = SizeLists.size("M", 64, Congruence.multipleOf(12), 12);
        assertEquals(List.of(64), CountSolver.solve(List.of(small)).perSize());
        assertEquals(List.of(56, 60), CountSolver.solve(List.of(small, medium)).perSize());
    }

    /** 50 and 56 differ by a step of 6, so below the designer's 48 only 42 would grow, and it lies outside 50 ± 4. */
    @Test
    void tellsWhichNeighbourADesignersCountLeavesNoRoom() {
        Congruence sixes = Congruence.multipleOf(6);
        SizeWish small = SizeLists.size("S", 25, sixes, 6);
        SizeWish medium = SizeLists.size("M", 50, sixes, 6);
        SizeWish large = SizeLists.size("L", 56, sixes, 6);
        assertEquals(new CountAnswer.Counts(List.of(24, 48, 54)),
                CountSolver.solve(List.of(small, medium, fixed(large, 54))));
        assertEquals(new CountAnswer.Unsolvable(List.of(24, 48, 48), List.of("M", "L")),
                CountSolver.solve(List.of(small, medium, fixed(large, 48))));
    }

    /** Each pair has room, 60 < 64 and 60 < 64; between 60 and 64 there is none. */
    @Test
    void tellsARunOfThreeWhereEveryPairHasCounts() {
        SizeWish small = fixed(SizeLists.size("S", 58, FOURS, 8), 60);
        SizeWish medium = SizeLists.size("M", 62, FOURS, 8);
        SizeWish large = fixed(SizeLists.size("L", 66, FOURS, 8), 64);
        SizeWish larger = SizeLists.size("XL", 72, FOURS, 8);
        assertEquals(List.of(60, 64), CountSolver.solve(List.of(small, medium)).perSize());
        assertEquals(List.of(60, 64), CountSolver.solve(List.of(medium, large)).perSize());
        assertEquals(new CountAnswer.Unsolvable(List.of(60, 60, 64, 72), List.of("S", "M", "L")),
                CountSolver.solve(List.of(small, medium, large, larger)));
    }

    @Property(seed = Repeatable.SEED, tries = 1000, edgeCases = EdgeCasesMode.NONE)
    void findsTheBestOfAllVectors(@ForAll("onOneLattice") List<SizeWish> sizes) {
        check(sizes);
    }

    @Property(seed = Repeatable.SEED, tries = 1000, edgeCases = EdgeCasesMode.NONE)
    @StatisticsReport(onFailureOnly = true)
    void findsTheBestOrTheShortestRunWithoutCounts(@ForAll("onManyLattices") List<SizeWish> sizes) {
        CountAnswer answer = check(sizes);
        int run = answer instanceof CountAnswer.Unsolvable unsolvable ? unsolvable.clashing().size() : 0;
        Statistics.label("sizes in the clash").collect(run).coverage(coverage -> {
            coverage.check(0).percentage(share -> share > 20);
            coverage.check(1).percentage(share -> share > 5);
            coverage.check(2).percentage(share -> share > 5);
        });
    }

    @Deep
    void findsTheBestOfManyMore(@ForAll("onOneLattice") List<SizeWish> one,
            @ForAll("onManyLattices") List<SizeWish> other) {
        check(one);
        check(other);
    }

    private static CountAnswer check(List<SizeWish> sizes) {
        CountAnswer answer = CountSolver.solve(sizes);
        Optional<List<Integer>> best = EveryVector.best(sizes);
        if (best.isPresent()) {
            assertEquals(new CountAnswer.Counts(best.get()), answer);
        } else {
            assertTrue(answer instanceof CountAnswer.Unsolvable, answer::toString);
            assertEquals(EveryVector.shortestRunWithout(sizes), ((CountAnswer.Unsolvable) answer).clashing());
        }
        return answer;
    }

    @Repeatable
    void honoursEveryCountOfTheDesigner(@ForAll("onManyLattices") List<SizeWish> sizes) {
        List<Integer> counts = CountSolver.solve(sizes).perSize();
        for (int i = 0; i < sizes.size(); i++) {
            if (sizes.get(i).fixed().isPresent()) {
                assertEquals(sizes.get(i).fixed().getAsInt(), counts.get(i));
            }
        }
    }

    @Repeatable
    void staysOnTheLatticeAndAboveTheFewestEvenWithoutAnAnswer(@ForAll("onManyLattices") List<SizeWish> sizes) {
        List<Integer> counts = CountSolver.solve(sizes).perSize();
        for (int i = 0; i < sizes.size(); i++) {
            SizeWish size = sizes.get(i);
            if (size.fixed().isEmpty()) {
                assertEquals(0, counts.get(i) % size.lattice().step());
                assertTrue(counts.get(i) >= size.fewest());
            }
        }
    }

    /** Sizes that differ in length only share a count. */
    @Repeatable
    void equalSizesShareACount(@ForAll("onOneLattice") List<SizeWish> sizes) {
        List<SizeWish> doubled = new ArrayList<>();
        for (SizeWish size : sizes) {
            doubled.add(size);
            doubled.add(new SizeWish(size.label() + " long", size.ideal(), size.needs(), size.lattice(), size.fixed()));
        }
        List<Integer> counts = CountSolver.solve(doubled).perSize();
        for (int i = 0; i < counts.size(); i += 2) {
            assertEquals(counts.get(i), counts.get(i + 1));
        }
    }

    @ParameterizedTest(name = "{0} on {1}s from {2}: {3}")
    @CsvSource(textBlock = """
            # ideal, step, fewest, candidates: by hand; the window is 8 %, or half a step where that is more
            64,   4,  8, 60 64 68
            62.5, 4,  8, 60 64
            # 8 % of 100 is 8, the ends included
            100,  4,  8, 92 96 100 104 108
            # half of 24 is more than 8 % of 60: both ends of a tie
            60,  24, 24, 48 72
            61,  24, 24, 72
            # below the fewest there is none, and the nearest that can be worked is beyond the window
            9,    4, 16, ''
            14,   4, 16, 16
            """)
    void comparesTheCountsOfTheWindow(double ideal, int step, int fewest, String candidates) {
        SizeWish size = SizeLists.size("M", ideal, Congruence.multipleOf(step), fewest);
        assertEquals(numbers(candidates), size.candidates());
        assertEquals(numbers(candidates), EveryVector.allowed(size));
    }

    @Test
    void namesTheOneSizeThatIsTooSmall() {
        SizeWish doll = SizeLists.size("doll", 9, FOURS, 16);
        SizeWish adult = SizeLists.size("M", 64, FOURS, 16);
        assertEquals(new CountAnswer.Unsolvable(List.of(16, 64), List.of("doll")),
                CountSolver.solve(List.of(doll, adult)));
    }

    @Test
    void noSizesAreNoProblem() {
        assertEquals(new CountAnswer.Counts(List.of()), CountSolver.solve(List.of()));
    }

    @Provide
    Arbitrary<List<SizeWish>> onOneLattice() {
        return SizeLists.onOneLattice(5);
    }

    @Provide
    Arbitrary<List<SizeWish>> onManyLattices() {
        return SizeLists.onManyLattices(5);
    }

    private static List<SizeWish> sizes(String ideals, Congruence lattice) {
        List<SizeWish> sizes = new ArrayList<>();
        for (String ideal : ideals.split(" ")) {
            sizes.add(SizeLists.size("size " + (sizes.size() + 1), Double.parseDouble(ideal), lattice, 8));
        }
        return sizes;
    }

    private static List<Integer> numbers(String text) {
        return Arrays.stream(text.split(" ")).filter(number -> !number.isEmpty()).map(Integer::valueOf).toList();
    }
}
