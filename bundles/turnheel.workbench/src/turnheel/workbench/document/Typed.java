package turnheel.workbench.document;

import java.util.regex.Pattern;

import turnheel.engine.design.Parameter;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.Role;
import turnheel.engine.design.Unit;

/** What a person typed into a row: a quantity with its unit, or a bare number in the unit of the row. */
public final class Typed {

    private static final Pattern BARE_NUMBER = Pattern.compile("[+\\-−]?(?:\\d+(?:\\.\\d+)?|\\.\\d+)");

    private Typed() {
    }

    /**
     * The quantity that the text means in the row of this parameter.
     *
     * @throws IllegalArgumentException when it means none, or one that cannot stand there; the message says what would
     *     do
     */
    public static Quantity quantity(Parameter parameter, String text) {
        String trimmed = text.strip();
        if (parameter.role() == Role.RESULT) {
            // Refused by its role before its unit is looked at: no text would do.
            parameter.require(Role.RULE, Quantity.parse("0"));
        }
        boolean isBare = BARE_NUMBER.matcher(trimmed).matches();
        Quantity quantity = Quantity.parse(isBare ? trimmed + suffix(parameter.unit()) : text);
        parameter.require(parameter.role(), quantity);
        return quantity;
    }

    private static String suffix(Unit unit) {
        return switch (unit) {
            case MILLIMETRES -> " mm";
            case PERCENT -> " %";
            case PER_100_MM -> "/10 cm";
            case STITCHES, ROUNDS, ROWS, LINES, TIMES, RATIO, IDEAL_STITCHES, LOOPS, PLAIN_LOOPS, METRES, GRAMS, TEX,
                    BALLS, NUMBER -> "";
        };
    }
}
