package turnheel.engine.wording;

/** The characters by which a text tells a layout where its lines may end, and where not. */
public final class NoBreak {

    /** A blank at which no line ends. */
    public static final char BLANK = '\u00A0';
    /** A hyphen at which no line ends. */
    public static final char HYPHEN = '\u2011';
    /** Joins two characters; has no width. Needed where line breaking (Unicode Standard Annex 14) allows a break. */
    public static final char JOINER = '\u2060';
    /** A place at which a line may end although there is no blank; has no width. */
    public static final char BREAK = '\u200B';

    private static final String BROKEN_AFTER = "/\u2013\u2014";

    private NoBreak() {
    }

    /** The text so that no line ends within it. */
    public static String whole(String text) {
        StringBuilder whole = new StringBuilder();
        for (int at = 0; at < text.length(); at++) {
            char c = text.charAt(at);
            boolean last = at + 1 == text.length();
            // a minus sign and a fraction hold together as they are
            boolean beforeDigit = !last && Character.isDigit(text.charAt(at + 1));
            switch (c) {
                case ' ' -> whole.append(BLANK);
                case '-' -> whole.append(at == 0 && beforeDigit ? c : HYPHEN);
                default -> whole.append(c);
            }
            if (!last && BROKEN_AFTER.indexOf(c) >= 0 && !(c == '/' && beforeDigit)) {
                whole.append(JOINER);
            }
        }
        return whole.toString();
    }

    /**
     * Where a line may end next, for layouts whose own rules know less: after a blank, at {@link #BREAK}, and after a
     * hyphen between two letters.
     *
     * @param from where the line begins, or a place where it may end
     * @return the first character of the line after it; the length of the text where there is no further place
     */
    public static int nextEnd(String text, int from) {
        for (int at = from + 1; at < text.length(); at++) {
            char before = text.charAt(at - 1);
            boolean inWord = before == '-' && at > 1 && Character.isLetter(text.charAt(at - 2))
                    && Character.isLetter(text.charAt(at));
            if (before == ' ' && text.charAt(at) != ' ' || before == BREAK || inWord) {
                return at;
            }
        }
        return text.length();
    }

    /** The text in ordinary characters, for files that no layout has read yet. */
    public static String ordinary(String text) {
        StringBuilder ordinary = new StringBuilder();
        text.chars().forEach(c -> {
            switch (c) {
                case BLANK -> ordinary.append(' ');
                case HYPHEN -> ordinary.append('-');
                case JOINER, BREAK -> {
                    // has no width: nobody will miss it
                }
                default -> ordinary.append((char) c);
            }
        });
        return ordinary.toString();
    }
}
