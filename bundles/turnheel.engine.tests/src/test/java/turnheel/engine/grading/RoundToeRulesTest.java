package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.IntStream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Increase;
import turnheel.engine.design.RoundToe;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.Numbers;

class RoundToeRulesTest {

    @ParameterizedTest(name = "{0} stitches turn at {1} and take {4} rounds toe-up")
    @CsvSource(textBlock = """
            # foot, turn, every round, alternate, toe-up, cuff-down
            # domain § 3
            64,     20,   3,           11,        26,     25
            72,     24,   4,           12,        29,     28
            80,     28,   5,           13,        32,     31
            # by hand: the turning point is never below the cast-on, and no closing round follows no increases
            8,      8,    0,           0,         0,      0
            12,     8,    0,           1,         2,      2
            16,     8,    0,           2,         4,      4
            20,     8,    0,           3,         6,      6
            28,     8,    0,           5,         10,     10
            32,     12,   1,           5,         12,     11
            # 42 / 3 = 14 lies between 12 and 16
            44,     16,   2,           7,         17,     16
            # 54 / 3 = 18 lies between 16 and 20, and 48 / 3 = 16 is one itself
            48,     16,   2,           8,         19,     18
            """)
    void fourLinesFromEightStitchesMatchTheFiguresWorkedByHand(int foot, int turn, int everyRound, int alternate,
            int toeUp, int cuffDown) {
        Graded graded = Designs.toeUp64().with("foot.stitches = " + foot).graded();
        assertEquals(8, Numbers.of(graded, "toe.castOn"));
        assertEquals(turn, Numbers.of(graded, "toe.alternateFrom"));
        assertEquals(everyRound, Numbers.of(graded, "toe.everyRound"));
        assertEquals(alternate, Numbers.of(graded, "toe.alternate"));
        assertEquals(toeUp, Numbers.of(graded, "toe.rounds"));
        assertEquals(cuffDown,
                Numbers.of(Designs.toeUp64().with("foot.stitches = " + foot).with(Direction.CUFF_DOWN), "toe.rounds"));
    }

    static IntStream everyFootUpTo120() {
        return IntStream.iterate(8, foot -> foot <= 120, foot -> foot + 4);
    }

    /** Grows a toe on paper: every round up to the third of the foot, a plain round, then every second round. */
    @ParameterizedTest(name = "{0} stitches")
    @MethodSource("everyFootUpTo120")
    void countedRoundsAgreeWithTheFormula(int foot) {
        int stitches = 8;
        int rounds = 0;
        while (Math.abs(stitches + 4 - foot / 3.0) < Math.abs(stitches - foot / 3.0)) {
            stitches += 4;
            rounds++;
        }
        rounds += rounds > 0 ? 1 : 0;
        while (stitches < foot) {
            stitches += 4;
            rounds += 2;
        }
        assertEquals(rounds, Numbers.of(Designs.toeUp64().with("foot.stitches = " + foot), "toe.rounds"));
    }

    @ParameterizedTest(name = "{0} lines begin with {1} stitches")
    @CsvSource(textBlock = """
            # lines, cast-on: by hand. Even, a multiple of the lines, near 8, two a line for four lines or fewer
            2,       8
            3,       6
            4,       8
            5,      10
            6,       6
            7,      14
            8,       8
            9,      18
            10,     10
            11,     22
            12,     12
            """)
    void beginsNearEightStitches(int lines, int castOn) {
        assertEquals(castOn, Numbers.of(Designs.toeUp64().with(new RoundToe(lines, Increase.YARN_OVER)), "toe.castOn"));
    }

    @ParameterizedTest(name = "{0} lines, {1} stitches")
    @CsvSource(textBlock = """
            # lines, foot, turn, every round, alternate, plain, rounds: by hand, for 229.2 mm at 44 rounds. 0.23 of the
            # sock is 23.195 rounds; 6 lines: (23.195 - 3 - 1) / 7 - 1 = 1.74; 8 lines: (23.195 - 2 - 1) / 5 - 1 = 3.04
            2,       64,   22,   7,           21,        1,     50
            3,       60,   21,   5,           13,        1,     32
            6,       66,   24,   3,           7,         2,     25
            8,       64,   24,   2,           5,         3,     23
            # one increase round alone: (23.195 - 0 - 1) / 1 - 1 = 21.2; none: no plain rounds to speak of
            8,       16,   8,    0,           1,         21,    22
            8,       8,    8,    0,           0,         1,     0
            """)
    void otherNumbersOfLinesGetAsManyPlainRoundsAsMakeAUsualToe(int lines, int foot, int turn, int everyRound,
            int alternate, int plain, int rounds) {
        Graded graded = Designs.toeUp64().with(new RoundToe(lines, Increase.YARN_OVER)).with("foot.stitches = " + foot)
                .graded();
        assertEquals(turn, Numbers.of(graded, "toe.alternateFrom"));
        assertEquals(everyRound, Numbers.of(graded, "toe.everyRound"));
        assertEquals(alternate, Numbers.of(graded, "toe.alternate"));
        assertEquals(plain, Numbers.of(graded, "toe.plainBetween"));
        assertEquals(rounds, Numbers.of(graded, "toe.rounds"));
    }

    @ParameterizedTest(name = "a finished length of {0} mm: {1}")
    @CsvSource(textBlock = """
            # by hand, 8 lines on 64 stitches: 0.23 × 0.44 × 202.5 = 20.49 rounds, (20.49 - 3) / 5 - 1 = 2.4986;
            # of 203 mm 20.54 rounds, 2.5087
            202.5, 2
            203,   3
            """)
    void plainRoundsTurnWhereAUsualToeTurns(double length, int plain) {
        Draft draft = Designs.toeUp64().with(new RoundToe(8, Increase.YARN_OVER))
                .with("foot.stitches = 64; fit.easeLength = 0 mm; body.footLength = %s mm".formatted(length));
        assertEquals(plain, Numbers.of(draft, "toe.plainBetween"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            # override               | turn, every round, alternate, rounds
            toe.castOn = 12          | 20 | 2 | 11 | 25
            toe.castOn = 24          | 24 | 0 | 10 | 20
            toe.alternateFrom = 32   | 32 | 6 | 8  | 23
            toe.plainBetween = 2     | 20 | 3 | 11 | 37
            toe.points = 2           | 22 | 7 | 21 | 50
            """)
    void followsOverrides(String override, int turn, int everyRound, int alternate, int rounds) {
        Graded graded = Designs.toeUp64().with("foot.stitches = 64; " + override).graded();
        assertEquals(turn, Numbers.of(graded, "toe.alternateFrom"));
        assertEquals(everyRound, Numbers.of(graded, "toe.everyRound"));
        assertEquals(alternate, Numbers.of(graded, "toe.alternate"));
        assertEquals(rounds, Numbers.of(graded, "toe.rounds"));
    }
}
