package turnheel.exchange.table;

import java.util.List;
import java.util.Optional;

/**
 * A table as it was found in a file, before anybody knows what it means.
 *
 * @param rows those that are not empty, in the order of the file
 * @param fault why the file, or the rest of it, could not be read
 */
public record Grid(List<Row> rows, Optional<Fault> fault) {

    /** Why a file, or the rest of it, could not be read. */
    public enum Fault {
        /** The bytes are no text in UTF-8. */
        NOT_UTF_8,
        /** A quote that never ends, or text after one. */
        BROKEN_QUOTES,
        /** No workbook, a damaged or an encrypted one, or one of the old binary format. */
        NOT_A_WORKBOOK,
        /** More rows than {@link #MOST_ROWS}. */
        TOO_LONG
    }

    /** No table of sizes is longer; a file that is was meant for something else. */
    public static final int MOST_ROWS = 1000;

    /**
     * A row.
     *
     * @param number as a person counts, from 1
     * @param cells from the first column on, as text, without blanks around it; a number as plain digits
     */
    public record Row(int number, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }

        /** The text in a column counted from 0; empty beyond the last. */
        public String cell(int column) {
            return column < cells.size() ? cells.get(column) : "";
        }

        boolean isEmpty() {
            return cells.stream().allMatch(String::isEmpty);
        }
    }

    public Grid {
        rows = rows.stream().filter(row -> !row.isEmpty()).toList();
    }

    /** A table that was read to its end. */
    public static Grid of(List<Row> rows) {
        return new Grid(rows, Optional.empty());
    }

    /** What was read until the fault. */
    public static Grid broken(List<Row> rows, Fault fault) {
        return new Grid(rows, Optional.of(fault));
    }
}
