package turnheel.exchange.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import turnheel.engine.drawing.Picture;
import turnheel.exchange.document.Block;
import turnheel.exchange.document.Block.Cell;
import turnheel.exchange.markup.XmlText;

/**
 * The blocks of a document as elements, in order. What is wider than a window scrolls in a box that the keyboard reaches.
 */
final class HtmlBlocks {

    /** A heading under the title, and the id by which one gets there. */
    record Chapter(String id, String heading) {
    }

    private final Figures figures;
    private final StringBuilder html = new StringBuilder();
    private final List<Chapter> chapters = new ArrayList<>();
    private int headings;
    private int boxes;
    private boolean onNewPage;

    HtmlBlocks(Figures figures) {
        this.figures = figures;
    }

    String html() {
        return html.toString();
    }

    List<Chapter> chapters() {
        return List.copyOf(chapters);
    }

    void add(Block block) {
        switch (block) {
            case Block.Heading(int level, String text) -> heading(level, text);
            case Block.Paragraph(var purpose, String text) -> html.append("<p%s>%s</p>\n"
                    .formatted(classes(purpose.name().toLowerCase(Locale.ROOT)), XmlText.escaped(text)));
            case Block.Entries(boolean numbered, List<String> texts) -> entries(numbered ? "ol" : "ul", texts);
            case Block.Terms(List<Block.Term> terms) -> terms(terms);
            case Block.Table table -> table(table);
            case Block.Drawn(Picture picture) -> figure(picture);
            case Block.NewPage newPage -> onNewPage = true;
        }
    }

    /** The attribute for an element's classes, with the one that starts a page where that is due. */
    private String classes(String own) {
        String all = onNewPage ? (own + " new-page").strip() : own;
        onNewPage = false;
        return all.isEmpty() ? "" : " class=\"" + all + '"';
    }

    private void heading(int level, String text) {
        String id = "s" + ++headings;
        if (level == 1) {
            chapters.add(new Chapter(id, text));
        }
        html.append("<h%d id=\"%s\"%s>%s</h%d>\n".formatted(level + 1, id, classes(""), XmlText.escaped(text),
                level + 1));
    }

    private void entries(String list, List<String> texts) {
        html.append("<%s%s>\n".formatted(list, classes("")));
        texts.forEach(text -> html.append("<li>%s</li>\n".formatted(XmlText.escaped(text))));
        html.append("</%s>\n".formatted(list));
    }

    private void terms(List<Block.Term> terms) {
        html.append("<dl%s>\n".formatted(classes("")));
        terms.forEach(term -> html.append("<div><dt>%s</dt><dd>%s</dd></div>\n"
                .formatted(XmlText.escaped(term.word()), XmlText.escaped(term.meaning()))));
        html.append("</dl>\n");
    }

    private void table(Block.Table table) {
        String caption = "b" + ++boxes;
        html.append("<div%s role=\"group\" aria-labelledby=\"%s\" tabindex=\"0\">\n<table>\n"
                .formatted(classes("scroll"), caption));
        html.append("<caption id=\"%s\"><span>%s</span></caption>\n<thead>\n<tr>"
                .formatted(caption, XmlText.escaped(table.caption())));
        for (int column = 0; column < table.head().size(); column++) {
            html.append(columnHeading(table, column));
        }
        html.append("</tr>\n</thead>\n<tbody>\n");
        for (Block.Row row : table.rows()) {
            html.append("<tr>").append(rowHeading(row.cells().getFirst()));
            row.cells().stream().skip(1).forEach(cell -> html.append(cell(cell)));
            html.append("</tr>\n");
        }
        html.append("</tbody>\n</table>\n</div>\n");
    }

    private static String columnHeading(Block.Table table, int column) {
        String text = table.head().get(column);
        if (text.isBlank()) {
            return "<td></td>";
        }
        boolean figures = !table.rows().isEmpty() && table.rows().stream().map(row -> row.cells().get(column))
                .allMatch(cell -> cell instanceof Cell.Figure || cell instanceof Cell.Nothing);
        return "<th scope=\"col\"%s>%s</th>".formatted(figures ? " class=\"figure\"" : "", XmlText.escaped(text));
    }

    private static String rowHeading(Cell cell) {
        return switch (cell) {
            case Cell.Words(String text) -> "<th scope=\"row\">%s</th>".formatted(XmlText.escaped(text));
            case Cell.Figure(String text) ->
                "<th scope=\"row\" class=\"figure\">%s</th>".formatted(XmlText.escaped(text));
            case Cell.Nothing nothing -> cell(nothing);
            case Cell.Blank blank -> cell(blank);
        };
    }

    private static String cell(Cell cell) {
        return switch (cell) {
            case Cell.Words(String text) -> "<td>%s</td>".formatted(XmlText.escaped(text));
            case Cell.Figure(String text) -> "<td class=\"figure\">%s</td>".formatted(XmlText.escaped(text));
            case Cell.Nothing nothing -> "<td></td>";
            case Cell.Blank blank ->
                "<td class=\"blank\"><span class=\"heard\">%s</span></td>".formatted(Words.text("blank"));
        };
    }

    private void figure(Picture picture) {
        String caption = "b" + ++boxes;
        html.append("<figure%s>\n<div class=\"scroll\" role=\"group\" aria-labelledby=\"%s\" tabindex=\"0\">\n"
                .formatted(classes(""), caption)).append(figures.element(picture, caption + "p"))
                .append("</div>\n<figcaption id=\"%s\">%s</figcaption>\n</figure>\n"
                        .formatted(caption, XmlText.escaped(picture.title())));
    }
}
