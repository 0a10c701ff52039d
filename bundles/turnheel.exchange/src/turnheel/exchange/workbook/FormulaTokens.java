package turnheel.exchange.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A formula as a list of words, by which it can be recognised after another program has saved it: programs write
 * {@code 1E-9} as {@code 0.000000001}, leave out the last digits of a constant, write a name as the cell that it stands
 * for, functions in capitals, and blanks as they like. Nothing is evaluated.
 *
 * @param words keys, functions, numbers as they were written, and signs
 */
record FormulaTokens(List<String> words) {

    private static final String SHEET = "(?:(?:'(?:[^']|'')+'|[\\p{L}_][\\p{L}\\p{N}_.]*)!)?";
    private static final String CELL = "\\$?[A-Za-z]{1,3}\\$?\\d{1,7}(?![\\p{L}\\p{N}_.(])";
    private static final Pattern TOKEN = Pattern.compile("(?<blank>\\s+)|(?<cell>" + SHEET + CELL + ")"
            + "|(?<number>(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?)|(?<name>[\\p{L}_\\\\][\\p{L}\\p{N}_.]*)|<=|>=|<>|.",
            Pattern.DOTALL);
    /** Stands before functions that are younger than the file format. */
    private static final String NEWER = "_xlfn.";

    /** Programs keep 14 or 15 digits of a constant; people change more than that. */
    private static final double SAME = 1e-12;

    /**
     * The words of a formula.
     *
     * @param keyOf what a name or the reference of a cell means; empty where it is a function or unknown
     */
    static FormulaTokens of(String formula, Function<String, Optional<String>> keyOf) {
        List<String> tokens = new ArrayList<>();
        Matcher matcher = TOKEN.matcher(formula);
        while (matcher.find()) {
            String token = matcher.group();
            if (matcher.group("number") != null) {
                tokens.add(token);
            } else if (isWord(matcher)) {
                tokens.add(keyOf.apply(token).orElseGet(() -> function(token)));
            } else if (matcher.group("blank") == null) {
                tokens.add(token);
            }
        }
        return new FormulaTokens(List.copyOf(tokens));
    }

    /** Whether two formulas differ in nothing but how they are written. */
    boolean isSameAs(FormulaTokens other) {
        if (words.size() != other.words.size()) {
            return false;
        }
        for (int i = 0; i < words.size(); i++) {
            if (!isSame(words.get(i), other.words.get(i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean isSame(String one, String other) {
        if (!isNumber(one) || !isNumber(other)) {
            return one.equals(other);
        }
        double value = Double.parseDouble(one);
        return Math.abs(value - Double.parseDouble(other)) <= SAME * Math.abs(value);
    }

    private static boolean isNumber(String word) {
        return Character.isDigit(word.charAt(0)) || word.length() > 1 && word.charAt(0) == '.';
    }

    /** The same formula with keys in place of names and references, numbers as they were written. */
    static String translated(String formula, Function<String, Optional<String>> keyOf) {
        StringBuilder text = new StringBuilder();
        Matcher matcher = TOKEN.matcher(formula);
        while (matcher.find()) {
            String token = matcher.group();
            text.append(isWord(matcher) ? keyOf.apply(token).orElseGet(() -> function(token)) : token);
        }
        return text.toString().strip();
    }

    /** The names and references in a formula, without its functions. */
    static List<String> operands(String formula) {
        List<String> operands = new ArrayList<>();
        Matcher matcher = TOKEN.matcher(formula);
        while (matcher.find()) {
            boolean isCall = matcher.end() < formula.length() && formula.charAt(matcher.end()) == '(';
            if (isWord(matcher) && !isCall) {
                operands.add(matcher.group());
            }
        }
        return operands;
    }

    private static boolean isWord(Matcher matcher) {
        return matcher.group("cell") != null || matcher.group("name") != null;
    }

    private static String function(String word) {
        String capitals = word.toUpperCase(Locale.ROOT);
        return capitals.startsWith(NEWER.toUpperCase(Locale.ROOT)) ? capitals.substring(NEWER.length()) : capitals;
    }
}
