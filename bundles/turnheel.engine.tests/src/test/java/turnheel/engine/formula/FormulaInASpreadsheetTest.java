package turnheel.engine.formula;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellReference;
import turnheel.engine.fixture.Deep;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.formula.Reading.Read;
import turnheel.engine.term.Key;
import turnheel.engine.term.Notation;
import turnheel.engine.term.Term;

/** Somebody else's evaluator reads the designer's own text, and what is exported for it, as the engine does. */
class FormulaInASpreadsheetTest {

    private final HSSFWorkbook workbook = new HSSFWorkbook();
    private final FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
    private final Cell cell;

    FormulaInASpreadsheetTest() {
        Row values = workbook.createSheet("Counts").createRow(0);
        for (Map.Entry<Key, Double> value : RandomFormulas.VALUES.entrySet()) {
            Cell named = values.createCell(values.getPhysicalNumberOfCells());
            named.setCellValue(value.getValue());
            var name = workbook.createName();
            name.setNameName(value.getKey().name());
            name.setRefersToFormula(new CellReference("Counts", 0, named.getColumnIndex(), true, true).formatAsString());
        }
        cell = workbook.getSheetAt(0).createRow(1).createCell(0);
    }

    @Property(seed = Repeatable.SEED, tries = 2000)
    void aSpreadsheetReadsTheSame(@ForAll("texts") String text) {
        check(text);
    }

    @Deep
    void aSpreadsheetReadsTheSameOfManyMore(@ForAll("texts") String text) {
        check(text);
    }

    @Provide
    Arbitrary<String> texts() {
        return RandomFormulas.texts();
    }

    private void check(String text) {
        Term term = assertInstanceOf(Read.class, OwnFormula.read(text)).term();
        double expected = term.evaluate(RandomFormulas.VALUES::get);
        same(expected, evaluate(text.replace(';', ',')), text);
        String exported = Notation.formula(term, Key::name);
        same(expected, evaluate(exported), text + " exported as " + exported);
    }

    private static void same(double expected, double actual, String formula) {
        boolean same = Double.isNaN(expected) ? Double.isNaN(actual)
                : Math.abs(expected - actual) <= 1e-9 * Math.max(1, Math.abs(expected));
        assertTrue(same, () -> "%s: %s here, %s there".formatted(formula, expected, actual));
    }

    /** The number, or NaN for an error. */
    private double evaluate(String formula) {
        cell.setCellFormula(formula);
        evaluator.clearAllCachedResultValues();
        CellValue result = evaluator.evaluate(cell);
        return result.getCellType() == CellType.ERROR ? Double.NaN : result.getNumberValue();
    }
}
