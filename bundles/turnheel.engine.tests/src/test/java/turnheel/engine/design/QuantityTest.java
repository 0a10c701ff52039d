package turnheel.engine.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import turnheel.engine.fixture.Repeatable;

class QuantityTest {

    @ParameterizedTest(name = "{0} is kept as {1}, inside {2}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            # written     | kept         | inside: 1 in is 25.4 mm exactly
            64            | 64           | 64
            +64           | 64           | 64
            −3            | -3           | -3
            240 mm        | 240 mm       | 240
            240mm         | 240 mm       | 240
            24.5 CM       | 24.5 cm      | 245
            9.50 in       | 9.5 in       | 241.3
            9 1/2 in      | 9.5 in       | 241.3
            9-1/2"        | 9.5 in       | 241.3
            -1/4 in       | -0.25 in     | -6.35
            -1 1/2 in     | -1.5 in      | -38.1
            1/8″          | 0.125 in     | 3.175
            .5 cm         | 0.5 cm       | 5
            -10 %         | -10 %        | -10
            −7.5%         | -7.5 %       | -7.5
            32/10 cm      | 32/10 cm     | 32
            8/1 in        | 8/1 in       | 31.496062992125985
            18 / 2 in     | 18/2 in      | 35.43307086614173
            9.5/2 in      | 9.5/2 in     | 18.70078740157480
            8/10 cm       | 8/10 cm      | 8
            64/200 mm     | 64/200 mm    | 32
            """)
    void keepsWhatWasWritten(String written, String kept, double inside) {
        Quantity quantity = Quantity.parse(written);
        assertEquals(kept, quantity.toString());
        assertEquals(inside, quantity.inside(), 1e-12);
    }

    @Test
    void tellsCountsLengthsSharesAndGaugesApart() {
        assertInstanceOf(Count.class, Quantity.parse("64"));
        assertInstanceOf(Length.class, Quantity.parse("64 mm"));
        assertInstanceOf(Length.class, Quantity.parse("7/8 in"));
        assertInstanceOf(Share.class, Quantity.parse("64 %"));
        assertInstanceOf(Gauge.class, Quantity.parse("64/20 cm"));
    }

    /** A gauge of less than one stitch a centimetre looks like a fraction; nobody measures centimetres in fractions. */
    @Test
    void readsAThickGaugeAsAGauge() {
        assertEquals(new Gauge(8, new Length(10, LengthUnit.CENTIMETRE)), Quantity.parse("8/10 cm"));
        assertEquals(new Gauge(6, new Length(100, LengthUnit.MILLIMETRE)), Quantity.parse("6/100 mm"));
    }

    @Property(seed = Repeatable.SEED, tries = 3000)
    void readsBackWhatItWrites(@ForAll("quantities") Quantity quantity) {
        assertEquals(quantity, Quantity.parse(quantity.toString()));
    }

    @Provide
    Arbitrary<Quantity> quantities() {
        Arbitrary<Double> decimals = Arbitraries.integers().between(-99_999, 99_999).map(tenths -> tenths / 10.0);
        Arbitrary<Double> fractions = Combinators.combine(Arbitraries.integers().between(-500, 500),
                Arbitraries.integers().between(1, 999)).as((top, bottom) -> top / (double) bottom);
        Arbitrary<Double> amounts = Arbitraries.oneOf(decimals, fractions,
                Arbitraries.doubles().between(-9999, 9999).ofScale(12));
        Arbitrary<LengthUnit> units = Arbitraries.of(LengthUnit.class);
        Arbitrary<Gauge> gauges = Combinators.combine(Arbitraries.integers().between(1, 400),
                Arbitraries.integers().between(1, 200).map(halves -> halves / 2.0), units)
                .filter((count, over, unit) -> {
                    double density = count * 100 / (over * unit.millimetres());
                    return density >= 4 && density <= 200;
                })
                .as((count, over, unit) -> new Gauge(count / 1.0, new Length(over, unit)));
        return Arbitraries.oneOf(Arbitraries.integers().between(-999_999_999, 999_999_999).map(Count::new),
                Combinators.combine(amounts, units).as(Length::new), amounts.map(Share::new), gauges);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "sixty", "64 sts", "240 m", "mm", "1,5 cm", "1/2", "9 1/2", "--3", "1e3", "0x10",
        "=1+1", "12 34", "1 %%", "32/cm", "1234567890", "∞ mm", "NaN %"})
    void refusesWhatIsNoQuantityQuotesItAndShowsWhatIs(String text) {
        String message = refusal(text);
        assertTrue(message.startsWith("\"" + text + "\""), message);
        for (String example : new String[] {"64", "240 mm", "9 1/2 in", "-10 %", "32/10 cm"}) {
            assertTrue(message.contains(example), message);
        }
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            0/10 cm      | a gauge of 0 over 10 cm is 0 per 10 cm
            -32/10 cm    | a gauge of -32 over 10 cm is -32 per 10 cm
            900/10 cm    | a gauge of 900 over 10 cm is 900 per 10 cm
            1/10 cm      | a gauge of 1 over 10 cm is 1 per 10 cm
            4/4 in       | a gauge of 4 over 4 in is 3.9 per 10 cm
            32/0 cm      | a gauge is measured over a length above 0, not over 0 cm
            32/-10 cm    | a gauge is measured over a length above 0, not over -10 cm
            1 1/0 in     | "1 1/0 in" divides by zero
            10000 mm     | 10000.0 is out of range
            -10000 %     | -10000.0 is out of range
            """)
    void refusesWhatCanNeverBeRightWithItsNumbers(String text, String reason) {
        String message = refusal(text);
        assertTrue(message.startsWith(reason), message);
    }

    @Test
    void quotesOnlyTheBeginningOfALongText() {
        String message = refusal("x".repeat(100_000));
        assertTrue(message.startsWith("\"" + "x".repeat(40) + "…\""), message);
        assertTrue(message.length() < 300, message);
        assertTrue(refusal("x".repeat(40)).startsWith("\"" + "x".repeat(40) + "\""));
    }

    private static String refusal(String text) {
        return assertThrows(IllegalArgumentException.class, () -> Quantity.parse(text)).getMessage();
    }
}
