package turnheel.exchange.edits;

import java.util.Optional;

import turnheel.engine.design.OwnRow;
import turnheel.engine.design.Quantity;
import turnheel.engine.term.Key;

/** One change that a workbook asks for. */
public sealed interface Edit {

    /** The cell that asks for it, as a person finds it: {@code Counts!D12}. */
    String place();

    Key key();

    /**
     * A number that was typed in, or given back to its rule or default.
     *
     * @param size label of the size; empty for what the pattern holds for all sizes
     * @param value of the role that the key has, input or override; empty when rule or default holds again
     */
    record Number(String place, Key key, Optional<String> size, Optional<Quantity> value) implements Edit {
    }

    /**
     * A row of the designer that has another formula or label, is new, or was dropped.
     *
     * @param row as it reads now; empty when it was dropped
     */
    record Own(String place, Key key, Optional<OwnRow> row) implements Edit {
    }
}
