package turnheel.exchange.testknit;

import java.math.BigDecimal;
import java.math.RoundingMode;

import turnheel.engine.drawing.PrintedLength;

/** Figures of a test knit as they are shown: as exactly as they can be found on a sock. */
final class Figures {

    private static final double MM_PER_CM = 10;

    private Figures() {
    }

    /** In the unit of the kind, without it: counts whole where they are, all else to a tenth, centimetres too. */
    static String plain(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    /** A factor, to a hundredth. */
    static String hundredths(double factor) {
        return BigDecimal.valueOf(factor).setScale(2, RoundingMode.HALF_UP).toPlainString();
    }

    /** With its unit, lengths in centimetres and inches. */
    static String withUnit(double value, Item.Kind kind) {
        return switch (kind) {
            case LENGTH -> Words.text("length", PrintedLength.centimetres(value * MM_PER_CM),
                    PrintedLength.inches(value * MM_PER_CM));
            case GAUGE, NEEDLE, GRAMS, HOURS -> plain(value) + " " + kind.unit();
            case COUNT, WORDS -> plain(value);
        };
    }

    /** With a sign before it where it is not 0. */
    static String signed(double value) {
        String figure = plain(Math.abs(value));
        return figure.equals("0") ? figure : (value < 0 ? "−" : "+") + figure;
    }
}
