package turnheel.engine.design;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GaugeTest {

    @ParameterizedTest(name = "{0} over {1} {2}")
    @CsvSource(textBlock = """
            # count, over, unit,       per 100 mm
            32,      10,   CENTIMETRE, 32
            8,       1,    INCH,       31.496062992126
            32,      4,    INCH,       31.496062992126
            44,      100,  MILLIMETRE, 44
            16,      5,    CENTIMETRE, 32
            """)
    void isCountedPerHundredMillimetres(double count, double over, LengthUnit unit, double expected) {
        assertEquals(expected, new Gauge(count, new Length(over, unit)).per100mm(), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, -32, 2, 201, 1e9, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesNoneNegativeAndAbsurdOnes(double count) {
        assertThrows(IllegalArgumentException.class, () -> new Gauge(count, Length.ofMm(100)));
    }

    @Test
    void takesTheThickestAndTheFinestOfHandKnitting() {
        assertDoesNotThrow(() -> new Gauge(5, Length.ofMm(100)));
        assertDoesNotThrow(() -> new Gauge(120, Length.ofMm(100)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -100})
    void refusesToBeMeasuredOverNothing(double over) {
        assertThrows(IllegalArgumentException.class, () -> new Gauge(32, Length.ofMm(over)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 10_000, -10_000})
    void noLengthOrShareIsEndless(double amount) {
        assertThrows(IllegalArgumentException.class, () -> Length.ofMm(amount));
        assertThrows(IllegalArgumentException.class, () -> new Share(amount));
    }
}
