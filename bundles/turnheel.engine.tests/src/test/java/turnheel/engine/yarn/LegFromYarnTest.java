package turnheel.engine.yarn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Materials;
import turnheel.engine.design.Swatch;
import turnheel.engine.design.Yarn;
import turnheel.engine.fixture.Designs;
import turnheel.engine.grading.Graded;

class LegFromYarnTest {

    /** 1 m a gram, and by the swatch 10 mm a loop: a gram is 100 loops. */
    private static final Materials HUNDRED_LOOPS_A_GRAM = Materials.of(Yarn.of("", 100, 100))
            .with(Swatch.weighed(100, 10, 10));

    /** Toe-up 64 stitches: the cuff takes 17 × 64 loops and 64 × 1.25 to bind off, its end 15 loops: 1183. */
    @ParameterizedTest(name = "{0} g: {1} rounds")
    @CsvSource(textBlock = """
            0,     0
            11.82, 0
            # (1246 - 1183) / 64 and (1248 - 1183) / 64
            12.46, 0
            12.48, 1
            # the planned 51 rounds are 3264 loops
            44.46, 50
            44.48, 51
            # ten more
            50.88, 61
            50.86, 60
            """)
    void countsRoundsUntilTheCuffMustBegin(double grams, int rounds) {
        assertEquals(OptionalInt.of(rounds), LegFromYarn.rounds(toeUp(), Designs.M, grams));
    }

    @Test
    void keepsYarnForAllThatComesAfterALegWorkedFromTheTop() {
        Graded graded = Socks.graded(Designs.toeUp64().with(Direction.CUFF_DOWN), HUNDRED_LOOPS_A_GRAM);
        // with what the whole sock needs and no cuff worked, cuff and one end less are what the leg gains
        double sock = graded.size(Designs.M).value(Catalogue.YARN_SOCK_GRAMS);
        double cuff = (64 * (1 + 3 / 4.1) + 17 * 64 + 15) / 100;
        int planned = (int) graded.size(Designs.M).value(Catalogue.LEG_ROUNDS);
        assertEquals(OptionalInt.of(planned), LegFromYarn.rounds(graded, Designs.M, sock - cuff + 0.01));
        assertEquals(OptionalInt.of(planned - 1), LegFromYarn.rounds(graded, Designs.M, sock - cuff - 0.01));
    }

    @Test
    void goesOnFromNothingWhereNoLegWasPlanned() {
        Graded graded = Socks.graded(Designs.toeUp64().with("leg.rounds = 0"), HUNDRED_LOOPS_A_GRAM);
        assertEquals(OptionalInt.of(10), LegFromYarn.rounds(graded, Designs.M, 11.84 + 6.4));
    }

    @Test
    void isUnknownWithoutTheWeightOfTheYarnOrWithoutRounds() {
        Graded unknown = Socks.graded(Designs.toeUp64(), Materials.UNDECIDED);
        assertEquals(OptionalInt.empty(), LegFromYarn.rounds(unknown, Designs.M, 40));
        Graded broken = Socks.graded(Designs.toeUp64().with("toe.castOn = 10"), HUNDRED_LOOPS_A_GRAM);
        assertEquals(OptionalInt.empty(), LegFromYarn.rounds(broken, Designs.M, 40));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 10_001, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesAWeightThatNoScaleShows(double grams) {
        Graded graded = toeUp();
        var refused = assertThrows(IllegalArgumentException.class, () -> LegFromYarn.rounds(graded, Designs.M, grams));
        assertTrue(refused.getMessage().startsWith("the grams left must lie between 0 and 10000, not "),
                refused::getMessage);
    }

    @Test
    void refusesASizeThatIsNotThere() {
        Graded graded = toeUp();
        assertThrows(IllegalArgumentException.class, () -> LegFromYarn.rounds(graded, "XXL", 40));
    }

    private static Graded toeUp() {
        return Socks.graded(Designs.toeUp64(), HUNDRED_LOOPS_A_GRAM);
    }
}
