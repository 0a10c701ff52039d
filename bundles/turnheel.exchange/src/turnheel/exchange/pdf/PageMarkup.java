package turnheel.exchange.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.w3c.dom.Element;
import org.w3c.dom.Node;

import turnheel.engine.drawing.Picture;
import turnheel.exchange.document.Block;
import turnheel.exchange.document.Document;

/** A document as the tree that the renderer lays out. */
final class PageMarkup {

    private static final int LONGEST_RUNNING_TITLE = 60;
    private static final String NEW_PAGE = "new-page";
    private static final String WIDE = "wide";

    private final Document document;
    private final Tree tree = new Tree("html");
    private final List<Picture> pictures = new ArrayList<>();
    private final Element bookmarks;
    private final Element body;
    private boolean onNewPage;
    private int headings;

    private PageMarkup(Document document) {
        this.document = document;
        tree.root().setAttribute("lang", Document.LANGUAGE);
        Element head = tree.child(tree.root(), "head");
        tree.text(head, "title", "", document.title());
        tree.text(head, "style", "", PrintStyle.SHEET);
        bookmarks = tree.child(head, "bookmarks");
        body = tree.child(tree.root(), "body");
    }

    static PageMarkup of(Document document) {
        PageMarkup markup = new PageMarkup(document);
        markup.write();
        return markup;
    }

    org.w3c.dom.Document tree() {
        return tree.document();
    }

    /** What an {@code object} of the tree shows, by its {@code data}. */
    List<Picture> pictures() {
        return List.copyOf(pictures);
    }

    private void write() {
        tree.text(body, "div", "running-title", shortened(document.title()));
        tree.text(body, "div", "running-imprint", String.join(" ", document.imprint()));
        heading("h1", document.title());
        document.blocks().forEach(this::block);
        Element imprint = tree.text(body.getLastChild() instanceof Element last && Tree.is(last, WIDE) ? last : body,
                "div", "imprint", "");
        document.imprint().forEach(line -> tree.text(imprint, "p", "", line));
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
                placed(tree.text(body, "p", purpose.name().toLowerCase(Locale.ROOT), text));
            case Block.Entries(boolean numbered, List<String> texts) -> {
                Element list = placed(tree.child(body, numbered ? "ol" : "ul"));
                texts.forEach(entry -> tree.text(list, "li", "", entry));
            }
            case Block.Terms(List<Block.Term> terms) -> terms(terms);
            case Block.Table table -> {
                if (TableMarkup.isCrowded(table)) {
                    TableMarkup.add(tree, led(WIDE, lead()), table);
                } else {
                    placed(TableMarkup.add(tree, body, table));
                }
            }
            case Block.Drawn(Picture picture) -> picture(picture);
            case Block.NewPage() -> onNewPage = true;
        }
    }

    private void heading(String name, String text) {
        Element heading = placed(tree.text(body, name, "", text));
        String id = "heading-" + ++headings;
        heading.setAttribute("id", id);
        Element bookmark = tree.child(bookmarks, "bookmark");
        bookmark.setAttribute("name", PrintedText.said(text));
        bookmark.setAttribute("href", "#" + id);
    }

    private void terms(List<Block.Term> terms) {
        Element list = placed(tree.text(body, "ul", "terms", ""));
        for (Block.Term term : terms) {
            Element entry = tree.child(list, "li");
            tree.text(entry, "strong", "", term.word() + ":");
            tree.append(entry, " " + term.meaning());
        }
    }

    private void picture(Picture picture) {
        List<Element> lead = lead();
        for (PagePicture page : PagePicture.pages(picture, PrintStyle.IMPRINT + height(lead))) {
            Element object = tree.child(led(page.onItsSide() ? "figure " + WIDE : "figure", lead), "object");
            lead = List.of();
            object.setAttribute("data", String.valueOf(pictures.size()));
            object.setAttribute("alt",
                    PrintedText.said("%s. %s".formatted(page.picture().title(), page.picture().description())));
            object.setAttribute("style", "width:%smm;height:%smm".formatted(page.width(), page.height()));
            pictures.add(page.picture());
        }
    }

    /** The headings right above, with a sentence below them if there is one: they stay on the page of what follows. */
    private List<Element> lead() {
        List<Element> lead = new ArrayList<>();
        Node above = body.getLastChild();
        if (above instanceof Element sentence && sentence.getTagName().equals("p")) {
            lead.add(sentence);
            above = sentence.getPreviousSibling();
        }
        int headed = lead.size();
        while (above instanceof Element heading && heading.getTagName().matches("h[1-4]")) {
            lead.addFirst(heading);
            above = heading.getPreviousSibling();
        }
        return lead.size() > headed ? lead : List.of();
    }

    private static double height(List<Element> lead) {
        return lead.stream().mapToDouble(element -> switch (element.getTagName()) {
            case "h1", "h2" -> PrintStyle.HEADING;
            default -> PrintStyle.SUBHEADING;
        }).sum();
    }

    /** A part of a kind that begins with these elements. */
    private Element led(String kind, List<Element> lead) {
        Element part = tree.child(body, "div");
        Tree.mark(part, kind);
        onNewPage |= lead.stream().anyMatch(element -> Tree.is(element, NEW_PAGE));
        placed(part);
        lead.forEach(element -> {
            part.appendChild(element);
            element.setAttribute("class", element.getAttribute("class").replace(NEW_PAGE, "").strip());
        });
        return part;
    }

    /** Starts on a page of its own where one was asked for. */
    private Element placed(Element element) {
        if (onNewPage) {
            Tree.mark(element, NEW_PAGE);
            onNewPage = false;
        }
        return element;
    }
}
