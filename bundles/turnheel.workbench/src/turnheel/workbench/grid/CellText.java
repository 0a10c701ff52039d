package turnheel.workbench.grid;

import java.math.BigDecimal;
import java.math.RoundingMode;

import turnheel.engine.design.Quantity;
import turnheel.engine.design.Role;
import turnheel.engine.grading.Cell;
import turnheel.engine.grading.Reason;

/** The text of a number: for reading in the unit of its row, for editing as it was written. */
final class CellText {

    private static final char MINUS = '−';
    private static final int MOST_DECIMALS = 2;

    private CellText() {
    }

    /**
     * The number in the unit of its row, with a true minus sign. A computed number has the decimals of its unit, so
     * that the sizes of a row line up; an input has no more of them than it needs.
     */
    static String shown(Cell cell) {
        return plain(cell).replace('-', MINUS);
    }

    /** The same for another program: a hyphen for the minus sign. */
    static String plain(Cell cell) {
        boolean isEntry = cell.reason() instanceof Reason.Given;
        int decimals = isEntry || isUnexpectedlyBroken(cell) ? MOST_DECIMALS : decimals(cell);
        BigDecimal number = BigDecimal.valueOf(cell.value()).setScale(decimals, RoundingMode.HALF_UP);
        if (cell.parameter().role() == Role.INPUT || isUnexpectedlyBroken(cell)) {
            number = number.stripTrailingZeros();
        }
        String text = number.toPlainString();
        return number.signum() == 0 ? text.replace("-", "") : text; //$NON-NLS-1$ //$NON-NLS-2$
    }

    /** A count that is not whole must look so: rounding would hide what the query beside it complains of. */
    private static boolean isUnexpectedlyBroken(Cell cell) {
        return cell.parameter().unit().isWhole() && cell.value() != Math.rint(cell.value());
    }

    private static int decimals(Cell cell) {
        return switch (cell.parameter().unit()) {
            case STITCHES, ROUNDS, ROWS, LINES, TIMES, LOOPS, BALLS -> 0;
            case MILLIMETRES, PERCENT, PER_100_MM, IDEAL_STITCHES, PLAIN_LOOPS, METRES, GRAMS, TEX -> 1;
            case RATIO -> 2;
            // nobody but the designer knows whether it is a count or a share
            case NUMBER -> cell.value() == Math.rint(cell.value()) ? 0 : 3;
        };
    }

    /** What an editor starts with: the entry as the designer wrote it, else the number. */
    static String edited(Cell cell) {
        return switch (cell.reason()) {
            case Reason.Given(Quantity quantity) -> quantity.toString();
            case Reason.Overridden(Quantity quantity, var instead) -> quantity.toString();
            case Reason.Derived derived -> shown(cell);
            case Reason.Chosen chosen -> shown(cell);
            case Reason.Fitted fitted -> shown(cell);
            case Reason.Counted counted -> shown(cell);
        };
    }
}
