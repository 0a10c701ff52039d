package turnheel.exchange.pdf;

import turnheel.engine.wording.NoBreak;

/** Text as it goes on a page. */
final class PrintedText {

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
                    if (letter == NoBreak.BREAK) {
                        printed.append(NoBreak.BREAK);
                    }
                }
                case Character.CONTROL, Character.SURROGATE, Character.PRIVATE_USE, Character.UNASSIGNED ->
                    printed.appendCodePoint(Character.isWhitespace(letter) ? ' ' : REPLACEMENT);
                default -> printed.appendCodePoint(letter);
            }
        });
        return printed.toString();
    }

    /** The same in ordinary characters, for what is said and not laid out, such as the name of a file. */
    static String said(String text) {
        return NoBreak.ordinary(of(text));
    }
}
