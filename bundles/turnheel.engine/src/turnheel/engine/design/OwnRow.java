package turnheel.engine.design;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import turnheel.engine.term.Key;

/**
 * A number that the designer has computed in every size, beside those of the catalogue.
 *
 * @param key {@code own.} and a name of letters and digits, as in {@code own.cuffShare}
 * @param label what people read; the key where it is empty
 * @param formula in the open spreadsheet notation over the keys of other rows. Kept as it was written, whether or not
 *     it can be read: what is wrong with it is a query.
 * @throws IllegalArgumentException when the key is no key of an own row, or the label is longer than {@link
 *     #LONGEST_LABEL}
 */
public record OwnRow(Key key, String label, String formula) {

    /** In characters. */
    public static final int LONGEST_LABEL = 40;
    /** Own rows of a pattern: with more of them nobody finds the numbers that are knitted. */
    public static final int MOST = 200;

    public OwnRow {
        if (!isOwn(key)) {
            throw new IllegalArgumentException(
                    "\"%s\" is no key of an own row; write own. and a name, such as own.cuffShare".formatted(key));
        }
        label = label.strip();
        if (label.length() > LONGEST_LABEL) {
            throw new IllegalArgumentException("the label \"%s…\" of %s is longer than %d characters".formatted(
                    label.substring(0, LONGEST_LABEL), key, LONGEST_LABEL));
        }
    }

    /** Whether a key is one of a designer's own rows. */
    public static boolean isOwn(Key key) {
        return key.part().equals(Part.OWN.prefix());
    }

    /** The row in tables. */
    public Parameter parameter() {
        String text = formula.strip();
        return new Parameter(key, Part.OWN, Role.OWN, Unit.NUMBER, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY,
                label.isEmpty() ? key.name() : label, text.startsWith("=") ? text : "=" + text);
    }

    /** Keys that differ in nothing but capitals are one name to a spreadsheet program. */
    public boolean sharesNameWith(Key other) {
        return folded(key).equals(folded(other));
    }

    private static String folded(Key key) {
        return key.name().toLowerCase(Locale.ROOT);
    }

    static void requireDistinct(List<OwnRow> rows) {
        if (rows.size() > MOST) {
            throw new IllegalArgumentException(
                    "a pattern has at most %d own rows; here are %d".formatted(MOST, rows.size()));
        }
        Set<String> names = new HashSet<>();
        for (OwnRow row : rows) {
            if (!names.add(folded(row.key()))) {
                throw new IllegalArgumentException("two own rows have the key \"%s\"".formatted(row.key()));
            }
        }
    }
}
