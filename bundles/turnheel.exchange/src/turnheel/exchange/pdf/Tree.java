package turnheel.exchange.pdf;

import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;

import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A tree of elements that grows. Every word in it is a text or the value of an attribute; none is read as markup. */
final class Tree {

    private final Document document;
    private final Element root;

    /** @param root the name of the outermost element */
    Tree(String root) {
        try {
            // the platform's own, whatever other parsers are about
            document = DocumentBuilderFactory.newDefaultInstance().newDocumentBuilder().newDocument();
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("every Java platform builds an empty tree", e);
        }
        this.root = document.createElement(root);
        document.appendChild(this.root);
    }

    Document document() {
        return document;
    }

    Element root() {
        return root;
    }

    /** A new last child. */
    Element child(Element parent, String name) {
        Element element = document.createElement(name);
        parent.appendChild(element);
        return element;
    }

    /** A new last child of a kind that the style sheet knows, or of none where that is empty. */
    Element text(Element parent, String name, String kind, String text) {
        Element element = child(parent, name);
        mark(element, kind);
        element.appendChild(document.createTextNode(PrintedText.of(text)));
        return element;
    }

    /** Adds text after what an element holds. */
    void append(Element element, String text) {
        element.appendChild(document.createTextNode(PrintedText.of(text)));
    }

    /** Makes an element one of this kind too. */
    static void mark(Element element, String kind) {
        String kinds = (element.getAttribute("class") + " " + kind).strip();
        if (!kinds.isEmpty()) {
            element.setAttribute("class", kinds);
        }
    }

    static boolean is(Element element, String kind) {
        return element.getAttribute("class").contains(kind);
    }
}
