package turnheel.exchange.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import turnheel.engine.formula.OwnFormula;
import turnheel.engine.formula.RandomFormulas;
import turnheel.engine.formula.Reading.Read;
import turnheel.engine.term.Key;
import turnheel.engine.term.Notation;
import turnheel.engine.term.Term;

/**
 * LibreOffice reads random formulas of a designer, in the designer's own words and as they are exported, as the engine
 * does; the program is started once for all of them.
 */
class OwnFormulasInLibreOfficeTest {

    private static final long SEED = 20260117;
    /** What precedence and functions leave to a program's reading, one line each. */
    private static final List<String> SUBTLE = List.of("-2^2", "0-2^2", "2^3^2", "-heel.centre^2", "-50%", "200%^2",
            "2^-1", "10%%", "ROUND(-2.5;0)", "ROUND(1.005;2)", "ROUNDUP(0.1+0.2;1)", "INT(-8.9)",
            "CEILING(-2.5;2)", "FLOOR(-2.5;2)", "EVEN(-1)", "ODD(0)", "ODD(-2)", "MOD(-7;4)", "MOD(7;-4)",
            "MOD(0.3;0.1)", "QUOTIENT(-7;2)", "IF(0.1+0.2=0.3;1;2)", "IF(heel.flapRows;1;2)", "MIN(5;1/heel.flapRows)");

    @TempDir
    static Path folder;
    private static final List<String> TEXTS = new ArrayList<>(SUBTLE);
    private static XSSFSheet recalculated;

    @BeforeAll
    static void recalculateAllAtOnce() throws IOException, InterruptedException {
        TEXTS.addAll(RandomFormulas.some(400, SEED));
        Path file = folder.resolve("formulas.xlsx");
        try (XSSFWorkbook workbook = new XSSFWorkbook(); OutputStream out = Files.newOutputStream(file)) {
            XSSFSheet sheet = workbook.createSheet("Formulas");
            XSSFRow values = sheet.createRow(0);
            for (Map.Entry<Key, Double> value : RandomFormulas.VALUES.entrySet()) {
                XSSFCell cell = values.createCell(values.getPhysicalNumberOfCells());
                cell.setCellValue(value.getValue());
                XSSFName name = workbook.createName();
                name.setNameName(value.getKey().name());
                name.setRefersToFormula(new CellReference(sheet.getSheetName(), 0, cell.getColumnIndex(), true, true)
                        .formatAsString());
            }
            for (int i = 0; i < TEXTS.size(); i++) {
                XSSFRow row = sheet.createRow(i + 1);
                row.createCell(0).setCellFormula(TEXTS.get(i).replace(';', ','));
                row.createCell(1).setCellFormula(Notation.formula(term(TEXTS.get(i)), Key::name));
            }
            workbook.write(out);
        }
        Path result = LibreOffice.recalculate(List.of(file), folder).resolve(file.getFileName());
        try (XSSFWorkbook workbook = Books.read(Files.readAllBytes(result))) {
            recalculated = workbook.getSheetAt(0);
        }
    }

    @Test
    void theDesignersOwnWordsGiveWhatTheEngineGives() {
        assertEquals(List.of(), differences(0));
    }

    @Test
    void theExportedFormulaGivesWhatTheEngineGives() {
        assertEquals(List.of(), differences(1));
    }

    @Test
    void moreThanHalfOfThemGiveNumbersAndSomeDoNot() {
        long numbers = TEXTS.stream().map(OwnFormulasInLibreOfficeTest::value).filter(Double::isFinite).count();
        assertTrue(numbers > TEXTS.size() / 2 && numbers < TEXTS.size(), numbers + " of " + TEXTS.size());
    }

    private static List<String> differences(int column) {
        List<String> differences = new ArrayList<>();
        for (int i = 0; i < TEXTS.size(); i++) {
            XSSFCell cell = recalculated.getRow(i + 1).getCell(column);
            double there = cell.getCachedFormulaResultType() == CellType.NUMERIC ? cell.getNumericCellValue()
                    : Double.NaN;
            double here = value(TEXTS.get(i));
            if (Double.isNaN(here) ? !Double.isNaN(there) : !Books.same(here, there)) {
                differences.add("%s = %s here, %s = %s there".formatted(TEXTS.get(i), here, cell.getCellFormula(), there));
            }
        }
        return differences;
    }

    private static double value(String text) {
        return term(text).evaluate(RandomFormulas.VALUES::get);
    }

    private static Term term(String text) {
        return assertInstanceOf(Read.class, OwnFormula.read(text), text).term();
    }
}
