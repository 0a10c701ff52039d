package turnheel.engine.knitting;

/**
 * A word, number or sign of a text, before anybody knows what it means.
 *
 * @param text as it is compared: a canonical word in small letters, a number, or one sign
 * @param raw as it is written
 * @param line where its line is in the text, from 0
 * @param from its first column in its line, from 0
 * @param to the column after its last
 * @param glued whether nothing stands between it and the word before
 */
record Word(Kind kind, String text, String raw, int line, int from, int to, boolean glued) {

    enum Kind {
        LETTERS, NUMBER, SIGN
    }

    /** Its number; NaN when it is none. */
    double number() {
        return kind == Kind.NUMBER ? Double.parseDouble(text) : Double.NaN;
    }

    boolean is(String sign) {
        return text.equals(sign);
    }
}
