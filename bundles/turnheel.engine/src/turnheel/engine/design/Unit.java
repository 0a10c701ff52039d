package turnheel.engine.design;

/** The unit in which a number of a pattern is kept, shown and exported. */
public enum Unit {
    STITCHES("stitches", true), ROUNDS("rounds", true), ROWS("rows", true), LINES("lines", true), TIMES("times", true),
    MILLIMETRES("mm", false), PERCENT("%", false), PER_100_MM("per 10 cm", false), RATIO("ratio", false),
    IDEAL_STITCHES("stitches, unrounded", false), LOOPS("loops", true), PLAIN_LOOPS("plain loops", false),
    METRES("m", false), GRAMS("g", false),
    /** Grams of 1000 m: ISO 1144. */
    TEX("tex", false), BALLS("balls", true),
    /** What a designer's own formula comes to; only the designer knows of what. */
    NUMBER("", false);

    private final String symbol;
    private final boolean whole;

    Unit(String symbol, boolean whole) {
        this.symbol = symbol;
        this.whole = whole;
    }

    /** How the unit is written in files, tables and scripts; not translated. */
    public String symbol() {
        return symbol;
    }

    /** Whether only whole numbers make sense. */
    public boolean isWhole() {
        return whole;
    }

    /** Whether a quantity, as written, can stand for this unit. */
    boolean accepts(Quantity quantity) {
        return switch (quantity) {
            case Count count -> whole;
            case Length length -> this == MILLIMETRES;
            case Share share -> this == PERCENT;
            case Gauge gauge -> this == PER_100_MM;
        };
    }

    /** What a person could have written instead. */
    String example() {
        return switch (this) {
            case MILLIMETRES -> "a length such as 240 mm or 9 1/2 in";
            case PERCENT -> "a share such as -10 %";
            case PER_100_MM -> "a gauge such as 32/10 cm";
            case RATIO, IDEAL_STITCHES, PLAIN_LOOPS, METRES, GRAMS, TEX, NUMBER -> "a number";
            case STITCHES, ROUNDS, ROWS, LINES, TIMES, LOOPS, BALLS -> "a whole number";
        };
    }
}
