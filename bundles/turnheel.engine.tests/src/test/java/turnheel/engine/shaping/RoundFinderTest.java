package turnheel.engine.shaping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Heel;
import turnheel.engine.design.Part;
import turnheel.engine.design.Toe;
import turnheel.engine.fixture.Designs;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.Grader;
import turnheel.engine.shaping.RoundFinder.Slip;

class RoundFinderTest {

    private static List<PartRounds> rounds(Design design) {
        Graded graded = Grader.grade(design);
        return Rounds.of(graded, graded.sizes().getFirst());
    }

    private static RoundFinder toeUp() {
        return RoundFinder.of(rounds(Designs.toeUp64().design()));
    }

    private static RoundFinder cuffDown() {
        return RoundFinder.of(rounds(Designs.cuffDown64().with(Designs.WEDGE_TOE).design()));
    }

    @ParameterizedTest(name = "{0} stitches, {1} open: round {2}, then {3}")
    @CsvSource(textBlock = """
            # by hand: 8 cast on, three rounds of four increases, one plain, then increase and plain in turn
            12, 4,  1,  2
            20, 4,  3,  4
            20, 0,  4,  5
            24, 4,  5,  6
            44, 0, 16, 17
            60, 4, 23, 24
            """)
    void findsOneRoundOfAToeThatGrowsByYarnOvers(int stitches, int open, int worked, int next) {
        List<Place> places = toeUp().find(stitches, OptionalInt.of(open));
        assertEquals(1, places.size());
        assertEquals(Part.TOE, places.getFirst().part());
        assertEquals(worked, places.getFirst().first().number());
        assertEquals(worked, places.getFirst().last().number());
        assertEquals(next, places.getFirst().next().orElseThrow().round().number());
    }

    @Test
    void leavesNoDoubtAnywhereInThatToe() {
        RoundFinder finder = toeUp();
        List<Place> toe = finder.table().stream()
                .filter(place -> place.part() == Part.TOE && place.first().number() > 0).toList();
        assertEquals(26, toe.size());
        for (Place place : toe) {
            assertEquals(List.of(place), finder.find(place.stitches(), OptionalInt.of(place.openYarnOvers())).stream()
                    .filter(other -> other.part() == Part.TOE).toList());
        }
    }

    @Test
    void namesBothRoundsWhereOnlyASignTellsThemApart() {
        // a wedge cuff-down: every count stands after its decrease round and after the plain round above it
        List<Place> places = cuffDown().find(56, OptionalInt.empty());
        assertEquals(List.of(3, 4), places.stream().map(place -> place.first().number()).toList());
        assertEquals(List.of(Sign.DECREASES, Sign.PLAIN), places.stream().map(Place::sign).toList());
    }

    @Test
    void takesAPlainStretchTogether() {
        List<Place> foot = toeUp().table().stream().filter(place -> place.part() == Part.FOOT).toList();
        assertEquals(1, foot.size());
        assertEquals(1, foot.getFirst().first().number());
        assertEquals(foot.getFirst().rounds(), foot.getFirst().last().number());
        assertEquals(Part.HEEL, foot.getFirst().next().orElseThrow().part());
    }

    @ParameterizedTest(name = "{0} loops: {1}, {2} stitches, at {3}")
    @CsvSource(textBlock = """
            # loops, slip, by, round, of
            43, YARN_OVER_OMITTED, 1, 15, toe-up
            22, YARN_OVER_OMITTED, 2, 5,  toe-up
            57, DECREASE_MISSED,   1, 3,  cuff-down
            55, DECREASE_DOUBLED,  1, 3,  cuff-down
            """)
    void tellsTheLikeliestSlipWhereNoRoundHasTheCount(int loops, Slip.Kind kind, int by, int round, String direction) {
        RoundFinder finder = direction.equals("toe-up") ? toeUp() : cuffDown();
        assertEquals(List.of(), finder.find(loops, OptionalInt.empty()));
        Slip first = finder.slips(loops).getFirst();
        assertEquals(kind, first.kind());
        assertEquals(by, first.stitches());
        assertEquals(round, first.place().first().number());
    }

    @Test
    void findsALeftOutYarnOverOnTheRoundThatClosesTheOthersToo() {
        List<Slip> slips = toeUp().slips(43);
        assertEquals(List.of(15, 16), slips.stream().map(slip -> slip.place().first().number()).toList());
        assertEquals(List.of(Slip.Kind.YARN_OVER_OMITTED, Slip.Kind.YARN_OVER_OMITTED),
                slips.stream().map(Slip::kind).toList());
    }

    @Test
    void saysNothingOfACountThatNoSlipExplains() {
        assertEquals(List.of(), toeUp().slips(900));
    }

    static Stream<Design> socks() {
        return Stream.of(Direction.values()).flatMap(direction -> Designs.EVERY_TOE.stream().flatMap(toe ->
                Designs.ONE_HEEL_OF_EACH.stream().map(heel -> sock(direction, toe, heel))));
    }

    private static Design sock(Direction direction, Toe toe, Heel heel) {
        return Designs.toeUp64().with(direction).with(toe).with(heel).design();
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("socks")
    void hasEveryRoundOfEveryPartInItsTable(Design sock) {
        List<PartRounds> parts = rounds(sock);
        RoundFinder finder = RoundFinder.of(parts);
        for (PartRounds part : parts) {
            for (Round round : part.rounds()) {
                assertTrue(finder.find(round.stitches(), OptionalInt.of(round.openYarnOvers())).stream()
                        .anyMatch(place -> place.part() == part.part() && place.first().number() <= round.number()
                                && round.number() <= place.last().number()), () -> part.part() + " " + round);
            }
        }
        assertEquals(parts.stream().mapToInt(part -> part.rounds().size()).sum(),
                finder.table().stream().mapToInt(Place::rounds).sum());
    }
}
