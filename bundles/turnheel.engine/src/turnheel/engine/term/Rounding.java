package turnheel.engine.term;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** The ways of a spreadsheet to round to decimal places; they treat a number and its opposite alike. */
public enum Rounding {
    /** To the nearer one; a tie goes away from zero. */
    NEAREST(RoundingMode.HALF_UP),
    /** Away from zero. */
    UP(RoundingMode.UP),
    /** Towards zero. */
    DOWN(RoundingMode.DOWN);

    private final RoundingMode mode;

    Rounding(RoundingMode mode) {
        this.mode = mode;
    }

    /** Rounds the decimal number that is written for {@code value}: 1.005 is a tie, although its bits lie below. */
    double round(double value, int places) {
        return BigDecimal.valueOf(value).setScale(places, mode).doubleValue();
    }
}
