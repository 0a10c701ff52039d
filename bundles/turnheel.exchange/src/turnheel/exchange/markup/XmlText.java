package turnheel.exchange.markup;

/** Text that stays text in XML. */
public final class XmlText {

    private static final int REPLACEMENT = 0xFFFD;

    private XmlText() {
    }

    /** Escaped for elements and attributes alike; what XML 1.0 cannot hold is replaced by the sign for that. */
    public static String escaped(String text) {
        StringBuilder escaped = new StringBuilder();
        text.codePoints().forEach(letter -> {
            switch (letter) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                case '\n', '\r', '\t' -> escaped.append(' ');
                default -> escaped.appendCodePoint(isAllowed(letter) ? letter : REPLACEMENT);
            }
        });
        return escaped.toString();
    }

    private static boolean isAllowed(int letter) {
        boolean control = letter < 0x20 || letter >= 0x7F && letter <= 0x9F;
        boolean surrogate = letter >= Character.MIN_SURROGATE && letter <= Character.MAX_SURROGATE;
        return !control && !surrogate && letter != 0xFFFE && letter != 0xFFFF;
    }
}
