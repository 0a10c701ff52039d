package turnheel.engine.design;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import turnheel.engine.term.Key;

/** What may be written under a key, as input or as override. */
class ParameterTest {

    @ParameterizedTest(name = "{0} takes {1}")
    @CsvSource(textBlock = """
            body.footLength,     240 mm
            body.footLength,     9 1/2 in
            body.footLength,     60 mm
            body.footLength,     400 mm
            fit.easeAround,      -10 %
            fit.easeLength,      -1/2 in
            gauge.stitches,      8/1 in
            """)
    void takesInputsOfItsUnit(String key, String written) {
        assertDoesNotThrow(() -> size(Map.of(new Key(key), Quantity.parse(written)), Map.of()));
    }

    @ParameterizedTest(name = "{0} takes {1}")
    @CsvSource(textBlock = """
            foot.stitches,       64
            toe.points,          12
            cuff.height,         2 in
            """)
    void takesOverridesOfItsUnit(String key, String written) {
        assertDoesNotThrow(() -> size(Map.of(), Map.of(new Key(key), Quantity.parse(written))));
    }

    @ParameterizedTest(name = "input {0} = {1}")
    @CsvSource(delimiter = '|', textBlock = """
            body.footLength   | 240       | body.footLength is kept in mm; "240" does not fit, write a length
            body.footLength   | 10 %      | body.footLength is kept in mm; "10 %" does not fit, write a length
            body.footLength   | 59.9 mm   | body.footLength must lie between 60 and 400 mm; 59.9 mm does not
            body.footLength   | 400.1 mm  | body.footLength must lie between 60 and 400 mm; 400.1 mm does not
            body.footLength   | -240 mm   | body.footLength must lie between 60 and 400 mm; -240 mm does not
            fit.easeAround    | -10 mm    | fit.easeAround is kept in %; "-10 mm" does not fit, write a share
            fit.easeAround    | -41 %     | fit.easeAround must lie between -40 and 40 %; -41 % does not
            gauge.stitches    | 32        | gauge.stitches is kept in per 10 cm; "32" does not fit, write a gauge
            foot.stitches     | 64        | foot.stitches follows from a rule; it is overridden, not an input
            foot.sole         | 32        | foot.sole follows from other numbers and cannot be set
            """)
    void refusesInputsThatDoNotBelongThere(String key, String written, String reason) {
        Map<Key, Quantity> inputs = Map.of(new Key(key), Quantity.parse(written));
        var refused = assertThrows(IllegalArgumentException.class, () -> size(inputs, Map.of()));
        assertTrue(refused.getMessage().startsWith(reason), refused::getMessage);
    }

    @ParameterizedTest(name = "override {0} = {1}")
    @CsvSource(delimiter = '|', textBlock = """
            foot.stitches     | 64 mm     | foot.stitches is kept in stitches; "64 mm" does not fit, write a whole
            foot.stitches     | 3         | foot.stitches must lie between 4 and 1000 stitches; 3 does not
            foot.stitches     | -64       | foot.stitches must lie between 4 and 1000 stitches; -64 does not
            toe.points        | 13        | toe.points must lie between 2 and 12 lines; 13 does not
            body.footLength   | 240 mm    | body.footLength is an input; it is set as such, not overridden
            foot.sole         | 32        | foot.sole follows from other numbers and cannot be set
            """)
    void refusesOverridesThatDoNotBelongThere(String key, String written, String reason) {
        Map<Key, Quantity> overrides = Map.of(new Key(key), Quantity.parse(written));
        var refused = assertThrows(IllegalArgumentException.class, () -> size(Map.of(), overrides));
        assertTrue(refused.getMessage().startsWith(reason), refused::getMessage);
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void everyUnitHasAnExampleThatItAccepts(Unit unit) {
        String example = unit.example();
        int sample = example.lastIndexOf("such as ");
        if (sample >= 0) {
            String first = example.substring(sample + "such as ".length()).split(" or ")[0];
            assertTrue(unit.accepts(Quantity.parse(first)), example);
        } else {
            // a result in fractions can never be set, so it has nothing to accept
            assertEquals(unit.isWhole(), unit.accepts(Quantity.parse("64")), example);
        }
    }

    private static Size size(Map<Key, Quantity> inputs, Map<Key, Quantity> overrides) {
        return new Size("id-M", "M", inputs, overrides);
    }
}
