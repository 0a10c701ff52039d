package turnheel.exchange.workbook;

import turnheel.engine.design.Unit;

/** How many digits a number shows; the value behind it is never rounded. */
enum Digits {
    /** As many as it has: a count that is not whole must not look whole. */
    ALL("General"),
    /** A tenth: millimetres, per cent, centimetres. */
    TENTHS("0.0"),
    /** A hundredth: ratios, inches, unrounded counts. */
    HUNDREDTHS("0.00");

    /** Follows a default, so that it can be told from an entered value in print; others leave the same room. */
    private static final String DEFAULT_MARK = "\"*\"";
    private static final String ROOM_OF_MARK = "_*";

    private final String format;

    Digits(String format) {
        this.format = format;
    }

    static Digits of(Unit unit) {
        return switch (unit) {
            case STITCHES, ROUNDS, ROWS, LINES, TIMES, LOOPS, BALLS, NUMBER -> ALL;
            case MILLIMETRES, PERCENT, PER_100_MM, PLAIN_LOOPS, METRES, GRAMS, TEX -> TENTHS;
            case RATIO, IDEAL_STITCHES -> HUNDREDTHS;
        };
    }

    /** The number format for a cell of this look. */
    String format(Look look) {
        return format + (look == Look.DEFAULT ? DEFAULT_MARK : ROOM_OF_MARK);
    }
}
