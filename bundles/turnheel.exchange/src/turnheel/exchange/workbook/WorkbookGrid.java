package turnheel.exchange.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

import turnheel.exchange.table.Grid;
import turnheel.exchange.table.Grid.Fault;

/**
 * Reads the first sheet of an .xlsx workbook that is not hidden. Of a formula it takes the result that the workbook was
 * saved with; nothing is computed, and nothing outside the workbook is looked at.
 */
public final class WorkbookGrid {

    /** Spreadsheets keep 15 digits; 24.2 + 0.1 is 24.3 there, not 24.300000000000001. */
    private static final MathContext AS_SHOWN = new MathContext(15);
    private static final int MOST_COLUMNS = 256;

    private WorkbookGrid() {
    }

    public static Grid read(byte[] content) {
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(content))) {
            return rows(firstVisible(workbook));
        } catch (IOException | RuntimeException damaged) {
            // The library tells of damaged, encrypted and foreign files with two dozen unchecked exceptions.
            return Grid.broken(List.of(), Fault.NOT_A_WORKBOOK);
        }
    }

    private static XSSFSheet firstVisible(XSSFWorkbook workbook) {
        for (int sheet = 0; sheet < workbook.getNumberOfSheets(); sheet++) {
            if (!workbook.isSheetHidden(sheet) && !workbook.isSheetVeryHidden(sheet)) {
                return workbook.getSheetAt(sheet);
            }
        }
        return workbook.getSheetAt(0);
    }

    private static Grid rows(XSSFSheet sheet) {
        List<Grid.Row> rows = new ArrayList<>();
        for (Row row : sheet) {
            if (rows.size() == Grid.MOST_ROWS) {
                return Grid.broken(rows, Fault.TOO_LONG);
            }
            List<String> cells = new ArrayList<>();
            for (int column = 0; column < Math.min(row.getLastCellNum(), MOST_COLUMNS); column++) {
                Cell cell = row.getCell(column);
                cells.add(cell == null ? "" : text((XSSFCell) cell).strip());
            }
            rows.add(new Grid.Row(row.getRowNum() + 1, cells));
        }
        return Grid.of(rows);
    }

    private static String text(XSSFCell cell) {
        boolean formula = cell.getCellType() == CellType.FORMULA;
        if (formula && !cell.getCTCell().isSetV()) {
            // A program that computes nothing wrote it; the formula itself tells a person which cell it is.
            return "=" + cell.getCellFormula();
        }
        return switch (formula ? cell.getCachedFormulaResultType() : cell.getCellType()) {
            case NUMERIC -> number(cell);
            case STRING -> cell.getStringCellValue();
            case BOOLEAN -> Boolean.toString(cell.getBooleanCellValue());
            case ERROR -> cell.getErrorCellString();
            case BLANK, FORMULA, _NONE -> "";
        };
    }

    /** A cell in per cent holds the hundredth of what it shows. */
    private static String number(XSSFCell cell) {
        BigDecimal value = BigDecimal.valueOf(cell.getNumericCellValue());
        boolean percent = cell.getCellStyle().getDataFormatString().contains("%");
        BigDecimal shown = (percent ? value.movePointRight(2) : value).round(AS_SHOWN).stripTrailingZeros();
        return shown.toPlainString() + (percent ? " %" : "");
    }
}
