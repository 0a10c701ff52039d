package turnheel.engine.design;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * One state of a pattern: everything that a designer decided, nothing that follows from it.
 *
 * @param title may be empty
 * @param stitchGauge stitches of the main fabric, as measured
 * @param roundGauge rounds of the main fabric, as measured
 * @param sizes in the designer's order, smallest first as a rule
 * @throws IllegalArgumentException when there is no size, or two sizes share an id or a label
 */
public record Design(String title, Direction direction, Gauge stitchGauge, Gauge roundGauge, Toe toe, Heel heel, Leg leg,
        Cuff cuff, List<Size> sizes) {

    public Design {
        sizes = List.copyOf(sizes);
        if (sizes.isEmpty()) {
            throw new IllegalArgumentException("a pattern needs at least one size");
        }
        Set<String> ids = new HashSet<>();
        Set<String> labels = new HashSet<>();
        for (Size size : sizes) {
            if (!ids.add(size.id())) {
                throw new IllegalArgumentException("two sizes have the id \"%s\"".formatted(size.id()));
            }
            if (!labels.add(size.label())) {
                throw new IllegalArgumentException("two sizes have the label \"%s\"".formatted(size.label()));
            }
        }
    }

    /**
     * The size with this label.
     *
     * @throws IllegalArgumentException when there is none; the message lists the labels
     */
    public Size size(String label) {
        return sizes.stream().filter(size -> size.label().equals(label)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("there is no size \"%s\"; the sizes are %s".formatted(
                        label, String.join(", ", sizes.stream().map(Size::label).toList()))));
    }
}
