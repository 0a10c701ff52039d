package turnheel.exchange.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.awt.font.LineBreakMeasurer;
import java.awt.font.TextAttribute;
import java.io.IOException;
import java.io.InputStream;
import java.text.AttributedString;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.grading.Graded;
import turnheel.engine.wording.HouseStyle;
import turnheel.engine.wording.HouseStyles;
import turnheel.engine.wording.NoBreak;
import turnheel.engine.writing.Lettered;
import turnheel.engine.writing.Manuscripts;
import turnheel.engine.writing.PatternText;
import turnheel.engine.writing.SmallTable;
import turnheel.exchange.typeface.Typeface;

/**
 * Twelve sizes in narrow columns, broken into lines by the platform's own measurer of lines with the widths of the shipped
 * typeface at 9 points: no line is too wide, and none ends where the text forbids it. The platform's own rules for the ends
 * of lines know neither word joiners nor that a comma never begins a line.
 */
class NarrowColumnTest {

    private static final float POINTS = 9;
    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
    private static final Font FONT = font();
    private static final List<Graded> EVERY_KIND = Designs.everyKindInBothDirections(Designs.toeUpInTwelveSizes())
            .stream().map(Draft::graded).toList();
    private static final Map<String, Double> WIDTHS = new HashMap<>();

    private static Font font() {
        try (InputStream file = Typeface.PLAIN.open()) {
            return Font.createFont(Font.TRUETYPE_FONT, file).deriveFont(POINTS);
        } catch (IOException | FontFormatException e) {
            throw new IllegalStateException(e);
        }
    }

    private static double width(String text) {
        return WIDTHS.computeIfAbsent(text, its -> FONT.getStringBounds(its, EXACT).getWidth());
    }

    private static List<HouseStyle> styles(int longest) {
        return HouseStyles.SHIPPED.stream().map(HouseStyles::shipped)
                .map(style -> longest == 0 ? style : style.inColumn(longest)).toList();
    }

    @ParameterizedTest(name = "{1} mm, lists of more than {0} characters in tables (0: none)")
    @CsvSource({"0, 60 84 130", "28, 60", "40, 84", "64, 130"})
    void noLineIsTooWideAndNoneEndsWithinWhatBelongsTogether(int longest, String mm) {
        List<Double> columns = Stream.of(mm.split(" ")).map(its -> Integer.parseInt(its) * POINTS_PER_MM).toList();
        Set<String> seen = new HashSet<>();
        List<String> faults = new ArrayList<>();
        for (HouseStyle style : styles(longest)) {
            for (Graded graded : EVERY_KIND) {
                PatternText text = Manuscripts.write(graded, style);
                for (Lettered lettered : text.lettered()) {
                    String paragraph = text.unbroken(lettered.paragraph());
                    boolean unseen = seen.add(paragraph);
                    for (double column : columns) {
                        if (unseen) {
                            lines(paragraph, column).forEach(line -> check(line, column, faults));
                        }
                        lettered.tables().stream().filter(table -> width(table) > column)
                                .forEach(table -> faults.add("table " + table));
                    }
                }
            }
        }
        assertEquals(List.of(), faults.stream().distinct().limit(20).toList());
        assertTrue(seen.size() > 500, "only " + seen.size() + " paragraphs");
    }

    private static void check(String line, double column, List<String> faults) {
        boolean ends = line.endsWith(" ") || line.endsWith("\n") || line.matches("(?s).*\\p{L}-");
        if (!ends || width(line.stripTrailing()) > column) {
            faults.add(line);
        }
    }

    /** As the platform breaks the paragraph; the last line ends in a line feed here. */
    private static List<String> lines(String paragraph, double column) {
        AttributedString text = new AttributedString(paragraph);
        text.addAttribute(TextAttribute.FONT, FONT);
        LineBreakMeasurer measurer = new LineBreakMeasurer(text.getIterator(), new Ends(), EXACT);
        List<String> lines = new ArrayList<>();
        while (measurer.getPosition() < paragraph.length()) {
            int from = measurer.getPosition();
            measurer.setPosition(measurer.nextOffset((float) column));
            int to = measurer.getPosition();
            lines.add(paragraph.substring(from, to) + (to == paragraph.length() ? "\n" : ""));
        }
        return lines;
    }

    private static double width(SmallTable table) {
        double width = table.rows().stream().mapToDouble(row -> width(row.size())).reduce(width(table.sizeHeading()),
                Math::max);
        for (int column = 0; column < table.letters().size(); column++) {
            int its = column;
            width += width("  ") + table.rows().stream().mapToDouble(row -> width(row.values().get(its)))
                    .reduce(width(table.letters().get(column)), Math::max);
        }
        return width;
    }

    /** At which widths a text with lists would not do, so that the test above would notice a text without them. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"studio", "longhand", "clusters"})
    void listsThatCouldNotBreakWouldBeTooWide(String style) {
        PatternText text = Manuscripts.write(EVERY_KIND.getFirst(), HouseStyles.shipped(style));
        List<String> faults = new ArrayList<>();
        text.paragraphs().forEach(paragraph -> lines(NoBreak.whole(text.text(paragraph)), 60 * POINTS_PER_MM)
                .forEach(line -> check(line, 60 * POINTS_PER_MM, faults)));
        assertTrue(faults.size() > 20, faults::toString);
    }

    @Test
    void documentsHaveTheTextAndTheTables() {
        HouseStyle style = HouseStyles.shipped("clusters").inColumn(28);
        Graded graded = EVERY_KIND.getFirst();
        PatternText text = Manuscripts.write(graded, style);
        List<Block> blocks = PatternDocument.of(graded, style, Optional.empty()).blocks();
        List<SmallTable> tables = text.lettered().stream().flatMap(lettered -> lettered.tables().stream()).toList();
        List<Block.Table> made = blocks.stream().flatMap(block -> block instanceof Block.Table table ? Stream.of(table)
                : Stream.empty()).toList();
        // those of the drawing come after them
        assertEquals(tables.stream().map(SmallTable::caption).toList(),
                made.stream().map(Block.Table::caption).limit(tables.size()).toList());
        assertEquals(12, made.getFirst().rows().size());
        assertEquals(new Block.Cell.Words("Child" + NoBreak.BLANK + "1"), made.getFirst().rows().getFirst().cells()
                .getFirst());
        assertTrue(blocks.stream().anyMatch(block -> block instanceof Block.Paragraph(Purpose purpose, String said)
                && purpose == Purpose.INSTRUCTION && said.contains("A" + NoBreak.BLANK + "sts.")), blocks::toString);
    }
}
