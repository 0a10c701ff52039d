package turnheel.engine.design;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads and writes the text form of quantities. */
final class QuantityText {

    /** Decimals enough for every number that {@link #number} writes: 1/3 has sixteen, 1/999 eighteen. */
    private static final String NUMBER = "[+\\-−]?(?:\\d{1,9}(?:\\.\\d{1,24})?|\\.\\d{1,24})";
    private static final String MIXED = "([+\\-−]?)(?:(\\d{1,4})[\\s-]+)?(\\d{1,3})/(\\d{1,3})";
    private static final String LENGTH_UNIT = "(mm|cm|in|\"|″)";
    private static final Pattern COUNT = Pattern.compile("[+\\-−]?\\d{1,9}");
    private static final Pattern LENGTH = Pattern.compile("(" + NUMBER + ")\\s*" + LENGTH_UNIT);
    private static final Pattern MIXED_LENGTH = Pattern.compile(MIXED + "\\s*" + LENGTH_UNIT);
    private static final Pattern SHARE = Pattern.compile("(" + NUMBER + ")\\s*%");
    private static final Pattern GAUGE = Pattern.compile("(" + NUMBER + ")\\s*/\\s*(" + NUMBER + ")\\s*" + LENGTH_UNIT);
    private static final double LIMIT = 10_000;
    private static final int LONGEST_QUOTE = 40;

    private QuantityText() {
    }

    static Quantity parse(String text) {
        String trimmed = text.strip().toLowerCase(Locale.ROOT);
        // The gauge 8/10 cm and the fraction 1/2 in look alike; only inches are told in bare fractions, and below one.
        Matcher fraction = MIXED_LENGTH.matcher(trimmed);
        if (fraction.matches() && (fraction.group(2) != null || isPartOfAnInch(fraction))) {
            return mixed(fraction);
        }
        Matcher gauge = GAUGE.matcher(trimmed);
        if (gauge.matches()) {
            return new Gauge(value(gauge.group(1)), new Length(value(gauge.group(2)), unit(gauge.group(3))));
        }
        Matcher length = LENGTH.matcher(trimmed);
        if (length.matches()) {
            return new Length(value(length.group(1)), unit(length.group(2)));
        }
        Matcher share = SHARE.matcher(trimmed);
        if (share.matches()) {
            return new Share(value(share.group(1)));
        }
        if (COUNT.matcher(trimmed).matches()) {
            return new Count(Integer.parseInt(trimmed.replace('−', '-')));
        }
        throw new IllegalArgumentException(
                "\"%s\" is not a quantity; write a count such as 64, a length such as 240 mm, 24.5 cm or 9 1/2 in, "
                        .formatted(shortened(text)) + "a share such as -10 %, or a gauge such as 32/10 cm");
    }

    private static boolean isPartOfAnInch(Matcher fraction) {
        return unit(fraction.group(5)) == LengthUnit.INCH
                && Integer.parseInt(fraction.group(3)) < Integer.parseInt(fraction.group(4));
    }

    private static Length mixed(Matcher fraction) {
        double denominator = Integer.parseInt(fraction.group(4));
        if (denominator == 0) {
            throw new IllegalArgumentException("\"%s\" divides by zero".formatted(fraction.group()));
        }
        double whole = fraction.group(2) == null ? 0 : Integer.parseInt(fraction.group(2));
        double amount = whole + Integer.parseInt(fraction.group(3)) / denominator;
        boolean negative = "-".equals(fraction.group(1)) || "−".equals(fraction.group(1));
        return new Length(negative ? -amount : amount, unit(fraction.group(5)));
    }

    private static double value(String number) {
        return Double.parseDouble(number.replace('−', '-'));
    }

    private static LengthUnit unit(String symbol) {
        return switch (symbol) {
            case "mm" -> LengthUnit.MILLIMETRE;
            case "cm" -> LengthUnit.CENTIMETRE;
            default -> LengthUnit.INCH;
        };
    }

    /** The shortest decimal text that reads back as the same number. */
    static String number(double value) {
        String text = new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
        return "-0".equals(text) ? "0" : text;
    }

    static void requireSensible(double amount) {
        if (!(Math.abs(amount) < LIMIT)) {
            throw new IllegalArgumentException("%s is out of range; amounts lie between −%s and %s".formatted(
                    Double.toString(amount), number(LIMIT), number(LIMIT)));
        }
    }

    private static String shortened(String text) {
        return text.length() <= LONGEST_QUOTE ? text : text.substring(0, LONGEST_QUOTE) + "…";
    }
}
