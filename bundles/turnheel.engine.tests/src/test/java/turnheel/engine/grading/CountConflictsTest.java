package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static turnheel.engine.grading.SizeLists.multiples;
import static turnheel.engine.grading.SizeLists.wholeRepeats;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import net.jqwik.api.statistics.StatisticsReport;
import org.junit.jupiter.api.Test;
import turnheel.engine.fixture.Deep;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.grading.CountAnswer.Conflict;

/** Which needs fight is told by as few of them as can be: proved by trying every set of needs on every count. */
class CountConflictsTest {

    @Property(seed = Repeatable.SEED, tries = 400, edgeCases = EdgeCasesMode.NONE)
    @StatisticsReport(onFailureOnly = true)
    void namesASmallestSetOfNeedsThatFight(@ForAll("fighting") List<Need> needs) {
        int named = check(needs);
        Statistics.label("needs that fight").collect(named).coverage(coverage -> {
            coverage.check(2).percentage(share -> share > 30);
            coverage.check(3).percentage(share -> share > 2);
        });
    }

    @Deep
    void namesASmallestSetInManyMore(@ForAll("fighting") List<Need> needs) {
        check(needs);
    }

    private static int check(List<Need> needs) {
        List<Conflict> conflicts = CountConflicts.of(List.of(SizeWish.of("M", 64, needs)));
        assertEquals(1, conflicts.size());
        Conflict.Excluding excluding = (Conflict.Excluding) conflicts.getFirst();
        assertFalse(haveACount(excluding.needs()));
        List<List<Need>> sets = sets(needs);
        int smallest = sets.stream().filter(set -> !haveACount(set)).mapToInt(List::size).min().orElseThrow();
        assertEquals(smallest, excluding.needs().size());
        assertTrue(sets.contains(excluding.needs()));
        return smallest;
    }

    private static boolean haveACount(List<Need> needs) {
        return IntStream.rangeClosed(1, SizeLists.LONGEST_PERIOD).anyMatch(count -> EveryVector.suits(needs, count));
    }

    private static List<List<Need>> sets(List<Need> needs) {
        List<List<Need>> sets = new ArrayList<>();
        for (int members = 0; members < 1 << needs.size(); members++) {
            int these = members;
            sets.add(IntStream.range(0, needs.size()).filter(i -> (these >> i & 1) == 1).mapToObj(needs::get).toList());
        }
        return sets;
    }

    @Provide
    Arbitrary<List<Need>> fighting() {
        return SizeLists.needs().filter(needs -> !haveACount(needs));
    }

    /** Repeat 12, edge 3: the count is 4, 6 or 8 more than a multiple of 24, so never a multiple of 12. */
    @Test
    void twoStitchPatternsFight() {
        Need instep = wholeRepeats(12, 3);
        Need leg = multiples(Need.Kind.LEG_REPEATS, 12);
        List<Need> needs = List.of(Need.HALVES, multiples(Need.Kind.TOE_LINES, 4), instep, leg,
                multiples(Need.Kind.RIB, 4));
        assertEquals(List.of(new Conflict.Excluding(List.of("S", "M"), List.of(instep, leg))),
                CountConflicts.of(List.of(SizeWish.of("S", 56, needs), SizeWish.of("M", 64, needs))));
    }

    /** Of 4, 6 and 8 three lines take the 6 and a rib of 4 the others; three lines and the rib agree on twelves. */
    @Test
    void threeNeedsFightOfWhichAnyTwoAgree() {
        Need lines = multiples(Need.Kind.TOE_LINES, 3);
        Need instep = wholeRepeats(12, 3);
        Need rib = multiples(Need.Kind.RIB, 4);
        assertEquals(List.of(new Conflict.Excluding(List.of("M"), List.of(lines, instep, rib))),
                CountConflicts.of(List.of(SizeWish.of("M", 64, List.of(Need.HALVES, lines, instep, rib)))));
    }

    @Test
    void sizesWithLinesOfTheirOwnFightByThemselves() {
        Need instep = wholeRepeats(12, 3);
        Need rib = multiples(Need.Kind.RIB, 4);
        List<Need> onThree = List.of(multiples(Need.Kind.TOE_LINES, 3), instep, rib);
        List<Need> onFour = List.of(multiples(Need.Kind.TOE_LINES, 4), instep, rib);
        List<SizeWish> sizes = List.of(SizeWish.of("S", 54, onThree), SizeWish.of("M", 56, onFour),
                SizeWish.of("L", 70, onThree));
        assertEquals(List.of(new Conflict.Excluding(List.of("S", "L"), onThree)), CountConflicts.of(sizes));
        // S and L can still have the toe and the instep: 54 and 78 of 30, 54 and 78; M has 52 56 76 80
        assertEquals(List.of(54, 56, 78), CountSolver.solve(sizes).perSize());
    }

    /** What the designer set is honoured, so it cannot fight. */
    @Test
    void aSizeWithACountOfItsOwnDoesNotFight() {
        List<Need> needs = List.of(wholeRepeats(12, 3), multiples(Need.Kind.LEG_REPEATS, 12));
        List<SizeWish> sizes = List.of(SizeWish.of("M", 64, needs).fixedAt(66));
        assertEquals(new CountAnswer.Counts(List.of(66)), CountSolver.solve(sizes));
    }

    /** Repeats of 97 and 89 stitches meet at 8633: no sock has that many. */
    @Test
    void aCountThatNoSockHasIsOutOfReach() {
        List<Need> needs = List.of(Need.HALVES, multiples(Need.Kind.LEG_REPEATS, 97), multiples(Need.Kind.RIB, 89));
        List<SizeWish> sizes = List.of(SizeWish.of("M", 64, needs));
        assertEquals(List.of(new Conflict.OutOfReach("M", 1, 1000, 2 * 8633)), CountConflicts.of(sizes));
        // halves alone leave a count for a sock of up to 128 stitches
        assertEquals(List.of(64), CountSolver.solve(sizes).perSize());
    }

    @Test
    void refusesSizesThatHaveCounts() {
        assertThrows(IllegalStateException.class,
                () -> CountConflicts.of(List.of(SizeWish.of("M", 64, List.of(Need.HALVES)))));
    }
}
