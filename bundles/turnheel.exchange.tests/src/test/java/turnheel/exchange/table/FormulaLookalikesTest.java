package turnheel.exchange.table;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FormulaLookalikesTest {

    @ParameterizedTest
    @ValueSource(strings = {"=1", "+1", "-1", "@a", "\tx", "\rx", "\nx", " =1", "\u2003=1", "\uFF1D1", "\uFF0B1",
            "\uFF0D1", "\uFF20a", "-", "="})
    void isRun(String text) {
        assertTrue(FormulaLookalikes.contains(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "M", "38/39", "1-2", "a=b", "'=1", "−5", "(1)", "–"})
    void isNotRun(String text) {
        assertFalse(FormulaLookalikes.contains(text));
    }
}
