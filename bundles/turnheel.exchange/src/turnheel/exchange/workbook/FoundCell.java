package turnheel.exchange.workbook;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.xssf.usermodel.XSSFCell;

import turnheel.engine.term.Notation;

/** What stands in a cell of a workbook that came back, whichever program saved it. */
sealed interface FoundCell {

    /** Nothing, or only blanks. */
    record Empty() implements FoundCell {
    }

    /** @param value with the 15 digits that spreadsheets keep; as shown where the cell is in per cent */
    record Figure(double value) implements FoundCell {
    }

    /**
     * A formula.
     *
     * @param text without the equals sign
     * @param result what it was saved with; empty when nothing computed it
     */
    record Formula(String text, Optional<FoundCell> result) implements FoundCell {
    }

    /** What is no number: text, a date, a truth value. */
    record Other(String text) implements FoundCell {
    }

    /** @param text as the cell shows it, such as {@code #REF!} */
    record Fault(String text) implements FoundCell {
    }

    /** @param cell {@code null} when the file has none there */
    static FoundCell of(XSSFCell cell) {
        if (cell == null) {
            return new Empty();
        }
        if (cell.getCellType() == CellType.FORMULA) {
            Optional<FoundCell> result = cell.getCTCell().isSetV()
                    ? Optional.of(value(cell, cell.getCachedFormulaResultType())) : Optional.empty();
            return new Formula(cell.getCellFormula(), result);
        }
        return value(cell, cell.getCellType());
    }

    private static FoundCell value(XSSFCell cell, CellType type) {
        return switch (type) {
            case NUMERIC -> DateUtil.isCellDateFormatted(cell) ? new Other(cell.getLocalDateTimeCellValue().toString())
                    : new Figure(number(cell));
            case STRING -> cell.getStringCellValue().isBlank() ? new Empty() : new Other(cell.getStringCellValue().strip());
            case BOOLEAN -> new Other(Boolean.toString(cell.getBooleanCellValue()));
            case ERROR -> new Fault(cell.getErrorCellString());
            case BLANK, FORMULA, _NONE -> new Empty();
        };
    }

    private static double number(XSSFCell cell) {
        BigDecimal value = BigDecimal.valueOf(cell.getNumericCellValue());
        boolean percent = cell.getCellStyle().getDataFormatString().contains("%");
        return (percent ? value.movePointRight(2) : value).round(new MathContext(15)).doubleValue();
    }

    /** What a heading or a name of a row says. */
    default String words() {
        return switch (this) {
            case Other(String text) -> text;
            // a label such as 38 that somebody typed anew
            case Figure(double value) -> Notation.number(value);
            case Empty empty -> "";
            case Formula formula -> formula.result().map(FoundCell::words).orElse("");
            case Fault fault -> "";
        };
    }
}
