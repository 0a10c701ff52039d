package turnheel.engine.design;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

import turnheel.engine.term.Key;

/**
 * One size: what was measured and what the designer overrode.
 *
 * @param id stable name, kept when the label changes; never shown
 * @param label what people read: {@code M}, {@code 38/39}
 * @param inputs measurements and fit by key; a missing one takes its default, where it has one
 * @param overrides values that replace a rule's in this size
 * @throws IllegalArgumentException when id or label is blank, or a quantity does not belong under its key
 */
public record Size(String id, String label, Map<Key, Quantity> inputs, Map<Key, Quantity> overrides) {

    private static final int LONGEST_LABEL = 40;

    public Size {
        if (id.isBlank() || label.isBlank()) {
            throw new IllegalArgumentException("a size needs an id and a label; here \"%s\" and \"%s\"".formatted(id, label));
        }
        if (label.length() > LONGEST_LABEL) {
            throw new IllegalArgumentException("the size label \"%s…\" is longer than %d characters".formatted(
                    label.substring(0, LONGEST_LABEL), LONGEST_LABEL));
        }
        inputs = checked(inputs, Role.INPUT);
        overrides = checked(overrides, Role.RULE);
    }

    private static Map<Key, Quantity> checked(Map<Key, Quantity> quantities, Role role) {
        quantities.forEach((key, quantity) -> Catalogue.parameter(key).require(role, quantity));
        return Collections.unmodifiableMap(new LinkedHashMap<>(quantities));
    }
}
