package turnheel.exchange.word;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

import javax.imageio.ImageIO;

import org.apache.poi.xwpf.usermodel.IBodyElement;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFTable;
import org.apache.xmlbeans.XmlException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openxmlformats.schemas.drawingml.x2006.wordprocessingDrawing.CTInline;

import turnheel.engine.drawing.Picture;
import turnheel.engine.grading.Graded;
import turnheel.engine.wording.HouseStyles;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.Designs;
import turnheel.exchange.KnitAgain;
import turnheel.exchange.NastyTexts;
import turnheel.exchange.document.Block;
import turnheel.exchange.document.Document;
import turnheel.exchange.document.PatternDocument;
import turnheel.exchange.document.Purpose;
import turnheel.exchange.manuscript.ManuscriptText;

class DocxWriterTest {

    private static final Document EVERYTHING = new Document("Gull Stairs", "All that a document can hold",
            List.of("Made here."), List.of(new Block.Heading(1, "One"), new Block.Heading(2, "Two"),
                    new Block.Heading(3, "Three"), new Block.Paragraph(Purpose.BODY, "7\u00a03/4\u00a0in, no\u2011break"),
                    new Block.Entries(false, List.of("apples", "pears")),
                    new Block.Entries(true, List.of("first", "second")), new Block.Entries(true, List.of("again")),
                    new Block.Terms(List.of(new Block.Term("yo", "yarn over"))), new Block.NewPage(),
                    new Block.Table("Counts", List.of("Size", "Foot", "Note", "Got"), List.of(
                            new Block.Row(List.of(new Block.Cell.Words("S"), new Block.Cell.Figure("60"),
                                    new Block.Cell.Nothing(), new Block.Cell.Blank())),
                            new Block.Row(List.of(new Block.Cell.Words("M"), new Block.Cell.Figure("64"),
                                    new Block.Cell.Words("usual"), new Block.Cell.Blank()))))));

    private static byte[] bytes(Document document) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        DocxWriter.write(document, out);
        return out.toByteArray();
    }

    private static XWPFDocument read(Document document) throws IOException {
        return new XWPFDocument(new ByteArrayInputStream(bytes(document)));
    }

    private static Document pattern(Graded graded) {
        return PatternDocument.of(graded, HouseStyles.usual(), Optional.empty());
    }

    /** Those whose labels a text can tell apart: whether a stroke parts sizes or stands in their names it cannot say. */
    static List<String> designs() {
        return Designs.all().entrySet().stream().filter(named -> named.getValue().sizes().stream()
                .noneMatch(size -> size.label().contains("/"))).map(Map.Entry::getKey).toList();
    }

    @ParameterizedTest
    @MethodSource("designs")
    void isKnittedAgainAsThePlainTextIs(String name) throws IOException {
        Graded graded = Patterns.grade(Designs.all().get(name));
        KnitAgain.assertAlike(graded, HouseStyles.usual(), ManuscriptText.document(bytes(pattern(graded))));
    }

    @Test
    void everyBlockHasTheStyleThatALayouterMaps() throws IOException {
        try (XWPFDocument file = read(EVERYTHING)) {
            List<String> found = new ArrayList<>();
            for (IBodyElement element : file.getBodyElements()) {
                switch (element) {
                    case XWPFParagraph paragraph -> found.add(name(file, paragraph.getStyle()) + ": "
                            + paragraph.getText());
                    case XWPFTable table -> found.add(name(file, table.getStyleID()));
                    default -> found.add("?");
                }
            }
            assertEquals(List.of("Title: Gull Stairs", "Subtitle: All that a document can hold", "heading 1: One",
                    "heading 2: Two", "heading 3: Three", "Body Text: 7\u00a03/4\u00a0in, no\u2011break",
                    "List Bullet: apples", "List Bullet: pears", "List Number: first", "List Number: second",
                    "List Number: again", "Pattern Term: yo: yarn over", "Table Caption: Counts", "Pattern Table",
                    "Imprint: Made here."), found);
        }
    }

    private static String name(XWPFDocument file, String id) {
        return file.getStyles().getStyle(id).getName();
    }

    @Test
    void aTableRepeatsItsHeadAndMarksEachCell() throws IOException {
        try (XWPFDocument file = read(EVERYTHING)) {
            XWPFTable table = file.getTables().getFirst();
            assertEquals(List.of(true, false, false), table.getRows().stream().map(row -> row.isRepeatHeader()).toList());
            assertTrue(table.getRows().stream().allMatch(row -> row.isCantSplitRow()));
            assertEquals(4, table.getCTTbl().getTblGrid().sizeOfGridColArray());
            assertEquals(List.of("TableRowHead S", "TableFigure 60", "TableText ", "TableBlank "),
                    table.getRow(1).getTableCells().stream().map(cell -> cell.getParagraphs().getFirst().getStyle() + " "
                            + cell.getText()).toList());
        }
    }

    @Test
    void eachListInOrderStartsAtOne() throws IOException {
        try (XWPFDocument file = read(EVERYTHING)) {
            List<XWPFParagraph> entries = file.getParagraphs().stream()
                    .filter(paragraph -> WordStyle.LIST_NUMBER.id().equals(paragraph.getStyle())).toList();
            assertEquals(entries.get(0).getNumID(), entries.get(1).getNumID());
            assertNotEquals(entries.get(1).getNumID(), entries.get(2).getNumID());
            assertEquals("decimal", entries.getFirst().getNumFmt());
        }
    }

    @Test
    void whatFollowsANewPageStartsOne() throws IOException {
        try (XWPFDocument file = read(EVERYTHING)) {
            assertEquals(List.of("Counts"), file.getParagraphs().stream().filter(XWPFParagraph::isPageBreak)
                    .map(XWPFParagraph::getText).toList());
        }
    }

    @Test
    void everyStyleIsThere() throws IOException, XmlException {
        try (XWPFDocument file = read(EVERYTHING)) {
            Set<String> there = Arrays.stream(file.getStyle().getStyleArray())
                    .filter(style -> !style.isSetDefault()).map(style -> style.getStyleId())
                    .collect(Collectors.toCollection(TreeSet::new));
            assertEquals(Arrays.stream(WordStyle.values()).map(WordStyle::id)
                    .collect(Collectors.toCollection(TreeSet::new)), there);
            assertEquals(Document.LANGUAGE, file.getStyle().getDocDefaults().getRPrDefault().getRPr().getLangArray(0)
                    .getVal());
        }
    }

    @Test
    void aPictureHasItsSizeItsTitleAndItsDescription() throws IOException {
        Picture small = new Picture(60, 40, "Small & <plain>", "As \"described\"", List.of());
        Picture wide = new Picture(600, 40, "Wide", "Far too wide for a page", List.of());
        try (XWPFDocument file = read(new Document("Gull", "Drawn", List.of(), List.of(new Block.Drawn(small),
                new Block.Drawn(wide))))) {
            List<XWPFParagraph> figures = file.getParagraphs().stream()
                    .filter(paragraph -> WordStyle.FIGURE.id().equals(paragraph.getStyle())).toList();
            CTInline first = figures.getFirst().getRuns().getFirst().getCTR().getDrawingArray(0).getInlineArray(0);
            assertEquals(small.title(), first.getDocPr().getTitle());
            assertEquals(small.description(), first.getDocPr().getDescr());
            // 360 000 of these are a centimetre
            assertEquals(small.width() * 36_000, first.getExtent().getCx(), 1);
            assertEquals(small.height() * 36_000, first.getExtent().getCy(), 1);
            CTInline second = figures.getLast().getRuns().getFirst().getCTR().getDrawingArray(0).getInlineArray(0);
            // 210 mm of paper between margins of 20 mm
            assertEquals(170 * 36_000, second.getExtent().getCx(), 20_000);
            assertNotEquals(first.getDocPr().getId(), second.getDocPr().getId());
            assertEquals(2, file.getAllPictures().size());
            BufferedImage dots = ImageIO.read(new ByteArrayInputStream(file.getAllPictures().getFirst().getData()));
            assertEquals(small.width() / 25.4 * 192, dots.getWidth(), 1);
        }
    }

    @Test
    void saysWhatItIsWithoutAClock() throws IOException {
        byte[] first = bytes(EVERYTHING);
        assertArrayEquals(first, bytes(EVERYTHING));
        try (XWPFDocument file = read(EVERYTHING)) {
            var core = file.getProperties().getCoreProperties();
            assertEquals("Gull Stairs", core.getTitle());
            assertEquals("All that a document can hold", core.getSubject());
            assertEquals("Turnheel", core.getCreator());
            assertEquals(core.getCreated(), core.getModified());
            assertEquals(Optional.of("en"), core.getUnderlyingProperties().getLanguageProperty());
        }
        try (ZipInputStream parts = new ZipInputStream(new ByteArrayInputStream(first))) {
            for (ZipEntry part = parts.getNextEntry(); part != null; part = parts.getNextEntry()) {
                assertEquals(2000, part.getTimeLocal().getYear(), part.getName());
            }
        }
    }

    static List<String> nastyTexts() {
        return Stream.concat(NastyTexts.all().stream(), Stream.of("{ HYPERLINK \"http://example.org\" }",
                "<w:fldSimple w:instr=\"INCLUDETEXT x\"/>", "http://example.org/gull", "\u0013 DDEAUTO x \u0015", "{PAGE}"))
                .toList();
    }

    @ParameterizedTest(name = "[{index}]")
    @MethodSource("nastyTexts")
    void whatSomebodyTypedIsTextAndNothingElse(String nasty) throws IOException {
        Document document = new Document(nasty, nasty, List.of(nasty), List.of(new Block.Heading(1, nasty),
                new Block.Paragraph(Purpose.CAUTION, nasty), new Block.Entries(true, List.of(nasty)),
                new Block.Terms(List.of(new Block.Term(nasty, nasty))), new Block.Table(nasty, List.of(nasty),
                        List.of(new Block.Row(List.of(new Block.Cell.Figure(nasty)))))));
        try (XWPFDocument file = read(document)) {
            String visible = nasty.replaceAll("[\\p{Cc}\\p{Cs}\\uFFFE\\uFFFF]", " ");
            assertEquals(visible, file.getParagraphs().getFirst().getText());
            assertEquals(visible, file.getTables().getFirst().getRow(1).getCell(0).getText());
            assertFalse(file.getDocument().xmlText().contains("fldChar"));
            assertFalse(file.getDocument().xmlText().contains("<w:fldSimple"));
            assertEquals(0, file.getHyperlinks().length);
            assertEquals(List.of("PAGE", "NUMPAGES"), Arrays.stream(file.getFooterArray(0).getParagraphArray(0).getCTP()
                    .getFldSimpleArray()).map(field -> field.getInstr()).toList());
            assertTrue(file.getFooterArray(0).getText().startsWith(visible), file.getFooterArray(0).getText());
        }
    }
}
