package turnheel.exchange.markdown;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.engine.design.Design;
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

/** What another program makes of the text, as CommonMark with tables. */
class MarkdownWriterTest {

    private static final List<Extension> DIALECT = List.of(TablesExtension.create());
    private static final Set<String> TEXT_ONLY = Set.of("Document", "Heading", "Paragraph", "Text", "BulletList",
            "OrderedList", "ListItem", "BlockQuote", "TableBlock", "TableHead", "TableBody", "TableRow", "TableCell");

    private static Document around(String said) {
        return new Document(said, said, List.of(said), List.of(new Block.Heading(1, said),
                new Block.Paragraph(Purpose.BODY, said), new Block.Paragraph(Purpose.CAUTION, said),
                new Block.Entries(false, List.of(said)), new Block.Entries(true, List.of(said)),
                new Block.Terms(List.of(new Block.Term(said, said))),
                new Block.Table(said, List.of(said, said), List.of(new Block.Row(List.of(new Block.Cell.Words(said),
                        new Block.Cell.Figure(said))))),
                new Block.Drawn(new Picture(1, 1, said, said, List.of()))));
    }

    private static Node parsed(Document document) {
        return Parser.builder().extensions(DIALECT).build().parse(MarkdownWriter.text(document));
    }

    /** Blocks with the text in them, outermost first. */
    private static List<String> told(Document document) {
        List<String> told = new ArrayList<>();
        parsed(document).accept(new AbstractVisitor() {
            @Override
            protected void visitChildren(Node parent) {
                String kind = parent.getClass().getSimpleName();
                assertTrue(TEXT_ONLY.contains(kind), kind);
                if (parent.getFirstChild() instanceof Text || kind.equals("TableCell")) {
                    told.add(kind + " " + text(parent));
                } else {
                    super.visitChildren(parent);
                }
            }
        });
        return told;
    }

    private static String text(Node block) {
        StringBuilder text = new StringBuilder();
        for (Node inside = block.getFirstChild(); inside != null; inside = inside.getNext()) {
            assertEquals("Text", inside.getClass().getSimpleName());
            text.append(((Text) inside).getLiteral());
        }
        return text.toString().replaceAll(" +", " ");
    }

    private static List<String> expected(String said) {
        return List.of("Heading " + said, "Paragraph " + said, "Heading " + said, "Paragraph " + said,
                "Paragraph " + said, "Paragraph " + said, "Paragraph " + said, "Paragraph " + said + ": " + said,
                "Paragraph " + said, "TableCell " + said, "TableCell " + said, "TableCell " + said, "TableCell " + said,
                "Paragraph Figure: " + said + ". " + said, "Paragraph " + said);
    }

    static List<String> nastyTexts() {
        List<String> nasty = new ArrayList<>(NastyTexts.all());
        nasty.addAll(List.of("http://example.org/a_b_c", "see www.example.org", "gull@example.org", "***", "___", "- - -",
                "===", "12. twelve", "7) seven", "+", "> > quote", "~~~", "~~gone~~", "``x``", "|", "a | b", "&copy;",
                "[x]: /url", "[^1]", "![", "<http://example.org>", "\\", "text\\", "*K2, p2; rep from * to end"));
        nasty.removeIf(text -> Escaped.of(text).isEmpty());
        return nasty;
    }

    @ParameterizedTest(name = "[{index}]")
    @MethodSource("nastyTexts")
    void whatSomebodyTypedIsTextWhereverItStands(String nasty) {
        String visible = nasty.replace("\u00A0", " ").replaceAll("[\u200B\u2060]", "")
                .replaceAll("[\\p{Cc}\u2028\u2029]", " ").replaceAll("\\p{Cs}", "\uFFFD").replaceAll(" +", " ").strip();
        assertEquals(expected(visible), told(around(visible)));
        // where it is a part of a sentence, blanks around it remain
        assertEquals(expected(visible).toString().replace(" ", ""), told(around(nasty)).toString().replace(" ", ""));
    }

    @Test
    void numbersOfAColumnLineUp() {
        List<String> aligned = new ArrayList<>();
        Block.Row row = new Block.Row(List.of(new Block.Cell.Words("M"), new Block.Cell.Figure("64"),
                new Block.Cell.Nothing(), new Block.Cell.Blank()));
        parsed(new Document("Gull", "", List.of(), List.of(new Block.Table("Counts", List.of("Size", "Foot", "", "Got"),
                List.of(row))))).accept(new AbstractVisitor() {
                    @Override
                    protected void visitChildren(Node parent) {
                        if (parent instanceof TableCell cell) {
                            aligned.add(cell.isHeader() + " " + cell.getAlignment() + " " + text(cell));
                        }
                        super.visitChildren(parent);
                    }
                });
        assertEquals(List.of("true null Size", "true RIGHT Foot", "true null ", "true null Got", "false null M",
                "false RIGHT 64", "false null ", "false null "), aligned);
    }

    @Test
    void ordinaryCharactersStandForThoseThatTellALayoutWhereToBreak() {
        assertEquals("# Gull\n\n7 3/4 in, 2-4\n", MarkdownWriter.text(new Document("Gull", "", List.of(),
                List.of(new Block.Paragraph(Purpose.BODY, "7\u00A03/4\u00A0in,\u200B 2\u20114\u2060")))));
    }

    /** Those whose labels a text can tell apart: whether a stroke parts sizes or stands in their names it cannot say. */
    static List<String> designs() {
        return Designs.all().entrySet().stream().filter(named -> named.getValue().sizes().stream()
                .noneMatch(size -> size.label().contains("/"))).map(Map.Entry::getKey).toList();
    }

    @ParameterizedTest
    @MethodSource("designs")
    void isKnittedAgainAsThePlainTextIs(String name) {
        Design design = Designs.all().get(name);
        Graded graded = Patterns.grade(design);
        Document document = PatternDocument.of(graded, HouseStyles.usual(), Optional.empty());
        KnitAgain.assertAlike(graded, HouseStyles.usual(), MarkdownWriter.text(document));
        assertFalse(told(document).isEmpty());
    }
}
