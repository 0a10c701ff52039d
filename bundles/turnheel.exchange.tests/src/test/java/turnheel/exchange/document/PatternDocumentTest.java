package turnheel.exchange.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.engine.design.Design;
import turnheel.engine.grading.Graded;
import turnheel.engine.wording.HouseStyle;
import turnheel.engine.wording.HouseStyles;
import turnheel.engine.wording.NoBreak;
import turnheel.engine.writing.Manuscripts;
import turnheel.engine.writing.PatternText;
import turnheel.engine.writing.Role;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.Designs;

class PatternDocumentTest {

    private static final Graded GRADED = Patterns.grade(Designs.toeUp());

    @Test
    void saysWhatThePatternSaysInItsOrder() {
        PatternText text = Manuscripts.write(GRADED, HouseStyles.usual());

        assertEquals(instructions(text), instructions(PatternDocument.of(GRADED, HouseStyles.usual(), Optional.empty())));
    }

    @Test
    void anEditionOfOneSizeSaysWhatConcernsIt() {
        String label = GRADED.sizes().getLast().label();
        Document one = PatternDocument.of(GRADED, HouseStyles.usual(), Optional.of(label));

        assertTrue(one.subject().contains(label), one.subject());
        assertEquals(instructions(Manuscripts.write(GRADED, HouseStyles.usual()).onlySize(label)), instructions(one));
    }

    @Test
    void aRowOfATableHasACellUnderEveryHeading() {
        List<Block.Row> rows = List.of(new Block.Row(List.of(new Block.Cell.Words("M"))));
        assertThrows(IllegalArgumentException.class, () -> new Block.Table("Counts", List.of("Size", "Foot"), rows));
    }

    static Stream<Design> designs() {
        return Designs.all().values().stream();
    }

    @ParameterizedTest
    @MethodSource("designs")
    void whatCanHurtIsReadBeforeTheFirstSection(Design design) {
        List<Block> blocks = document(design, HouseStyles.usual(), Optional.empty()).blocks();
        List<Block> headings = blocks.stream().filter(block -> block instanceof Block.Heading).toList();
        int caution = blocks.indexOf(headings.getFirst()) + 1;
        assertTrue(isCaution(blocks.get(caution)), blocks.get(caution).toString());
        int second = blocks.indexOf(headings.get(1));
        assertTrue(blocks.subList(second, blocks.size()).stream().noneMatch(PatternDocumentTest::isCaution));
    }

    /** Worked by hand: 56 stitches at 32 to 10 cm are 17.5 cm around, 8.75 cm when laid flat. */
    @Test
    void everySizeHasARowInTheTableOfMeasurements() {
        List<Block.Table> tables = tables(document(Designs.toeUp(), HouseStyles.usual(), Optional.empty()));
        assertEquals(2, tables.size());
        for (Block.Table table : tables) {
            assertEquals("B: Foot, half around", table.head().get(2));
            assertEquals(List.of("XS", "S", "M", "L", "XL"), table.rows().stream()
                    .map(row -> ((Block.Cell.Words) row.cells().getFirst()).text()).toList());
        }
        assertEquals("8.8 cm", figure(tables.get(0), 0, 2));
        assertEquals("3 1/2 in", figure(tables.get(1), 0, 2));
    }

    private static String figure(Block.Table table, int row, int column) {
        return NoBreak.ordinary(((Block.Cell.Figure) table.rows().get(row).cells().get(column)).text());
    }

    @Test
    void measurementsAreInTheUnitsOfTheHouseStyle() {
        HouseStyle metric = HouseStyles.read("metric", Map.of("lengths", "cm", "decimal", ","));
        assertEquals(List.of("Centimetres, laid flat"), tables(document(Designs.toeUp(), metric, Optional.empty()))
                .stream().map(Block.Table::caption).toList());
        assertEquals("8,8 cm", figure(tables(document(Designs.toeUp(), metric, Optional.empty())).getFirst(), 0, 2));
    }

    @Test
    void anEditionOfOneSizeHasItsFiguresInTheDrawing() {
        Document one = document(Designs.toeUp(), HouseStyles.usual(), Optional.of("S"));
        assertEquals(List.of(), tables(one));
        assertEquals(List.of("Quay Steps: finished measurements, size S", "Quay Steps: Toe, size S",
                "Quay Steps: Heel, size S"), pictures(one));
    }

    @Test
    void aChartThatDiffersIsShownInTheMiddleSizeAndSaysSo() {
        Document all = document(Designs.toeUp(), HouseStyles.usual(), Optional.empty());
        assertEquals(List.of("Quay Steps: finished measurements, all sizes", "Quay Steps: Toe, size M",
                "Quay Steps: Heel, size M"), pictures(all));
        assertEquals(2, all.blocks().stream().filter(block -> block instanceof Block.Paragraph(Purpose purpose, String text)
                && text.startsWith("Charted in size M.")).count());
    }

    private static Document document(Design design, HouseStyle style, Optional<String> size) {
        return PatternDocument.of(Patterns.grade(design), style, size);
    }

    private static boolean isCaution(Block block) {
        return block instanceof Block.Paragraph(Purpose purpose, String text) && purpose == Purpose.CAUTION;
    }

    private static List<Block.Table> tables(Document document) {
        return document.blocks().stream().flatMap(block -> block instanceof Block.Table table ? Stream.of(table)
                : Stream.empty()).toList();
    }

    private static List<String> pictures(Document document) {
        return document.blocks().stream().flatMap(block -> block instanceof Block.Drawn(var picture)
                ? Stream.of(picture.title()) : Stream.empty()).toList();
    }

    private static List<String> instructions(PatternText text) {
        return text.paragraphs().stream().filter(paragraph -> paragraph.role() == Role.INSTRUCTION).map(text::unbroken)
                .toList();
    }

    private static List<String> instructions(Document document) {
        return document.blocks().stream()
                .filter(block -> block instanceof Block.Paragraph(Purpose purpose, String text)
                        && purpose == Purpose.INSTRUCTION)
                .map(block -> ((Block.Paragraph) block).text()).toList();
    }
}
