package turnheel.engine.writing;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import turnheel.engine.wording.HouseStyle;
import turnheel.engine.wording.NoBreak;
import turnheel.engine.wording.Vocabulary;

/**
 * Pieces as one text that tells a layout where its lines must not end: not inside a number or the label of a size, not
 * before a unit, not between a word and the number that belongs to it. Wherever the text has an ordinary blank, a line
 * may end.
 */
final class Unbroken {

    /** Signs between two numbers, as in 2 × 2. */
    private static final Set<String> BETWEEN_NUMBERS = Set.of("x", "\u00D7", "+", "-", "\u2013");
    /** Signs that stay with what stands before them. */
    private static final Set<String> AFTER = Set.of("/", "*");
    private static final char NOTHING = '\0';

    private final HouseStyle style;
    private final List<String> labels;
    private final Set<String> units;
    private final Set<String> numbered;

    /** One text being made. */
    private final class Row {
        private final StringBuilder text = new StringBuilder();
        private boolean endsInValues;

        void add(String words, boolean beforeValues) {
            for (int at = 0; at < words.length(); at++) {
                char c = words.charAt(at);
                char next = at + 1 < words.length() ? words.charAt(at + 1) : beforeValues ? '0' : NOTHING;
                text.append(switch (c) {
                    case ' ' -> isHeld(word(words, at + 1), next) ? NoBreak.BLANK : c;
                    case '-' -> endsInNumber(text) && Character.isDigit(next) ? NoBreak.HYPHEN : c;
                    default -> c;
                });
                endsInValues = false;
            }
        }

        void add(Piece.Values values) {
            text.append(style.unbroken(values.each()));
            endsInValues = true;
        }

        /** Whether the blank after the text so far is inside something that stays together. */
        private boolean isHeld(String right, char next) {
            String left = lastWord();
            boolean afterNumber = endsInNumber(text);
            boolean beforeNumber = Character.isDigit(next);
            if (afterNumber && (units.contains(bare(right)) || isFraction(bare(right)))) {
                return true;
            }
            return beforeNumber && (numbered.contains(opened(left)) || BETWEEN_NUMBERS.contains(left))
                    || afterNumber && BETWEEN_NUMBERS.contains(right) || !left.isEmpty() && AFTER.contains(right);
        }

        private String lastWord() {
            int from = text.length();
            while (from > 0 && text.charAt(from - 1) != ' ' && text.charAt(from - 1) != NoBreak.BLANK) {
                from--;
            }
            return text.substring(from);
        }

        private boolean endsInNumber(CharSequence before) {
            if (endsInValues) {
                return true;
            }
            char last = before.isEmpty() ? NOTHING : before.charAt(before.length() - 1);
            return Character.isDigit(last) || Character.getType(last) == Character.OTHER_NUMBER;
        }
    }

    private Unbroken(HouseStyle style, Vocabulary vocabulary, List<String> labels) {
        this.style = style;
        // a label may be part of another one
        this.labels = labels.stream().sorted(Comparator.comparingInt(String::length).reversed()).toList();
        this.units = words(vocabulary.phrase("unbroken.units"));
        this.numbered = words(vocabulary.phrase("unbroken.numbered"));
    }

    private static Set<String> words(String phrase) {
        return Set.copyOf(List.of(phrase.split(" ")));
    }

    /** @param labels of the sizes */
    static Unbroken of(HouseStyle style, List<String> labels) {
        return new Unbroken(style, Vocabulary.of(style), labels);
    }

    String text(List<Piece> pieces) {
        Row row = new Row();
        for (int at = 0; at < pieces.size(); at++) {
            boolean beforeValues = at + 1 < pieces.size() && pieces.get(at + 1) instanceof Piece.Values;
            switch (pieces.get(at)) {
                case Piece.Words(String words) -> row.add(withWholeLabels(words), beforeValues);
                case Piece.Values values -> row.add(values);
            }
        }
        return row.text.toString();
    }

    private String withWholeLabels(String words) {
        String whole = words;
        for (String label : labels) {
            String held = NoBreak.whole(label);
            for (int at = held.equals(label) ? -1 : whole.indexOf(label); at >= 0;) {
                int end = at + label.length();
                boolean alone = (at == 0 || !Character.isLetterOrDigit(whole.charAt(at - 1)))
                        && (end == whole.length() || !Character.isLetterOrDigit(whole.charAt(end)));
                whole = alone ? whole.substring(0, at) + held + whole.substring(end) : whole;
                at = whole.indexOf(label, alone ? at + held.length() : end);
            }
        }
        return whole;
    }

    /** What stands from there up to the next blank. */
    private static String word(String words, int from) {
        int end = words.indexOf(' ', from);
        return words.substring(from, end < 0 ? words.length() : end);
    }

    /** Without the marks around it, as in {@code sts.} */
    private static String bare(String word) {
        String bare = opened(word);
        int to = bare.length();
        while (to > 0 && !Character.isLetterOrDigit(bare.charAt(to - 1))) {
            to--;
        }
        return bare.substring(0, to);
    }

    /** Without the marks before it, as in {@code (US} */
    private static String opened(String word) {
        int from = 0;
        while (from < word.length() && !Character.isLetterOrDigit(word.charAt(from))) {
            from++;
        }
        return word.substring(from).toLowerCase(Locale.ROOT);
    }

    private static boolean isFraction(String word) {
        return word.indexOf('/') > 0 && word.chars().allMatch(c -> Character.isDigit(c) || c == '/');
    }
}
