package turnheel.engine.query;

import java.util.List;

import turnheel.engine.term.Key;

/**
 * Something that a person must look at or decide.
 *
 * @param check which check raised it, with its stable id
 * @param key the number that it concerns
 * @param sizes labels of the sizes that it concerns, in the designer's order
 * @param expected what would have been right, as text in the unit of the key; may be empty
 * @param found what was found, as text in the unit of the key; may be empty
 */
public record Query(Check check, Key key, List<String> sizes, String expected, String found) {

    public Query {
        sizes = List.copyOf(sizes);
    }

    public Severity severity() {
        return check.severity();
    }
}
