package turnheel.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import turnheel.cli.Table.Side;
import turnheel.exchange.document.Block;
import turnheel.exchange.document.Document;

/** A document on a terminal: the same words and tables as in a file, a drawing as its description. */
final class DocumentText {

    /** Room to write in by hand. */
    private static final String BLANK = "________";

    private DocumentText() {
    }

    static List<String> lines(Document document) {
        List<String> lines = new ArrayList<>(List.of(document.title(), document.subject()));
        document.blocks().forEach(block -> add(block, lines));
        lines.add("");
        lines.addAll(document.imprint());
        return lines;
    }

    private static void add(Block block, List<String> lines) {
        switch (block) {
            case Block.Heading(int level, String text) -> lines.addAll(List.of("", text));
            case Block.Paragraph paragraph -> lines.add(paragraph.text());
            case Block.Entries(boolean numbered, List<String> texts) -> {
                for (int entry = 0; entry < texts.size(); entry++) {
                    lines.add((numbered ? entry + 1 + ". " : "- ") + texts.get(entry));
                }
            }
            case Block.Terms(List<Block.Term> terms) ->
                terms.forEach(term -> lines.add(term.word() + ": " + term.meaning()));
            case Block.Table table -> {
                lines.add(table.caption());
                lines.addAll(aligned(table));
            }
            case Block.Drawn drawn -> lines.add(drawn.picture().title() + ". " + drawn.picture().description());
            case Block.NewPage newPage -> { }
        }
    }

    private static List<String> aligned(Block.Table table) {
        Table aligned = new Table(IntStream.range(0, table.head().size())
                .mapToObj(column -> side(table, column)).toList());
        aligned.row(table.head());
        table.rows().forEach(row -> aligned.row(row.cells().stream().map(DocumentText::text).toList()));
        return aligned.lines();
    }

    private static Side side(Block.Table table, int column) {
        return table.rows().stream().anyMatch(row -> row.cells().get(column) instanceof Block.Cell.Figure) ? Side.RIGHT
                : Side.LEFT;
    }

    static String text(Block.Cell cell) {
        return switch (cell) {
            case Block.Cell.Words(String text) -> text;
            case Block.Cell.Figure(String text) -> text;
            case Block.Cell.Nothing nothing -> "";
            case Block.Cell.Blank blank -> BLANK;
        };
    }
}
