package turnheel.exchange.pdf;

import java.util.stream.Stream;

import org.w3c.dom.Element;

import turnheel.engine.wording.NoBreak;
import turnheel.exchange.document.Block;
import turnheel.exchange.document.Block.Cell;

/** A table in the tree: how small its letters are, where its words may break, whether it stays on one page. */
final class TableMarkup {

    private static final int MANY_COLUMNS = 8;
    private static final int CROWDED_COLUMNS = 13;
    private static final int LONGEST_WORD = 24;
    private static final int SHORTEST_WORD = 5;
    /** How many letters a line of a table has, all columns together. */
    private static final int LETTERS_OF_A_LINE = 100;
    /** So few rows, with so few letters in a cell, that a table need not go on over the page. */
    private static final int FEW_ROWS = 12;
    private static final int FEW_LETTERS = 120;

    private final Tree tree;
    private final Block.Table table;
    private final int columns;

    private TableMarkup(Tree tree, Block.Table table) {
        this.tree = tree;
        this.table = table;
        this.columns = table.head().size();
    }

    /** Whether it has so many columns that it needs a page on its side. */
    static boolean isCrowded(Block.Table table) {
        return table.head().size() > CROWDED_COLUMNS;
    }

    static Element add(Tree tree, Element parent, Block.Table table) {
        return new TableMarkup(tree, table).add(parent);
    }

    private Element add(Element parent) {
        Element element = tree.child(parent, "table");
        Tree.mark(element, isCrowded(table) ? "crowded" : columns > MANY_COLUMNS ? "many" : "");
        Tree.mark(element, isShort() ? "short" : "");
        tree.text(element, "caption", "", table.caption());
        Element head = tree.child(tree.child(element, "thead"), "tr");
        for (int column = 0; column < columns; column++) {
            tree.text(head, "th", holdsFigures(column) ? "figure-cell" : "", narrow(table.head().get(column)))
                    .setAttribute("scope", "col");
        }
        Element rows = tree.child(element, "tbody");
        for (Block.Row row : table.rows()) {
            Element line = tree.child(rows, "tr");
            cell(line, "th", row.cells().getFirst()).setAttribute("scope", "row");
            row.cells().stream().skip(1).forEach(cell -> cell(line, "td", cell));
        }
        return element;
    }

    private Element cell(Element row, String name, Cell cell) {
        return switch (cell) {
            case Cell.Words(String text) -> tree.text(row, name, "", narrow(text));
            case Cell.Figure(String text) -> tree.text(row, name, "figure-cell",
                    text.length() <= longestWord() ? NoBreak.whole(text) : narrow(text));
            case Cell.Nothing() -> tree.child(row, name);
            case Cell.Blank() -> tree.text(row, name, "blank", "");
        };
    }

    private boolean holdsFigures(int column) {
        return table.rows().stream().anyMatch(row -> row.cells().get(column) instanceof Cell.Figure);
    }

    private boolean isShort() {
        return table.rows().size() <= FEW_ROWS && Stream.concat(Stream.of(table.caption()), table.rows().stream()
                .flatMap(row -> row.cells().stream()).map(TableMarkup::said))
                .allMatch(text -> text.length() <= FEW_LETTERS);
    }

    private static String said(Cell cell) {
        return switch (cell) {
            case Cell.Words(String text) -> text;
            case Cell.Figure(String text) -> text;
            case Cell.Nothing() -> "";
            case Cell.Blank() -> "";
        };
    }

    /** A column is as wide as its longest word, so a word that is too long for it may end a line. */
    private String narrow(String text) {
        return text.replaceAll("[^ \\u200B]{%d}(?=[^ \\u200B])".formatted(longestWord()), "$0" + NoBreak.BREAK);
    }

    private int longestWord() {
        return Math.clamp(LETTERS_OF_A_LINE / columns, SHORTEST_WORD, LONGEST_WORD);
    }
}
