package turnheel.exchange.markdown;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

import turnheel.exchange.document.Block;
import turnheel.exchange.document.Document;
import turnheel.exchange.document.Purpose;

/** Writes a document as Markdown; lines end in a line feed, a paragraph is a line. */
public final class MarkdownWriter {

    private static final char LINE_END = '\n';
    private static final String ITEM = "- ";
    private static final String QUOTE = "> ";

    private final StringBuilder text = new StringBuilder();

    private MarkdownWriter() {
    }

    /** Writes one file in UTF-8; the stream is not closed. */
    public static void write(Document document, OutputStream out) throws IOException {
        out.write(text(document).getBytes(StandardCharsets.UTF_8));
    }

    /** The whole text. */
    public static String text(Document document) {
        MarkdownWriter writer = new MarkdownWriter();
        writer.heading(0, document.title());
        writer.paragraph("", document.subject());
        document.blocks().forEach(writer::write);
        document.imprint().forEach(line -> writer.paragraph("", line));
        return writer.text.toString();
    }

    private void write(Block block) {
        switch (block) {
            case Block.Heading(int level, String said) -> heading(level, said);
            case Block.Paragraph(Purpose purpose, String said) -> paragraph(mark(purpose), said);
            case Block.Entries(boolean numbered, List<String> texts) -> entries(numbered, texts);
            case Block.Terms(List<Block.Term> terms) ->
                entries(false, terms.stream().map(term -> term.word() + ": " + term.meaning()).toList());
            case Block.Table table -> table(table);
            case Block.Drawn(var picture) ->
                paragraph("", Words.text("figure", picture.title(), picture.description()));
            case Block.NewPage page -> {
                // there are no pages
            }
        }
    }

    private static String mark(Purpose purpose) {
        return switch (purpose) {
            case CAUTION -> QUOTE;
            case BODY, SIZES, MEASUREMENT, MATERIAL, GAUGE, NOTE, INSTRUCTION -> "";
        };
    }

    private void heading(int level, String said) {
        apart();
        text.append("#".repeat(level + 1)).append(' ').append(Escaped.of(said)).append(LINE_END);
    }

    private void paragraph(String mark, String said) {
        String escaped = Escaped.of(said);
        // a paragraph of nothing would be none
        if (!escaped.isEmpty()) {
            apart();
            text.append(mark).append(escaped).append(LINE_END);
        }
    }

    private void entries(boolean numbered, List<String> texts) {
        apart();
        for (int entry = 0; entry < texts.size(); entry++) {
            text.append(numbered ? entry + 1 + ". " : ITEM).append(Escaped.of(texts.get(entry))).append(LINE_END);
        }
    }

    private void table(Block.Table table) {
        paragraph("", table.caption());
        apart();
        row(table.head(), Escaped::of);
        text.append('|');
        for (int column = 0; column < table.head().size(); column++) {
            text.append(hasFigures(table, column) ? " ---: |" : " --- |");
        }
        text.append(LINE_END);
        table.rows().forEach(row -> row(row.cells(), MarkdownWriter::cell));
    }

    private static boolean hasFigures(Block.Table table, int column) {
        return table.rows().stream().anyMatch(row -> row.cells().get(column) instanceof Block.Cell.Figure);
    }

    private <T> void row(List<T> cells, Function<T, String> said) {
        text.append(cells.stream().map(said).collect(Collectors.joining(" | ", "| ", " |"))).append(LINE_END);
    }

    private static String cell(Block.Cell cell) {
        return switch (cell) {
            case Block.Cell.Words(String said) -> Escaped.of(said);
            case Block.Cell.Figure(String said) -> Escaped.of(said);
            case Block.Cell.Nothing nothing -> "";
            case Block.Cell.Blank blank -> "";
        };
    }

    /** An empty line, except at the very beginning. */
    private void apart() {
        if (!text.isEmpty()) {
            text.append(LINE_END);
        }
    }
}
