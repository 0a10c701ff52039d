package turnheel.exchange.testknit;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One thing that a test knitter found.
 *
 * @param size label of the size
 * @param actual in the unit of its kind; empty where it is words, or only remarked upon
 * @param words what was written where words are asked for
 * @param remark beside it
 */
public record Answer(String size, Item item, OptionalDouble actual, String words, String remark) {

    /** How much more was found than predicted; empty where one of the two is missing. */
    public Optional<Double> difference() {
        return actual.isEmpty() || item.predicted().isEmpty() ? Optional.empty()
                : Optional.of(actual.getAsDouble() - item.predicted().getAsDouble());
    }

    /**
     * What was found as a multiple of what was predicted, which must be above 0; empty where one of the two is missing.
     */
    Optional<Double> ratio() {
        return difference().isEmpty() || !(item.predicted().getAsDouble() > 0) ? Optional.empty()
                : Optional.of(actual.getAsDouble() / item.predicted().getAsDouble());
    }
}
