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
 * {@code 1E-9} as {@code 0.000000001}, a name as the cell that it stands for, functions in capitals, and blanks as they
 * like. Nothing is evaluated.
 */
final class FormulaTokens {

    private static final String SHEET = "(?:(?:'(?:[^']|'')+'|[\\p{L}_][\\p{L}\\p{N}_.]*)!)?";
    private static final String CELL = "\\$?[A-Za-z]{1,3}\\$?\\d{1,7}(?![\\p{L}\\p{N}_.(])";
    private static final Pattern TOKEN = Pattern.compile("(?<blank>\\s+)|(?<cell>" + SHEET + CELL + ")"
            + "|(?<number>(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?)|(?<name>[\\p{L}_\\\\][\\p{L}\\p{N}_.]*)|<=|>=|<>|.",
            Pattern.DOTALL);
    /** Stands before functions that are younger than the file format. */
    private static final String NEWER = "_xlfn.";

    private FormulaTokens() {
    }

    /**
     * The words of a formula, alike for formulas that differ in nothing but how they are written.
     *
     * @param keyOf what a name or the reference of a cell means; empty where it is a function or unknown
     */
    static List<String> of(String formula, Function<String, Optional<String>> keyOf) {
        List<String> tokens = new ArrayList<>();
        Matcher matcher = TOKEN.matcher(formula);
        while (matcher.find()) {
            String token = matcher.group();
            if (matcher.group("number") != null) {
                tokens.add(Double.toString(Double.parseDouble(token)));
            } else if (isWord(matcher)) {
                tokens.add(keyOf.apply(token).orElseGet(() -> function(token)));
            } else if (matcher.group("blank") == null) {
                tokens.add(token);
            }
        }
        return tokens;
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
