package turnheel.engine.design;

import turnheel.engine.term.Key;
import turnheel.engine.term.Term;

/**
 * A number that a pattern can hold, in every size: its key, where it belongs, what may be done with it, its unit and the
 * range outside which a value is a slip of the pen, not a sock.
 *
 * @param least smallest value that can be set, in the unit
 * @param most largest value that can be set, in the unit
 * @param label for tables, in the reader's language; the unit is not part of it
 * @param description one or two sentences on what the number means, for tooltip and help; of an own row its formula
 */
public record Parameter(Key key, Part part, Role role, Unit unit, double least, double most, String label,
        String description) {

    /** This number as a term of a rule. */
    public Term term() {
        return new Term.Reference(key);
    }

    /**
     * Refuses a quantity that cannot be set here.
     *
     * @param asked {@link Role#INPUT} for an input, {@link Role#RULE} for an override
     * @throws IllegalArgumentException when this parameter has another role, another unit or a narrower range
     */
    public void require(Role asked, Quantity quantity) {
        if (role != asked) {
            throw new IllegalArgumentException(switch (role) {
                case INPUT -> "%s is an input; it is set as such, not overridden".formatted(key);
                case RULE -> "%s follows from a rule; it is overridden, not an input".formatted(key);
                case RESULT -> "%s follows from other numbers and cannot be set".formatted(key);
                case OWN -> "%s is an own row; its formula is changed, not its number".formatted(key);
            });
        }
        if (!unit.accepts(quantity)) {
            throw new IllegalArgumentException("%s is kept in %s; \"%s\" does not fit, write %s".formatted(key, unit.symbol(),
                    quantity, unit.example()));
        }
        double value = quantity.inside();
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException("%s must lie between %s and %s %s; %s does not".formatted(key,
                    QuantityText.number(least), QuantityText.number(most), unit.symbol(), quantity));
        }
    }
}
