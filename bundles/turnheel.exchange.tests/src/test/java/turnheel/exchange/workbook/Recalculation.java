package turnheel.exchange.workbook;

import java.util.ArrayList;
import java.util.List;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Compares what stands in a workbook with what a program made of it. */
final class Recalculation {

    private Recalculation() {
    }

    /** A line for every formula cell whose stored value is not what the program computed; empty when all is well. */
    static List<String> differences(XSSFWorkbook stored, XSSFWorkbook recalculated) {
        List<String> differences = new ArrayList<>();
        for (XSSFCell cell : Books.formulaCells(stored)) {
            XSSFCell other = recalculated.getSheet(cell.getSheet().getSheetName()).getRow(cell.getRowIndex())
                    .getCell(cell.getColumnIndex());
            CellType kind = cell.getCachedFormulaResultType();
            if (other.getCellType() != CellType.FORMULA || other.getCachedFormulaResultType() != kind) {
                differences.add("%s =%s: stored a %s, recalculated something else".formatted(Books.place(cell),
                        cell.getCellFormula(), kind));
            } else if (kind == CellType.STRING) {
                if (!cell.getStringCellValue().equals(other.getStringCellValue())) {
                    differences.add("%s =%s: stored %s, recalculated %s".formatted(Books.place(cell),
                            cell.getCellFormula(), cell.getStringCellValue(), other.getStringCellValue()));
                }
            } else if (!Books.same(cell.getNumericCellValue(), other.getNumericCellValue())) {
                differences.add("%s =%s: stored %s, recalculated %s".formatted(Books.place(cell), cell.getCellFormula(),
                        cell.getNumericCellValue(), other.getNumericCellValue()));
            }
        }
        return differences;
    }
}
