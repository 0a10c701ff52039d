package turnheel.exchange.table;

/**
 * Tells which texts a spreadsheet program would run as a formula when it meets them without a type, as in a CSV file
 * or when somebody edits the cell. They start with {@code = + - @}, or with a tab or line break that may hide one of
 * these; the wide forms of East Asian keyboards count as well, since some programs read them alike.
 */
public final class FormulaLookalikes {

    private static final String STARTS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

    private FormulaLookalikes() {
    }

    /** Whether the text would be run; blanks in front of it do not help. */
    public static boolean contains(String text) {
        if (!text.isEmpty() && STARTS.indexOf(text.charAt(0)) >= 0) {
            return true;
        }
        String visible = text.strip();
        return !visible.isEmpty() && STARTS.indexOf(visible.charAt(0)) >= 0;
    }
}
