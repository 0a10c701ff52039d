package turnheel.engine.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ListMarksTest {

    private static final ListMarks BRACKETS = new ListMarks(" (", ", ", ")", 0);

    private static List<String> upTo(int values) {
        return IntStream.rangeClosed(1, values).mapToObj(Integer::toString).toList();
    }

    @ParameterizedTest(name = "{0} values, at most {1} in brackets")
    @CsvSource(delimiter = '|', textBlock = """
            # the first stands alone; the others are shared out as evenly as can be, larger brackets first
            1  | 4 | 1
            2  | 4 | 1 (2)
            5  | 4 | 1 (2, 3, 4, 5)
            6  | 4 | 1 (2, 3, 4) (5, 6)
            9  | 4 | 1 (2, 3, 4, 5) (6, 7, 8, 9)
            10 | 4 | 1 (2, 3, 4) (5, 6, 7) (8, 9, 10)
            10 | 3 | 1 (2, 3, 4) (5, 6, 7) (8, 9, 10)
            12 | 4 | 1 (2, 3, 4, 5) (6, 7, 8, 9) (10, 11, 12)
            12 | 0 | 1 (2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12)
            """)
    void groupsTheSizesAfterTheFirst(int values, int group, String listed) {
        assertEquals(listed, new ListMarks(" (", ", ", ")", group).list(upTo(values)));
    }

    @Test
    void letsALineEndAfterSeparatorsAndBetweenBracketsAlone() {
        assertEquals("7\u00A03/4\u00A0(8, 8\u00A01/4)", BRACKETS.unbroken(List.of("7 3/4", "8", "8 1/4")));
        assertEquals("1\u00A0(2, 3) (4, 5)", new ListMarks(" (", ", ", ")", 2).unbroken(upTo(5)));
        assertEquals("1/\u200B2/\u200B3", new ListMarks("/", "/", "", 0).unbroken(upTo(3)));
        assertEquals("1\u00A0(2,\u200B3)", new ListMarks(" (", ",", ")", 0).unbroken(upTo(3)));
    }

    @Test
    void refusesGroupsThatNoBracketShows() {
        String message = assertThrows(IllegalArgumentException.class, () -> HouseStyles.read("own", Map.of(
                "sized.opening", "/", "sized.separator", "/", "sized.closing", "", "lengths", "cm", "sized.group", "4")))
                .getMessage();
        assertTrue(message.contains("sized.group=0"), message);
    }
}
