package turnheel.exchange.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import turnheel.engine.design.Design;
import turnheel.engine.design.Materials;
import turnheel.engine.design.OwnRow;
import turnheel.engine.design.Yarn;
import turnheel.engine.grading.Graded;
import turnheel.engine.term.Key;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.Designs;
import turnheel.exchange.edits.Edits;

/** Own rows are live formulas in the workbook, and two spreadsheet programs compute what the engine does. */
class OwnRowsInWorkbookTest {

    private static final String NASTY_LABEL = "=1+1";
    private static final String SHEET = "Counts";
    /** The last three have no numbers: unread, without the row that it reads, and passing that on. */
    private static final List<OwnRow> ROWS = List.of(
            row("share", "Cuff of leg", "=cuff.rounds/leg.rounds"),
            row("shareInPercent", NASTY_LABEL, "own.share*100"),
            row("tenth", "", "10%*foot.stitches"),
            row("spare", "Spare yarn", "ROUND(own.margin*yarn.metres;1)"),
            row("margin", "", "IF(foot.stitches>=64,15%,10%)"),
            row("even", "", "EVEN(foot.rounds/3)+MOD(foot.stitches;7)-MIN(own.tenth;6.5)"),
            row("ratio", "", "gauge.rounds/gauge.stitches"),
            row("over", "", "1/(foot.stitches-foot.stitches)"),
            row("unread", "", "LOG(foot.stitches)"),
            row("passes", "", "own.unread+1"));
    private static final int EMPTY_ROWS = 3;

    @TempDir
    static Path folder;
    private static Graded graded;
    private static byte[] workbook;
    private static byte[] changed;
    private static byte[] recalculated;
    private static byte[] changedRecalculated;

    private static OwnRow row(String name, String label, String formula) {
        return new OwnRow(new Key("own." + name), label, formula);
    }

    private static Design design() {
        return Designs.toeUp().withMaterials(Materials.of(Yarn.of("Lamp Sock", 200, 50))).withOwnRows(ROWS);
    }

    @BeforeAll
    static void recalculateInLibreOffice() throws IOException, InterruptedException {
        graded = Patterns.grade(design());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PatternWorkbook.write(graded, out);
        workbook = out.toByteArray();
        changed = withGauge(49.5);
        Path own = Files.write(folder.resolve("own.xlsx"), workbook);
        Path other = Files.write(folder.resolve("changed.xlsx"), changed);
        Path results = LibreOffice.recalculate(List.of(own, other), folder);
        recalculated = Files.readAllBytes(results.resolve("own.xlsx"));
        changedRecalculated = Files.readAllBytes(results.resolve("changed.xlsx"));
    }

    /** The workbook with another round gauge typed into its first size. */
    private static byte[] withGauge(double rounds) throws IOException {
        try (XSSFWorkbook book = Books.read(workbook); OutputStream out = new ByteArrayOutputStream()) {
            Books.cell(book, new Key("gauge.rounds"), 0).setCellValue(rounds);
            book.write(out);
            return ((ByteArrayOutputStream) out).toByteArray();
        }
    }

    @Test
    void areFormulasOverTheNamesOfOtherRows() throws IOException {
        try (XSSFWorkbook book = Books.read(workbook)) {
            assertEquals("cuff_rounds_size1/leg_rounds_size1", cell(book, "share", 0).getCellFormula());
            assertEquals("own_share_size3*100", cell(book, "shareInPercent", 2).getCellFormula());
            assertEquals("10/100*foot_stitches_size2", cell(book, "tenth", 1).getCellFormula());
        }
    }

    @Test
    void haveEmptyCellsWhereTheyHaveNoNumbers() throws IOException {
        try (XSSFWorkbook book = Books.read(workbook)) {
            for (OwnRow row : ROWS.subList(ROWS.size() - EMPTY_ROWS, ROWS.size())) {
                assertEquals(CellType.BLANK, Books.cell(book, row.key(), 0).getCellType(), row.key().name());
            }
            for (OwnRow row : ROWS.subList(0, ROWS.size() - EMPTY_ROWS)) {
                assertEquals(CellType.FORMULA, Books.cell(book, row.key(), 0).getCellType(), row.key().name());
            }
        }
    }

    @Test
    void giveInLibreOfficeWhatTheEngineGives() throws IOException {
        try (XSSFWorkbook stored = Books.read(workbook); XSSFWorkbook computed = Books.read(recalculated)) {
            assertEquals(List.of(), Recalculation.differences(stored, computed));
            Books.eachNumber(graded, (number, size) -> assertTrue(Books.same(number.value(),
                    Books.cell(computed, number.key(), size).getNumericCellValue()), number.key()::name));
        }
    }

    @Test
    void areReadBackUnchangedAfterAnotherProgramSavedThem() {
        assertEquals(new Edits(List.of(), List.of()), WorkbookReader.read(workbook, graded, ""));
        assertEquals(new Edits(List.of(), List.of()), WorkbookReader.read(recalculated, graded, ""));
    }

    @Test
    void giveInPoiWhatTheEngineGives() throws IOException {
        try (XSSFWorkbook book = Books.read(workbook)) {
            FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
            Books.eachNumber(graded, (number, size) -> assertEquals(number.value(),
                    evaluator.evaluate(Books.cell(book, number.key(), size)).getNumberValue(), 1e-9,
                    number.key()::name));
        }
    }

    @Test
    void followWhatIsTypedOver() throws IOException {
        try (XSSFWorkbook book = Books.read(changed); XSSFWorkbook computed = Books.read(changedRecalculated)) {
            FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
            // 49.5 rounds at 32 stitches; the other sizes keep 44
            assertEquals(1.546875, evaluator.evaluate(cell(book, "ratio", 0)).getNumberValue(), 1e-12);
            assertEquals(1.546875, cell(computed, "ratio", 0).getNumericCellValue(), 1e-12);
            assertEquals(1.375, cell(computed, "ratio", 1).getNumericCellValue(), 1e-12);
        }
    }

    @Test
    void standUnderAHeadingOfTheirOwnWithTheirLabelsAsText() throws IOException {
        try (XSSFWorkbook book = Books.read(recalculated)) {
            int first = cell(book, "share", 0).getRowIndex();
            XSSFSheet sheet = book.getSheet(SHEET);
            assertEquals("Own rows", sheet.getRow(first - 1).getCell(0).getStringCellValue());
            List<String> labels = new ArrayList<>();
            for (int i = 0; i < ROWS.size(); i++) {
                XSSFCell label = sheet.getRow(first + i).getCell(1);
                assertEquals(CellType.STRING, label.getCellType());
                labels.add(label.getStringCellValue());
            }
            assertEquals(ROWS.stream().map(row -> row.parameter().label()).toList(), labels);
            assertEquals(NASTY_LABEL, labels.get(1));
        }
    }

    @Test
    void areExplainedInTheLegendAndNotValidated() throws IOException {
        try (XSSFWorkbook book = Books.read(workbook); XSSFWorkbook without = Books.of(Designs.toeUp())) {
            assertTrue(firstColumn(book).contains("Own row"));
            assertFalse(firstColumn(without).contains("Own row"));
            XSSFCell own = cell(book, "share", 0);
            assertNull(own.getCellComment());
            assertTrue(book.getSheet(SHEET).getDataValidations().stream().noneMatch(
                    validation -> validation.getRegions().getCellRangeAddress(0).isInRange(own)));
        }
    }

    private static List<String> firstColumn(XSSFWorkbook book) {
        List<String> texts = new ArrayList<>();
        book.getSheet(SHEET).forEach(row -> {
            if (row.getCell(0) != null) {
                texts.add(row.getCell(0).getStringCellValue());
            }
        });
        return texts;
    }

    private static XSSFCell cell(XSSFWorkbook book, String name, int size) {
        return Books.cell(book, new Key("own." + name), size);
    }
}
