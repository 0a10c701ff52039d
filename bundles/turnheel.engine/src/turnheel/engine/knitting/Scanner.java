package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;

/** Cuts a line into words, numbers and signs: letters and digits apart, so that {@code k2tog} is three words. Linear. */
final class Scanner {

    private final ReadingWords table;
    private int lineNumber;
    private BitSet decimalCommas = new BitSet();

    Scanner(ReadingWords table) {
        this.table = table;
    }

    /** The line with ordinary blanks and hyphens for those that tell a layout not to break; every column stays. */
    static String ordinary(String line) {
        StringBuilder ordinary = new StringBuilder(line);
        for (int at = 0; at < line.length(); at++) {
            switch (line.charAt(at)) {
                case '\u00A0', '\u2007', '\u202F' -> ordinary.setCharAt(at, ' ');
                case '\u2010', '\u2011' -> ordinary.setCharAt(at, '-');
                default -> { }
            }
        }
        return ordinary.toString();
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
                String raw = visible(line.substring(at, to));
                String word = table.canonical(raw.toLowerCase(Locale.ROOT).replace('’', '\''));
                boolean counts = !word.isEmpty() && Character.isDigit(word.charAt(0));
                if (!table.isLeftOut(word) || isName(line, raw, to, words)) {
                    words.add(new Word(counts ? Word.Kind.NUMBER : Word.Kind.LETTERS, word, raw, lineNumber, at, to,
                            end == at));
                }
            } else if (WrittenNumber.begins(c)) {
                WrittenNumber written = WrittenNumber.read(line, at, decimalCommas);
                to = written.end();
                words.add(new Word(Word.Kind.NUMBER, written.text(), line.substring(at, to), lineNumber, at, to, end == at));
            } else if (!Character.isWhitespace(c) && !isHyphenOfWord(line, at) && c != '\\' && !isInvisible(c)) {
                to = sign(line, at, words, end == at);
            }
            end = Character.isWhitespace(c) || isInvisible(c) && end < at ? -1 : to;
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
        boolean afterSize = last >= 0 && isSize(words.get(last))
                || last >= 1 && words.get(last).is(":") && isSize(words.get(last - 1));
        if (!Character.isUpperCase(raw.charAt(0))) {
            return afterSize;
        }
        int next = end;
        while (next < line.length() && line.charAt(next) == ' ') {
            next++;
        }
        boolean listed = end < line.length() && WrittenNumber.isDigit(line.charAt(end)) || next == line.length()
                || "(),/;|[]:.".indexOf(line.charAt(next)) >= 0;
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
        return inner && (isInvisible(c) || c == '\'' || c == '’' || c == '&' && line.charAt(at - 1) != ' ');
    }

    private static boolean isInvisible(char c) {
        return c == '\u00AD' || c == '\u200B' || c == '\u2060' || c == '\uFEFF';
    }

    private static String visible(String raw) {
        return raw.chars().noneMatch(c -> isInvisible((char) c)) ? raw
                : raw.chars().filter(c -> !isInvisible((char) c))
                        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
    }

    /** A hyphen between letters, or a letter and a digit, joins them to one word. */
    private static boolean isHyphenOfWord(String line, int at) {
        char c = line.charAt(at);
        return c == '-' && at > 0 && at + 1 < line.length() && Character.isLetter(line.charAt(at - 1))
                && Character.isLetterOrDigit(line.charAt(at + 1));
    }

    private int sign(String line, int at, List<Word> words, boolean glued) {
        char c = line.charAt(at);
        String text = switch (c) {
            case '(', '[', '{' -> "(";
            case ')', ']', '}' -> ")";
            case '-', '\u2012', '–', '—', '\u2212' -> "-";
            case '×' -> "times";
            case '&' -> "and";
            case '”', '″', '"' -> "inch";
            case '∗' -> "*";
            default -> String.valueOf(c);
        };
        Word.Kind kind = text.length() > 1 ? Word.Kind.LETTERS : Word.Kind.SIGN;
        words.add(new Word(kind, text, String.valueOf(c), lineNumber, at, at + 1, glued));
        return at + 1;
    }
}
