package turnheel.exchange.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFDataValidation;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.engine.design.Design;
import turnheel.engine.grading.GaugeTable;
import turnheel.engine.grading.Graded;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.Designs;

class GaugeSheetTest {

    private static final Map<String, Design> DESIGNS = Designs.all();
    private static final String SHEET = "Gauge-by-size table";

    static Set<String> designs() {
        return DESIGNS.keySet();
    }

    private static XSSFRow row(XSSFWorkbook workbook, String label) {
        for (org.apache.poi.ss.usermodel.Row row : workbook.getSheet(SHEET)) {
            if (row.getCell(0) != null && row.getCell(0).getCellType() == CellType.STRING
                    && row.getCell(0).getStringCellValue().startsWith(label)) {
                return (XSSFRow) row;
            }
        }
        throw new AssertionError("no row " + label);
    }

    /** The row of a gauge in the table under a heading. */
    private static XSSFRow row(XSSFWorkbook workbook, String heading, double gauge) {
        XSSFSheet sheet = workbook.getSheet(SHEET);
        for (int row = row(workbook, heading).getRowNum() + 1; sheet.getRow(row) != null; row++) {
            if (Math.abs(sheet.getRow(row).getCell(0).getNumericCellValue() - gauge) < 1e-9) {
                return sheet.getRow(row);
            }
        }
        throw new AssertionError("no row of " + gauge);
    }

    private static List<Double> numbers(XSSFRow row) {
        List<Double> numbers = new ArrayList<>();
        row.forEach(cell -> {
            if (cell.getColumnIndex() > 1) {
                numbers.add(cell.getNumericCellValue());
            }
        });
        return numbers;
    }

    /** Types a gauge and a foot, and lets POI recalculate. */
    private static void type(XSSFWorkbook workbook, double gauge, double footCm) {
        Books.named(workbook, "knitter_gauge").setCellValue(gauge);
        Books.named(workbook, "knitter_foot").setCellValue(footCm);
        FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
        workbook.getSheet(SHEET).forEach(row -> row.forEach(evaluator::evaluateFormulaCell));
    }

    /** 195, 207, 220, 235 and 250 mm less 10 % at 32 stitches; at 28 less 7.5 %; to multiples of 4. */
    @Test
    void givesTheCountsThatThePatternWouldHave() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.toeUp())) {
            assertEquals(List.of(56.0, 60.0, 64.0, 68.0, 72.0),
                    numbers(row(workbook, "Stitches around the foot, had", 32)));
            // 50.5, 53.6, 57.0, 60.9 and 64.8
            assertEquals(List.of(52.0, 52.0, 56.0, 60.0, 64.0),
                    numbers(row(workbook, "Stitches around the foot, had", 28)));
        }
    }

    @Test
    void tellsWhatThePrintedCountsComeToAtAGauge() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.toeUp())) {
            XSSFRow circumference = row(workbook, "Printed counts at this gauge: finished circumference, cm", 30);
            XSSFRow fits = row(workbook, "Printed counts at this gauge: circumference of the foot", 30);
            int[] counts = {56, 60, 64, 68, 72};
            for (int i = 0; i < counts.length; i++) {
                assertEquals(counts[i] / 3.0, circumference.getCell(2 + i).getNumericCellValue(), 1e-9);
                assertEquals(counts[i] / 2.7, fits.getCell(2 + i).getNumericCellValue(), 1e-9);
                assertEquals(CellType.FORMULA, fits.getCell(2 + i).getCellType());
            }
            // 4 in are 10.16 cm
            assertEquals(30.48, fits.getCell(1).getNumericCellValue(), 1e-9);
        }
    }

    @Test
    void measuresInInchesWhereTheGaugeIs() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.cuffDown())) {
            XSSFRow inches = row(workbook, "Printed counts at this gauge: finished circumference, in", 8 / 0.254);
            XSSFCell stitches = Books.named(workbook, "foot_stitches_size1");
            assertEquals(stitches.getNumericCellValue() / 8, inches.getCell(2).getNumericCellValue(), 1e-9);
        }
    }

    @ParameterizedTest(name = "{0} stitches, a foot of {1} cm: {2}")
    @CsvSource(textBlock = """
            # gauge, foot, size, its ease: 56 to 72 stitches over the gauge against the foot
            32, 22,   M,  -9.0909
            30, 22,   S,  -9.0909
            28, 22,   XS, -9.0909
            36, 22,   XL, -9.0909
            34, 24.5, XL, -13.5654
            26, 19,   XS, 13.3603
            """)
    void namesTheSizeForAGaugeAndAFootThatAreTypedIn(double gauge, double foot, String size, double ease)
            throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.toeUp())) {
            type(workbook, gauge, foot);
            assertEquals(size, row(workbook, "Knit the counts of").getCell(2).getStringCellValue());
            int column = 2 + List.of("XS", "S", "M", "L", "XL").indexOf(size);
            assertEquals(ease, row(workbook, "Ease there").getCell(column).getNumericCellValue(), 1e-4);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("designs")
    void whatIsTypedInGivesWhatTheEngineGives(String name) throws IOException {
        Graded graded = Patterns.grade(DESIGNS.get(name));
        try (XSSFWorkbook workbook = Books.of(DESIGNS.get(name))) {
            for (GaugeTable.Row gauge : GaugeTable.of(graded).rows()) {
                type(workbook, gauge.stitches(), 21.3);
                assertEquals(GaugeTable.closest(graded, gauge.stitches(), 213).orElseThrow().size(),
                        row(workbook, "Knit the counts of").getCell(2).getStringCellValue());
                for (int i = 0; i < gauge.sizes().size(); i++) {
                    XSSFCell circumference = row(workbook, "Finished around at your gauge").getCell(2 + i);
                    XSSFCell fits = row(workbook, "Fits a foot of").getCell(2 + i);
                    gauge.sizes().get(i).printed().ifPresentOrElse(printed -> {
                        assertEquals(printed.circumferenceMm() / 10, circumference.getNumericCellValue(), 1e-9);
                        assertEquals(printed.fitsFootMm() / 10, fits.getNumericCellValue(), 1e-9);
                    }, () -> assertEquals(CellType.BLANK, fits.getCellType()));
                }
            }
        }
    }

    @Test
    void beginsWithThePrintedGaugeAndAFootOfTheMiddle() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.toeUp())) {
            assertEquals(32, Books.named(workbook, "knitter_gauge").getNumericCellValue());
            assertEquals(22, Books.named(workbook, "knitter_foot").getNumericCellValue());
            assertEquals("M", row(workbook, "Knit the counts of").getCell(2).getStringCellValue());
        }
    }

    /** 60 stitches at 8 over an inch fit 8 1/3 in, 66 fit 9 1/6 in; the foot of 8 3/4 in is in the middle of them. */
    @Test
    void ofTwoAsNearTheFirstIsTaken() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.cuffDown())) {
            assertEquals("36/37", row(workbook, "Knit the counts of").getCell(2).getStringCellValue());
            type(workbook, Books.named(workbook, "knitter_gauge").getNumericCellValue(), 22.225);
            assertEquals("36/37", row(workbook, "Knit the counts of").getCell(2).getStringCellValue());
        }
    }

    @Test
    void whatIsTypedInIsValidated() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.toeUp())) {
            List<String> ranges = new ArrayList<>();
            for (XSSFDataValidation validation : workbook.getSheet(SHEET).getDataValidations()) {
                assertEquals(DataValidation.ErrorStyle.STOP, validation.getErrorStyle());
                assertTrue(validation.getShowErrorBox());
                ranges.add("%s: %s to %s".formatted(validation.getRegions().getCellRangeAddress(0).formatAsString(),
                        validation.getValidationConstraint().getFormula1(),
                        validation.getValidationConstraint().getFormula2()));
            }
            // as gauges per 10 cm and foot circumferences in millimetres, in the catalogue
            assertEquals(List.of("C5: 4.0 to 200.0", "C7: 6.0 to 50.0"), ranges);
        }
    }

    /** At 38 stitches 72 are 189 mm, too few for a foot of 250; 68 are 179 mm, 8 % less than a foot of 195. */
    @Test
    void namesWhoseCountsToKnitAndMarksWhatIsVeryTight() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.toeUp())) {
            XSSFRow fine = row(workbook, "Whose printed counts", 38);
            assertEquals("XL (−24 %) !", fine.getCell(6).getStringCellValue());
            assertEquals("L (−8 %)", fine.getCell(2).getStringCellValue());
            assertEquals(1, workbook.getSheet(SHEET).getSheetConditionalFormatting().getNumConditionalFormattings());
        }
    }

    @Test
    void aPatternWithoutFeetHasNoAnswerAndNoErrors() throws IOException {
        Design none = Designs.with(Designs.missing(), "None", List.of(Designs.missing().sizes().getLast()));
        try (XSSFWorkbook workbook = Books.of(none)) {
            FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
            Books.formulaCells(workbook).forEach(cell ->
                    assertFalse(evaluator.evaluate(cell).getCellType() == CellType.ERROR, () -> Books.place(cell)));
        }
    }
}
