package turnheel.engine.query;

import turnheel.engine.term.Key;

/** Where a query points. */
public sealed interface Place {

    /** A number of the design. */
    record Row(Key key) implements Place {
    }

    /**
     * A piece of a text.
     *
     * @param line from 1
     * @param from its first column, from 1, counted in Java characters
     * @param to the column after its last
     */
    record Text(int line, int from, int to) implements Place {
    }
}
