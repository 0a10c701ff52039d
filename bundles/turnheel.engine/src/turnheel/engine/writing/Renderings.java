package turnheel.engine.writing;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A written pattern as one text file; lines end in a line feed. */
public final class Renderings {

    private static final char LINE_END = '\n';
    /** What could be taken for markup in Markdown (CommonMark), wherever it stands. */
    private static final Pattern MARKUP = Pattern.compile("([\\\\`*_{}\\[\\]<>#|~&])");
    /** What is markup at the start of a line only: lists and rules. */
    private static final Pattern MARKUP_AT_START = Pattern.compile("^(\\s*(?:\\d+)?)([-+.)=])");

    private Renderings() {
    }

    /** One paragraph a line, headings and small tables set off by empty lines. */
    public static String plain(PatternText text) {
        StringBuilder plain = new StringBuilder();
        boolean afterTable = false;
        for (Lettered lettered : text.lettered()) {
            Paragraph paragraph = lettered.paragraph();
            if (paragraph.role() == Role.HEADING || afterTable) {
                plain.append(LINE_END);
            }
            plain.append(text.text(paragraph)).append(LINE_END);
            if (paragraph.role() == Role.TITLE) {
                plain.append(LINE_END);
            }
            lettered.tables().forEach(table -> plain.append(LINE_END).append(plain(table)));
            afterTable = !lettered.tables().isEmpty();
        }
        return plain.toString();
    }

    /** Sizes to the left, numbers to the right. */
    private static String plain(SmallTable table) {
        List<List<String>> lines = lines(table);
        List<Integer> widths = new ArrayList<>();
        for (int column = 0; column <= table.letters().size(); column++) {
            int its = column;
            widths.add(lines.stream().mapToInt(line -> line.get(its).length()).reduce(0, Math::max));
        }
        StringBuilder plain = new StringBuilder(table.caption()).append(LINE_END);
        for (List<String> line : lines) {
            plain.append(line.getFirst()).append(" ".repeat(widths.getFirst() - line.getFirst().length()));
            for (int column = 1; column < line.size(); column++) {
                plain.append(" ".repeat(Lettering.GAP + widths.get(column) - line.get(column).length()))
                        .append(line.get(column));
            }
            plain.append(LINE_END);
        }
        return plain.toString();
    }

    /** The cells of the head and of every size. */
    private static List<List<String>> lines(SmallTable table) {
        List<List<String>> lines = new ArrayList<>();
        lines.add(line(table.sizeHeading(), table.letters()));
        table.rows().forEach(row -> lines.add(line(row.size(), row.values())));
        return lines;
    }

    private static List<String> line(String first, List<String> others) {
        List<String> line = new ArrayList<>(List.of(first));
        line.addAll(others);
        return line;
    }

    /** Markdown in the common dialect, with its tables; what the designer typed is never markup. */
    public static String markdown(PatternText text) {
        StringBuilder markdown = new StringBuilder();
        boolean inList = false;
        for (Lettered lettered : text.lettered()) {
            Paragraph paragraph = lettered.paragraph();
            boolean item = paragraph.role() == Role.ABBREVIATION;
            if (!markdown.isEmpty() && !(item && inList)) {
                markdown.append(LINE_END);
            }
            markdown.append(mark(paragraph.role())).append(escaped(text.text(paragraph))).append(LINE_END);
            lettered.tables().forEach(table -> markdown.append(LINE_END).append(markdown(table)));
            inList = item;
        }
        return markdown.toString();
    }

    private static String markdown(SmallTable table) {
        List<List<String>> lines = lines(table);
        StringBuilder markdown = new StringBuilder(escaped(table.caption())).append(LINE_END).append(LINE_END);
        for (int line = 0; line < lines.size(); line++) {
            markdown.append("| ").append(lines.get(line).stream().map(Renderings::escaped)
                    .collect(Collectors.joining(" | "))).append(" |").append(LINE_END);
            if (line == 0) {
                markdown.append("| --- |").append(" ---: |".repeat(table.letters().size())).append(LINE_END);
            }
        }
        return markdown.toString();
    }

    private static String mark(Role role) {
        return switch (role) {
            case TITLE -> "# ";
            case HEADING -> "## ";
            case ABBREVIATION -> "- ";
            case CAUTION -> "> ";
            case SIZES, MEASUREMENT, MATERIAL, GAUGE, NOTE, INSTRUCTION -> "";
        };
    }

    private static String escaped(String text) {
        String everywhere = MARKUP.matcher(text).replaceAll("\\\\$1");
        return MARKUP_AT_START.matcher(everywhere).replaceAll("$1\\\\$2");
    }
}
