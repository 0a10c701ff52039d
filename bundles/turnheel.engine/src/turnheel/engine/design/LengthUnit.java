package turnheel.engine.design;

/** A unit of length. 1 in = 25.4 mm exactly (international inch, 1959). */
public enum LengthUnit {
    MILLIMETRE("mm", 1), CENTIMETRE("cm", 10), INCH("in", 25.4);

    private final String symbol;
    private final double millimetres;

    LengthUnit(String symbol, double millimetres) {
        this.symbol = symbol;
        this.millimetres = millimetres;
    }

    /** The symbol that stands in files and on screen. */
    public String symbol() {
        return symbol;
    }

    /** How many millimetres one of this unit is. */
    public double millimetres() {
        return millimetres;
    }
}
