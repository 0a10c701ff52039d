package turnheel.engine.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** A length as patterns print it: centimetres to a tenth, inches to an eighth. Ties go up. */
public final class PrintedLength {

    private static final double MM_PER_EIGHTH = 25.4 / 8;
    private static final int EIGHTHS = 8;
    private static final double TOLERANCE = 1e-9;

    private PrintedLength() {
    }

    /** As in {@code 22.9 cm}; whole centimetres stand without a decimal. */
    public static String centimetres(double mm) {
        BigDecimal value = BigDecimal.valueOf(mm + TOLERANCE).movePointLeft(1).setScale(1, RoundingMode.HALF_UP);
        return value.stripTrailingZeros().toPlainString() + " cm";
    }

    /** As in {@code 9 1/8 in}, with the fraction reduced. */
    public static String inches(double mm) {
        int eighths = (int) Math.floor(mm / MM_PER_EIGHTH + 0.5 + TOLERANCE);
        int whole = eighths / EIGHTHS;
        int rest = eighths % EIGHTHS;
        if (rest == 0) {
            return whole + " in";
        }
        int reduced = Integer.lowestOneBit(rest);
        String fraction = rest / reduced + "/" + EIGHTHS / reduced;
        return (whole == 0 ? "" : whole + " ") + fraction + " in";
    }
}
