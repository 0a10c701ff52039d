package turnheel.exchange.pdf;

/** Text as it goes on a page. */
final class PrintedText {

    private static final int REPLACEMENT = 0xFFFD;

    private PrintedText() {
    }

    /**
     * The text without what has no look of its own: marks that only steer a layout are left out, since a line breaks at
     * blanks alone, tabs and the like are blanks, and what is no letter at all becomes the sign for that.
     */
    static String of(String text) {
        StringBuilder printed = new StringBuilder();
        text.codePoints().forEach(letter -> {
            switch (Character.getType(letter)) {
                case Character.FORMAT -> {
                    // soft hyphens, joiners, marks of direction
                }
                case Character.CONTROL, Character.SURROGATE, Character.PRIVATE_USE, Character.UNASSIGNED ->
                    printed.appendCodePoint(Character.isWhitespace(letter) ? ' ' : REPLACEMENT);
                default -> printed.appendCodePoint(letter);
            }
        });
        return printed.toString();
    }
}
