package turnheel.exchange.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormulaTokensTest {

    private static final Map<String, String> KEYS = Map.of("leg_loops_size1", "leg.loops", "$D$12", "leg.loops",
            "Counts!D12", "leg.loops", "'My ''Counts'''!$D$12", "leg.loops", "E12", "leg.loops[L]");

    private static Optional<String> keyOf(String word) {
        return Optional.ofNullable(KEYS.get(word));
    }

    private static FormulaTokens tokens(String formula) {
        return FormulaTokens.of(formula, FormulaTokensTest::keyOf);
    }

    @ParameterizedTest(name = "{0} and {1}")
    @CsvSource(delimiter = '|', textBlock = """
            INT(leg_loops_size1+1E-9)        | int( $D$12 + 0.000000001 )       | true
            0.24390243902439024*$D$12        | 0.24390243902439*leg_loops_size1 | true
            0.5*leg_loops_size1              | .5*Counts!D12                    | true
            1.50                             | 1.5                              | true
            IF($D$12<=2,1,0)                 | if('My ''Counts'''!$D$12<=2,1,0) | true
            _xlfn.CEILING.MATH(2)            | CEILING.MATH(2)                  | true
            leg_loops_size1                  | E12                              | false
            0.2439*leg_loops_size1           | 0.244*leg_loops_size1            | false
            MIN(2,1)                         | MAX(2,1)                         | false
            2*(3+4)                          | 2*3+4                            | false
            $D$12-1                          | $D$12+1                          | false
            LOG10(2)                         | LOG10(3)                         | false
            """)
    void formulasAreAlikeThatDifferInSpellingOnly(String one, String other, boolean same) {
        assertEquals(same, tokens(one).isSameAs(tokens(other)));
        assertEquals(same, tokens(other).isSameAs(tokens(one)));
    }

    @Test
    void aFormulaIsTranslatedIntoKeysAndItsOperandsAreKnown() {
        String formula = "ROUND(leg_loops_size1 / 2,0)+E12*foo";
        assertEquals("ROUND(leg.loops / 2,0)+leg.loops[L]*FOO",
                FormulaTokens.translated(formula, FormulaTokensTest::keyOf));
        assertEquals(List.of("leg_loops_size1", "E12", "foo"), FormulaTokens.operands(formula));
    }
}
