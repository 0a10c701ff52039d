package turnheel.engine.design;

/**
 * A share in per cent, signed: −10 % of ease makes a sock a tenth smaller than the foot.
 *
 * @throws IllegalArgumentException when the amount is not a number below 10 000
 */
public record Share(double percent) implements Quantity {

    public Share {
        QuantityText.requireSensible(percent);
    }

    /** The per cent, not the fraction: rules divide by 100 where they use it. */
    @Override
    public double inside() {
        return percent;
    }

    @Override
    public String toString() {
        return QuantityText.number(percent) + " %";
    }
}
