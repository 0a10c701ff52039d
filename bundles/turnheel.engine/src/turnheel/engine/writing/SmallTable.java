package turnheel.engine.writing;

import java.util.List;

/**
 * Lists that were too long for the text: a row for each size, a column for each letter.
 *
 * @param caption what it is, in a line
 * @param sizeHeading heads the column of sizes
 * @param letters head the other columns
 */
public record SmallTable(String caption, String sizeHeading, List<String> letters, List<Row> rows) {

    /**
     * The values of one size, those of the letters in their order; the dash of the house style where it has none.
     *
     * @param size its label
     */
    public record Row(String size, List<String> values) {
        public Row {
            values = List.copyOf(values);
        }
    }

    public SmallTable {
        letters = List.copyOf(letters);
        rows = List.copyOf(rows);
        for (Row row : rows) {
            if (row.values().size() != letters.size()) {
                throw new IllegalArgumentException("size %s has %d values for the letters %s".formatted(row.size(),
                        row.values().size(), letters));
            }
        }
    }
}
