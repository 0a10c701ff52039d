package turnheel.exchange.pdf;

/** Text as it goes on a page. */
final class PrintedText {

    /** A place where a line may break though there is no blank. */
    static final char BREAK = '\u200B';

    private static final int REPLACEMENT = 0xFFFD;

    private PrintedText() {
    }

    /**
     * The text without what has no look of its own: of the marks that only steer a layout none is left but the one that
     * lets a line break, tabs and the like are blanks, and what is no letter at all becomes the sign for that.
     */
    static String of(String text) {
        StringBuilder printed = new StringBuilder();
        text.codePoints().forEach(letter -> {
            switch (Character.getType(letter)) {
                case Character.FORMAT -> {
                    // soft hyphens, joiners, marks of direction
                    if (letter == BREAK) {
                        printed.append(BREAK);
                    }
                }
                case Character.CONTROL, Character.SURROGATE, Character.PRIVATE_USE, Character.UNASSIGNED ->
                    printed.appendCodePoint(Character.isWhitespace(letter) ? ' ' : REPLACEMENT);
                default -> printed.appendCodePoint(letter);
            }
        });
        return printed.toString();
    }

    /** The same for what is said and not laid out, such as the name of a file. */
    static String said(String text) {
        return of(text).replace(String.valueOf(BREAK), "");
    }
}
