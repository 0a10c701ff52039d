package turnheel.engine.writing;

import java.util.List;
import java.util.Optional;

import turnheel.engine.instruction.Sized;

/** A piece of a paragraph. */
public sealed interface Piece {

    /** Words that are the same in every size. */
    record Words(String text) implements Piece {
    }

    /**
     * A value for each size, already in the digits of the house style but not yet listed.
     *
     * @param each one that all sizes share, or one for each size; empty where a size does not have it
     */
    record Values(List<Optional<String>> each) implements Piece {
        public Values {
            each = List.copyOf(each);
        }

        static Values of(Sized<?> sized) {
            return new Values(sized.values().stream().map(value -> value.map(Object::toString)).toList());
        }
    }
}
