package turnheel.engine.term;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Set;

import org.junit.jupiter.api.Test;
import turnheel.engine.fixture.Spreadsheet;

class RootTest {

    private static final Key AREA = new Key("foot.length");
    private static final Term ROOT = Terms.root(Terms.dividedBy(new Term.Reference(AREA), Terms.number(4)));

    @Test
    void isTheSquareRoot() {
        assertEquals(1.5, ROOT.evaluate(key -> 9));
        assertEquals(0, ROOT.evaluate(key -> 0));
        assertTrue(Double.isNaN(ROOT.evaluate(key -> -1)));
        assertEquals(Set.of(AREA), ROOT.keys());
    }

    @Test
    void isWrittenForSpreadsheetsAndForReading() {
        assertEquals("2*SQRT(A1/4)", Notation.formula(Terms.times(Terms.number(2), ROOT), key -> "A1"));
        assertEquals("root(9 ÷ 4)", Notation.withValues(ROOT, key -> 9));
    }

    @Test
    void isTheSameToTheLastBitInASpreadsheetAndAnErrorBelowZero() {
        Spreadsheet spreadsheet = new Spreadsheet();
        for (double area : new double[] {0.1, 2, 1e-9, 153.40909090909, 1e12}) {
            assertEquals(ROOT.evaluate(key -> area), spreadsheet.evaluate(ROOT, Map.of(AREA, area)));
        }
        assertThrows(AssertionError.class, () -> spreadsheet.evaluate(ROOT, Map.of(AREA, -1.0)));
    }
}
