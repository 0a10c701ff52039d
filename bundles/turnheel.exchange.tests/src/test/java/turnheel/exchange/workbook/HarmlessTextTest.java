package turnheel.exchange.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Map;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.engine.design.Design;
import turnheel.engine.design.Size;
import turnheel.exchange.Designs;
import turnheel.exchange.NastyTexts;

/** What a person typed is data: in a title, a size label or a comment it never runs, and it comes back as it was. */
class HarmlessTextTest {

    /**
     * Formulas are what the engine's rules are: functions of named cells, or of cells of their own sheet, or a size's
     * label looked up; no text of a person is in them.
     */
    private static final String RULE = "(?:[a-zA-Z]+_[a-zA-Z]+_size\\d+|knitter_(?:gauge|foot)|\\$[A-Z]{1,2}\\$?\\d+"
            + "|INT|MIN|MAX|MOD|IF|SQRT|ROUND|INDEX|MATCH|[-+*/(),.<>=:]|\\d|E-)+";

    static List<String> nastyTexts() {
        return NastyTexts.all();
    }

    static List<String> nastyLabels() {
        return NastyTexts.labels();
    }

    @ParameterizedTest(name = "[{index}]")
    @MethodSource("nastyTexts")
    void aTitleStaysText(String title) throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.titled(title))) {
            assertNoUnexpectedFormula(workbook);
            for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
                XSSFCell cell = workbook.getSheetAt(i).getRow(0).getCell(0);
                assertEquals(CellType.STRING, cell.getCellType());
                assertEquals(title.isBlank() ? "Untitled pattern" : title, cell.getStringCellValue());
            }
        }
    }

    @ParameterizedTest(name = "[{index}]")
    @MethodSource("nastyLabels")
    void aSizeLabelStaysText(String label) throws IOException {
        Size size = Designs.toeUp().sizes().getFirst();
        Size named = new Size("id", label, size.inputs(), Map.of());
        Design design = Designs.with(Designs.toeUp(), "Labels",
                List.of(Designs.with(named, Map.of(), Map.of("foot.stitches", "60"))));
        try (XSSFWorkbook workbook = Books.of(design)) {
            assertNoUnexpectedFormula(workbook);
            XSSFCell heading = workbook.getSheet("Counts").getRow(2).getCell(3);
            assertEquals(CellType.STRING, heading.getCellType());
            assertEquals(label, heading.getStringCellValue());
            assertEquals(label, workbook.getSheet("Rounds").getRow(3).getCell(0).getStringCellValue());
            String comment = Books.named(workbook, "foot_stitches_size1").getCellComment().getString().getString();
            assertTrue(comment.contains(label), comment);
        }
    }

    private static void assertNoUnexpectedFormula(XSSFWorkbook workbook) {
        List<XSSFCell> formulas = Books.formulaCells(workbook);
        assertFalse(formulas.isEmpty());
        formulas.forEach(cell -> assertTrue(cell.getCellFormula().matches(RULE), cell.getCellFormula()));
    }

    @ParameterizedTest(name = "[{index}]")
    @MethodSource("nastyTexts")
    void whatLooksLikeAFormulaStaysTextWhenTheCellIsEdited(String title) throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.titled(title))) {
            String visible = title.strip();
            boolean lookalike = !visible.isEmpty() && "=+-@\uFF1D".indexOf(visible.charAt(0)) >= 0;
            XSSFCell cell = workbook.getSheet("Pattern").getRow(0).getCell(0);
            assertEquals(lookalike, cell.getCellStyle().getQuotePrefixed());
        }
    }

    @Test
    void anAmpersandInTheTitleIsNoCodeInTheHeader() throws IOException {
        assertEquals("&LKnit && Purl&&L 2&R&A", header("Knit & Purl&L 2"));
        assertEquals("&Lone two&R&A", header("one\ntwo"));
    }

    @Test
    void aTitleThatIsFarTooLongIsCutWhereTheFormatEndsAndShowsIt() throws IOException {
        String title = "=" + "endless ".repeat(5_000);
        try (XSSFWorkbook workbook = Books.of(Designs.titled(title))) {
            String inCell = workbook.getSheet("Pattern").getRow(0).getCell(0).getStringCellValue();
            assertEquals(32_767, inCell.length());
            assertTrue(inCell.endsWith("…"));
        }
        assertTrue(header(title).length() <= 255);
    }

    private static String header(String title) throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.titled(title))) {
            XSSFSheet sheet = workbook.getSheet("Counts");
            return sheet.getCTWorksheet().getHeaderFooter().getOddHeader();
        }
    }
}
