package turnheel.engine.design;

/**
 * A length as it was written: 9.5 in stays 9.5 in. May be negative, as an ease is.
 *
 * @throws IllegalArgumentException when the amount is not a number below 10 000
 */
public record Length(double amount, LengthUnit unit) implements Quantity {

    public Length {
        QuantityText.requireSensible(amount);
    }

    /** A length in millimetres. */
    public static Length ofMm(double mm) {
        return new Length(mm, LengthUnit.MILLIMETRE);
    }

    public double mm() {
        return amount * unit.millimetres();
    }

    @Override
    public double inside() {
        return mm();
    }

    @Override
    public String toString() {
        return QuantityText.number(amount) + " " + unit.symbol();
    }
}
