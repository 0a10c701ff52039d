package turnheel.exchange.workbook;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.engine.design.Design;
import turnheel.engine.design.Length;
import turnheel.engine.design.Size;
import turnheel.engine.grading.Graded;
import turnheel.engine.yarn.Patterns;
import turnheel.engine.term.Key;
import turnheel.exchange.Designs;
import turnheel.exchange.edits.Edit;
import turnheel.exchange.edits.Edits;

/** LibreOffice recalculates every workbook; the program is started once for all of them. */
class LibreOfficeRecalculationTest {

    private static final Map<String, Design> DESIGNS = Designs.all();
    private static final Key FOOT_LENGTH = new Key("body.footLength");
    private static final String NASTY_TITLE = "=1+1 & _x0041_ <b>";
    private static final List<String> NASTY_LABELS = List.of("-2", "@A1", "+1", "R1C1", "=SUM(A1)");
    private static final String STALE_CELL = "foot_sole_size2";

    @TempDir
    static Path folder;
    private static Path recalculated;

    static Set<String> designs() {
        return DESIGNS.keySet();
    }

    @BeforeAll
    static void recalculateAllWorkbooksAtOnce() throws IOException, InterruptedException {
        List<Path> workbooks = new ArrayList<>();
        for (Map.Entry<String, Design> design : DESIGNS.entrySet()) {
            workbooks.add(Files.write(folder.resolve(design.getKey() + ".xlsx"), Books.write(design.getValue())));
        }
        workbooks.add(stale());
        workbooks.add(changed());
        workbooks.add(typed());
        workbooks.add(Files.write(folder.resolve("nasty.xlsx"), Books.write(nasty())));
        recalculated = LibreOffice.recalculate(workbooks, folder);
    }

    private static Design nasty() {
        List<Size> sizes = new ArrayList<>();
        for (int i = 0; i < NASTY_LABELS.size(); i++) {
            Size size = Designs.toeUp().sizes().get(i);
            sizes.add(new Size(size.id(), NASTY_LABELS.get(i), size.inputs(), size.overrides()));
        }
        return Designs.with(Designs.toeUp(), NASTY_TITLE, sizes);
    }

    /** A workbook in which one stored result is wrong. */
    private static Path stale() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.toeUp())) {
            Books.named(workbook, STALE_CELL).getCTCell().setV("999");
            return save(workbook, "stale.xlsx");
        }
    }

    /** A workbook in which somebody changed a measurement; all results that follow are stale. */
    private static Path changed() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.toeUp())) {
            Books.cell(workbook, FOOT_LENGTH, 2).setCellValue(251.5);
            return save(workbook, "changed.xlsx");
        }
    }

    /** A workbook in which a knitter typed a gauge and a foot. */
    private static Path typed() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.toeUp())) {
            Books.named(workbook, "knitter_gauge").setCellValue(29.5);
            Books.named(workbook, "knitter_foot").setCellValue(23);
            return save(workbook, "typed.xlsx");
        }
    }

    private static Path save(XSSFWorkbook workbook, String name) throws IOException {
        Path file = folder.resolve(name);
        try (OutputStream out = Files.newOutputStream(file)) {
            workbook.write(out);
        }
        return file;
    }

    private static List<String> differences(String name) throws IOException {
        try (XSSFWorkbook stored = Books.read(Files.readAllBytes(folder.resolve(name + ".xlsx")));
                XSSFWorkbook computed = Books.read(Files.readAllBytes(recalculated.resolve(name + ".xlsx")))) {
            return Recalculation.differences(stored, computed);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("designs")
    void everyFormulaGivesTheStoredValue(String name) throws IOException {
        assertEquals(List.of(), differences(name));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("designs")
    void everyNumberIsTheEngines(String name) throws IOException {
        try (XSSFWorkbook computed = Books.read(Files.readAllBytes(recalculated.resolve(name + ".xlsx")))) {
            assertNumbers(Patterns.grade(DESIGNS.get(name)), computed);
        }
    }

    private static Edits readBack(Design design, String name) throws IOException {
        return WorkbookReader.read(Files.readAllBytes(recalculated.resolve(name + ".xlsx")), Patterns.grade(design), "");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("designs")
    void nothingIsReadBackFromAWorkbookThatWasOnlySavedAgain(String name) throws IOException {
        assertEquals(new Edits(List.of(), List.of()), readBack(DESIGNS.get(name), name));
    }

    @Test
    void aChangedMeasurementIsReadBackThoughEveryOtherProgramRewritesFormulas() throws IOException {
        Edits edits = readBack(Designs.toeUp(), "changed");
        assertEquals(List.of(), edits.problems());
        assertEquals(List.of(FOOT_LENGTH), edits.edits().stream().map(Edit::key).toList());
        Edit.Number number = assertInstanceOf(Edit.Number.class, edits.edits().getFirst());
        assertEquals(Optional.of(Length.ofMm(251.5)), number.value());
        assertEquals(Optional.of("M"), number.size());
    }

    @Test
    void labelsThatLookLikeFormulasAreKnownAgain() throws IOException {
        assertEquals(new Edits(List.of(), List.of()), readBack(nasty(), "nasty"));
    }

    @Test
    void aStaleValueIsFound() throws IOException {
        List<String> differences = differences("stale");
        assertEquals(1, differences.size(), differences::toString);
        assertTrue(differences.getFirst().contains("stored 999.0"), differences::toString);
    }

    @Test
    void aChangedMeasurementGivesWhatTheEngineGivesWithTheCountsHeld() throws IOException {
        Graded expected = HeldCounts.grade(Patterns.grade(Designs.toeUp()), 2, FOOT_LENGTH.name(), "251.5 mm");
        try (XSSFWorkbook computed = Books.read(Files.readAllBytes(recalculated.resolve("changed.xlsx")))) {
            assertNumbers(expected, computed);
        }
    }

    /** 56, 60, 64, 68 and 72 stitches at 29.5 over 10 cm; 64 fit a foot of 241.1 mm, 60 one of 226.0. */
    @Test
    void aGaugeAndAFootThatAreTypedInNameTheSizeToKnit() throws IOException {
        try (XSSFWorkbook computed = Books.read(Files.readAllBytes(recalculated.resolve("typed.xlsx")))) {
            XSSFSheet sheet = computed.getSheet("Gauge-by-size table");
            Map<String, Integer> rows = new HashMap<>();
            sheet.forEach(row -> {
                if (row.getCell(0) != null && row.getCell(0).getCellType() == CellType.STRING) {
                    rows.put(row.getCell(0).getStringCellValue(), row.getRowNum());
                }
            });
            assertEquals("S", sheet.getRow(rows.get("Knit the counts of")).getCell(2).getStringCellValue());
            XSSFRow fits = sheet.getRow(rows.get("Fits a foot of"));
            assertEquals(60 / 29.5 * 10 / 0.9, fits.getCell(3).getNumericCellValue(), 1e-9);
            assertEquals(64 / 29.5 * 10 / 0.9, fits.getCell(4).getNumericCellValue(), 1e-9);
        }
    }

    @Test
    void whatLooksLikeAFormulaIsTextThereToo() throws IOException {
        try (XSSFWorkbook opened = Books.read(Files.readAllBytes(recalculated.resolve("nasty.xlsx")))) {
            assertText(NASTY_TITLE, opened.getSheet("Pattern").getRow(0).getCell(0));
            for (int i = 0; i < NASTY_LABELS.size(); i++) {
                assertText(NASTY_LABELS.get(i), opened.getSheet("Counts").getRow(2).getCell(3 + i));
            }
        }
    }

    private static void assertText(String expected, XSSFCell cell) {
        assertEquals(CellType.STRING, cell.getCellType());
        assertEquals(expected, cell.getStringCellValue());
    }

    private static void assertNumbers(Graded expected, XSSFWorkbook computed) {
        assertAll(() -> Books.eachNumber(expected, (number, size) -> {
            XSSFCell cell = Books.cell(computed, number.key(), size);
            assertTrue(Books.same(number.value(), cell.getNumericCellValue()),
                    () -> "%s of size %d: engine %s, LibreOffice %s".formatted(number.key(), size + 1,
                            number.value(), cell.getNumericCellValue()));
        }));
    }
}
