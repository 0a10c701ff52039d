package turnheel.engine.grading;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

import turnheel.engine.design.Parameter;
import turnheel.engine.design.Size;
import turnheel.engine.term.Key;

/** All numbers of one size. A number whose measurements are missing is absent, not zero. */
public record GradedSize(Size size, Map<Key, Cell> cells) {

    public GradedSize {
        cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
    }

    public String label() {
        return size.label();
    }

    public Optional<Cell> cell(Key key) {
        return Optional.ofNullable(cells.get(key));
    }

    public Optional<Cell> cell(Parameter parameter) {
        return cell(parameter.key());
    }

    /**
     * A value that must be there.
     *
     * @throws IllegalStateException when it is absent
     */
    public double value(Parameter parameter) {
        return cell(parameter).orElseThrow(() -> new IllegalStateException(
                "size %s has no %s".formatted(label(), parameter.key()))).value();
    }
}
