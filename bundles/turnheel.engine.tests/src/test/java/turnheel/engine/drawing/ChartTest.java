package turnheel.engine.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static turnheel.engine.stitch.Stitch.KNIT;
import static turnheel.engine.stitch.Stitch.PURL;
import static turnheel.engine.stitch.Stitch.SLIP_SLIP_KNIT;
import static turnheel.engine.stitch.Stitch.TURN;
import static turnheel.engine.stitch.Stitch.WRAP_AND_TURN;
import static turnheel.engine.stitch.Stitch.YARN_OVER;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.Part;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.RandomDesigns;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.shaping.Round;
import turnheel.engine.shaping.Rounds;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;

class ChartTest {

    private static Step work(Stitch stitch, int count) {
        return new Step.Work(stitch, count);
    }

    private static Step repeat(int times, Step... steps) {
        return new Step.Repeat(List.of(steps), times);
    }

    /** A letter a square, from left to right as it is seen: lower case for no stitch and waiting ones. */
    private static String seen(ChartRow row) {
        return row.squares().reversed().stream().map(square -> switch (square) {
            case Square.Worked(var stitch) -> switch (stitch) {
                case KNIT -> "K";
                case PURL -> "P";
                case YARN_OVER -> "O";
                case KNIT_THROUGH_BACK -> "B";
                case SLIP_SLIP_KNIT -> "\\";
                case KNIT_TWO_TOGETHER -> "/";
                case WRAP_AND_TURN -> "W";
                default -> "?";
            };
            case Square.Waiting waiting -> "w";
            case Square.NoStitch noStitch -> "n";
            case Square.TurnEdge edge -> "|";
        }).collect(Collectors.joining());
    }

    private static Chart chart(Draft draft, ChartedPart part) {
        Graded graded = draft.graded();
        return part.chart(graded, graded.size("M")).orElseThrow();
    }

    static List<Draft> oneOfEach() {
        return Pictures.oneOfEach();
    }

    /** By hand: 8 stitches on 4 lines; a section begins with 2, has a new yarn-over on its right and ends with 16. */
    @Test
    void aRoundToeIsOneSectionThatGrowsOnItsRight() {
        Chart toe = chart(Designs.toeUp64(), ChartedPart.TOE);
        assertEquals(4, toe.times());
        assertEquals(16, toe.width());
        assertEquals(26, toe.rows().size());
        assertEquals("KKOnnnnnnnnnnnnn", seen(toe.rows().get(0)));
        assertEquals("KKBOnnnnnnnnnnnn", seen(toe.rows().get(1)));
        assertEquals("KKKBOnnnnnnnnnnn", seen(toe.rows().get(2)));
        assertEquals("KKKKBnnnnnnnnnnn", seen(toe.rows().get(3)));
        assertEquals("KKKKKKKKKKKKKKKB", seen(toe.rows().get(25)));
    }

    /** By hand: half of 64 stitches, decreased one stitch in from each side; 30 are left after the first round. */
    @Test
    void aWedgeToeIsOneHalfThatNarrowsOnBothSides() {
        Chart toe = chart(Designs.toeUp64().with(Direction.CUFF_DOWN).with(Designs.WEDGE_TOE), ChartedPart.TOE);
        assertEquals(2, toe.times());
        assertEquals(20, toe.rows().size());
        assertEquals("K/" + "K".repeat(26) + "\\K", seen(toe.rows().get(0)));
        assertEquals("nK/" + "K".repeat(24) + "\\Kn", seen(toe.rows().get(2)));
    }

    @Test
    void shortRowsKeepTheirColumns() {
        Chart chart = Chart.ofRows(5, List.of(List.of(work(KNIT, 4), work(WRAP_AND_TURN, 1)),
                List.of(work(PURL, 3), work(WRAP_AND_TURN, 1)), List.of(work(KNIT, 2), work(TURN, 1))));
        assertEquals(List.of("WKKKK", "wPPPW", "ww|KKw"),
                chart.rows().stream().map(ChartTest::seen).toList());
        assertEquals(List.of(ChartSide.RIGHT, ChartSide.WRONG, ChartSide.RIGHT),
                chart.rows().stream().map(ChartRow::side).toList());
    }

    @Test
    void laceKeepsItsEdgesAndFramesItsRepeat() {
        List<List<Step>> rounds = List.of(
                List.of(work(KNIT, 1), repeat(3, work(YARN_OVER, 1), work(KNIT, 2), work(SLIP_SLIP_KNIT, 1)),
                        work(PURL, 2)),
                List.of(work(KNIT, 15)));
        Chart chart = Chart.ofRounds(rounds, 1);
        assertEquals(List.of("PP\\KKOK", "KKKKKKK"), chart.rows().stream().map(ChartTest::seen).toList());
        assertEquals(3, chart.times());
        assertEquals(Optional.of(new ChartRow.Span(1, 4)), chart.rows().getFirst().repeat());
        assertEquals(rounds, chart.steps());
    }

    @Test
    void roundsOfDifferentRepeatsAreDrawnStitchByStitch() {
        List<List<Step>> rounds = List.of(List.of(repeat(2, work(KNIT, 2), work(PURL, 1))),
                List.of(repeat(3, work(KNIT, 1), work(PURL, 1))));
        Chart chart = Chart.ofRounds(rounds, 1);
        assertEquals(1, chart.times());
        assertEquals(List.of("PKKPKK", "PKPKPK"), chart.rows().stream().map(ChartTest::seen).toList());
    }

    @Test
    void aRowThatTakesTooMuchIsRefused() {
        List<List<Step>> rows = List.of(List.of(work(KNIT, 6)));
        assertThrows(IllegalArgumentException.class, () -> Chart.ofRows(5, rows));
        assertThrows(IllegalArgumentException.class, () -> Chart.ofRounds(List.of(), 1));
    }

    @ParameterizedTest
    @MethodSource("oneOfEach")
    void chartsOfEveryKindSayWhatIsWritten(Draft draft) {
        assertSaysWhatIsWritten(draft.graded());
    }

    @Property(seed = Repeatable.SEED, tries = 200, edgeCases = EdgeCasesMode.NONE)
    void chartsOfRandomSocksSayWhatIsWritten(@ForAll("socks") Draft draft) {
        assertSaysWhatIsWritten(draft.graded());
    }

    @Provide
    Arbitrary<Draft> socks() {
        return RandomDesigns.usual();
    }

    private static void assertSaysWhatIsWritten(Graded graded) {
        for (GradedSize size : graded.sizes()) {
            for (ChartedPart part : List.of(ChartedPart.TOE, ChartedPart.HEEL, ChartedPart.GUSSET)) {
                part.chart(graded, size).ifPresent(chart -> assertEquals(
                        written(graded, size, part, chart), unrolled(chart.steps()), part + " " + size.label()));
            }
        }
    }

    /** The numbered rounds of the part, from the one that the chart begins with. */
    private static List<List<Stitch>> written(Graded graded, GradedSize size, ChartedPart part, Chart chart) {
        Part ofSock = part == ChartedPart.GUSSET ? Part.FOOT : Part.valueOf(part.name());
        List<Round> rounds = Rounds.of(graded, size).stream().filter(all -> all.part() == ofSock)
                .flatMap(all -> all.rounds().stream()).filter(round -> round.number() > 0).toList();
        int first = part == ChartedPart.GUSSET ? chart.rows().getFirst().number() - 1 : 0;
        return unrolled(rounds.subList(first, first + chart.rows().size()).stream().map(Round::steps).toList());
    }

    private static List<List<Stitch>> unrolled(List<List<Step>> rounds) {
        return rounds.stream().map(ChartTest::stitches).toList();
    }

    private static List<Stitch> stitches(List<Step> steps) {
        return steps.stream().flatMap(step -> switch (step) {
            case Step.Work(var stitch, var count) -> Collections.nCopies(count, stitch).stream();
            case Step.Repeat(var repeated, var times) -> Collections.nCopies(times, stitches(repeated)).stream()
                    .flatMap(List::stream);
        }).toList();
    }

    @Repeatable
    void anyRoundsComeBackFromTheirChart(@ForAll("rounds") List<List<Step>> rounds) {
        Chart chart = Chart.ofRounds(rounds, 1);
        assertEquals(unrolled(rounds), unrolled(chart.steps()));
        assertEquals(chart, Chart.ofRounds(chart.steps(), 1));
    }

    @Provide
    Arbitrary<List<List<Step>>> rounds() {
        Arbitrary<Step> works = Combinators.combine(Arbitraries.of(Stitch.class), Arbitraries.integers().between(1, 6))
                .as(ChartTest::work);
        Arbitrary<Step> repeats = Combinators.combine(works.list().ofMinSize(1).ofMaxSize(3),
                Arbitraries.integers().between(1, 3)).as(Step.Repeat::new);
        return Arbitraries.frequencyOf(Tuple.of(3, works), Tuple.of(1, repeats))
                .list().ofMinSize(1).ofMaxSize(4).list().ofMinSize(1).ofMaxSize(5);
    }

    @Test
    void onlyAGussetHasAChartOfOne() {
        Graded plain = Designs.toeUp64().graded();
        assertTrue(ChartedPart.GUSSET.chart(plain, plain.size("M")).isEmpty());
        for (Direction direction : Direction.values()) {
            Draft draft = Designs.toeUp64().with(Designs.FLAP_HEEL).with(direction);
            assertTrue(draft.heel() instanceof FlapHeel);
            Chart gusset = chart(draft, ChartedPart.GUSSET);
            long pairs = IntStream.range(0, gusset.rows().size()).filter(row -> row % 2 == 0).count();
            assertEquals(2 * pairs - 1, gusset.rows().size());
        }
    }
}
