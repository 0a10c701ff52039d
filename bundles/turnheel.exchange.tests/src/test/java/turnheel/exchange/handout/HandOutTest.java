package turnheel.exchange.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.engine.design.Direction;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.shaping.RoundFinder;
import turnheel.engine.shaping.Rounds;
import turnheel.engine.stitch.Stitch;
import turnheel.exchange.document.Block;
import turnheel.exchange.document.Document;

class HandOutTest {

    static Stream<Draft> ofEveryKind() {
        return Socks.ofEveryKind();
    }

    @ParameterizedTest
    @MethodSource("ofEveryKind")
    void everyTechniqueOfEveryConstructionHasAPageWithoutGaps(Draft draft) {
        Graded graded = draft.graded();
        List<Topic> topics = HandOut.topics(graded);
        Document all = HandOut.of(graded, EnumSet.copyOf(topics), Optional.empty());
        assertEquals(topics.size() - 1, all.blocks().stream().filter(Block.NewPage.class::isInstance).count());
        for (Topic topic : topics) {
            List<Block> page = HandOut.of(graded, Set.of(topic), Optional.empty()).blocks();
            assertTrue(page.stream().anyMatch(Block.Terms.class::isInstance), topic + " has no slips");
            Block.Table rounds = tables(page).getFirst();
            assertEquals(graded.sizes().size() + 1, rounds.head().size());
            assertFalse(rounds.rows().isEmpty(), topic + " has no rounds");
            page.forEach(block -> assertTrue(isFilled(block), () -> block.toString()));
        }
    }

    private static List<Block.Table> tables(List<Block> blocks) {
        return blocks.stream().filter(Block.Table.class::isInstance).map(Block.Table.class::cast).toList();
    }

    private static boolean isFilled(Block block) {
        return switch (block) {
            case Block.Heading heading -> !heading.text().isBlank();
            case Block.Paragraph paragraph -> !paragraph.text().isBlank() && !paragraph.text().contains("{");
            case Block.Entries entries -> !entries.texts().isEmpty();
            case Block.Terms terms -> !terms.terms().isEmpty()
                    && terms.terms().stream().noneMatch(term -> term.word().isBlank() || term.meaning().isBlank());
            case Block.Table table -> table.rows().stream().noneMatch(row -> row.cells().stream().skip(1)
                    .allMatch(Block.Cell.Nothing.class::isInstance));
            case Block.Drawn drawn -> !drawn.picture().shapes().isEmpty();
            case Block.NewPage newPage -> true;
        };
    }

    @Test
    void theOrderIsThatOfTheKnitting() {
        Draft flap = Designs.toeUp64().with(Designs.FLAP_HEEL);
        assertEquals(List.of(Topic.CAST_ON, Topic.TOE, Topic.GUSSET, Topic.HEEL, Topic.CUFF, Topic.CLOSING),
                HandOut.topics(flap.graded()));
        assertEquals(List.of(Topic.CAST_ON, Topic.CUFF, Topic.HEEL, Topic.GUSSET, Topic.TOE, Topic.CLOSING),
                HandOut.topics(flap.with(Direction.CUFF_DOWN).graded()));
        assertEquals(List.of(Topic.CAST_ON, Topic.CUFF, Topic.TOE, Topic.HEEL, Topic.CLOSING),
                HandOut.topics(Designs.cuffDown64().with(Designs.ONE_HEEL_OF_EACH.getLast()).graded()));
    }

    /**
     * Worked by hand, domain § 3 and § 5: 64 stitches turn at 20 after 3 rounds; of 32 heel stitches 10 stay, 11 a
     * side.
     */
    @ParameterizedTest(name = "{1}: {2}")
    @CsvSource(textBlock = """
            TOE,  Cast-on,             8
            TOE,  Increase round 1,    12 (1)
            TOE,  Increase round 3,    20 (3)
            TOE,  Increase round 4,    24 (5)
            TOE,  Increase round 14,   64 (25)
            HEEL, 'Rows, each shorter', 1–22
            HEEL, 'Rows, each longer',  23–44
            """)
    void theRoundsAreThoseWorkedByHand(Topic topic, String line, String cell) {
        List<Block> page = HandOut.of(Designs.toeUp64().graded(), Set.of(topic), Optional.empty()).blocks();
        Block.Row row = tables(page).getFirst().rows().stream()
                .filter(each -> each.cells().getFirst().equals(new Block.Cell.Words(line))).findFirst().orElseThrow();
        assertEquals(new Block.Cell.Figure(cell), row.cells().get(1));
    }

    /** By hand: row 1 leaves 1 of 32 unworked, row 22 the 10 of the centre, then it is a stitch more each row. */
    @Test
    void rowsShowWhatIsWorkedInThem() {
        Graded graded = Designs.toeUp64().graded();
        Lesson heel = Lessons.of(graded).stream().filter(lesson -> lesson.topic() == Topic.HEEL).findFirst()
                .orElseThrow();
        List<Block.Row> rows = RoundsTable.of(graded, heel).rows();
        assertEquals(List.of("1–22", "31–10", "23–44", "11–32"), rows.stream()
                .map(row -> ((Block.Cell.Figure) row.cells().get(1)).text()).toList());
    }

    /** The toe of 64 stitches from 8 has a cast-on, a set-up and 26 rounds, of which no two look alike. */
    @Test
    void theFinderHasALineForEveryRoundOfAToe() {
        Graded graded = Designs.toeUp64().graded();
        List<Block.Table> tables = tables(HandOut.of(graded, Set.of(Topic.TOE), Optional.of("M")).blocks());
        assertEquals(28, tables.getLast().rows().size());
        GradedSize size = graded.size("M");
        RoundFinder finder = RoundFinder.of(Rounds.of(graded, size));
        for (Block.Row row : tables.getLast().rows()) {
            int stitches = Integer.parseInt(((Block.Cell.Figure) row.cells().get(1)).text());
            assertFalse(finder.find(stitches, OptionalInt.empty()).isEmpty());
        }
    }

    @Test
    void theSizeAskedForIsTheOneOfFinderAndChart() {
        Graded graded = Designs.toeUpInSixSizes().graded();
        List<String> headings = new ArrayList<>();
        HandOut.of(graded, Set.of(Topic.TOE), Optional.of("L")).blocks().forEach(block -> {
            if (block instanceof Block.Heading heading) {
                headings.add(heading.text());
            }
        });
        assertTrue(headings.contains("Where am I? Size L") && headings.contains("Chart, size L"), headings.toString());
        assertThrows(IllegalArgumentException.class, () -> HandOut.of(graded, Set.of(Topic.TOE), Optional.of("no")));
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void everyLookHasWordsAndAStitch(Look look) {
        assertFalse(look.word().isBlank());
        assertFalse(look.meaning().isBlank());
        assertTrue(Stream.of(Stitch.values()).anyMatch(stitch -> Look.of(stitch).equals(Optional.of(look))));
    }

    @ParameterizedTest
    @EnumSource(UsualSlip.class)
    void everySlipHasWordsAndATechnique(UsualSlip slip) {
        assertFalse(slip.term().word().isBlank());
        assertFalse(slip.term().meaning().isBlank());
        assertTrue(Socks.ofEveryKind().map(Draft::graded).flatMap(graded -> Lessons.of(graded).stream()
                .flatMap(lesson -> UsualSlip.of(lesson, graded.sizes().stream()
                        .flatMap(size -> lesson.rounds(graded, size).stream()).toList()).stream()))
                .anyMatch(slip::equals), slip.name());
    }

    @ParameterizedTest
    @EnumSource(Stage.Kind.class)
    void everyStageHasWords(Stage.Kind kind) {
        assertFalse(Words.text("stage." + kind.name()).isBlank());
    }

    @Test
    void aPartThatDoesNotWorkOutSaysSo() {
        Graded graded = Designs.toeUp64().with("toe.castOn = 7").graded();
        String told = HandOut.of(graded, Set.of(Topic.TOE), Optional.empty()).blocks().toString();
        assertTrue(told.contains("do not work out"), told);
    }
}
