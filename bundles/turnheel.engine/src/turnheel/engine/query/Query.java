package turnheel.engine.query;

import java.util.List;

import turnheel.engine.term.Key;

/**
 * Something that a person must look at or decide.
 *
 * @param check which check raised it, with its stable id
 * @param place the number or the piece of text that it concerns
 * @param sizes labels of the sizes that it concerns, in the designer's order
 * @param expected what would have been right, as text in the unit of the key; may be empty
 * @param found what was found, as text in the unit of the key; may be empty
 * @param correction what to write instead, where only one thing can be right; may be empty
 */
public record Query(Check check, Place place, List<String> sizes, String expected, String found, String correction) {

    public Query {
        sizes = List.copyOf(sizes);
    }

    /** About a number of a design, whose correction is the designer's. */
    public Query(Check check, Key key, List<String> sizes, String expected, String found) {
        this(check, new Place.Row(key), sizes, expected, found, "");
    }

    /**
     * The number that it concerns.
     *
     * @throws IllegalStateException when it concerns a text
     */
    public Key key() {
        return switch (place) {
            case Place.Row(var key) -> key;
            case Place.Text text -> throw new IllegalStateException("%s concerns %s".formatted(check, text));
        };
    }

    public Severity severity() {
        return check.severity();
    }
}
