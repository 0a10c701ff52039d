package turnheel.engine.grading;

import turnheel.engine.design.Parameter;
import turnheel.engine.term.Key;

/**
 * One number of one size.
 *
 * @param value in the parameter's unit, unrounded; always finite
 */
public record Cell(Parameter parameter, double value, Source source, Reason reason) {

    public Cell {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("%s must be a number, not %s".formatted(parameter.key(), value));
        }
    }

    public Key key() {
        return parameter.key();
    }
}
