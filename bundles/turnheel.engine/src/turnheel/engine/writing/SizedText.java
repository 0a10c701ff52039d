package turnheel.engine.writing;

import java.util.List;
import java.util.Optional;

/**
 * A paragraph as it is printed for all sizes, and as it reads in the edition for each.
 *
 * @param text for all sizes, as the house style lists values
 * @param each for each size alone, in the pattern's order; empty where the size does not have the paragraph
 */
public record SizedText(Role role, String text, List<Optional<String>> each) {
    public SizedText {
        each = List.copyOf(each);
    }
}
