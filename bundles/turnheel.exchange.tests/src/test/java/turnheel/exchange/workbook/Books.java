package turnheel.exchange.workbook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiConsumer;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

import turnheel.engine.design.Design;
import turnheel.engine.design.Parameter;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.yarn.Patterns;
import turnheel.engine.term.Key;

/** Writes workbooks and reads them back, independently of the code under test: through POI and the defined names. */
final class Books {

    /** Workbooks that were written before; designs are values. */
    private static final Map<Design, byte[]> WRITTEN = new ConcurrentHashMap<>();

    private Books() {
    }

    static byte[] write(Design design) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PatternWorkbook.write(Patterns.grade(design), out);
        return out.toByteArray();
    }

    static XSSFWorkbook read(byte[] workbook) throws IOException {
        return new XSSFWorkbook(new ByteArrayInputStream(workbook));
    }

    static XSSFWorkbook of(Design design) throws IOException {
        byte[] known = WRITTEN.get(design);
        if (known == null) {
            known = write(design);
            WRITTEN.put(design, known);
        }
        return read(known);
    }

    /** The cell that a defined name refers to. */
    static XSSFCell named(XSSFWorkbook workbook, String name) {
        CellReference reference = new CellReference(workbook.getName(name).getRefersToFormula());
        return workbook.getSheet(reference.getSheetName()).getRow(reference.getRow()).getCell(reference.getCol());
    }

    static XSSFCell cell(XSSFWorkbook workbook, Key key, int size) {
        return named(workbook, key.name().replace('.', '_') + "_size" + (size + 1));
    }

    static List<XSSFCell> formulaCells(XSSFWorkbook workbook) {
        return cells(workbook).stream().filter(cell -> cell.getCellType() == CellType.FORMULA).toList();
    }

    static List<XSSFCell> cells(XSSFWorkbook workbook) {
        List<XSSFCell> cells = new ArrayList<>();
        for (int sheet = 0; sheet < workbook.getNumberOfSheets(); sheet++) {
            XSSFSheet rows = workbook.getSheetAt(sheet);
            rows.forEach(row -> row.forEach(cell -> cells.add((XSSFCell) cell)));
        }
        return cells;
    }

    static String place(XSSFCell cell) {
        return cell.getSheet().getSheetName() + "!" + cell.getAddress();
    }

    /** Every number that the engine has, with its row and the position of its size. */
    static void eachNumber(Graded graded, BiConsumer<turnheel.engine.grading.Cell, Integer> action) {
        for (int i = 0; i < graded.sizes().size(); i++) {
            GradedSize size = graded.sizes().get(i);
            for (Parameter parameter : graded.parameters()) {
                int position = i;
                size.cell(parameter).ifPresent(cell -> action.accept(cell, position));
            }
        }
    }

    /** Differences of the last bits come from programs that tidy up sums near zero. */
    static boolean same(double one, double other) {
        return Math.abs(one - other) <= 1e-9 * Math.max(1, Math.max(Math.abs(one), Math.abs(other)));
    }
}
