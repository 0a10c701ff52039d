package turnheel.engine.yarn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import turnheel.engine.design.ColourPlace;
import turnheel.engine.design.Length;
import turnheel.engine.design.LengthUnit;
import turnheel.engine.design.Materials;
import turnheel.engine.design.Share;
import turnheel.engine.design.Stranding;
import turnheel.engine.design.Swatch;
import turnheel.engine.design.Yarn;
import turnheel.engine.design.YarnLine;
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
        Materials all = Materials.of(Socks.SOCK_YARN).with(Swatch.weighed(40, 50, 5)).with(new Share(15)).withBalls(2);
        assertEquals(Socks.SOCK_YARN, all.yarn().orElseThrow());
        assertEquals(2000, all.swatch().orElseThrow().loops());
        assertEquals(OptionalInt.of(2), all.yarns().getFirst().balls());
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
        assertThrows(IllegalArgumentException.class, () -> Swatch.weighed(stitches, rounds, grams));
    }

    @Test
    void refuseBallsAndMarginsThatAreNone() {
        assertThrows(IllegalArgumentException.class, () -> Materials.of(Socks.SOCK_YARN).withBalls(0));
        Share less = new Share(-1);
        Share tooMuch = new Share(101);
        assertThrows(IllegalArgumentException.class, () -> Materials.UNDECIDED.with(less));
        assertThrows(IllegalArgumentException.class, () -> Materials.UNDECIDED.with(tooMuch));
    }

    @Test
    void nameYarnsByTheirPlaceInTheList() {
        Materials two = Materials.of(Socks.SOCK_YARN).withYarns(List.of(
                new YarnLine(Socks.SOCK_YARN, " slate ", OptionalInt.empty()), YarnLine.of(Yarn.of("", 100, 50))))
                .withColours(Map.of(ColourPlace.TOE, 2, ColourPlace.HEEL, 1));
        assertEquals("slate", two.yarns().getFirst().colour());
        assertEquals(OptionalInt.of(2), two.colour(ColourPlace.TOE));
        assertEquals(OptionalInt.empty(), two.colour(ColourPlace.CUFF));
        assertEquals(List.of(ColourPlace.HEEL, ColourPlace.TOE), List.copyOf(two.colours().keySet()));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 2, -1})
    void refuseAColourWhoseYarnIsNotThere(int number) {
        Materials one = Materials.of(Socks.SOCK_YARN);
        var refused = assertThrows(IllegalArgumentException.class,
                () -> one.withColours(Map.of(ColourPlace.INSTEP_PATTERN, number)));
        assertEquals("the instep pattern is worked in yarn %d; the pattern has 1".formatted(number), refused.getMessage());
    }

    @Test
    void refuseMoreYarnsThanHaveRows() {
        List<YarnLine> six = Collections.nCopies(6, YarnLine.of(Socks.SOCK_YARN));
        assertEquals(6, Materials.UNDECIDED.withYarns(six).yarns().size());
        List<YarnLine> seven = Collections.nCopies(7, YarnLine.of(Socks.SOCK_YARN));
        assertThrows(IllegalArgumentException.class, () -> Materials.UNDECIDED.withYarns(seven));
        String tooLong = "x".repeat(61);
        assertThrows(IllegalArgumentException.class, () -> new YarnLine(Socks.SOCK_YARN, tooLong, OptionalInt.empty()));
    }

    @Test
    void keepNotionsAsLines() {
        assertEquals(List.of("stitch markers", "scissors"),
                Materials.UNDECIDED.withNotions(List.of(" stitch markers ", "scissors")).notions());
        for (String refused : List.of("", "   ", "a\nb", "x".repeat(201))) {
            List<String> notions = List.of(refused);
            assertThrows(IllegalArgumentException.class, () -> Materials.UNDECIDED.withNotions(notions), refused);
        }
        List<String> many = Collections.nCopies(41, "pin");
        assertThrows(IllegalArgumentException.class, () -> Materials.UNDECIDED.withNotions(many));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.9, 31, -2})
    void refuseANeedleThatNobodyHas(double mm) {
        Optional<Length> needle = Optional.of(Length.ofMm(mm));
        assertThrows(IllegalArgumentException.class, () -> Materials.UNDECIDED.withNeedle(needle));
    }

    @Test
    void takeTheGaugeOffAMeasuredSwatch() {
        Swatch swatch = new Swatch(42, 58, OptionalDouble.empty(), Optional.of(new Swatch.Measured(
                new Length(13, LengthUnit.CENTIMETRE), new Length(5, LengthUnit.INCH))), Swatch.Worked.FLAT, true);
        assertEquals("42/13 cm", swatch.stitchGauge().orElseThrow().toString());
        assertEquals("58/5 in", swatch.roundGauge().orElseThrow().toString());
        assertEquals(Optional.empty(), Swatch.weighed(40, 50, 5).stitchGauge());
    }

    /** Neither measured nor weighed, of no size, and of a gauge that no fabric has: 42 stitches in 2 mm. */
    @Test
    void refuseASwatchThatTellsNothing() {
        assertThrows(IllegalArgumentException.class, () -> new Swatch(42, 58, OptionalDouble.empty(), Optional.empty(),
                Swatch.Worked.FLAT, true));
        Length none = Length.ofMm(0);
        Length some = Length.ofMm(130);
        assertThrows(IllegalArgumentException.class, () -> new Swatch.Measured(none, some));
        Optional<Swatch.Measured> tiny = Optional.of(new Swatch.Measured(Length.ofMm(2), some));
        assertThrows(IllegalArgumentException.class, () -> new Swatch(42, 58, OptionalDouble.of(5), tiny,
                Swatch.Worked.FLAT, true));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 201})
    void refuseFloatsThatAreNone(int stitches) {
        assertThrows(IllegalArgumentException.class, () -> Stranding.withFloatsTo(stitches));
    }
}
