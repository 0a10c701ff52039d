package turnheel.exchange.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import com.fasterxml.jackson.databind.JsonNode;

import turnheel.engine.grading.Graded;
import turnheel.engine.wording.HouseStyle;
import turnheel.engine.wording.HouseStyles;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.Designs;
import turnheel.exchange.NastyTexts;
import turnheel.exchange.document.Block;
import turnheel.exchange.document.Document;
import turnheel.exchange.document.PatternDocument;
import turnheel.exchange.document.Purpose;

/** Pages as people meet them: in a real browser, light and dark, wide and narrow, heard and printed. */
class PagesInBrowserTest {

    private static final Path PICTURES = Path.of("target", "pages");
    private static final double MM_PER_PIXEL = 25.4 / 96;
    private static final Graded TWELVE = Patterns.grade(Designs.twelve());

    /**
     * Every rule for WCAG 2.2 AA, and what the checker's authors hold to be good practice. Inside a picture the checker
     * cannot tell what lies on what, and a picture is heard as a whole.
     */
    private static final String CHECK = """
            axe.run({exclude: [['svg > *']]}, {resultTypes: ['violations', 'incomplete'],
                rules: {'target-size': {enabled: true}},
                runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']})
            .then(found => (%s)
                .flatMap(rule => rule.nodes.map(node => rule.id + ' ' + node.target + ': ' + node.failureSummary)))""";

    /** What sticks out of its box, without the emergency breaks inside words that hide it. */
    private static final String OVERFULL = """
            (() => {
                const plain = document.createElement('style');
                plain.textContent = 'body {padding: 0} header, main {overflow-wrap: normal}';
                document.head.append(plain);
                const lines = 'header *, main :is(h2, h3, h4, p, li, dt, dd, figcaption)';
                const found = [...document.querySelectorAll(lines)]
                    .filter(box => box.scrollWidth > box.clientWidth).map(box => box.textContent);
                const page = document.documentElement;
                if (page.scrollWidth > page.clientWidth) found.push('the page is ' + page.scrollWidth + ' wide');
                plain.remove();
                return found;
            })()""";

    @TempDir
    private static Path scratch;
    private static Chromium browser;
    private static String axe;

    @BeforeAll
    static void start() throws IOException, InterruptedException {
        Files.createDirectories(PICTURES);
        try (InputStream script = PagesInBrowserTest.class.getResourceAsStream("/axe.min.js")) {
            axe = new String(script.readAllBytes(), StandardCharsets.UTF_8);
        }
        browser = Chromium.start(scratch);
    }

    @AfterAll
    static void end() {
        if (browser != null) {
            browser.close();
        }
    }

    static Set<String> pages() {
        return Pages.all().keySet();
    }

    private static void open(String name) throws IOException, InterruptedException {
        open(name, Pages.text(Pages.all().get(name)));
    }

    private static Path open(String name, String page) throws IOException, InterruptedException {
        Path file = Files.writeString(scratch.resolve(name + ".html"), page);
        browser.open(file);
        return file;
    }

    private static List<String> list(JsonNode array) {
        List<String> texts = new ArrayList<>();
        array.forEach(text -> texts.add(text.asText()));
        return texts;
    }

    private static List<String> violations() throws InterruptedException {
        browser.evaluate(axe + "; 0");
        return list(browser.evaluate(CHECK.formatted("found.violations")));
    }

    /** What the checker could not decide counts too; it can where nothing is scrolled out of sight. */
    private static List<String> violationsAndDoubts() throws InterruptedException {
        browser.evaluate(axe + "; 0");
        return list(browser.evaluate(CHECK.formatted("found.violations.concat(found.incomplete)")));
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everybodyCanReadThem(String name) throws IOException, InterruptedException {
        for (boolean dark : List.of(false, true)) {
            browser.window(1280, 900);
            browser.prefersDark(dark);
            open(name);
            Files.write(PICTURES.resolve(name + (dark ? "-dark.png" : "-light.png")), browser.screenshot());
            assertEquals(List.of(), violationsAndDoubts(), dark ? "dark" : "light");
        }
    }

    @ParameterizedTest
    @MethodSource("pages")
    void theyAskForNothingAndComplainOfNothing(String name) throws IOException, InterruptedException {
        Path file = open(name, Pages.text(Pages.all().get(name)));
        assertEquals(List.of(file.toUri().toString()), browser.requests());
        assertEquals(List.of(), browser.complaints());
    }

    @ParameterizedTest
    @MethodSource("pages")
    void aPhoneShowsThemWithoutScrollingSideways(String name) throws IOException, InterruptedException {
        browser.window(320, 700);
        browser.prefersDark(false);
        open(name);
        Files.write(PICTURES.resolve(name + "-phone.png"), browser.screenshot());
        assertTrue(browser.evaluate("document.documentElement.scrollWidth").asInt() <= 320);
        assertEquals(List.of(), violations());
    }

    /** Characters are those that such a column holds in a usual size of print; longer lists become small tables. */
    @ParameterizedTest(name = "{0} mm")
    @CsvSource({"60, 28", "84, 40", "130, 64"})
    void noLineIsOverfullInANarrowColumnWithTwelveSizes(int mm, int characters) throws IOException, InterruptedException {
        browser.window((int) (mm / MM_PER_PIXEL), 900);
        browser.prefersDark(false);
        for (String name : HouseStyles.SHIPPED) {
            HouseStyle style = HouseStyles.shipped(name);
            for (HouseStyle set : List.of(style, style.inColumn(characters))) {
                String file = "column-%d-%s%s".formatted(mm, name, set.equals(style) ? "" : "-tables");
                open(file, Pages.text(PatternDocument.of(TWELVE, set, Optional.empty())));
                assertEquals(List.of(), list(browser.evaluate(OVERFULL)), file);
                Files.write(PICTURES.resolve(file + ".png"), browser.screenshot());
            }
        }
    }

    @Test
    void nastyTextsDoNothing() throws IOException, InterruptedException {
        List<String> nasty = NastyTexts.all();
        List<Block> blocks = new ArrayList<>();
        nasty.forEach(text -> blocks.addAll(List.of(new Block.Heading(1, text),
                new Block.Paragraph(Purpose.INSTRUCTION, text), new Block.Entries(false, List.of(text)),
                new Block.Terms(List.of(new Block.Term(text, text))), new Block.Table(text, List.of("Size", text),
                        List.of(new Block.Row(List.of(new Block.Cell.Words(text), new Block.Cell.Figure(text))))))));
        String title = String.join(" ", NastyTexts.MARKUP);
        browser.window(320, 700);
        browser.prefersDark(false);
        Path file = open("nasty", Pages.text(new Document(title, title, nasty, blocks)));
        Files.write(PICTURES.resolve("nasty.png"), browser.screenshot());
        assertEquals(List.of(file.toUri().toString()), browser.requests());
        assertEquals(List.of(), browser.complaints());
        assertEquals(0, browser.evaluate("document.querySelectorAll('script, img, svg, iframe, link, style ~ *').length")
                .asInt());
        assertEquals(nasty.size(), browser.evaluate("document.querySelectorAll('h2').length").asInt());
        assertEquals(nasty.size(), browser.evaluate("document.querySelector('footer').children.length").asInt());
        assertTrue(browser.evaluate("document.title").asText().startsWith("<script>document.title='run'</script>"));
        assertTrue(browser.evaluate("document.documentElement.scrollWidth").asInt() <= 320);
        assertTrue(browser.printed().length > 0);
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everythingIsOnPaper(String name) throws IOException, InterruptedException {
        browser.prefersDark(true);
        open(name);
        byte[] printed = browser.printed();
        Files.write(PICTURES.resolve(name + ".pdf"), printed);
        Document document = Pages.all().get(name);
        try (PDDocument paper = Loader.loadPDF(printed)) {
            String words = withoutBlanks(new PDFTextStripper().getText(paper));
            Stream.concat(document.imprint().stream(), document.blocks().stream().flatMap(PagesInBrowserTest::said))
                    .forEach(text -> assertTrue(words.contains(withoutBlanks(text)), text));
            for (int page = 1; page <= paper.getNumberOfPages(); page++) {
                assertEquals(List.of(), headingsAtTheEnd(paper, page, document), "page " + page);
            }
        }
    }

    private static Stream<String> said(Block block) {
        return switch (block) {
            case Block.Heading(int level, String text) -> Stream.of(text);
            case Block.Paragraph(var purpose, String text) -> Stream.of(text);
            case Block.Entries(boolean numbered, List<String> texts) -> texts.stream();
            case Block.Terms(var terms) -> terms.stream().flatMap(term -> Stream.of(term.word(), term.meaning()));
            case Block.Table table -> Stream.of(table.caption());
            case Block.Drawn(var picture) -> Stream.of(picture.title());
            case Block.NewPage newPage -> Stream.empty();
        };
    }

    /** A heading at the end of a page stands above nothing. */
    private static List<String> headingsAtTheEnd(PDDocument paper, int page, Document document) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        List<String> lines = stripper.getText(paper).lines().map(String::strip).filter(line -> !line.isEmpty())
                .filter(line -> !line.matches("\\d+ / \\d+")).toList();
        return document.blocks().stream().filter(block -> block instanceof Block.Heading)
                .flatMap(PagesInBrowserTest::said)
                .filter(heading -> !lines.isEmpty() && lines.getLast().equals(heading)).toList();
    }

    private static String withoutBlanks(String text) {
        return text.replaceAll("[\\s\\u00A0\\u2060]+", "");
    }

    @Test
    void anOverfullLineIsFound() throws IOException, InterruptedException {
        browser.window(320, 700);
        String line = "Unbreakable".repeat(30);
        open("overfull", Pages.text(new Document("Overfull", "", List.of(),
                List.of(new Block.Paragraph(Purpose.BODY, line), new Block.Paragraph(Purpose.BODY, "K to end.")))));
        List<String> found = list(browser.evaluate(OVERFULL));
        assertTrue(found.contains(line) && !found.contains("K to end."), found.toString());
    }

    @Test
    void theCheckFindsABadPage() throws IOException, InterruptedException {
        open("bad", """
                <!DOCTYPE html><html><head><meta charset="utf-8"></head><body>
                <img src="data:image/gif;base64,R0lGODlhAQABAAAAACw="><p style="color:#ccc;background:#fff">faint</p>
                <a href="#"></a></body></html>
                """);
        Set<String> rules = new TreeSet<>();
        violations().forEach(violation -> rules.add(violation.substring(0, violation.indexOf(' '))));
        assertTrue(rules.containsAll(Set.of("image-alt", "color-contrast", "html-has-lang", "document-title",
                "link-name")), rules.toString());
    }
}
