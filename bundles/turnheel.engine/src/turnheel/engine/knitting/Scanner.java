package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;

/** Cuts a line into words, numbers and signs: letters and digits apart, so that {@code k2tog} is three words. Linear. */
final class Scanner {

    /** Digits of a number; a longer one is as unreadable as it is large. */
    /** So far ahead the unit of a list of lengths is looked for, in characters. */
    private static final int FURTHEST_UNIT = 240;
    private static final int LONGEST_NUMBER = 9;

    /** Characters in which a list of measurements comes to its unit. */
    private static final int LONGEST_LIST = 300;

    private final ReadingWords table;
    private int lineNumber;
    private BitSet decimalCommas = new BitSet();

    Scanner(ReadingWords table) {
        this.table = table;
    }

    /** The words of a phrase, or of a line on its own. */
    List<Word> words(String line) {
        return words(line, 0);
    }

    /** @param number where the line is in its text, from 0 */
    List<Word> words(String line, int number) {
        lineNumber = number;
        decimalCommas = DecimalCommas.of(line);
        List<Word> words = new ArrayList<>();
        int end = -1;
        for (int at = 0; at < line.length();) {
            char c = line.charAt(at);
            int to = at + 1;
            if (Character.isLetter(c)) {
                while (to < line.length() && isInWord(line, to)) {
                    to++;
                }
                String raw = line.substring(at, to);
                String word = table.canonical(raw.toLowerCase(Locale.ROOT).replace('’', '\''));
                boolean counts = !word.isEmpty() && Character.isDigit(word.charAt(0));
                if (!table.isLeftOut(word) || isName(line, raw, to, words)) {
                    words.add(new Word(counts ? Word.Kind.NUMBER : Word.Kind.LETTERS, word, raw, lineNumber, at, to, end == at));
                }
            } else if (isDigit(c) || fraction(c) > 0) {
                to = number(line, at, words, end == at);
            } else if (!Character.isWhitespace(c) && !isHyphenOfWord(line, at) && c != '\\' && !isInvisible(c)) {
                to = sign(line, at, words, end == at);
            }
            end = Character.isWhitespace(c) ? -1 : to;
            at = to;
        }
        return words;
    }

    /** A capital letter in a list is the name of a size, not an article. */
    private boolean isName(String line, String raw, int end, List<Word> words) {
        if (raw.length() > 1) {
            return false;
        }
        int last = words.size() - 1;
        boolean afterSize = last >= 0 && isSize(words.get(last)) || last >= 1 && words.get(last).is(":") && isSize(words.get(last - 1));
        if (!Character.isUpperCase(raw.charAt(0))) {
            return afterSize;
        }
        int next = end;
        while (next < line.length() && line.charAt(next) == ' ') {
            next++;
        }
        boolean listed = end < line.length() && isDigit(line.charAt(end)) || next == line.length() || "(),/;|[]:".indexOf(line.charAt(next)) >= 0;
        return listed || afterSize;
    }

    private boolean isSize(Word word) {
        return table.list("sizes").contains(word.text());
    }

    private static boolean isInWord(String line, int at) {
        char c = line.charAt(at);
        if (Character.isLetter(c)) {
            return true;
        }
        boolean inner = at + 1 < line.length() && Character.isLetter(line.charAt(at + 1));
        return inner && (c == '\'' || c == '’' || c == '&' && line.charAt(at - 1) != ' ');
    }

    private static boolean isInvisible(char c) {
        return c == '\u00AD' || c == '\u200B' || c == '\uFEFF';
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    /** A hyphen between letters, or a letter and a digit, joins them to one word. */
    private static boolean isHyphenOfWord(String line, int at) {
        char c = line.charAt(at);
        boolean hyphen = c == '-' || c == '\u2010' || c == '\u2011';
        return hyphen && at > 0 && at + 1 < line.length() && Character.isLetter(line.charAt(at - 1))
                && Character.isLetterOrDigit(line.charAt(at + 1));
    }

    private int sign(String line, int at, List<Word> words, boolean glued) {
        char c = line.charAt(at);
        String text = switch (c) {
            case '(', '[', '{' -> "(";
            case ')', ']', '}' -> ")";
            case '-', '\u2010', '\u2011', '\u2012', '–', '—', '\u2212' -> "-";
            case '×' -> "times";
            case '&' -> "and";
            case '”', '″', '"' -> "inch";
            case '∗' -> "*";
            case '\u00A0' -> "";
            default -> String.valueOf(c);
        };
        if (!text.isEmpty()) {
            boolean word = text.length() > 1;
            words.add(new Word(word ? Word.Kind.LETTERS : Word.Kind.SIGN, text, String.valueOf(c), lineNumber, at, at + 1, glued));
        }
        return at + 1;
    }

    /** A whole number, a decimal or a mixed fraction; its digits are kept as they are when it is whole. */
    private int number(String line, int at, List<Word> words, boolean glued) {
        int to = digits(line, at);
        String text = line.substring(at, to);
        boolean whole = to > at;
        if (whole && to + 1 < line.length() && (line.charAt(to) == '.' || decimalCommas.get(to))
                && isDigit(line.charAt(to + 1))) {
            int end = digits(line, to + 1);
            text = text + "." + line.substring(to + 1, end);
            to = end;
        } else {
            int before = to;
            double part = 0;
            int skip = to < line.length() && (line.charAt(to) == ' ' || line.charAt(to) == '-') ? 1 : 0;
            if (to < line.length() && fraction(line.charAt(to)) > 0) {
                part = fraction(line.charAt(to));
                to++;
            } else if (whole && skip == 1 && to + 1 < line.length() && fraction(line.charAt(to + 1)) > 0) {
                part = fraction(line.charAt(to + 1));
                to += 2;
            } else {
                int[] bare = whole && (words.isEmpty() || !words.getLast().is("/")) ? writtenFraction(line, at) : new int[3];
                if (bare[1] > 0 && hasUnit(line, bare[2])) {
                    text = Double.toString((double) bare[0] / bare[1]);
                    to = bare[2];
                    before = to;
                }
                int[] written = writtenFraction(line, whole ? to + skip : to);
                int[] alone = writtenFraction(line, at);
                if (whole && alone[1] > 0 && isOfInches(line, at, alone[2])) {
                    text = "0";
                    part = (double) alone[0] / alone[1];
                    to = alone[2];
                } else if (whole && skip == 1 && written[1] > 0 && isMeasured(line, written[2])) {
                    part = (double) written[0] / written[1];
                    to = written[2];
                }
            }
            if (to > before) {
                text = Double.toString((whole ? Double.parseDouble(limited(text)) : 0) + part);
            }
        }
        words.add(new Word(Word.Kind.NUMBER, limited(text), line.substring(at, to), lineNumber, at, to, glued));
        return to;
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

    /** Numerator, denominator and end of a fraction such as 3/8; a denominator of 0 when there is none. */
    private static int[] writtenFraction(String line, int at) {
        int slash = Math.min(digits(line, at), at + 2);
        int end = slash < line.length() && line.charAt(slash) == '/' ? digits(line, slash + 1) : slash;
        if (slash == at || end <= slash + 1 || end > slash + 3) {
            return new int[3];
        }
        int numerator = Integer.parseInt(line.substring(at, slash));
        int denominator = Integer.parseInt(line.substring(slash + 1, end));
        boolean usual = denominator == 2 || denominator == 4 || denominator == 8 || denominator == 16;
        return usual && numerator < denominator ? new int[] {numerator, denominator, end} : new int[3];
    }

    /** Whether the values that go on here end with a unit: 7 3/4/5 times are four numbers, 1 3/4/2 in are two. */
    private static boolean isMeasured(String line, int at) {
        int next = at;
        int end = Math.min(line.length(), at + LONGEST_LIST);
        while (next < end && (isDigit(line.charAt(next)) || " /.".indexOf(line.charAt(next)) >= 0)) {
            next++;
        }
        boolean unit = line.startsWith("in", next) || line.startsWith("cm", next);
        return unit || next < line.length() && "\"”″),;([".indexOf(line.charAt(next)) >= 0 || next == line.length();
    }

    private static boolean hasUnit(String line, int at) {
        int unit = at < line.length() && line.charAt(at) == ' ' ? at + 1 : at;
        return unit < line.length() && (line.startsWith("in", unit) || "\"”″".indexOf(line.charAt(unit)) >= 0);
    }

    /** Whether a fraction without a whole number stands in a list of inches: 3/4 (7/8, 1) in, but not 3/4/8 sts. */
    private static boolean isOfInches(String line, int from, int at) {
        int next = at;
        int furthest = Math.min(line.length(), at + FURTHEST_UNIT);
        if (from > 0 && line.charAt(from - 1) == '/' || next < furthest && line.charAt(next) == '/') {
            return false;
        }
        while (next < furthest && !Character.isLetter(line.charAt(next))) {
            next++;
        }
        return line.startsWith("in", next) && (next + 2 == line.length() || !Character.isLetter(line.charAt(next + 2)))
                || line.startsWith("inch", next);
    }

    private static double fraction(char c) {
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
}
