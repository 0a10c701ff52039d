package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.Numbers;

/**
 * Published sums that the engine must reproduce; O numbers are rows of the reference table of worked examples, which
 * names the source of each. Feet are 9 1/2 in long where the source does not say.
 */
class PublishedExamplesTest {

    private static final double MM_PER_INCH = 25.4;

    @ParameterizedTest(name = "{0}: {1} around with {2} at {3} is {5}")
    @CsvSource(textBlock = """
            # example, around,  ease,   gauge,    unrounded, cast on
            # a circumference already reduced for ease
            O01,       7 in,    0 %,    8/1 in,   56,        56
            # printed: 8.1 in is used as 8 in and makes 64; 64.8 makes 64 as well, as a multiple of 4
            O02,       9 in,    -10 %,  8/1 in,   64.8,      64
            # printed 40.375 before ease; 36.3375 after it was worked out there
            O03,       8.5 in,  0 %,    9.5/2 in, 40.375,    40
            O03,       8.5 in,  -10 %,  9.5/2 in, 36.3375,   36
            # printed: 58 drops to 56, so that half of it is even; a tie, and the snugger count
            O05,       7.25 in, 0 %,    8/1 in,   58,        56
            # two girths of 23 and 27 cm, mean 25
            O17,       25 cm,   0 %,    24/10 cm, 60,        60
            """)
    void easeAndCastOn(String example, String around, String ease, String gauge, double unrounded, int castOn) {
        Draft draft = Designs.toeUp64().withGauge(gauge, "44/10 cm").with(
                "body.footLength = 9 1/2 in; body.footCircumference = %s; fit.easeAround = %s".formatted(around, ease));
        assertEquals(unrounded, Numbers.of(draft, "foot.ideal"), 1e-9, example);
        assertEquals(castOn, Numbers.of(draft, "foot.stitches"), example);
    }

    @Test
    void o02HalfAnInchLessThanTheFoot() {
        Draft draft = Designs.toeUp64().with("body.footLength = 9 1/2 in; fit.easeLength = -1/2 in");
        assertEquals(9 * MM_PER_INCH, Numbers.of(draft, "fit.length"), 1e-9);
    }

    @ParameterizedTest(name = "64 stitches at {0} are {1} in")
    @CsvSource(textBlock = """
            # printed 8.53, 8 and 8.82758: to the last digit printed there
            7.5/1 in,  8.53,     0.005
            8/1 in,    8,        1E-9
            7.25/1 in, 8.82758,  0.00001
            """)
    void o04WidthFromGauge(String gauge, double inches, double printedTo) {
        Draft draft = Designs.toeUp64().withGauge(gauge, "44/10 cm").with("foot.stitches = 64");
        assertEquals(inches, Numbers.of(draft, "foot.circumference") / MM_PER_INCH, printedTo);
    }

    @Test
    void o05HalfOfTheCastOnForTheHeel() {
        Draft draft = Designs.toeUp64().with("foot.stitches = 56");
        assertEquals(28, Numbers.of(draft, "heel.stitches"));
        assertEquals(28, Numbers.of(draft, "foot.instep"));
    }
}
