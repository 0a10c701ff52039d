package turnheel.exchange.office;

/** Brings any text that a person can type into a line that a part of an office file can hold. */
public final class OneLine {

    private OneLine() {
    }

    /** The text in one line, with a blank for whatever cannot be seen or stand in XML. */
    public static String of(String text) {
        StringBuilder line = new StringBuilder();
        text.codePoints().forEach(character ->
                line.appendCodePoint(isXml(character) && !Character.isISOControl(character) ? character : ' '));
        return line.toString();
    }

    /** XML 1.0, production 2; a carriage return is legal there, but readers turn it into a line feed. */
    public static boolean isXml(int character) {
        return character == '\t' || character == '\n' || character >= ' ' && character <= 0xD7FF
                || character >= 0xE000 && character <= 0xFFFD || character >= 0x10000;
    }
}
