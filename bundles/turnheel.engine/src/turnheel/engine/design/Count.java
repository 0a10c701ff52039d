package turnheel.engine.design;

/** A whole number of stitches, rounds or lines. */
public record Count(int value) implements Quantity {

    @Override
    public double inside() {
        return value;
    }

    @Override
    public String toString() {
        return Integer.toString(value);
    }
}
