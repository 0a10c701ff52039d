package turnheel.engine.drawing;

/**
 * How wide a text will be in a face that is not known yet. Wide on purpose: at least what the common sans-serif faces
 * take in bold, so that nothing is cut off.
 */
final class TextWidth {

    private static final double NARROW = 0.4;
    private static final double USUAL = 0.66;
    private static final double WIDE = 0.86;
    private static final double WIDEST = 1.1;

    private TextWidth() {
    }

    /** @param size of the letters, in mm, as the result is */
    static double of(String text, double size) {
        return size * text.codePoints().mapToDouble(TextWidth::ofLetter).sum();
    }

    private static double ofLetter(int letter) {
        if ("Iijl.,;:'|!()[] /".indexOf(letter) >= 0) {
            return NARROW;
        }
        if (letter > 0x24F) {
            return WIDEST;
        }
        return "mwMW@%".indexOf(letter) >= 0 ? WIDEST : Character.isUpperCase(letter) ? WIDE : USUAL;
    }

    /** The text, cut with an ellipsis where it would be wider. */
    static String cut(String text, double size, double width) {
        if (of(text, size) <= width) {
            return text;
        }
        int[] letters = text.codePoints().toArray();
        int length = letters.length;
        while (length > 1 && of(new String(letters, 0, length) + "…", size) > width) {
            length--;
        }
        return new String(letters, 0, length) + "…";
    }
}
