package turnheel.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Rows of text with columns that stand straight on a terminal. */
final class Table {

    /** On which side the cells of a column line up. */
    enum Side {
        LEFT, RIGHT
    }

    private static final String GAP = "  ";

    private final List<Side> sides;
    private final List<List<String>> rows = new ArrayList<>();

    Table(List<Side> sides) {
        this.sides = List.copyOf(sides);
    }

    Table(Side... sides) {
        this(Arrays.asList(sides));
    }

    Table row(List<String> cells) {
        if (cells.size() != sides.size()) {
            throw new IllegalArgumentException(
                    "a row of %d cells in a table of %d".formatted(cells.size(), sides.size()));
        }
        rows.add(List.copyOf(cells));
        return this;
    }

    Table row(String... cells) {
        return row(Arrays.asList(cells));
    }

    List<String> lines() {
        int[] widths = new int[sides.size()];
        for (List<String> row : rows) {
            for (int column = 0; column < widths.length; column++) {
                widths[column] = Math.max(widths[column], TextWidth.of(row.get(column)));
            }
        }
        return rows.stream().map(row -> line(row, widths)).toList();
    }

    private String line(List<String> row, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int column = 0; column < widths.length; column++) {
            String cell = row.get(column);
            String blanks = " ".repeat(widths[column] - TextWidth.of(cell));
            line.append(column == 0 ? "" : GAP);
            switch (sides.get(column)) {
                case LEFT -> line.append(cell).append(blanks);
                case RIGHT -> line.append(blanks).append(cell);
            }
        }
        return line.toString().stripTrailing();
    }
}
