package turnheel.engine.term;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static turnheel.engine.term.Terms.atLeast;
import static turnheel.engine.term.Terms.choose;
import static turnheel.engine.term.Terms.dividedBy;
import static turnheel.engine.term.Terms.equal;
import static turnheel.engine.term.Terms.floor;
import static turnheel.engine.term.Terms.greatest;
import static turnheel.engine.term.Terms.least;
import static turnheel.engine.term.Terms.minus;
import static turnheel.engine.term.Terms.nearest;
import static turnheel.engine.term.Terms.number;
import static turnheel.engine.term.Terms.plus;
import static turnheel.engine.term.Terms.remainder;
import static turnheel.engine.term.Terms.rounded;
import static turnheel.engine.term.Terms.times;

import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class NotationTest {

    private static final Term A = new Term.Reference(new Key("foot.a"));
    private static final Term B = new Term.Reference(new Key("foot.b"));
    private static final Term C = new Term.Reference(new Key("foot.c"));
    private static final Map<String, Double> VALUES = Map.of("foot.a", 64.0, "foot.b", 4.0, "foot.c", -2.5);

    static Stream<Arguments> terms() {
        return Stream.of(
                Arguments.of(plus(plus(A, B), C), "A+B+C", "A + B + C", "64 + 4 + −2.5"),
                Arguments.of(plus(A, plus(B, C)), "A+(B+C)", "A + (B + C)", "64 + (4 + −2.5)"),
                Arguments.of(minus(A, minus(B, C)), "A-(B-C)", "A − (B − C)", "64 − (4 − −2.5)"),
                Arguments.of(times(plus(A, B), C), "(A+B)*C", "(A + B) × C", "(64 + 4) × −2.5"),
                Arguments.of(plus(A, times(B, C)), "A+B*C", "A + B × C", "64 + 4 × −2.5"),
                Arguments.of(dividedBy(A, times(B, C)), "A/(B*C)", "A ÷ (B × C)", "64 ÷ (4 × −2.5)"),
                Arguments.of(dividedBy(dividedBy(A, B), C), "A/B/C", "A ÷ B ÷ C", "64 ÷ 4 ÷ −2.5"),
                Arguments.of(times(A, number(-3)), "A*(-3)", "A × (−3)", "64 × (−3)"),
                Arguments.of(times(A, number(0)), "A*0", "A × 0", "64 × 0"),
                Arguments.of(minus(A, number(0.045)), "A-0.045", "A − 0.045", "64 − 0.045"),
                Arguments.of(nearest(dividedBy(A, number(2))), "(0-1*INT(0.5-(A/2-0)/1+1E-9))", "nearest(A ÷ 2)",
                        "nearest(64 ÷ 2)"),
                Arguments.of(nearest(minus(A, B), minus(A, C), plus(B, C)),
                        "((A-C)-(B+C)*INT(0.5-(A-B-(A-C))/(B+C)+1E-9))", "nearest(A − B; A − C mod B + C)",
                        "nearest(64 − 4; 64 − −2.5 mod 4 + −2.5)"),
                Arguments.of(floor(minus(A, B)), "INT(A-B+1E-9)", "floor(A − B)", "floor(64 − 4)"),
                Arguments.of(greatest(A, least(B, C)), "MAX(A,MIN(B,C))", "greatest(A; least(B; C))",
                        "greatest(64; least(4; −2.5))"),
                Arguments.of(times(number(2), remainder(A, B)), "2*MOD(A,B)", "2 × remainder(A; B)",
                        "2 × remainder(64; 4)"),
                Arguments.of(times(rounded(Rounding.NEAREST, dividedBy(A, B), 0), B), "ROUND(ROUND(A/B,9),0)*B",
                        "round(A ÷ B) × B", "round(64 ÷ 4) × 4"),
                Arguments.of(rounded(Rounding.UP, A, 2), "ROUNDUP(ROUND(A,9),2)", "roundUp(A; 2)", "roundUp(64; 2)"),
                Arguments.of(rounded(Rounding.DOWN, A, -1), "ROUNDDOWN(ROUND(A,9),-1)", "roundDown(A; −1)",
                        "roundDown(64; −1)"),
                Arguments.of(rounded(Rounding.NEAREST, A, 9), "ROUND(A,9)", "round(A; 9)", "round(64; 9)"),
                Arguments.of(power(power(A, B), number(-2)), "A^B^(-2)", "A^B^(−2)", "64^4^(−2)"),
                Arguments.of(power(A, power(B, C)), "A^(B^C)", "A^(B^C)", "64^(4^−2.5)"),
                Arguments.of(times(A, power(times(B, C), A)), "A*(B*C)^A", "A × (B × C)^A", "64 × (4 × −2.5)^64"),
                Arguments.of(choose(atLeast(A, plus(B, C)), A, choose(equal(A, B), B, C)), "IF(A>=B+C,A,IF(A=B,B,C))",
                        "if(A ≥ B + C; A; if(A = B; B; C))", "if(64 ≥ 4 + −2.5; 64; if(64 = 4; 4; −2.5))"));
    }

    private static Term power(Term base, Term exponent) {
        return new Term.Arithmetic(Operation.POWER, base, exponent);
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("terms")
    void writesAsFewParenthesesAsKeepTheOrder(Term term, String formula, String plain, String withValues) {
        assertEquals(formula, Notation.formula(term, NotationTest::name));
        assertEquals(plain, Notation.plain(term, NotationTest::name));
        assertEquals(withValues, Notation.withValues(term, key -> VALUES.get(key.name())));
    }

    private static String name(Key key) {
        return key.name().substring("foot.".length()).toUpperCase(Locale.ROOT);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = """
            64,             64
            -10,            −10
            0.5,            0.5
            63.93600000001, 63.936
            0.00005,        0.0001
            0.00004,        0
            -0.00004,       0
            -0.0,           0
            1E9,            1000000000
            NaN,            –
            Infinity,       –
            """)
    void writesNumbersForReading(double value, String expected) {
        assertEquals(expected, Notation.number(value));
    }
}
