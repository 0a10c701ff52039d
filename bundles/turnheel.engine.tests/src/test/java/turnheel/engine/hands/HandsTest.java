package turnheel.engine.hands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.hands.Loop.Origin;
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
            0, PROVISIONAL_CAST_ON 8,                      8
            4, KNIT 2 PICK_UP_AND_KNIT 3 KNIT 2,           7
            5, PURL_TWO_TOGETHER PURL_THREE_TOGETHER,      2
            3, KNIT_THREE_TOGETHER,                        1
            3, SLIP KNIT PURL,                             3
            3, SEW_DOWN 3,                                 0
            3, BIND_OFF 3,                                 0
            8, GRAFT 4,                                    0
            3, DRAW_CLOSED 3,                              0
            """)
    void countWhatIsWorked(int loops, String round, int after) {
        Hands hands = Hands.holding(loops);
        hands.round(steps(round));
        assertEquals(after, hands.loops().size());
    }

    @Test
    void mayFindTheBeginningOfARoundWorkedByTheCastOn() {
        Hands hands = Hands.holding(0);
        hands.round(steps("CAST_ON 8"));
        hands.restOfRound(steps("KNIT 3 KNIT_TWO_TOGETHER"));
        // the decrease is the last of the round
        assertEquals(Origin.JOINED_RIGHT, hands.loops().get(6).origin());
        assertEquals(7, hands.loops().size());
        assertThrows(Misknit.class, () -> hands.restOfRound(steps("KNIT 8")));
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
            4, SEW_DOWN 5,                            the left needle is empty
            2, KNIT_THREE_TOGETHER,                   the left needle is empty
            4, FREED_LOOP,                            no loop of a provisional cast-on is left
            4, KNIT_WITH_EDGE 4,                      no loop of a provisional cast-on is left
            4, KNIT_TWIN 4,                           the loop is no TWIN
            4, PURL_DOUBLE 4,                         the loop is no DOUBLE
            4, DOUBLE_STITCH KNIT 3,                  is made right after a turn
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
            KNIT 4 TURN / PURL 4 TURN / KNIT 5,                               leaves a gap before 2
            KNIT 4 TURN / SLIP PURL 3 TURN / KNIT 4 SLIP_SLIP_KNIT,           leaves a gap before 2
            KNIT 4 TURN / PURL 4 TURN / KNIT 4 TURN / PURL 4 TURN / KNIT 5,   leaves a gap before 2
            KNIT 4 TWIN_AND_TURN / PURL 4 TURN / KNIT 6 TURN,                 into one leg of a TWIN
            KNIT 4 TWIN_AND_TURN / PURL 4 TURN / KNIT 4 KNIT_TWIN 2 TURN,     the loop is no TWIN
            KNIT 4 TWIN_AND_TURN / PURL 4 TURN / KNIT 4 SLIP_SLIP_KNIT TURN,  into a loop that is
            KNIT 4 TURN / DOUBLE_STITCH PURL 3 TURN / KNIT 4,                 into one leg of a DOUBLE
            KNIT 4 TURN / PURL 4 TURN / KNIT 3 KNIT_DOUBLE,                   the loop is no DOUBLE
            KNIT 4 TURN / PURL DOUBLE_STITCH,                                 is made right after a turn
            KNIT 4 TURN / YARN_OVER PURL 4 TURN / KNIT 5,                     into an open yarn-over leaves a hole
            KNIT 4 TURN / YARN_OVER PURL 4 TURN / KNIT 4 KNIT_THROUGH_BACK,   there is no yarn-over to close
            KNIT 4 TURN / YARN_OVER PURL 4 TURN / KNIT 3 SLIP_SLIP_KNIT KNIT, leaves a gap before 2
            KNIT 6 WRAP_AND_TURN,                                             the left needle is empty
            KNIT 5 WRAP_AND_TURN KNIT,                                        after the turn
            KNIT 5 WRAP_AND_TURN / PURL 5 TURN / KNIT 6 TURN,                 passes over a wrapped loop
            KNIT 5 WRAP_AND_TURN / PURL 5 TURN / KNIT 4 KNIT_WITH_WRAPS TURN, has no wraps
            KNIT 4 WRAP_AND_TURN / PURL 4 TURN / KNIT 4 SLIP_SLIP_KNIT TURN,  into a loop that is
            KNIT 4 TURN / PURL 4 TURN / KNIT 3 SLIP_SLIP_KNIT_WITH_WRAPS,     into a loop that is
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

    /** What joins both sides of a gap closes it; so does a double stitch, and a yarn-over at the turn. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
            # rows over six loops, the last one over all of them; loops after
            KNIT 4 TURN / SLIP PURL 3 TURN / KNIT 3 SLIP_SLIP_KNIT KNIT TURN,                 5
            KNIT 4 TURN / DOUBLE_STITCH PURL 3 TURN / KNIT 3 KNIT_DOUBLE KNIT 2 TURN,         6
            KNIT 4 TURN / YARN_OVER PURL 4 TURN / KNIT 4 KNIT_TWO_TOGETHER KNIT TURN,         6
            KNIT 4 TURN / YARN_OVER PURL 4 TURN / KNIT 3 KNIT_THREE_TOGETHER KNIT TURN,       5
            KNIT 4 TWIN_AND_TURN / PURL 4 TURN / KNIT 4 KNIT_TWIN KNIT TURN,                  6
            KNIT 4 WRAP_AND_TURN / PURL 4 TURN / KNIT 4 SLIP_SLIP_KNIT_WITH_WRAPS TURN,       5
            """)
    void closeAGap(String rows, int loops) {
        Hands hands = Hands.holding(6);
        for (String row : rows.split("/")) {
            hands.row(steps(row.strip()));
        }
        assertEquals(loops, hands.loops().size());
        assertFalse(hands.hasGaps());
        assertEquals(0, hands.unfinished());
    }

    @Test
    void rememberAGapAndWhatIsUnfinished() {
        Hands hands = Hands.holding(6);
        hands.row(steps("KNIT 4 TURN"));
        assertTrue(hands.hasGaps());
        hands.row(steps("DOUBLE_STITCH PURL 3 TURN"));
        assertFalse(hands.hasGaps());
        assertEquals(1, hands.unfinished());
    }

    @Test
    void freeOneLoopFewerThanWereCastOn() {
        Hands hands = Hands.holding(0);
        hands.round(steps("PROVISIONAL_CAST_ON 4"));
        hands.round(steps("KNIT 4 FREED_LOOP 3"));
        assertEquals(7, hands.loops().size());
        assertThrows(Misknit.class, () -> hands.round(steps("KNIT 7 FREED_LOOP")));
    }

    @Test
    void joinEveryCastOnLoopOfAHemOnce() {
        Hands hands = Hands.holding(0);
        hands.round(steps("PROVISIONAL_CAST_ON 4"));
        hands.round(steps("KNIT_WITH_EDGE 4"));
        assertEquals(4, hands.loops().size());
        assertThrows(Misknit.class, () -> hands.round(steps("KNIT_WITH_EDGE 4")));
    }

    @Test
    void takeHeldLoopsBackAfterTheOthers() {
        Hands hands = Hands.holding(4);
        hands.row(steps("KNIT 4 TURN"));
        assertThrows(Misknit.class, () -> hands.join(4), "on the wrong side");
        hands.row(steps("PURL 4 TURN"));
        hands.join(4);
        hands.round(steps("GRAFT 4"));
        assertEquals(0, hands.loops().size());
    }

    @Test
    void goOnInTheRoundFromARowThatDoesNotTurn() {
        Hands hands = Hands.holding(4);
        hands.row(steps("KNIT 4 TURN"));
        hands.row(steps("DOUBLE_STITCH PURL 3 TURN"));
        hands.rowIntoRound(steps("DOUBLE_STITCH KNIT 2 KNIT_DOUBLE"));
        hands.round(steps("KNIT_DOUBLE KNIT 3"));
        assertEquals(0, hands.unfinished());
        assertThrows(Misknit.class, () -> hands.round(steps("DOUBLE_STITCH KNIT 3")), "after no turn");
    }

    @Test
    void doNotBeginARoundOnTheWrongSide() {
        Hands hands = Hands.holding(4);
        hands.row(steps("KNIT 4 TURN"));
        assertThrows(Misknit.class, () -> hands.round(steps("KNIT 4")));
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
