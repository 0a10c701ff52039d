package turnheel.engine.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import turnheel.engine.formula.Reading.Unread;

class FormulaWordsTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            1+A1    | Character 3: "A1" is not a key: write the key of a row, such as foot.stitches.
            MIN(1   | Character 4: this parenthesis is not closed: add a closing one.
            0,5     | Character 2: "," cannot follow here; + - * / ^ % can. Decimals are written with a point.
            IF(1;2) | Character 1: IF takes 3 arguments.
            """)
    void saysWhatWhereAndWhatToWriteInstead(String text, String expected) {
        assertEquals(expected, FormulaWords.sentence(assertInstanceOf(Unread.class, OwnFormula.read(text))));
    }

    @Test
    void aLongPieceDoesNotHideTheSentence() {
        assertEquals("Character 1: \"" + "x".repeat(30)
                + "…\" is not a key: write the key of a row, such as foot.stitches.", FormulaWords.sentence(assertInstanceOf(Unread.class, OwnFormula.read("x".repeat(5000)))));
    }

    @ParameterizedTest
    @EnumSource
    void everyProblemHasASentence(FormulaProblem problem) {
        String sentence = FormulaWords.sentence(new Unread(problem, 6, "piece", List.of("allowed")));
        assertFalse(sentence.contains("{") || sentence.contains("'"), sentence);
    }

    @ParameterizedTest
    @EnumSource
    void everyFunctionIsExplained(FormulaFunction function) {
        assertFalse(FormulaWords.meaning(function).isBlank());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            ROUND    | ROUND(number; places)
            CEILING  | CEILING(number; step)
            INT      | INT(number)
            MOD      | MOD(number; divisor)
            MIN      | MIN(number; …)
            IF       | IF(comparison; then; otherwise)
            """)
    void aFunctionShowsHowItIsCalled(FormulaFunction function, String call) {
        assertEquals(call, FormulaWords.call(function));
    }
}
