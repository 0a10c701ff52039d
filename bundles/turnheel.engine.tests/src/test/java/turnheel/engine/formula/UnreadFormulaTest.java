package turnheel.engine.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import turnheel.engine.formula.Reading.Unread;

class UnreadFormulaTest {

    private static final String OPERATORS = "+ - * / ^ %";
    private static final String FUNCTIONS =
            "ROUND ROUNDUP ROUNDDOWN TRUNC INT CEILING FLOOR EVEN ODD ABS SQRT MIN MAX SUM AVERAGE MOD QUOTIENT IF";

    /** The text, the problem, its place counted from 0, the piece there, and what is allowed. */
    static Stream<Arguments> unread() {
        return Stream.of(
                Arguments.of("", FormulaProblem.EMPTY, 0, "", ""),
                Arguments.of("  ", FormulaProblem.EMPTY, 2, "", ""),
                Arguments.of(" =", FormulaProblem.EMPTY, 2, "", ""),
                Arguments.of("1".repeat(8193), FormulaProblem.TOO_LONG, 8192, "", "8192"),
                Arguments.of("(".repeat(21) + "1", FormulaProblem.TOO_DEEP, 20, "(", "20"),
                Arguments.of("1+ABS(ABS(ABS(ABS(ABS(ABS(ABS(ABS(a.b))))))))", FormulaProblem.TOO_MANY_STEPS, 6, "ABS",
                        "400"),
                Arguments.of("1+".repeat(300) + "1", FormulaProblem.TOO_MANY_STEPS, 0, "1", "400"),
                Arguments.of("1+", FormulaProblem.ENDS_EARLY, 2, "", ""),
                Arguments.of("MIN(1;", FormulaProblem.ENDS_EARLY, 6, "", ""),
                Arguments.of("MIN(", FormulaProblem.ENDS_EARLY, 4, "", ""),
                Arguments.of("(1+2", FormulaProblem.NOT_CLOSED, 0, "(", ")"),
                Arguments.of("MIN(1;(2)", FormulaProblem.NOT_CLOSED, 3, "(", ")"),
                Arguments.of("a.b+*3", FormulaProblem.OPERAND_WANTED, 4, "*", ""),
                Arguments.of("a.b+)", FormulaProblem.OPERAND_WANTED, 4, ")", ""),
                Arguments.of("MIN(1;;2)", FormulaProblem.OPERAND_WANTED, 6, ";", ""),
                Arguments.of("==1", FormulaProblem.OPERAND_WANTED, 1, "=", ""),
                Arguments.of("#REF!", FormulaProblem.OPERAND_WANTED, 0, "#", ""),
                Arguments.of("\"64\"*2", FormulaProblem.OPERAND_WANTED, 0, "\"64\"", ""),
                Arguments.of("1+\"64", FormulaProblem.OPERAND_WANTED, 2, "\"64", ""),
                Arguments.of("(1 2)", FormulaProblem.OPERATOR_WANTED, 3, "2", OPERATORS + " )"),
                Arguments.of("1 2", FormulaProblem.OPERATOR_WANTED, 2, "2", OPERATORS),
                Arguments.of("2a.b", FormulaProblem.OPERATOR_WANTED, 1, "a.b", OPERATORS),
                Arguments.of("a.b)", FormulaProblem.OPERATOR_WANTED, 3, ")", OPERATORS),
                Arguments.of("0,5*a.b", FormulaProblem.OPERATOR_WANTED, 1, ",", OPERATORS),
                Arguments.of("a.b & 1", FormulaProblem.OPERATOR_WANTED, 4, "&", OPERATORS),
                Arguments.of("IF(1<2<3;1;2)", FormulaProblem.OPERATOR_WANTED, 6, "<", OPERATORS + " )"),
                Arguments.of("A1+2", FormulaProblem.NOT_A_KEY, 0, "A1", ""),
                Arguments.of("1+$B$2", FormulaProblem.NOT_A_KEY, 2, "$B$2", ""),
                Arguments.of("Foot.stitches", FormulaProblem.NOT_A_KEY, 0, "Foot.stitches", ""),
                Arguments.of("foot.stitches.M", FormulaProblem.NOT_A_KEY, 0, "foot.stitches.M", ""),
                Arguments.of("PI", FormulaProblem.NOT_A_KEY, 0, "PI", ""),
                Arguments.of("VLOOKUP(\"x\";A1:B2;2)", FormulaProblem.FUNCTION_UNKNOWN, 0, "VLOOKUP", FUNCTIONS),
                Arguments.of("ROUND(1;0)+CEILING.MATH(2)", FormulaProblem.FUNCTION_UNKNOWN, 11, "CEILING.MATH",
                        FUNCTIONS),
                Arguments.of("größe(1)", FormulaProblem.FUNCTION_UNKNOWN, 0, "größe", FUNCTIONS),
                Arguments.of("1+IF(1;2)", FormulaProblem.ARGUMENT_COUNT, 2, "IF", "3"),
                Arguments.of("ROUND(1;2;3)", FormulaProblem.ARGUMENT_COUNT, 0, "ROUND", "1…2"),
                Arguments.of("SUM()", FormulaProblem.ARGUMENT_COUNT, 0, "SUM", "1…255"),
                Arguments.of("MIN(1,2;3)", FormulaProblem.SEPARATORS_MIXED, 7, ";", ","),
                Arguments.of("MIN(1;2)+MAX(0,5)", FormulaProblem.SEPARATORS_MIXED, 14, ",", ";"),
                Arguments.of("a.b>=3", FormulaProblem.COMPARISON_OUTSIDE_IF, 3, ">=", ""),
                Arguments.of("IF(1;a.b=2;3)", FormulaProblem.COMPARISON_OUTSIDE_IF, 8, "=", ""),
                Arguments.of("IF(1+(a.b<3);1;2)", FormulaProblem.COMPARISON_OUTSIDE_IF, 9, "<", ""),
                Arguments.of("2*1e999", FormulaProblem.NUMBER_TOO_LARGE, 2, "1e999", ""),
                Arguments.of("ROUND(a.b;c.d)", FormulaProblem.PLACES_NOT_FIXED, 10, "c.d", "-6…6"),
                Arguments.of("ROUND(a.b;0.5)", FormulaProblem.PLACES_NOT_FIXED, 10, "0.5", "-6…6"),
                Arguments.of("ROUND(a.b;7)", FormulaProblem.PLACES_NOT_FIXED, 10, "7", "-6…6"),
                Arguments.of("ROUND(a.b;1/0)", FormulaProblem.PLACES_NOT_FIXED, 10, "1", "-6…6"),
                Arguments.of("CEILING(a.b;0)", FormulaProblem.STEP_NOT_POSITIVE, 12, "0", ""),
                Arguments.of("FLOOR(a.b; 1-3)", FormulaProblem.STEP_NOT_POSITIVE, 11, "1", ""),
                // places count as a text counts, although the emoji is one character
                Arguments.of("MIN(\uD83E\uDDE6;1)", FormulaProblem.OPERAND_WANTED, 4, "\uD83E\uDDE6", ""),
                Arguments.of("1 \uD83E\uDDE6 A1", FormulaProblem.OPERATOR_WANTED, 2, "\uD83E\uDDE6", OPERATORS),
                // the leftmost comes first, whichever kind it is
                Arguments.of("1 + * A1", FormulaProblem.OPERAND_WANTED, 4, "*", ""),
                Arguments.of("A1 + * 1", FormulaProblem.NOT_A_KEY, 0, "A1", ""),
                Arguments.of("(1 + A1", FormulaProblem.NOT_A_KEY, 5, "A1", ""));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("unread")
    void saysWhatIsWrongAndWhere(String text, FormulaProblem problem, int position, String piece, String allowed) {
        Unread unread = assertInstanceOf(Unread.class, OwnFormula.read(text));
        List<String> expected = allowed.isEmpty() ? List.of() : List.of(allowed.split(" "));
        assertEquals(new Unread(problem, position, piece, expected), unread);
        assertTrue(text.startsWith(piece, position), "the piece stands at its position");
    }

    @Test
    void everyProblemHasAnExample() {
        assertEquals(Set.of(FormulaProblem.values()),
                unread().map(arguments -> arguments.get()[1]).collect(Collectors.toSet()));
    }

    /** Long ones of every shape; what took more than linear time, or a stack of that depth, would not end here. */
    @ParameterizedTest(name = "{0} and so on")
    @MethodSource("pieces")
    void theLongestTextIsAnsweredAtOnce(String piece) {
        String text = piece.repeat(OwnFormula.LONGEST_TEXT / piece.length());
        assertTimeoutPreemptively(Duration.ofSeconds(5), () -> AnyTextTest.answered(text));
    }

    static List<String> pieces() {
        return List.of("(", ")", "-", "+1", "1+", "1^", "%", "1%", "ROUND(", "IF(1;", "IF(1<2;", "MIN(1;2)+", "1;", "=",
                "<", "\"", " ", "a.b ", "a.b+", "aaaa", "1.", "9", "#", "ABS(ABS(1))+", "SUM(1;", "\uD83E\uDDE6", "é");
    }
}
