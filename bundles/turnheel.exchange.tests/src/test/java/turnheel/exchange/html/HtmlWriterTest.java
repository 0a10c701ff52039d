package turnheel.exchange.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

import turnheel.engine.design.Design;
import turnheel.engine.design.Size;
import turnheel.engine.wording.HouseStyles;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.Designs;
import turnheel.exchange.NastyTexts;
import turnheel.exchange.document.Block;
import turnheel.exchange.document.Block.Cell;
import turnheel.exchange.document.Document;
import turnheel.exchange.document.PatternDocument;
import turnheel.exchange.document.Purpose;

/** Pages as a parser of XML sees them; how a browser does is tested elsewhere. */
class HtmlWriterTest {

    /** All that a page is made of, so that nothing a person typed can be more than text. */
    private static final Set<String> ELEMENTS = Set.of("html", "head", "meta", "title", "style", "body", "a", "header",
            "h1", "h2", "h3", "h4", "p", "nav", "ul", "ol", "li", "main", "dl", "div", "dt", "dd", "table", "caption",
            "span", "thead", "tbody", "tr", "th", "td", "figure", "figcaption", "footer", "svg", "desc", "g", "rect",
            "path", "line", "circle", "text");

    static Set<String> pages() {
        return Pages.all().keySet();
    }

    static List<String> nastyTexts() {
        return NastyTexts.all();
    }

    static List<String> nastyLabels() {
        return NastyTexts.labels();
    }

    private static org.w3c.dom.Document parsed(String page) throws SAXException, IOException {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(new DefaultHandler());
            return builder.parse(new InputSource(new StringReader(page)));
        } catch (ParserConfigurationException impossible) {
            throw new AssertionError(impossible);
        }
    }

    private static org.w3c.dom.Document parsed(Document document) throws SAXException, IOException {
        return parsed(Pages.text(document));
    }

    private static List<Element> elements(org.w3c.dom.Document page, String name) {
        NodeList found = page.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    private static List<String> texts(org.w3c.dom.Document page, String name) {
        return elements(page, name).stream().map(Node::getTextContent).toList();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyIdIsUniqueAndEveryReferenceLeadsSomewhere(String name) throws SAXException, IOException {
        org.w3c.dom.Document page = parsed(Pages.all().get(name));
        Set<String> ids = new HashSet<>();
        List<String> references = new ArrayList<>();
        for (Element element : elements(page, "*")) {
            if (element.hasAttribute("id")) {
                assertTrue(ids.add(element.getAttribute("id")), element.getAttribute("id") + " twice");
            }
            for (String attribute : List.of("aria-labelledby", "aria-describedby")) {
                references.addAll(List.of(element.getAttribute(attribute).split(" ")));
            }
            if (element.hasAttribute("href")) {
                assertTrue(element.getAttribute("href").startsWith("#"), element.getAttribute("href"));
                references.add(element.getAttribute("href").substring(1));
            }
        }
        references.removeIf(String::isEmpty);
        assertFalse(references.isEmpty());
        assertTrue(ids.containsAll(references), references.toString());
    }

    @ParameterizedTest
    @MethodSource("pages")
    void headingsDescendALevelAtATime(String name) throws SAXException, IOException {
        int level = 0;
        int titles = 0;
        for (Element element : elements(parsed(Pages.all().get(name)), "*")) {
            if (element.getTagName().matches("h[1-6]")) {
                int next = element.getTagName().charAt(1) - '0';
                assertTrue(next <= level + 1, element.getTextContent());
                level = next;
                titles += next == 1 ? 1 : 0;
            }
        }
        assertEquals(1, titles);
    }

    @ParameterizedTest
    @MethodSource("pages")
    void nothingRunsAndNothingIsFetched(String name) throws SAXException, IOException {
        assertHarmless(parsed(Pages.all().get(name)));
    }

    private static void assertHarmless(org.w3c.dom.Document page) {
        Set<String> names = new TreeSet<>();
        for (Element element : elements(page, "*")) {
            names.add(element.getTagName());
            for (int i = 0; i < element.getAttributes().getLength(); i++) {
                String attribute = element.getAttributes().item(i).getNodeName();
                assertFalse(attribute.startsWith("on") || Set.of("src", "style", "srcdoc", "xlink:href").contains(attribute),
                        element.getTagName() + ' ' + attribute);
            }
        }
        names.removeAll(ELEMENTS);
        assertEquals(Set.of(), names);
        String policy = elements(page, "meta").stream()
                .filter(meta -> meta.getAttribute("http-equiv").equals("Content-Security-Policy"))
                .map(meta -> meta.getAttribute("content")).findFirst().orElseThrow();
        assertTrue(policy.startsWith("default-src 'none';") && !policy.contains("script-src"), policy);
        String style = texts(page, "style").toString();
        assertFalse(style.contains("url(") || style.contains("@import") || style.contains("<"), "style");
    }

    @Test
    void everyBlockIsThereAsWhatItIs() throws SAXException, IOException {
        org.w3c.dom.Document page = parsed(Pages.everyBlock());
        assertEquals(List.of("Texts", "Tables", "Pictures"), texts(page, "h2"));
        assertEquals(List.of("Lists"), texts(page, "h3"));
        assertEquals(List.of("In order"), texts(page, "h4"));
        assertEquals(List.of("Texts", "Tables", "Pictures"), texts(page, "a").subList(1, 4));
        assertEquals(List.of("k", "p"), texts(page, "dt"));
        assertEquals(List.of("knit", "purl"), texts(page, "dd"));
        assertEquals(List.of("first", "second"), texts(page, "ol").getFirst().strip().lines().toList());
        assertEquals(List.of("To fill in"), texts(page, "caption"));
        assertEquals(List.of("col Said", "col Found", "col Remarks", "row Gauge", "row 2"), elements(page, "th").stream()
                .map(cell -> cell.getAttribute("scope") + ' ' + cell.getTextContent()).toList());
        assertEquals(5, elements(page, "td").stream().filter(cell -> cell.getAttribute("class").equals("blank")).count());
        assertEquals(List.of("Soles slip."), classed(page, "p", "caution"));
        assertEquals(List.of("Tables"), classed(page, "h2", "new-page"));
        assertEquals(2, elements(page, "figure").size());
        for (Element picture : elements(page, "svg")) {
            assertEquals("Quay Steps: finished measurements, size M", firstText(picture, "title"));
            assertTrue(firstText(picture, "desc").startsWith("Outline of size M"), firstText(picture, "desc"));
        }
    }

    private static List<String> classed(org.w3c.dom.Document page, String element, String name) {
        return elements(page, element).stream()
                .filter(found -> List.of(found.getAttribute("class").split(" ")).contains(name))
                .map(Node::getTextContent).toList();
    }

    private static String firstText(Element parent, String name) {
        return parent.getElementsByTagName(name).item(0).getTextContent();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void theSameDocumentGivesTheSameBytes(String name) {
        assertEquals(Pages.text(Pages.all().get(name)), Pages.text(Pages.all().get(name)));
    }

    @ParameterizedTest(name = "[{index}]")
    @MethodSource("nastyTexts")
    void whateverATextIsItStaysText(String nasty) throws SAXException, IOException {
        org.w3c.dom.Document page = parsed(new Document(nasty, nasty, List.of(nasty), List.of(
                new Block.Heading(1, nasty), new Block.Heading(1, "second"), new Block.Heading(1, "third"),
                new Block.Paragraph(Purpose.BODY, nasty), new Block.Entries(false, List.of(nasty)),
                new Block.Terms(List.of(new Block.Term(nasty, nasty))),
                new Block.Table(nasty, List.of("Size", "Value " + nasty),
                        List.of(new Block.Row(List.of(new Cell.Words(nasty), new Cell.Figure(nasty))))))));
        assertHarmless(page);
        String shown = shown(nasty);
        assertEquals(List.of(shown), texts(page, "h1"));
        assertEquals(shown, texts(page, "title").getFirst());
        assertEquals(shown, texts(page, "h2").getFirst());
        for (String element : List.of("dt", "dd", "caption", "td", "footer")) {
            assertEquals(List.of(shown.strip()), texts(page, element).stream().map(String::strip).toList(), element);
        }
        assertEquals(List.of("Size", "Value " + shown, shown), texts(page, "th"));
        assertEquals(shown, elements(page, "meta").stream().filter(meta -> meta.getAttribute("name").equals("description"))
                .map(meta -> meta.getAttribute("content")).findFirst().orElseThrow());
    }

    /** What XML cannot hold shows as the sign for that, and a line has one line. */
    private static String shown(String text) {
        StringBuilder shown = new StringBuilder();
        text.codePoints().forEach(letter -> {
            boolean blank = letter == '\n' || letter == '\r' || letter == '\t';
            boolean none = letter < 0x20 || letter >= 0x7F && letter < 0xA0 || letter >= 0xD800 && letter < 0xE000
                    || letter == 0xFFFE || letter == 0xFFFF;
            shown.appendCodePoint(blank ? ' ' : none ? 0xFFFD : letter);
        });
        return shown.toString();
    }

    @ParameterizedTest(name = "[{index}]")
    @MethodSource("nastyLabels")
    void aPatternWithNastyTitleAndSizeIsOnePage(String label) throws SAXException, IOException {
        Size size = Designs.toeUp().sizes().getFirst();
        Design design = Designs.with(Designs.toeUp(), label, List.of(new Size("id", label, size.inputs(), Map.of())));
        org.w3c.dom.Document page = parsed(PatternDocument.of(Patterns.grade(design), HouseStyles.usual(), Optional.empty()));
        assertHarmless(page);
        assertEquals(List.of(shown(label)), texts(page, "h1"));
    }
}
