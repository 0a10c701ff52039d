package turnheel.engine.writing;

import java.util.ArrayList;
import java.util.List;

/** A written pattern as one text file; lines end in a line feed. */
public final class Renderings {

    private static final char LINE_END = '\n';

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
}
