package turnheel.engine.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import net.jqwik.api.ForAll;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.fixture.Repeatable;

class SpellingTest {

    private static final List<String> VERBS = List.of("grade", "rounds", "check", "export", "sizes", "set");

    @ParameterizedTest(name = "{0} to {1} takes {2} slips")
    @CsvSource(textBlock = """
            # counted by hand; two neighbours swapped are one slip, upper and lower case none
            toe,    toe,     0
            Toe,    tOE,     0
            '',     toe,     3
            toe,    '',      3
            to,     toe,     1
            toes,   toe,     1
            tie,    toe,     1
            teo,    toe,     1
            hell,   heel,    1
            hele,   heel,    1
            leh,    heel,    3
            cuff,   foot,    4
            """)
    void countsSlipsOfThePen(String one, String other, int slips) {
        assertEquals(slips, Spelling.distance(one, other));
    }

    @Repeatable
    void isADistance(@ForAll @StringLength(max = 6) @CharRange(from = 'a', to = 'c') String one,
            @ForAll @StringLength(max = 6) @CharRange(from = 'a', to = 'c') String other) {
        int slips = Spelling.distance(one, other);
        assertEquals(slips, Spelling.distance(other, one));
        assertEquals(one.equals(other), slips == 0);
        assertTrue(slips >= Math.abs(one.length() - other.length()));
        assertTrue(slips <= Math.max(one.length(), other.length()));
        assertTrue(slips <= Spelling.distance(one + "a", other) + 1);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
            # one slip for every three letters, at least one
            grad,    grade
            GRADE,   grade
            exprot,  export
            chekc,   check
            sets,    set
            se,      set
            s,
            size,    sizes
            knit,
            xyz,
            """)
    void suggestsOnlyWhatIsCloseEnough(String mistyped, String meant) {
        assertEquals(Optional.ofNullable(meant), Spelling.suggestion(mistyped, VERBS));
    }
}
