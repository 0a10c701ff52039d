package turnheel.model;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.ext.DefaultHandler2;

import turnheel.model.DocumentProblem.Kind;
import turnheel.model.pattern.Pattern;
import turnheel.model.pattern.PatternPackage;

/**
 * Reads the XML that EMF wrote, led by the {@code .ecore} and by nothing else. EMF's own reader is lenient: it follows
 * references and schema locations, takes the last of two toes, and drops text and comments without a word. Here
 * whatever would not come back out on saving is a problem with its place.
 */
final class PatternReader extends DefaultHandler2 {

    private static final int DEEPEST = 16;
    private static final int MOST_PROBLEMS = 20;
    private static final int LONGEST_QUOTE = 40;

    /** Ends the parse: what is wrong is already in the list. */
    private static final class Enough extends SAXException {
        private static final long serialVersionUID = 1L;
    }

    /**
     * An element that is open.
     *
     * @param object null where the element was not understood; what it holds is then passed over
     * @param text null where no text belongs
     */
    private record Open(String name, EObject object, EStructuralFeature feature, Set<EStructuralFeature> seen,
            StringBuilder text) {
    }

    private final SourceText source;
    private final List<DocumentProblem> problems = new ArrayList<>();
    private final Map<String, String> namespaces = new HashMap<>();
    private final Deque<Open> open = new ArrayDeque<>();
    private Locator locator;
    private Pattern pattern;

    private PatternReader(SourceText source) {
        this.source = source;
    }

    /**
     * The document that the text holds.
     *
     * @throws DocumentException when it holds none, or anything beyond one; with up to 20 problems
     */
    static Pattern read(String text, String sourceName) throws DocumentException {
        PatternReader reader = new PatternReader(new SourceText(text));
        reader.parse();
        if (!reader.problems.isEmpty()) {
            throw new DocumentException(sourceName, reader.problems);
        }
        return reader.pattern;
    }

    private void parse() {
        try {
            // The platform's own parser: no other one is looked up on the class path.
            SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
            factory.setNamespaceAware(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            SAXParser parser = factory.newSAXParser();
            parser.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
            parser.setProperty("http://xml.org/sax/properties/lexical-handler", this);
            parser.parse(new InputSource(new StringReader(source.text())), this);
        } catch (Enough enough) {
            // Its problem stands in the list.
            assert !problems.isEmpty();
        } catch (SAXParseException damaged) {
            problems.add(DocumentProblem.at(
                    new Position(Math.max(1, damaged.getLineNumber()), Math.max(1, damaged.getColumnNumber())),
                    Kind.MALFORMED, damaged.getMessage()));
        } catch (SAXException | IOException | ParserConfigurationException unexpected) {
            throw new IllegalStateException("the platform's XML parser failed on text in memory", unexpected);
        }
    }

    @Override
    public void setDocumentLocator(Locator documentLocator) {
        locator = documentLocator;
    }

    @Override
    public void error(SAXParseException damaged) throws SAXException {
        throw damaged;
    }

    @Override
    public void startDTD(String name, String publicId, String systemId) throws SAXException {
        throw stop(source.last("<!DOCTYPE", here()), Kind.DOCTYPE);
    }

    @Override
    public void comment(char[] characters, int start, int length) throws SAXException {
        report(source.last("<!--", here()), Kind.COMMENT);
    }

    @Override
    public void processingInstruction(String target, String instruction) throws SAXException {
        report(source.last("<?", here()), Kind.COMMENT);
    }

    @Override
    public void startPrefixMapping(String prefix, String uri) {
        namespaces.put(prefix, uri);
    }

    @Override
    public void startElement(String uri, String localName, String name, Attributes attributes) throws SAXException {
        SourceText.Tag tag = source.tagEndingAt(here());
        if (open.size() == DEEPEST) {
            throw stop(tag.start(), Kind.TOO_DEEP, Integer.toString(DEEPEST));
        }
        if (open.isEmpty()) {
            requirePattern(uri, localName, name, attributes, tag);
            pattern = (Pattern) create(PatternPackage.Literals.PATTERN, attributes, tag);
            open.push(new Open(name, pattern, null, new HashSet<>(), null));
        } else if (open.peek().object() == null) {
            // Inside of what was not understood: one problem is enough for the whole of it.
            open.push(new Open(name, null, null, Set.of(), null));
        } else {
            open.push(child(open.peek(), name, attributes, tag));
        }
    }

    private void requirePattern(String uri, String localName, String name, Attributes attributes, SourceText.Tag tag)
            throws SAXException {
        if (!PatternPackage.eNS_URI.equals(uri) || !FileNames.of(PatternPackage.Literals.PATTERN).equals(localName)) {
            throw stop(tag.start(), Kind.FOREIGN, name, PatternPackage.eNS_URI);
        }
        String readable = Integer.toString(PatternFiles.FORMAT);
        String format = attributes.getValue("format");
        if (format == null) {
            throw stop(tag.start(), Kind.NO_FORMAT, readable);
        }
        if (!format.equals(readable)) {
            boolean newer = format.matches("[1-9]\\d*");
            throw stop(tag.attribute("format"), newer ? Kind.NEWER_FORMAT : Kind.BAD_FORMAT, format, readable);
        }
    }

    private Open child(Open parent, String name, Attributes attributes, SourceText.Tag tag) throws SAXException {
        Open passedOver = new Open(name, null, null, Set.of(), null);
        EClass owner = parent.object().eClass();
        if (parent.text() != null) {
            report(tag.start(), Kind.UNKNOWN_ELEMENT, name, parent.name(), ProblemWords.nothing());
            return passedOver;
        }
        Optional<EStructuralFeature> found = FileNames.feature(owner, true, name);
        if (found.isEmpty()) {
            report(tag.start(), Kind.UNKNOWN_ELEMENT, name, parent.name(), FileNames.list(owner, true));
            return passedOver;
        }
        EStructuralFeature feature = found.get();
        if (!parent.seen().add(feature) && !feature.isMany()) {
            report(tag.start(), Kind.REPEATED, name);
            return passedOver;
        }
        if (feature instanceof EAttribute) {
            for (int i = 0; i < attributes.getLength(); i++) {
                unknownAttribute(attributes.getQName(i), name, ProblemWords.nothing(), tag);
            }
            return new Open(name, parent.object(), feature, Set.of(), new StringBuilder());
        }
        EClass kind = kind((EClass) feature.getEType(), name, attributes, tag);
        if (kind == null) {
            return passedOver;
        }
        EObject object = create(kind, attributes, tag);
        put(parent.object(), feature, object);
        return new Open(name, object, feature, new HashSet<>(), null);
    }

    /** The class that the element is of, or null with a problem. */
    private EClass kind(EClass asked, String name, Attributes attributes, SourceText.Tag tag) throws SAXException {
        List<EClass> possible = FileNames.kinds(asked);
        String words = possible.stream().map(kind -> FileNames.PREFIX + FileNames.of(kind))
                .collect(Collectors.joining(", "));
        String written = attributes.getValue(XMLConstants.W3C_XML_SCHEMA_INSTANCE_NS_URI, "type");
        if (written == null) {
            if (asked.isAbstract()) {
                report(tag.start(), Kind.NO_KIND, name, words);
                return null;
            }
            return asked;
        }
        int colon = written.indexOf(':');
        String uri = namespaces.get(written.substring(0, Math.max(0, colon)));
        for (EClass kind : possible) {
            if (PatternPackage.eNS_URI.equals(uri) && FileNames.of(kind).equals(written.substring(colon + 1))) {
                return kind;
            }
        }
        report(tag.attribute("xsi:type"), Kind.UNKNOWN_KIND, written, name, words);
        return null;
    }

    private EObject create(EClass kind, Attributes attributes, SourceText.Tag tag) throws SAXException {
        EObject object = EcoreUtil.create(kind);
        object.eAdapters().add(new Origin(tag));
        for (int i = 0; i < attributes.getLength(); i++) {
            String name = attributes.getQName(i);
            if (isKindOf(attributes, i)) {
                continue;
            }
            Optional<EStructuralFeature> feature = FileNames.feature(kind, false, name);
            if (feature.isEmpty()) {
                unknownAttribute(name, FileNames.of(kind), FileNames.list(kind, false), tag);
            } else {
                set(object, (EAttribute) feature.get(), attributes.getValue(i), tag.attribute(name));
            }
        }
        return object;
    }

    private static boolean isKindOf(Attributes attributes, int index) {
        return XMLConstants.W3C_XML_SCHEMA_INSTANCE_NS_URI.equals(attributes.getURI(index))
                && "type".equals(attributes.getLocalName(index));
    }

    private void unknownAttribute(String name, String owner, String possible, SourceText.Tag tag) throws SAXException {
        // What other documents use to point elsewhere: href and, with any prefix, schemaLocation.
        if (name.endsWith("href") || name.toLowerCase(Locale.ROOT).endsWith("schemalocation")) {
            report(tag.attribute(name), Kind.REFERENCE, name);
        } else {
            report(tag.attribute(name), Kind.UNKNOWN_ATTRIBUTE, name, owner, possible);
        }
    }

    private void set(EObject object, EAttribute attribute, String text, Position position) throws SAXException {
        try {
            put(object, attribute, EcoreUtil.createFromString(attribute.getEAttributeType(), text));
        } catch (NumberFormatException notWhole) {
            report(position, Kind.NOT_WHOLE, FileNames.of(attribute), shortened(text));
        } catch (IllegalArgumentException refused) {
            report(position, Kind.BAD_VALUE, FileNames.of(attribute), refused.getMessage());
        }
    }

    @SuppressWarnings("unchecked")
    private static void put(EObject owner, EStructuralFeature feature, Object value) {
        if (feature.isMany()) {
            ((EList<Object>) owner.eGet(feature)).add(value);
        } else {
            owner.eSet(feature, value);
        }
    }

    @Override
    public void characters(char[] characters, int start, int length) throws SAXException {
        Open element = open.peek();
        if (element.text() != null) {
            element.text().append(characters, start, length);
        } else if (element.object() != null) {
            String text = new String(characters, start, length);
            if (!text.isBlank()) {
                reportStrayText(source.textEndingAt(here()), text.strip());
            }
        }
    }

    /** The parser hands out a long text in pieces; it is one problem. */
    private void reportStrayText(Position position, String text) throws SAXException {
        DocumentProblem last = problems.isEmpty() ? null : problems.getLast();
        if (last == null || last.line() != position.line() || last.column() != position.column()) {
            report(position, Kind.STRAY_TEXT, shortened(text));
        }
    }

    @Override
    public void endElement(String uri, String localName, String name) throws SAXException {
        Open element = open.pop();
        if (element.text() != null) {
            set(element.object(), (EAttribute) element.feature(), element.text().toString(), here());
        }
    }

    private Position here() {
        return new Position(locator.getLineNumber(), locator.getColumnNumber());
    }

    private void report(Position position, Kind kind, String... values) throws SAXException {
        problems.add(DocumentProblem.at(position, kind, values));
        if (problems.size() == MOST_PROBLEMS) {
            throw new Enough();
        }
    }

    private SAXException stop(Position position, Kind kind, String... values) {
        problems.add(DocumentProblem.at(position, kind, values));
        return new Enough();
    }

    private static String shortened(String text) {
        return text.length() <= LONGEST_QUOTE ? text : text.substring(0, LONGEST_QUOTE) + "…";
    }
}
