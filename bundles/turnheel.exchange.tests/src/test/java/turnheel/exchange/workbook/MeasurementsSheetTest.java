package turnheel.exchange.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import turnheel.exchange.Designs;

class MeasurementsSheetTest {

    @ParameterizedTest(name = "{0} of size {2} is {3} {1}")
    @CsvSource(textBlock = """
            # label, unit, position of the size, shown: by hand from the inputs, in inches as written
            Foot length,            cm, 1, 22.86
            Foot length,            in, 1, 9
            Foot length,            in, 2, 9.5
            Foot circumference,     in, 2, 8.75
            Foot circumference,     cm, 3, 23.368
            Leg height,             in, 2, 8
            Ease around,            %,  2, -8
            Ease in length,         in, 2, -0.25
            Wanted length,          in, 2, 9.25
            # 0.42 of the foot length
            Leg height,             in, 1, 3.78
            """)
    void showsBodyAndFitInBothUnits(String label, String unit, int size, double shown) throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.cuffDown())) {
            assertEquals(shown, row(workbook, label, unit).getCell(1 + size).getNumericCellValue(), 1e-9);
        }
    }

    private static XSSFRow row(XSSFWorkbook workbook, String label, String unit) {
        XSSFSheet sheet = workbook.getSheet("Measurements");
        String current = "";
        for (int row = 3; row <= sheet.getLastRowNum(); row++) {
            String own = sheet.getRow(row).getCell(0).getStringCellValue();
            current = own.isEmpty() ? current : own;
            if (current.equals(label) && sheet.getRow(row).getCell(1).getStringCellValue().equals(unit)) {
                return sheet.getRow(row);
            }
        }
        throw new AssertionError("no row " + label + " in " + unit);
    }

    @Test
    void followsTheCountsSheet() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.cuffDown())) {
            List<XSSFCell> numbers = new ArrayList<>();
            workbook.getSheet("Measurements").forEach(row -> row.forEach(cell -> {
                if (row.getRowNum() > 2 && cell.getColumnIndex() > 1 && cell.getCellType() != CellType.BLANK) {
                    numbers.add((XSSFCell) cell);
                }
            }));
            assertTrue(numbers.size() >= 3 * 20);
            numbers.forEach(cell -> assertEquals(CellType.FORMULA, cell.getCellType(), Books.place(cell)));
        }
    }

    @Test
    void marksDefaults() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.cuffDown())) {
            XSSFRow ease = row(workbook, "Ease around", "%");
            assertTrue(ease.getCell(2).getCellStyle().getDataFormatString().endsWith("\"*\""));
            assertTrue(ease.getCell(3).getCellStyle().getDataFormatString().endsWith("_*"));
        }
    }

    @Test
    void groupsBodyEaseAndSock() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.toeUp())) {
            List<String> labels = new ArrayList<>();
            workbook.getSheet("Measurements").forEach(row -> {
                if (row.getRowNum() > 2 && !row.getCell(0).getStringCellValue().isEmpty()) {
                    labels.add(row.getCell(0).getStringCellValue());
                }
            });
            assertEquals(List.of("To fit", "Foot length", "Foot circumference", "Ankle circumference",
                    "Heel circumference", "Leg height", "Ease and fit", "Ease around", "Ease in length",
                    "Wanted circumference", "Wanted length", "Ease reached", "Stretch over the heel",
                    "Finished measurements", "Toe depth", "Finished circumference", "Foot, measured",
                    "Finished length", "Heel depth", "Heel height", "Leg, measured", "Cuff height"), labels);
        }
    }
}
