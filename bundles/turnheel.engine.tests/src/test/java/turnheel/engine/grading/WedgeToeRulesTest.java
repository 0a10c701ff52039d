package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.IntStream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import turnheel.engine.design.Direction;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.Numbers;

class WedgeToeRulesTest {

    @ParameterizedTest(name = "{0} stitches turn at {2} and have {1} at the tip")
    @CsvSource(textBlock = """
            # foot, tip, turn, every round, alternate, cuff-down, toe-up
            # domain § 3
            64,     16,  32,   4,           8,         20,        21
            # published example O12 of the reference table: of 60, 30 cannot be reached in steps of 4, 32 or 28 can
            60,     16,  28,   3,           8,         19,        20
            # by hand; the tip has the remainder of the foot, so 66 has 18 and not 16
            66,     18,  34,   4,           8,         20,        21
            56,     12,  28,   4,           7,         18,        19
            72,     16,  36,   5,           9,         23,        24
            80,     20,  40,   5,           10,        25,        26
            # small feet keep 8 or 10 at the tip
            16,      8,   8,   0,           2,          4,         4
            18,     10,  10,   0,           2,          4,         4
            20,      8,   8,   0,           3,          6,         6
            24,      8,  12,   1,           3,          7,         8
            """)
    void matchesTheFiguresWorkedByHand(int foot, int tip, int turn, int everyRound, int alternate, int cuffDown,
            int toeUp) {
        Draft draft = Designs.cuffDown64().with("foot.stitches = " + foot);
        assertEquals(tip, Numbers.of(draft, "toe.tip"));
        assertEquals(turn, Numbers.of(draft, "toe.alternateFrom"));
        assertEquals(everyRound, Numbers.of(draft, "toe.everyRound"));
        assertEquals(alternate, Numbers.of(draft, "toe.alternate"));
        assertEquals(cuffDown, Numbers.of(draft, "toe.rounds"));
        assertEquals(toeUp, Numbers.of(draft.with(Direction.TOE_UP), "toe.rounds"));
    }

    static IntStream everyEvenFootUpTo120() {
        return IntStream.rangeClosed(8, 60).map(half -> 2 * half);
    }

    /** Decreases a toe on paper and looks at what lies on the two needles. */
    @ParameterizedTest(name = "{0} stitches")
    @MethodSource("everyEvenFootUpTo120")
    void countedRoundsAgreeWithTheFormula(int foot) {
        Draft draft = Designs.cuffDown64().with("foot.stitches = " + foot);
        int tip = (int) Numbers.of(draft, "toe.tip");
        int side = foot / 2;
        int rounds = 0;
        // every second round while the next decrease does not leave fewer than half, half a step counted as enough
        while (2 * side - 4 >= Math.max(tip, foot / 2.0 - 2)) {
            side -= 2;
            rounds += 2;
        }
        while (2 * side > tip) {
            side -= 2;
            rounds++;
        }
        assertEquals(tip, 2 * side);
        assertEquals(rounds, Numbers.of(draft, "toe.rounds"));
    }

    @ParameterizedTest(name = "{0} stitches")
    @MethodSource("everyEvenFootUpTo120")
    void leavesAboutAQuarterAndNeverASideBelowFour(int foot) {
        double tip = Numbers.of(Designs.cuffDown64().with("foot.stitches = " + foot), "toe.tip");
        assertEquals(Math.max(foot / 4.0, foot % 4 == 0 ? 8 : 10), tip, 2);
        assertEquals(foot % 4, tip % 4);
    }

    /**
     * The published table of 15 sizes in fine yarn (row O23 of the reference examples): rounds with a decrease every
     * second round, rounds with one every round, and the toe's rounds as they were counted from them there. The tip is
     * 8 in all.
     */
    @ParameterizedTest(name = "{0} stitches, {1} + {2}")
    @CsvSource(textBlock = """
            48, 5, 5, 15
            52, 5, 6, 16
            56, 6, 6, 18
            60, 6, 7, 19
            64, 7, 7, 21
            68, 7, 8, 22
            72, 8, 8, 24
            """)
    void countsThePublishedToes(int foot, int everySecond, int everyRound, int rounds) {
        Graded graded = Designs.cuffDown64()
                .with("foot.stitches = %d; toe.tip = 8; toe.alternateFrom = %d".formatted(foot, foot - 4 * everySecond))
                .graded();
        assertEquals(everySecond, Numbers.of(graded, "toe.alternate"));
        assertEquals(everyRound, Numbers.of(graded, "toe.everyRound"));
        assertEquals(rounds, Numbers.of(graded, "toe.rounds"));
        assertEquals(foot / 2, Numbers.of(graded, "heel.stitches"));
    }
}
