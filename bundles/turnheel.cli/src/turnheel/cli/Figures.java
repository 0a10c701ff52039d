package turnheel.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;

import turnheel.engine.design.Unit;

/** Numbers in tables for people, rounded to what can be knitted or measured. Scripts get them unrounded. */
final class Figures {

    /** What stands where a size has no such number. */
    static final String NONE = "–";

    private Figures() {
    }

    static String of(double value, Unit unit) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals(value, unit), RoundingMode.HALF_UP);
        return rounded.signum() < 0 ? "−" + rounded.negate().toPlainString() : rounded.abs().toPlainString();
    }

    private static int decimals(double value, Unit unit) {
        return switch (unit) {
            // A count that is not whole is an error that must be seen.
            case STITCHES, ROUNDS, ROWS, LINES, TIMES, LOOPS, BALLS -> value == Math.rint(value) ? 0 : 2;
            case MILLIMETRES, PERCENT, PER_100_MM, IDEAL_STITCHES, PLAIN_LOOPS, METRES, GRAMS, TEX -> 1;
            case RATIO -> 2;
            case NUMBER -> value == Math.rint(value) ? 0 : 3;
        };
    }

    /** The unit in a table, where the decimals show already that a number is unrounded. */
    static String unit(Unit unit) {
        return switch (unit) {
            case IDEAL_STITCHES -> Unit.STITCHES.symbol();
            case STITCHES, ROUNDS, ROWS, LINES, TIMES, MILLIMETRES, PERCENT, PER_100_MM, RATIO, LOOPS, PLAIN_LOOPS,
                    METRES, GRAMS, TEX, BALLS, NUMBER -> unit.symbol();
        };
    }
}
