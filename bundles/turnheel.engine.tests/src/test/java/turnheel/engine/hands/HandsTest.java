package turnheel.engine.hands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;

/** Hands that never complain would prove nothing. */
class HandsTest {

    @ParameterizedTest(name = "{1} over {0}: {2}")
    @CsvSource(textBlock = """
            # loops, round, loops after: by hand
            4, KNIT 4,                                     4
            4, YARN_OVER KNIT 2 YARN_OVER KNIT 2,          6
            4, KNIT_TWO_TOGETHER SLIP_SLIP_KNIT,           2
            2, FRONT_AND_BACK 2,                           4
            2, MAKE_ONE_LEFT KNIT LIFTED_RIGHT KNIT,       4
            0, CAST_ON 8,                                  8
            3, BIND_OFF 3,                                 0
            8, GRAFT 4,                                    0
            3, DRAW_CLOSED 3,                              0
            """)
    void countWhatIsWorked(int loops, String round, int after) {
        Hands hands = Hands.holding(loops);
        hands.round(steps(round));
        assertEquals(after, hands.loops().size());
    }

    @ParameterizedTest(name = "{1} over {0}: {2}")
    @CsvSource(textBlock = """
            4, KNIT 3,                                1 loops are left over at the end of the round
            4, KNIT 5,                                the left needle is empty after 4
            4, KNIT_THROUGH_BACK 4,                   there is no yarn-over to close
            4, KNIT_WITH_WRAPS 4,                     the loop has no wraps
            3, KNIT 2 KNIT_TWO_TOGETHER,              the left needle is empty
            4, KNIT 2 MAKE_ONE_LEFT 2 KNIT 2,         the strand was lifted already
            4, CAST_ON 2,                             onto a needle with 4 loops
            5, GRAFT 3,                               no partner
            4, KNIT 4 TURN,                           a round does not turn
            """)
    void complainAboutARoundThatDoesNotWork(int loops, String round, String complaint) {
        Hands hands = Hands.holding(loops);
        Misknit misknit = assertThrows(Misknit.class, () -> hands.round(steps(round)));
        assertTrue(misknit.getMessage().contains(complaint), misknit::getMessage);
    }

    @Test
    void complainAboutAYarnOverThatIsKnittedOpen() {
        Hands hands = Hands.holding(2);
        hands.round(steps("YARN_OVER KNIT 2"));
        assertEquals(1, hands.open());
        assertThrows(Misknit.class, () -> hands.round(steps("KNIT 3")));
    }

    @Test
    void closeAYarnOver() {
        Hands hands = Hands.holding(2);
        hands.round(steps("YARN_OVER KNIT 2"));
        hands.round(steps("KNIT_THROUGH_BACK KNIT 2"));
        assertEquals(0, hands.open());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = """
            # rows over six loops; complaint in the last
            KNIT 4,                                                           the row does not turn
            KNIT 4 TURN,                                                      without a wrap leaves a gap before 2
            KNIT 6 WRAP_AND_TURN,                                             the left needle is empty
            KNIT 5 WRAP_AND_TURN KNIT,                                        after the turn
            KNIT 5 WRAP_AND_TURN / PURL 5 TURN / KNIT 6 TURN,                 passes over a wrapped loop
            KNIT 5 WRAP_AND_TURN / PURL 5 TURN / KNIT 4 KNIT_WITH_WRAPS TURN, has no wraps
            """)
    void complainAboutRowsThatDoNotWork(String rows, String complaint) {
        Hands hands = Hands.holding(6);
        Misknit misknit = assertThrows(Misknit.class, () -> {
            for (String row : rows.split("/")) {
                hands.row(steps(row.strip()));
            }
        });
        assertTrue(misknit.getMessage().contains(complaint), misknit::getMessage);
    }

    @Test
    void knowWhereARowTurned() {
        Hands hands = Hands.holding(6);
        hands.row(steps("KNIT 4 WRAP_AND_TURN"));
        assertEquals(4, hands.partedAt());
        assertEquals(List.of(0, 0, 0, 0, 1, 0), hands.loops().stream().map(Loop::wraps).toList());
        hands.row(steps("PURL 3 WRAP_AND_TURN"));
        assertEquals(1, hands.partedAt());
        assertEquals(List.of(1, 0, 0, 0, 1, 0), hands.loops().stream().map(Loop::wraps).toList());
    }

    static List<Step> steps(String text) {
        return Arrays.stream(text.replaceAll(" (\\d+)", "=$1").split(" ")).map(work -> {
            String[] parts = work.split("=");
            return (Step) new Step.Work(Stitch.valueOf(parts[0]), parts.length == 1 ? 1 : Integer.parseInt(parts[1]));
        }).toList();
    }
}
