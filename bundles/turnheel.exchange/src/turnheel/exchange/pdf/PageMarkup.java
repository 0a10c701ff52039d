package turnheel.exchange.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;

import org.w3c.dom.Element;
import org.w3c.dom.Node;

import turnheel.engine.drawing.Picture;
import turnheel.engine.wording.NoBreak;
import turnheel.exchange.document.Block;
import turnheel.exchange.document.Block.Cell;
import turnheel.exchange.document.Document;

/**
 * A document as the tree that the renderer lays out. Every word of it is a text or the value of an attribute; none is read
 * as markup.
 */
final class PageMarkup {

    private static final int LONGEST_RUNNING_TITLE = 60;
    private static final int LONGEST_WORD = 24;
    private static final int LONGEST_FIGURE = 24;
    /** So few rows, with so few letters in a cell, that a table need not go on over the page. */
    private static final int FEW_ROWS = 12;
    private static final int FEW_LETTERS = 120;
    private static final int MANY_COLUMNS = 8;
    private static final int CROWDED_COLUMNS = 13;

    private final Document document;
    private final org.w3c.dom.Document tree;
    private final List<Picture> pictures = new ArrayList<>();
    private final Element bookmarks;
    private final Element body;
    private boolean onNewPage;
    private int headings;

    private PageMarkup(Document document) {
        this.document = document;
        try {
            // the platform's own, whatever other parsers are about
            tree = DocumentBuilderFactory.newDefaultInstance().newDocumentBuilder().newDocument();
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("every Java platform builds an empty tree", e);
        }
        Element html = tree.createElement("html");
        html.setAttribute("lang", Document.LANGUAGE);
        tree.appendChild(html);
        Element head = child(html, "head");
        child(head, "title").setTextContent(document.title());
        child(head, "style").setTextContent(PrintStyle.SHEET);
        bookmarks = child(head, "bookmarks");
        body = child(html, "body");
    }

    static PageMarkup of(Document document) {
        PageMarkup markup = new PageMarkup(document);
        markup.write();
        return markup;
    }

    org.w3c.dom.Document tree() {
        return tree;
    }

    /** What an {@code object} of the tree shows, by its {@code data}. */
    List<Picture> pictures() {
        return List.copyOf(pictures);
    }

    private void write() {
        text(body, "div", "running-title", shortened(document.title()));
        text(body, "div", "running-imprint", String.join(" ", document.imprint()));
        heading("h1", document.title());
        document.blocks().forEach(this::block);
        Node end = body.getLastChild();
        Element imprint = child(end instanceof Element element && element.getAttribute("class").contains("wide")
                ? element : body, "div");
        mark(imprint, "imprint");
        document.imprint().forEach(line -> text(imprint, "p", "", line));
    }

    /** What fits into a line at the head of a page. */
    private static String shortened(String title) {
        return title.codePointCount(0, title.length()) <= LONGEST_RUNNING_TITLE ? title
                : title.substring(0, title.offsetByCodePoints(0, LONGEST_RUNNING_TITLE)) + "…";
    }

    private void block(Block block) {
        switch (block) {
            case Block.Heading(int level, String text) -> heading("h" + (level + 1), text);
            case Block.Paragraph(var purpose, String text) ->
                placed(text(body, "p", purpose.name().toLowerCase(Locale.ROOT), text));
            case Block.Entries(boolean numbered, List<String> texts) -> {
                Element list = placed(child(body, numbered ? "ol" : "ul"));
                texts.forEach(entry -> text(list, "li", "", entry));
            }
            case Block.Terms(List<Block.Term> terms) -> terms(terms);
            case Block.Table table -> table(table);
            case Block.Drawn(Picture picture) -> picture(picture);
            case Block.NewPage() -> onNewPage = true;
        }
    }

    private void heading(String name, String text) {
        Element heading = placed(text(body, name, "", text));
        String id = "heading-" + ++headings;
        heading.setAttribute("id", id);
        Element bookmark = child(bookmarks, "bookmark");
        bookmark.setAttribute("name", PrintedText.said(text));
        bookmark.setAttribute("href", "#" + id);
    }

    private void terms(List<Block.Term> terms) {
        Element list = placed(child(body, "ul"));
        list.setAttribute("class", "terms");
        for (Block.Term term : terms) {
            Element entry = child(list, "li");
            text(entry, "strong", "", term.word() + ":");
            entry.appendChild(tree.createTextNode(" " + PrintedText.of(term.meaning())));
        }
    }

    private void table(Block.Table table) {
        Element element = placed(child(body, "table"));
        int columns = table.head().size();
        mark(element, columns > CROWDED_COLUMNS ? "crowded" : columns > MANY_COLUMNS ? "many" : "");
        mark(element, isShort(table) ? "short" : "");
        text(element, "caption", "", table.caption());
        Element head = child(child(element, "thead"), "tr");
        for (int column = 0; column < columns; column++) {
            text(head, "th", holdsFigures(table, column) ? "figure-cell" : "",
                    narrow(table.head().get(column)))
                    .setAttribute("scope", "col");
        }
        Element rows = child(element, "tbody");
        for (Block.Row row : table.rows()) {
            Element line = child(rows, "tr");
            for (int column = 0; column < columns; column++) {
                Element cell = cell(line, column == 0 ? "th" : "td", row.cells().get(column));
                if (column == 0) {
                    cell.setAttribute("scope", "row");
                }
            }
        }
    }

    private static boolean isShort(Block.Table table) {
        return table.rows().size() <= FEW_ROWS && Stream.concat(Stream.of(table.caption()), table.rows().stream()
                .flatMap(row -> row.cells().stream()).map(PageMarkup::said)).allMatch(text -> text.length() <= FEW_LETTERS);
    }

    private static String said(Cell cell) {
        return switch (cell) {
            case Cell.Words(String text) -> text;
            case Cell.Figure(String text) -> text;
            case Cell.Nothing() -> "";
            case Cell.Blank() -> "";
        };
    }

    private static boolean holdsFigures(Block.Table table, int column) {
        return !table.rows().isEmpty()
                && table.rows().stream().anyMatch(row -> row.cells().get(column) instanceof Cell.Figure);
    }

    private Element cell(Element row, String name, Cell cell) {
        return switch (cell) {
            case Cell.Words(String text) -> text(row, name, "", narrow(text));
            case Cell.Figure(String text) -> text(row, name, "figure-cell",
                    text.length() <= LONGEST_FIGURE ? NoBreak.whole(text) : narrow(text));
            case Cell.Nothing() -> child(row, name);
            case Cell.Blank() -> text(row, name, "blank", "");
        };
    }

    /** A column is as wide as its longest word, so a word without end may end a line. */
    private static String narrow(String text) {
        return text.replaceAll("[^ \u200B]{%d}".formatted(LONGEST_WORD), "$0" + NoBreak.BREAK);
    }

    private void picture(Picture picture) {
        List<Element> headings = headingsAbove();
        for (PagePicture page : PagePicture.pages(picture, PrintStyle.IMPRINT + height(headings))) {
            Element figure = child(body, "div");
            mark(figure, page.onItsSide() ? "figure wide" : "figure");
            if (page.onItsSide()) {
                // a page has one shape, so what heads the picture goes with it
                headings.forEach(heading -> {
                    figure.appendChild(heading);
                    heading.removeAttribute("class");
                });
            } else {
                placed(figure);
            }
            headings = List.of();
            onNewPage = false;
            Element object = child(figure, "object");
            object.setAttribute("data", String.valueOf(pictures.size()));
            object.setAttribute("alt",
                    PrintedText.said("%s. %s".formatted(page.picture().title(), page.picture().description())));
            object.setAttribute("style", "width:%smm;height:%smm".formatted(page.width(), page.height()));
            pictures.add(page.picture());
        }
    }

    private List<Element> headingsAbove() {
        List<Element> headings = new ArrayList<>();
        for (Node above = body.getLastChild(); above instanceof Element element
                && element.getTagName().matches("h[1-4]"); above = above.getPreviousSibling()) {
            headings.addFirst(element);
        }
        return headings;
    }

    private static double height(List<Element> headings) {
        return headings.stream().mapToDouble(heading -> heading.getTagName().compareTo("h3") < 0
                ? PrintStyle.HEADING : PrintStyle.SUBHEADING).sum();
    }

    private static void mark(Element element, String kind) {
        element.setAttribute("class", (element.getAttribute("class") + " " + kind).strip());
    }

    /** Starts on a page of its own where one was asked for. */
    private Element placed(Element element) {
        if (onNewPage) {
            mark(element, "new-page");
            onNewPage = false;
        }
        return element;
    }

    private Element text(Element parent, String name, String kind, String text) {
        Element element = child(parent, name);
        if (!kind.isEmpty()) {
            element.setAttribute("class", kind);
        }
        element.setTextContent(PrintedText.of(text));
        return element;
    }

    private Element child(Element parent, String name) {
        Element element = tree.createElement(name);
        parent.appendChild(element);
        return element;
    }
}
