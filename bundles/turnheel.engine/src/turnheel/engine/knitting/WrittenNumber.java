package turnheel.engine.knitting;

import java.util.BitSet;

/**
 * A number as people write it: 12, 18.5, 18,5, 7½, 7 1/2, 3/4.
 *
 * @param text as a program writes it; its digits are kept as they are when it is whole
 * @param end the column after it
 */
record WrittenNumber(String text, int end) {

    /** Digits of a number; a longer one is as unreadable as it is large. */
    private static final int LONGEST_NUMBER = 9;

    /** Characters in which a list of measurements comes to its unit. */
    private static final int LONGEST_LIST = 240;

    /** What a list of values goes on with, besides digits. */
    private static final String IN_LISTS = " /.";

    private static final String INCH_SIGNS = "\"”″";

    private record Fraction(double value, int end) {
    }

    private static final Fraction NONE = new Fraction(0, 0);

    static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    /** Whether a number may begin with this character. */
    static boolean begins(char c) {
        return isDigit(c) || sign(c) > 0;
    }

    /** The number that begins at {@code at}. */
    static WrittenNumber read(String line, int at, BitSet decimalCommas) {
        int to = digits(line, at);
        boolean whole = to > at;
        if (whole && to + 1 < line.length() && (line.charAt(to) == '.' || decimalCommas.get(to))
                && isDigit(line.charAt(to + 1))) {
            int end = digits(line, to + 1);
            return new WrittenNumber(limited(line.substring(at, to) + "." + line.substring(to + 1, end)), end);
        }
        Fraction alone = whole ? written(line, at) : signAt(line, at);
        if (alone != NONE && (!whole || isOfInches(line, at, alone.end()))) {
            return new WrittenNumber(Double.toString(alone.value()), alone.end());
        }
        Fraction part = signAt(line, to);
        boolean parted = to < line.length() && (line.charAt(to) == ' ' || line.charAt(to) == '-');
        if (part == NONE && parted) {
            part = signAt(line, to + 1);
        }
        if (part == NONE && parted) {
            Fraction written = written(line, to + 1);
            part = written != NONE && isMeasured(line, written.end()) ? written : NONE;
        }
        String digits = limited(line.substring(at, to));
        return part == NONE ? new WrittenNumber(digits, to)
                : new WrittenNumber(Double.toString(Double.parseDouble(digits) + part.value()), part.end());
    }

    private static String limited(String digits) {
        return digits.length() > LONGEST_NUMBER && digits.indexOf('.') < 0 ? "9".repeat(LONGEST_NUMBER)
                : digits.length() > 2 * LONGEST_NUMBER ? digits.substring(0, 2 * LONGEST_NUMBER) : digits;
    }

    private static int digits(String line, int at) {
        int to = at;
        while (to < line.length() && isDigit(line.charAt(to))) {
            to++;
        }
        return to;
    }

    private static Fraction signAt(String line, int at) {
        return at < line.length() && sign(line.charAt(at)) > 0 ? new Fraction(sign(line.charAt(at)), at + 1) : NONE;
    }

    private static double sign(char c) {
        return switch (c) {
            case '½' -> 0.5;
            case '¼' -> 0.25;
            case '¾' -> 0.75;
            case '⅛' -> 0.125;
            case '⅜' -> 0.375;
            case '⅝' -> 0.625;
            case '⅞' -> 0.875;
            default -> 0;
        };
    }

    /** A fraction such as 3/8. */
    private static Fraction written(String line, int at) {
        int slash = Math.min(digits(line, at), at + 2);
        int end = slash < line.length() && line.charAt(slash) == '/' ? digits(line, slash + 1) : slash;
        if (slash == at || end <= slash + 1 || end > slash + 3) {
            return NONE;
        }
        int numerator = Integer.parseInt(line.substring(at, slash));
        int denominator = Integer.parseInt(line.substring(slash + 1, end));
        boolean usual = denominator == 2 || denominator == 4 || denominator == 8 || denominator == 16;
        return usual && numerator < denominator ? new Fraction((double) numerator / denominator, end) : NONE;
    }

    /** Whether the values that go on here end with a unit: 7 3/4/5 times are four numbers, 1 3/4/2 in are two. */
    private static boolean isMeasured(String line, int at) {
        int next = at;
        int end = Math.min(line.length(), at + LONGEST_LIST);
        while (next < end && (isDigit(line.charAt(next)) || IN_LISTS.indexOf(line.charAt(next)) >= 0)) {
            next++;
        }
        return next == line.length() || line.startsWith("in", next) || line.startsWith("cm", next)
                || INCH_SIGNS.indexOf(line.charAt(next)) >= 0 || "),;([]{}".indexOf(line.charAt(next)) >= 0;
    }

    /** Whether a fraction without a whole number stands in a list of inches: 3/4 (7/8, 1) in, but not 3/4/8 sts. */
    private static boolean isOfInches(String line, int from, int at) {
        int end = Math.min(line.length(), at + LONGEST_LIST);
        if (from > 0 && line.charAt(from - 1) == '/' || at < end && line.charAt(at) == '/') {
            return false;
        }
        int next = at;
        while (next < end && !Character.isLetter(line.charAt(next)) && INCH_SIGNS.indexOf(line.charAt(next)) < 0) {
            next++;
        }
        boolean unit = line.startsWith("in", next)
                && (next + 2 == line.length() || !Character.isLetter(line.charAt(next + 2)));
        return unit || line.startsWith("inch", next) || next < end && INCH_SIGNS.indexOf(line.charAt(next)) >= 0;
    }
}
