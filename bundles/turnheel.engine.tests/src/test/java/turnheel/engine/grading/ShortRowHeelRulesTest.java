package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Numbers;

class ShortRowHeelRulesTest {

    @ParameterizedTest(name = "a heel of {0} has a centre of {1} and {2} a side")
    @CsvSource(textBlock = """
            # heel, centre, each side, rows
            # domain § 5
            32,     10,     11,        44
            # published example O11 of the reference table: a cast-on of 60, 10 unworked, 10 wrapped a side
            30,     10,     10,        40
            # by hand: the centre has the parity of the heel
            28,     10,      9,        36
            36,     12,     12,        48
            40,     14,     13,        52
            33,     11,     11,        44
            31,     11,     10,        40
            # never below 2, which is 3 for an odd heel
            4,       2,      1,         4
            5,       3,      1,         4
            6,       2,      2,         8
            7,       3,      2,         8
            """)
    void matchesTheFiguresWorkedByHand(int heel, int centre, int eachSide, int rows) {
        Graded graded = Designs.toeUp64().with("heel.stitches = " + heel).graded();
        assertEquals(centre, Numbers.of(graded, "heel.centre"));
        assertEquals(eachSide, Numbers.of(graded, "heel.eachSide"));
        assertEquals(rows, Numbers.of(graded, "heel.rows"));
        // 44 rounds are 100 mm; the cup folds, so half its rows lie along the foot
        assertEquals(rows / 2 / 44.0 * 100, Numbers.of(graded, "heel.depth"), 1e-9);
    }

    @ParameterizedTest(name = "a foot of {0} has a heel of {1}")
    @CsvSource(textBlock = """
            64, 32
            60, 30
            66, 33
            62, 31
            # an odd foot leaves the smaller half to the heel
            63, 31
            """)
    void takesHalfTheFoot(int foot, int heel) {
        assertEquals(heel, Numbers.of(Designs.toeUp64().with("foot.stitches = " + foot), "heel.stitches"));
    }
}
