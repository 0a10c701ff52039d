package turnheel.exchange.table;

/** What stands in one cell of a table. */
public sealed interface CellContent {

    /** What a person typed, or words of ours; stays text even as {@code =1+1}. */
    record Text(String value) implements CellContent {
    }

    /** A value in the unit of its row. */
    record Figure(double value) implements CellContent {
    }

    /**
     * A live formula with its cached result. Only sheets make these, from the engine's rules; no text of a person ever
     * becomes one.
     *
     * @param expression open spreadsheet notation without the leading equals sign
     */
    record Formula(String expression, double cached) implements CellContent {
    }

    /** A live formula that gives a text, as when it looks up a size's label. */
    record TextFormula(String expression, String cached) implements CellContent {
    }

    /** A cell that waits for a value. */
    record Empty() implements CellContent {
    }
}
