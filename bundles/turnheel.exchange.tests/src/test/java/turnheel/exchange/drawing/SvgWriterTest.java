package turnheel.exchange.drawing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

import turnheel.engine.drawing.Ink;
import turnheel.engine.drawing.Picture;
import turnheel.engine.drawing.Point;
import turnheel.engine.drawing.Shape;
import turnheel.engine.grading.Graded;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.Designs;

class SvgWriterTest {

    private static final Graded GRADED = Patterns.grade(Designs.cuffDown());
    /** Contrast that WCAG 2.2 asks of text (1.4.3) and of lines that must be seen (1.4.11). */
    private static final double OF_TEXT = 4.5;
    private static final double OF_LINES = 3;

    private static byte[] bytes(Picture picture) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SvgWriter.write(picture, out);
        return out.toByteArray();
    }

    private static Document parsed(Picture picture) throws IOException {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            return factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes(picture)));
        } catch (ParserConfigurationException | SAXException notXml) {
            throw new AssertionError(new String(bytes(picture), StandardCharsets.UTF_8), notXml);
        }
    }

    private static List<Element> elements(Document document, String name) {
        NodeList nodes = document.getElementsByTagNameNS("http://www.w3.org/2000/svg", name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    private static Picture titled(String title) {
        Shape.Text text = new Shape.Text(title, new Point(1, 5), 4, Shape.Text.Anchor.START, Shape.Text.Weight.REGULAR,
                Ink.TEXT);
        return new Picture(100, 20, title, title, List.of(new Shape.Group(title, List.of(text))));
    }

    @ParameterizedTest
    @EnumSource(Drawn.What.class)
    void isMeasuredInMillimetresAndTellsWhatItShows(Drawn.What what) throws IOException {
        Picture picture = new Drawn(what, Optional.empty()).of(GRADED);
        Document document = parsed(picture);
        Element root = document.getDocumentElement();
        assertEquals("svg", root.getLocalName());
        String[] box = root.getAttribute("viewBox").split(" ");
        assertEquals(picture.width(), Double.parseDouble(box[2]), 0.001);
        assertEquals(picture.height(), Double.parseDouble(box[3]), 0.001);
        assertEquals(box[2] + "mm", root.getAttribute("width"));
        assertEquals(box[3] + "mm", root.getAttribute("height"));
        assertEquals(picture.title(), elements(document, "title").getFirst().getTextContent());
        assertEquals(picture.description(), elements(document, "desc").getFirst().getTextContent());
        assertEquals("img", root.getAttribute("role"));
    }

    @ParameterizedTest
    @EnumSource(Drawn.What.class)
    void everyColourIsARoleWithARuleForLightAndDark(Drawn.What what) throws IOException {
        Document document = parsed(new Drawn(what, Optional.empty()).of(GRADED));
        String style = elements(document, "style").getFirst().getTextContent();
        String dark = style.substring(style.indexOf("prefers-color-scheme:dark"));
        Set<String> classes = new HashSet<>();
        for (Element element : elements(document, "*")) {
            for (String attribute : List.of("fill", "stroke", "style")) {
                assertFalse(element.hasAttribute(attribute), element.getTagName());
            }
            classes.addAll(List.of(element.getAttribute("class").split(" ")));
        }
        for (String name : classes) {
            assertTrue(name.isEmpty() || style.contains("." + name + "{"), name);
            assertTrue(!name.matches("(line|area)-.*") || dark.contains("." + name + "{"), name);
        }
        Set<String> colours = Pattern.compile("#[0-9a-f]+").matcher(new String(
                bytes(new Drawn(what, Optional.empty()).of(GRADED)), StandardCharsets.UTF_8)).results()
                .map(match -> match.group()).collect(Collectors.toSet());
        Set<String> known = Stream.of(Ink.values()).map(Tint::of)
                .flatMap(tint -> Stream.of(tint.onLight(), tint.onDark())).collect(Collectors.toSet());
        assertTrue(known.containsAll(colours), colours::toString);
    }

    @ParameterizedTest
    @ValueSource(strings = {"</title><script>alert(1)</script>", "a & b < c > d", "\"quoted\" 'so'", "]]>", "&amp;",
        "<!DOCTYPE svg [<!ENTITY x SYSTEM 'file:///etc/hostname'>]>&x;", "=1+1", "%s %n ${x} {0}", "שלום Ωmega 靴下 🧦",
        "<?xml-stylesheet href='x'?>"})
    void textStaysText(String title) throws IOException {
        Document document = parsed(titled(title));
        assertEquals(title, elements(document, "title").getFirst().getTextContent());
        assertEquals(title, elements(document, "desc").getFirst().getTextContent());
        assertEquals(title, elements(document, "text").getFirst().getTextContent());
        assertEquals(List.of(), elements(document, "script"));
    }

    @Test
    void whatXmlCannotHoldIsReplaced() throws IOException {
        Document document = parsed(titled("a\u0000b\u001bc\ud800d\uffffe\nf"));
        assertEquals("a\ufffdb\ufffdc\ufffdd\ufffde f", elements(document, "text").getFirst().getTextContent());
    }

    @ParameterizedTest
    @EnumSource(Drawn.What.class)
    void givesTheSameBytesForTheSamePattern(Drawn.What what) throws IOException {
        Drawn drawn = new Drawn(what, Optional.empty());
        assertArrayEquals(bytes(drawn.of(GRADED)), bytes(drawn.of(Patterns.grade(Designs.cuffDown()))));
    }

    @Test
    void writesEveryKindOfShape() throws IOException {
        Document outline = parsed(new Drawn(Drawn.What.OUTLINE, Optional.empty()).of(GRADED));
        for (String name : List.of("line", "path", "text", "g")) {
            assertFalse(elements(outline, name).isEmpty(), name);
        }
        Document toe = parsed(new Drawn(Drawn.What.TOE, Optional.empty()).of(Patterns.grade(Designs.toeUp())));
        for (String name : List.of("rect", "circle")) {
            assertFalse(elements(toe, name).isEmpty(), name);
        }
    }

    @Test
    void wordsAndLinesStandOutFromWhatTheyLieOn() {
        List<Tint> grounds = List.of(Tint.of(Ink.PAPER), Tint.of(Ink.FABRIC));
        for (Tint ground : grounds) {
            for (Ink ink : List.of(Ink.TEXT, Ink.MUTED, Ink.SYMBOL)) {
                assertContrast(OF_TEXT, Tint.of(ink), ground, ink);
            }
            for (Ink ink : List.of(Ink.OUTLINE, Ink.SHAPING, Ink.DIMENSION, Ink.HIGHLIGHT)) {
                assertContrast(OF_LINES, Tint.of(ink), ground, ink);
            }
        }
    }

    private static void assertContrast(double least, Tint ink, Tint ground, Ink name) {
        assertTrue(contrast(ink.onLight(), ground.onLight()) >= least, name + " on light");
        assertTrue(contrast(ink.onDark(), ground.onDark()) >= least, name + " on dark");
    }

    /** WCAG 2.2: (L1 + 0.05) / (L2 + 0.05). */
    private static double contrast(String one, String other) {
        double a = luminance(one) + 0.05;
        double b = luminance(other) + 0.05;
        return Math.max(a, b) / Math.min(a, b);
    }

    private static double luminance(String colour) {
        double[] weights = {0.2126, 0.7152, 0.0722};
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            double part = Integer.parseInt(colour.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
            sum += weights[i] * (part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4));
        }
        return sum;
    }
}
