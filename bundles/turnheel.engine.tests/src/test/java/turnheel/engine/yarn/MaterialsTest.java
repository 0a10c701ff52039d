package turnheel.engine.yarn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import turnheel.engine.design.Materials;
import turnheel.engine.design.Share;
import turnheel.engine.design.Swatch;
import turnheel.engine.design.Yarn;
import turnheel.engine.fixture.Designs;

/** What a designer can say about yarn and swatch. */
class MaterialsTest {

    @Test
    void areUndecidedUntilSomebodySaysOtherwise() {
        assertEquals(Materials.UNDECIDED, Designs.toeUp64().design().materials());
        assertEquals(10, Materials.UNDECIDED.margin().percent());
    }

    @Test
    void keepWhatWasSaidBefore() {
        Materials all = Materials.of(Socks.SOCK_YARN).with(new Swatch(40, 50, 5)).with(new Share(15)).withBalls(2);
        assertEquals(Socks.SOCK_YARN, all.yarn().orElseThrow());
        assertEquals(2000, all.swatch().orElseThrow().loops());
        assertEquals(OptionalInt.of(2), all.balls());
        assertEquals(15, all.margin().percent());
    }

    @ParameterizedTest(name = "{0} m, {1} g")
    @CsvSource(textBlock = """
            0,     50,    the metres of a ball
            -1,    50,    the metres of a ball
            NaN,   50,    the metres of a ball
            10001, 50,    the metres of a ball
            210,   0,     the grams of a ball
            210,   Infinity, the grams of a ball
            """)
    void refuseABallThatIsNone(double metres, double grams, String beginning) {
        var refused = assertThrows(IllegalArgumentException.class, () -> Yarn.of("", metres, grams));
        assertTrue(refused.getMessage().startsWith(beginning), refused::getMessage);
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 8})
    void refuseACategoryThatTheTableHasNot(int category) {
        OptionalInt unknown = OptionalInt.of(category);
        assertThrows(IllegalArgumentException.class, () -> new Yarn("", 210, 50, unknown));
    }

    @ParameterizedTest(name = "{0} × {1}, {2} g")
    @CsvSource({"0, 50, 5", "40, 0, 5", "40, 50, 0", "40, 50, -5", "40, 50, NaN", "40, 50, 10001"})
    void refuseASwatchThatIsNone(int stitches, int rounds, double grams) {
        assertThrows(IllegalArgumentException.class, () -> new Swatch(stitches, rounds, grams));
    }

    @Test
    void refuseBallsAndMarginsThatAreNone() {
        assertThrows(IllegalArgumentException.class, () -> Materials.UNDECIDED.withBalls(0));
        Share less = new Share(-1);
        Share tooMuch = new Share(101);
        assertThrows(IllegalArgumentException.class, () -> Materials.UNDECIDED.with(less));
        assertThrows(IllegalArgumentException.class, () -> Materials.UNDECIDED.with(tooMuch));
    }
}
