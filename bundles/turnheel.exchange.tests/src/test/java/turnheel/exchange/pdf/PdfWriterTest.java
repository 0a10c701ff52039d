package turnheel.exchange.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

import turnheel.engine.grading.Graded;
import turnheel.engine.wording.HouseStyle;
import turnheel.engine.wording.HouseStyles;
import turnheel.engine.wording.NoBreak;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.Designs;
import turnheel.exchange.KnitAgain;
import turnheel.exchange.NastyTexts;
import turnheel.exchange.document.Block;
import turnheel.exchange.document.Block.Cell;
import turnheel.exchange.document.Document;
import turnheel.exchange.document.PatternDocument;
import turnheel.exchange.document.Purpose;
import turnheel.exchange.manuscript.ManuscriptText;

class PdfWriterTest {

    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final Graded TWELVE = Patterns.grade(Designs.twelve());
    private static final byte[] FILE = PdfFile.of(pattern(TWELVE));

    private static Document pattern(Graded graded) {
        return PatternDocument.of(graded, HouseStyles.usual(), Optional.empty());
    }

    private static Document holding(Block... blocks) {
        return new Document("Holding", "What it holds.", List.of("Made here.", "Design 0123"), List.of(blocks));
    }

    static Stream<String> designs() {
        return Designs.all().keySet().stream();
    }

    static Stream<String> complete() {
        // sizes without measurements knit nothing, and labels such as 36/37 are read as two sizes in any text
        return designs().filter(name -> !List.of("missing", "cuff-down").contains(name));
    }

    @ParameterizedTest
    @MethodSource("complete")
    void knitsToTheSameLoopsInEverySizeWhenItIsReadAgain(String name) throws IOException {
        Graded graded = Patterns.grade(Designs.all().get(name));
        KnitAgain.assertAlike(graded, HouseStyles.usual(), ManuscriptText.pdf(PdfFile.of(pattern(graded))));
    }

    @ParameterizedTest
    @MethodSource("styles")
    void alsoInEveryHouseStyle(HouseStyle style) throws IOException {
        KnitAgain.assertAlike(TWELVE, style,
                ManuscriptText.pdf(PdfFile.of(PatternDocument.of(TWELVE, style, Optional.empty()))));
    }

    static Stream<HouseStyle> styles() {
        return HouseStyles.SHIPPED.stream().map(HouseStyles::shipped);
    }

    @ParameterizedTest
    @ValueSource(strings = {"toe-up", "star-and-flap", "flap-last", "colours"})
    void keepsTheStandardsOfAccessibleAndOfLastingFiles(String name) throws Exception {
        byte[] file = PdfFile.of(pattern(Patterns.grade(Designs.all().get(name))));

        assertEquals(Map.of(), PdfFile.faults(file, PDFAFlavour.PDFUA_1));
        assertEquals(Map.of(), PdfFile.faults(file, PDFAFlavour.PDFA_2_A));
    }

    @Test
    void keepsThemWithEveryKindOfBlockAndEveryNastyText() throws Exception {
        byte[] file = PdfFile.of(nasty());

        assertEquals(Map.of(), PdfFile.faults(file, PDFAFlavour.PDFUA_1));
        assertEquals(Map.of(), PdfFile.faults(file, PDFAFlavour.PDFA_2_A));
    }

    private static Document nasty() {
        List<Block> blocks = new ArrayList<>();
        for (String text : NastyTexts.all()) {
            Block.Row row = new Block.Row(List.of(new Cell.Words(text), new Cell.Figure(text), new Cell.Nothing(),
                    new Cell.Blank()));
            blocks.addAll(List.of(new Block.Heading(1, text), new Block.Heading(2, text),
                    new Block.Paragraph(Purpose.CAUTION, text), new Block.Entries(true, List.of(text, "next")),
                    new Block.Terms(List.of(new Block.Term(text, text))),
                    new Block.Table(text, List.of("", text, "nothing", "blank"), List.of(row))));
        }
        return new Document(String.join(" ", NastyTexts.MARKUP), String.join(" ", NastyTexts.LETTERS),
                List.of("Made here."), blocks);
    }

    @Test
    void keepsWhatPeopleTypeAsText() throws IOException {
        for (String typed : Stream.concat(NastyTexts.MARKUP.stream(), NastyTexts.CODES.stream()).toList()) {
            byte[] file = PdfFile.of(new Document(typed, typed, List.of(), List.of(
                    new Block.Paragraph(Purpose.BODY, "Before. " + typed + " After."))));
            String shown = typed.strip().replaceAll("\\s+", " ");

            try (PDDocument document = Loader.loadPDF(file)) {
                String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
                assertTrue(text.contains("Before. " + shown + " After."), () -> typed + "\nin\n" + text);
                assertEquals(shown, document.getDocumentInformation().getTitle().strip().replaceAll("\\s+", " "));
                assertNull(document.getDocumentCatalog().getNames());
                assertNull(document.getDocumentCatalog().getOpenAction());
                for (PDPage page : document.getPages()) {
                    assertEquals(List.of(), page.getAnnotations());
                }
            }
        }
    }

    @Test
    void saysWhatItIsInItsTitleAndLanguage() throws IOException {
        try (PDDocument document = Loader.loadPDF(FILE)) {
            assertEquals("Twelve Lamps", document.getDocumentInformation().getTitle());
            assertEquals("en", document.getDocumentCatalog().getLanguage());
            assertTrue(document.getDocumentCatalog().getViewerPreferences().displayDocTitle());
            assertNull(document.getDocumentInformation().getCreationDate());
            assertNull(document.getDocumentInformation().getModificationDate());
        }
    }

    @Test
    void givesTheSameBytesEachTimeAndOthersToAnotherDocument() {
        assertArrayEquals(FILE, PdfFile.of(pattern(TWELVE)));
        assertFalse(Arrays.equals(PdfFile.of(holding()),
                PdfFile.of(holding(new Block.Heading(1, "One more")))));
    }

    @Test
    void tagsHeadingsInTheirOrderAndNamesThemInTheOutline() throws IOException {
        Document pattern = pattern(TWELVE);
        List<String> headings = new ArrayList<>(List.of("H1 " + pattern.title()));
        pattern.blocks().stream().filter(Block.Heading.class::isInstance).map(Block.Heading.class::cast)
                .forEach(heading -> headings.add("H%d %s".formatted(heading.level() + 1, heading.text())));

        try (PDDocument document = Loader.loadPDF(FILE)) {
            List<String> outline = new ArrayList<>();
            for (PDOutlineItem item : document.getDocumentCatalog().getDocumentOutline().children()) {
                outline.add(item.getTitle());
            }
            assertEquals(headings.stream().map(heading -> heading.substring(3)).toList(), outline);
            assertEquals(headings.stream().map(heading -> heading.substring(0, 2)).toList(),
                    PdfFile.elements(document).stream().map(PDStructureElement::getStructureType)
                            .filter(type -> type.matches("H\\d")).toList());
        }
    }

    @Test
    void tellsEveryPictureToThoseWhoCannotSeeIt() throws IOException {
        List<String> told = pattern(TWELVE).blocks().stream().filter(Block.Drawn.class::isInstance)
                .map(block -> ((Block.Drawn) block).picture())
                .map(picture -> picture.title() + ". " + picture.description()).toList();

        try (PDDocument document = Loader.loadPDF(FILE)) {
            assertEquals(told, PdfFile.elements(document).stream()
                    .filter(element -> element.getStructureType().equals("Figure"))
                    .map(PDStructureElement::getAlternateDescription).toList());
        }
    }

    @Test
    void repeatsTheHeadingsOfATableOnEveryPageAndTagsThemOnce() throws IOException {
        List<Block.Row> rows = IntStream.rangeClosed(1, 120).mapToObj(round -> new Block.Row(
                List.of(new Cell.Figure("round " + round), new Cell.Figure(String.valueOf(2 * round))))).toList();
        byte[] file = PdfFile.of(holding(new Block.Table("Rounds of the toe", List.of("Round", "Stitches"), rows)));

        try (PDDocument document = Loader.loadPDF(file)) {
            assertTrue(document.getNumberOfPages() > 2);
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper one = new PDFTextStripper();
                one.setStartPage(page);
                one.setEndPage(page);
                List<String> lines = NoBreak.ordinary(one.getText(document)).lines().map(String::strip).toList();
                boolean holdsRows = lines.stream().anyMatch(line -> line.startsWith("round "));
                assertEquals(holdsRows ? 1 : 0, Collections.frequency(lines, "Round Stitches"), "page " + page);
            }
            List<String> scopes = PdfFile.elements(document).stream()
                    .filter(element -> element.getStructureType().equals("TH"))
                    .map(element -> element.getCOSObject().getCOSDictionary(COSName.A).getNameAsString("Scope"))
                    .toList();
            assertEquals(2, Collections.frequency(scopes, "Column"));
            assertEquals(120, Collections.frequency(scopes, "Row"));
        }
    }

    @ParameterizedTest
    @MethodSource("designs")
    void noLetterStandsOutsideOfTheMargins(String name) throws IOException {
        staysWithinTheMargins(PdfFile.of(pattern(Patterns.grade(Designs.all().get(name)))));
    }

    @Test
    void notEvenWordsWithoutEnd() throws IOException {
        staysWithinTheMargins(PdfFile.of(nasty()));
    }

    @ParameterizedTest(name = "{0} columns")
    @ValueSource(ints = {2, 7, 9, 13, 14, 25})
    void aTableIsAsWideAsThePage(int columns) throws IOException {
        List<Cell> cells = new ArrayList<>(List.of(new Cell.Words("Foot, half around")));
        cells.addAll(Collections.nCopies(columns - 1, new Cell.Figure("10 3/8 in")));
        List<String> head = new ArrayList<>(List.of("Size"));
        head.addAll(Collections.nCopies(columns - 1, "42/43 wide"));
        Block.Row row = new Block.Row(cells);
        byte[] file = PdfFile.of(holding(new Block.Table("Measurements", head, List.of(row, row))));

        staysWithinTheMargins(file);
        assertEquals(2 * (columns - 1), ManuscriptText.pdf(file).split("3/8", -1).length - 1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"twelve", "star-and-flap", "flap-last", "afterthought"})
    void keepsAPictureOnThePageOfItsHeading(String name) throws IOException {
        try (PDDocument document = Loader.loadPDF(PdfFile.of(pattern(Patterns.grade(Designs.all().get(name)))))) {
            int headed = 0;
            Optional<PDStructureElement> heading = Optional.empty();
            for (PDStructureElement element : PdfFile.elements(document)) {
                if (element.getStructureType().matches("H\\d")) {
                    heading = Optional.of(element);
                } else if (element.getStructureType().equals("Figure") && heading.isPresent()) {
                    assertEquals(document.getPages().indexOf(heading.get().getPage()),
                            document.getPages().indexOf(element.getPage()), element.getAlternateDescription());
                    heading = Optional.empty();
                    headed++;
                }
            }
            assertTrue(headed >= 3, "the outline, a toe and a heel");
        }
    }

    private static void staysWithinTheMargins(byte[] file) throws IOException {
        double side = 21 * POINTS_PER_MM - 0.5;
        // running heads and page numbers stand there too, where a printer of Letter paper still reaches
        double edge = 13 * POINTS_PER_MM;
        List<PdfFile.Letter> outside = PdfFile.letters(file).stream().filter(letter -> !letter.text().isBlank())
                .filter(letter -> letter.left() < side || letter.right() > letter.pageWidth() - side
                        || letter.top() < edge || letter.bottom() > letter.pageHeight() - edge).toList();
        assertEquals(List.of(), outside.stream().limit(20).toList());
    }

    @Test
    void printsTheContentHashOnEveryPage() throws IOException {
        String hash = pattern(TWELVE).imprint().getLast();
        try (PDDocument document = Loader.loadPDF(FILE)) {
            int pages = document.getNumberOfPages();
            for (int page = 1; page <= pages; page++) {
                PDFTextStripper one = new PDFTextStripper();
                one.setStartPage(page);
                one.setEndPage(page);
                String text = one.getText(document);
                assertTrue(text.contains(hash), text);
                assertTrue(text.contains("Page %d of %d".formatted(page, pages)), text);
            }
        }
    }
}
