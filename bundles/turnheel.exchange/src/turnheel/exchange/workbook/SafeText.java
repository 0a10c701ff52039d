package turnheel.exchange.workbook;

import java.util.regex.Pattern;

import org.apache.poi.ss.SpreadsheetVersion;

import turnheel.exchange.office.OneLine;

/** Brings any text that a person can type into a form that a workbook can hold. */
final class SafeText {

    private static final int LONGEST = SpreadsheetVersion.EXCEL2007.getMaxTextLength();
    private static final String CUT = "…";
    /** What would be read as an escape (ECMA-376 part 1, ST_Xstring); its own first character is escaped. */
    private static final Pattern ESCAPE = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");
    private static final String ESCAPED_UNDERSCORE = "_x005F_";

    private SafeText() {
    }

    /**
     * The text for a cell or a comment: characters that XML cannot hold are escaped and come back when it is read. A
     * cell holds 32 767 characters; a longer text, which no pattern needs, shows that it was cut.
     */
    static String ofCell(String text) {
        String fitting = text.length() <= LONGEST ? text : text.substring(0, LONGEST - CUT.length()) + CUT;
        String marked = ESCAPE.matcher(fitting).replaceAll(ESCAPED_UNDERSCORE);
        StringBuilder escaped = new StringBuilder();
        marked.codePoints().forEach(character -> {
            if (OneLine.isXml(character)) {
                escaped.appendCodePoint(character);
            } else {
                escaped.append("_x%04X_".formatted(character));
            }
        });
        return escaped.toString();
    }
}
