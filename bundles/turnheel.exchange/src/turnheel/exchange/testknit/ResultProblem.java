package turnheel.exchange.testknit;

/**
 * Why a table of results is not taken.
 *
 * @param row as a person counts, from 1; 0 where it is the whole table
 * @param column the same of the column; 0 where it is the whole row
 * @param found what stands there
 * @param detail what belongs to it, by kind
 */
public record ResultProblem(Kind kind, int row, int column, String found, String detail) {

    /** What is wrong. */
    public enum Kind {
        /** The file is no such table, or breaks off. */
        UNREADABLE,
        /** There is no row below the headings with anything found. */
        NOTHING,
        /** A heading that is needed is missing. */
        NO_COLUMN,
        /** A heading stands twice. */
        DUPLICATE_COLUMN,
        /** The pattern has no such size. */
        UNKNOWN_SIZE,
        /** Nothing is asked for under this key. */
        UNKNOWN_KEY,
        /** The same thing stands in two rows. */
        DUPLICATE_ROW,
        /** Text where a figure belongs. */
        NOT_A_FIGURE,
        /** A figure that no sock has. */
        OUT_OF_RANGE
    }

    /** The problem and its remedy, in one sentence that begins with the place. */
    public String sentence() {
        String place = row == 0 ? "place.file" : column == 0 ? "place.row" : "place.cell";
        return Words.text("problem", Words.text(place, Integer.toString(row), Integer.toString(column)),
                Words.text("problem." + kind.name(), found, detail));
    }
}
