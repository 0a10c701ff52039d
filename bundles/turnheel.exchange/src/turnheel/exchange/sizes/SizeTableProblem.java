package turnheel.exchange.sizes;

import turnheel.engine.query.Severity;

/**
 * Something in a table of sizes that a person should see.
 *
 * @param row as a person counts, from 1; 0 when it is the whole file
 * @param column as a person counts, from 1; 0 when it is the whole row
 * @param subject the size or column that it is about; may be empty
 * @param found what stands there; may be empty
 * @param detail what would do instead, depending on the kind; may be empty
 */
public record SizeTableProblem(Kind kind, int row, int column, String subject, String found, String detail) {

    /** What is wrong. */
    public enum Kind {
        /** The file is no table, for the reason in {@code detail}. */
        UNREADABLE(Severity.ERROR),
        /** There is no row below the headings, or not even these. */
        NO_SIZES(Severity.ERROR),
        /** No column has the labels of the sizes. */
        NO_LABEL_COLUMN(Severity.ERROR),
        /** A heading that is no measurement. */
        UNKNOWN_COLUMN(Severity.ERROR),
        /** Two columns for one measurement. */
        DUPLICATE_COLUMN(Severity.ERROR),
        /** A value under no heading. */
        VALUE_WITHOUT_COLUMN(Severity.ERROR),
        /** A row without a label. */
        NO_LABEL(Severity.ERROR),
        /** Two rows with one label. */
        DUPLICATE_LABEL(Severity.ERROR),
        /** A number whose unit stands neither with it nor in its heading. */
        NO_UNIT(Severity.ERROR),
        /** Text where a measurement belongs. */
        NOT_A_QUANTITY(Severity.ERROR),
        /** A quantity that cannot be this measurement. */
        REFUSED(Severity.ERROR),
        /** A size without its foot length. */
        NO_FOOT_LENGTH(Severity.ERROR),
        /** A measurement that other sizes have; it will be predicted or take its default. */
        EMPTY_CELL(Severity.WARNING),
        /** A foot shorter than the one before. */
        UNORDERED(Severity.WARNING);

        private final Severity severity;

        Kind(Severity severity) {
            this.severity = severity;
        }

        public Severity severity() {
            return severity;
        }
    }

    /** The problem and its remedy in one sentence that begins with the place. */
    public String sentence() {
        String place = row == 0 ? "place.file" : column == 0 ? "place.row" : "place.cell";
        return Words.text("problem", Words.text(place, Integer.toString(row), Integer.toString(column)),
                Words.text("problem." + kind.name(), subject, found, detail));
    }
}
