package turnheel.exchange.sizes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;

import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

import turnheel.engine.design.Quantity;
import turnheel.engine.term.Key;
import turnheel.exchange.sizes.SizeTableProblem.Kind;

/** Sizes from workbooks, as spreadsheet programs save them. */
class SizeWorkbookTest {

    private static final Key LENGTH = new Key("body.footLength");

    private static XSSFSheet sheet(XSSFWorkbook workbook, String... headings) {
        XSSFSheet sheet = workbook.createSheet();
        sheet.createRow(0);
        for (int i = 0; i < headings.length; i++) {
            sheet.getRow(0).createCell(i).setCellValue(headings[i]);
        }
        return sheet;
    }

    private static XSSFCell cell(XSSFSheet sheet, int row, int column) {
        return (sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row)).createCell(column);
    }

    private static SizeTableReading read(XSSFWorkbook workbook) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        workbook.write(out);
        return SizeTableReader.workbook(out.toByteArray());
    }

    @Test
    void readsNumbersTextsFormulasAndPercent() throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            workbook.createSheet("hidden");
            XSSFSheet sheet = sheet(workbook, "Size", "Foot length (cm)", "ease-around");
            workbook.setSheetHidden(0, true);
            XSSFCellStyle percent = workbook.createCellStyle();
            percent.setDataFormat(workbook.createDataFormat().getFormat("0.0%"));
            cell(sheet, 1, 0).setCellValue(38);
            cell(sheet, 1, 1).setCellValue(24.2);
            cell(sheet, 1, 2).setCellValue(-0.075);
            sheet.getRow(1).getCell(2).setCellStyle(percent);
            cell(sheet, 3, 0).setCellValue("L");
            cell(sheet, 3, 1).setCellFormula("B2+0.1");
            cell(sheet, 3, 2).setCellValue("-8 %");
            workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
            cell(sheet, 4, 0).setCellValue("XL");
            cell(sheet, 4, 1).setCellValue("9 3/4 in");
            cell(sheet, 4, 2).setCellValue("-8 %");
            SizeTableReading reading = read(workbook);
            assertEquals(List.of(), reading.problems());
            assertEquals(List.of("38", "L", "XL"), reading.sizes().stream().map(size -> size.label()).toList());
            assertEquals(Map.of(LENGTH, Quantity.parse("24.2 cm"), new Key("fit.easeAround"), Quantity.parse("-7.5 %")),
                    reading.sizes().getFirst().inputs());
            assertEquals(Quantity.parse("24.3 cm"), reading.sizes().get(1).inputs().get(LENGTH));
            assertEquals(Quantity.parse("9 3/4 in"), reading.sizes().get(2).inputs().get(LENGTH));
        }
    }

    @Test
    void saysWhereACellHoldsNoMeasurement() throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            XSSFSheet sheet = sheet(workbook, "size", "foot-length (mm)");
            cell(sheet, 1, 0).setCellValue("error");
            cell(sheet, 1, 1).setCellErrorValue(FormulaError.REF);
            cell(sheet, 2, 0).setCellValue("never computed");
            cell(sheet, 2, 1).setCellFormula("200+40");
            cell(sheet, 3, 0).setCellValue("yes");
            cell(sheet, 3, 1).setCellValue(true);
            List<SizeTableProblem> problems = read(workbook).problems();
            assertEquals(List.of(Kind.NOT_A_QUANTITY, Kind.NOT_A_QUANTITY, Kind.NOT_A_QUANTITY),
                    problems.stream().map(SizeTableProblem::kind).toList());
            assertEquals(List.of("#REF!", "=200+40", "true"), problems.stream().map(SizeTableProblem::found).toList());
            assertEquals(List.of(2, 3, 4), problems.stream().map(SizeTableProblem::row).toList());
            assertTrue(problems.stream().allMatch(problem -> problem.column() == 2));
        }
    }

    @Test
    void whatIsNoWorkbookIsAProblem() throws IOException {
        byte[] whole;
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            sheet(workbook, "size", "foot-length");
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            workbook.write(out);
            whole = out.toByteArray();
        }
        byte[] oldFormat = HexFormat.of().parseHex("d0cf11e0a1b11ae10000");
        for (byte[] content : List.of(new byte[0], "size,foot-length".getBytes(StandardCharsets.UTF_8), oldFormat,
                Arrays.copyOf(whole, whole.length / 2))) {
            SizeTableReading reading = SizeTableReader.workbook(content);
            assertTrue(reading.sizes().isEmpty());
            assertEquals(List.of(Kind.UNREADABLE), reading.problems().stream().map(SizeTableProblem::kind).toList());
        }
    }
}
