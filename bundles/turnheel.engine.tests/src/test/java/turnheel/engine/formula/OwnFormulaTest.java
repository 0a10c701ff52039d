package turnheel.engine.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.formula.Reading.Read;
import turnheel.engine.term.Key;
import turnheel.engine.term.Notation;
import turnheel.engine.term.Term;

class OwnFormulaTest {

    private static final Map<String, Double> VALUES = Map.of("foot.stitches", 66.0, "gauge.stitches", 30.0,
            "heel.centre", -7.0, "toe.none", 0.0);

    @ParameterizedTest(name = "{0} = {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # keys
            =ROUND(foot.stitches/4;0)*2   | 34
            foot.stitches*100/gauge.stitches | 220
            foot.stitches                 | 66
            # numbers
            12                            | 12
            1.5                           | 1.5
            .5                            | 0.5
            5.                            | 5
            25e-2                         | 0.25
            1E+2                          | 100
            # products before sums, each from the left
            1+2*3                         | 7
            2*3+1                         | 7
            10-4-3                        | 3
            10-(4-3)                      | 9
            16/4/2                        | 2
            16/(4/2)                      | 8
            8/4*2                         | 4
            # a power binds before a product, and groups to the left
            2*3^2                         | 18
            2^3^2                         | 64
            2^(3^2)                       | 512
            16^0.5                        | 4
            2^-1                          | 0.5
            # a sign binds before a power, a minus between operands does not
            -2^2                          | 4
            0-2^2                         | -4
            1-2^2                         | -3
            -(2^2)                        | -4
            -heel.centre^2                | 49
            --3                           | 3
            +-+3                          | -3
            2*-3                          | -6
            3--2                          | 5
            # percent binds before a power, and may come twice
            50%                           | 0.5
            -50%                          | -0.5
            10%%                          | 0.001
            200%^2                        | 4
            foot.stitches*10%             | 6.6
            (1+1)%                        | 0.02
            # blanks, case, separators, an equals sign in front
            ' =  MIN( 3 ; 2 ) '           | 2
            Min(3,2)                      | 2
            """)
    void readsAsASpreadsheetDoes(String text, double expected) {
        assertEquals(expected, value(text), 1e-12, text);
    }

    @ParameterizedTest(name = "{0} = {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # ties go away from zero
            ROUND(2.5;0)           | 3
            ROUND(-2.5;0)          | -3
            ROUND(2.4999;0)        | 2
            ROUND(0.5)             | 1
            ROUND(-0.5)            | -1
            ROUND(0;0)             | 0
            ROUND(1.005;2)         | 1.01
            ROUND(-1.005;2)        | -1.01
            ROUND(1.005*1000;0)    | 1005
            ROUND(1234.5;-2)       | 1200
            ROUND(-1250;-2)        | -1300
            ROUND(2.345;1+1)       | 2.35
            # what lies below a tie by the last bits of the arithmetic alone is a tie
            ROUND(1.005*100;0)     | 101
            # away from zero, and towards it
            ROUNDUP(3.2;0)         | 4
            ROUNDUP(-3.2;0)        | -4
            ROUNDUP(3.14159;3)     | 3.142
            ROUNDUP(31415.92654;-2)| 31500
            ROUNDUP(0.1+0.2;1)     | 0.3
            ROUNDDOWN(3.9;0)       | 3
            ROUNDDOWN(-3.9;0)      | -3
            ROUNDDOWN(0.3*3-0.9;0) | 0
            TRUNC(-8.9)            | -8
            TRUNC(8.976;1)         | 8.9
            # INT goes down, also below zero
            INT(8.9)               | 8
            INT(-8.9)              | -9
            INT(-8)                | -8
            INT(0.1*3*10)          | 3
            # multiples
            CEILING(2.5;1)         | 3
            CEILING(7;4)           | 8
            CEILING(8;4)           | 8
            CEILING(-2.5;2)        | -2
            CEILING(0.234;0.01)    | 0.24
            CEILING(2.1)           | 3
            FLOOR(2.5;1)           | 2
            FLOOR(7;4)             | 4
            FLOOR(-2.5;2)          | -4
            FLOOR(0.3;0.1)         | 0.3
            FLOOR(foot.stitches;gauge.stitches) | 60
            EVEN(1.5)              | 2
            EVEN(2)                | 2
            EVEN(3)                | 4
            EVEN(-1)               | -2
            EVEN(0)                | 0
            ODD(1.5)               | 3
            ODD(3)                 | 3
            ODD(2)                 | 3
            ODD(0)                 | 1
            ODD(-1)                | -1
            ODD(-2)                | -3
            # the rest of a division takes the sign of the divisor, the quotient goes towards zero
            MOD(7;4)               | 3
            MOD(-7;4)              | 1
            MOD(7;-4)              | -1
            MOD(-7;-4)             | -3
            MOD(8;4)               | 0
            MOD(5.5;2)             | 1.5
            MOD(0.3;0.1)           | 0
            QUOTIENT(7;2)          | 3
            QUOTIENT(-7;2)         | -3
            QUOTIENT(0.3;0.1)      | 3
            ABS(heel.centre)       | 7
            ABS(2)                 | 2
            SQRT(6.25)             | 2.5
            MIN(3;heel.centre;5)   | -7
            MAX(3;heel.centre;5)   | 5
            MAX(4)                 | 4
            SUM(1;2;3.5)           | 6.5
            AVERAGE(1;2;6)         | 3
            # choices
            IF(foot.stitches>60;1;2)   | 1
            IF(foot.stitches>66;1;2)   | 2
            IF(foot.stitches>=66;1;2)  | 1
            IF(foot.stitches<66;1;2)   | 2
            IF(foot.stitches<=66;1;2)  | 1
            IF(foot.stitches=66;1;2)   | 1
            IF(foot.stitches<>66;1;2)  | 2
            IF(foot.stitches<>65;1;2)  | 1
            IF(((foot.stitches)=66);1;2) | 1
            IF(MOD(foot.stitches;4);1;2) | 1
            IF(toe.none;1;2)           | 2
            IF(-1;1;2)                 | 1
            IF(0.1+0.2=0.3;1;2)        | 1
            IF(0.1+0.2>0.3;1;2)        | 2
            # only the branch that is taken counts
            IF(toe.none=0;5;1/toe.none) | 5
            """)
    void aFunctionGivesWhatTheStandardSays(String text, double expected) {
        assertEquals(expected, value(text), 1e-12, text);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            1/toe.none
            0/0
            MIN(5;1/toe.none)
            IF(1/toe.none>3;1;2)
            5/(1/toe.none)
            INT(1/0)
            ROUND(1/0;2)
            MOD(5;toe.none)
            QUOTIENT(5;0)
            0^0
            0^-1
            (-8)^0.5
            SQRT(heel.centre)
            (1/0)^0
            1e200*1e200
            10^400
            CEILING(5;toe.none)
            FLOOR(5;heel.centre)
            """)
    void whatIsAnErrorInASpreadsheetIsNoNumber(String text) {
        assertTrue(Double.isNaN(value(text)), text);
    }

    @Test
    void namesTheRowsThatItNeeds() {
        assertEquals(List.of(new Key("foot.stitches"), new Key("heel.centre")),
                List.copyOf(term("IF(foot.stitches>4;heel.centre+foot.stitches;2)").keys()));
        assertEquals(List.of(), List.copyOf(term("1+2").keys()));
    }

    @ParameterizedTest(name = "{0} is exported as {1}")
    @CsvSource(delimiter = '|', textBlock = """
            =ROUND(foot.stitches/4;0)*2      | ROUND(ROUND(foot.stitches/4,9),0)*2
            foot.stitches*100/gauge.stitches | foot.stitches*100/gauge.stitches
            ROUNDUP(foot.stitches/3;-1)      | ROUNDUP(ROUND(foot.stitches/3,9),-1)
            trunc(foot.stitches/3)           | ROUNDDOWN(ROUND(foot.stitches/3,9),0)
            -2^2                             | (-2)^2
            -foot.stitches^2                 | (0-foot.stitches)^2
            2^(3^foot.stitches)              | 2^(3^foot.stitches)
            (2^3)^foot.stitches              | 2^3^foot.stitches
            (2*foot.stitches)^2              | (2*foot.stitches)^2
            foot.stitches%                   | foot.stitches/100
            IF(foot.stitches<>60;1;2)        | IF(ROUND(foot.stitches-60,9)=0,2,1)
            """)
    void isExportedAsALiveFormula(String text, String expected) {
        assertEquals(expected, Notation.formula(term(text), Key::name));
    }

    @Test
    void theLongestFormulaFitsASpreadsheet() {
        // two steps and the sum's own for each: 400 hold 133 of them
        String longest = sum(133, "ROUNDDOWN(foot.stitches;-6)");
        String exported = Notation.formula(term(longest), key -> "a_name_of_25_characters_x");
        assertTrue(exported.length() <= 8192, () -> exported.length() + " characters");
        assertEquals(FormulaProblem.TOO_MANY_STEPS,
                assertInstanceOf(Reading.Unread.class, OwnFormula.read(sum(134, "ROUND(foot.stitches;-6)"))).problem());
    }

    private static String sum(int summands, String summand) {
        return String.join("+", Collections.nCopies(summands, summand));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            ROUND(  | ;0)
            ODD(    | )
            CEILING(| ;foot.stitches)
            IF(     | >0;1;2)
            """)
    void theDeepestFormulaFitsASpreadsheet(String before, String after) {
        Term deepest = Stream.iterate("foot.stitches", inner -> before + inner + after).limit(21)
                .map(OwnFormula::read).filter(Read.class::isInstance).map(Read.class::cast).map(Read::term)
                .reduce((shallower, deeper) -> deeper).orElseThrow();
        int levels = 0;
        int deepestLevel = 0;
        for (char c : Notation.formula(deepest, Key::name).toCharArray()) {
            levels += c == '(' ? 1 : c == ')' ? -1 : 0;
            deepestLevel = Math.max(deepestLevel, levels);
        }
        assertTrue(deepestLevel <= 64, deepestLevel + " levels");
    }

    @Test
    void everyFunctionIsListedOnceAndCanBeCalled() {
        List<String> unread = new ArrayList<>();
        for (FormulaFunction function : OwnFormula.functions()) {
            int arguments = function.signature().atLeast();
            String text = function + "(" + String.join(";", Collections.nCopies(arguments, "foot.stitches")) + ")";
            if (!(OwnFormula.read(text) instanceof Read)) {
                unread.add(text);
            }
        }
        assertEquals(List.of(), unread);
        assertEquals(FormulaFunction.values().length, OwnFormula.functions().stream().distinct().count());
    }

    private static Term term(String text) {
        return assertInstanceOf(Read.class, OwnFormula.read(text), text).term();
    }

    private static double value(String text) {
        return term(text).evaluate(key -> VALUES.get(key.name()));
    }
}
