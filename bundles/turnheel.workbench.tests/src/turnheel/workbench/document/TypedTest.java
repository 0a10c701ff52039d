package turnheel.workbench.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Parameter;
import turnheel.engine.term.Key;

class TypedTest {

    @ParameterizedTest(name = "\"{1}\" in {0} is {2}")
    @CsvSource(textBlock = """
            body.footLength, 240, 240 mm
            body.footLength, 240.5, 240.5 mm
            body.footLength, ' 24.5 cm ', 24.5 cm
            body.footLength, 9 1/2 in, 9.5 in
            fit.easeAround, -8, -8 %
            fit.easeAround, −7.5, -7.5 %
            fit.easeAround, -8 %, -8 %
            fit.easeLength, -.5, -0.5 mm
            gauge.stitches, 32, 32/10 cm
            gauge.stitches, 8/1 in, 8/1 in
            foot.stitches, 64, 64
            cuff.height, 45, 45 mm
            """)
    void aTextIsAQuantityInTheUnitOfItsRow(String key, String text, String quantity) {
        assertEquals(quantity, Typed.quantity(parameter(key), text).toString());
    }

    @ParameterizedTest(name = "\"{1}\" is refused in {0}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            body.footLength | wide | is not a quantity
            body.footLength | | is not a quantity
            body.footLength | 5 % | write a length such as 240 mm
            body.footLength | 9999 | must lie between 60 and 400 mm
            foot.stitches | 64.5 | is not a quantity
            foot.stitches | 64 mm | write a whole number
            foot.stitches | -4 | must lie between 4 and 1000 stitches
            gauge.stitches | 0 | must lie between
            foot.circumference | 200 | cannot be set
            """)
    void whatCannotStandThereIsRefusedWithWhatWouldDo(String key, String text, String reason) {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class,
                () -> Typed.quantity(parameter(key), text == null ? "" : text));
        assertTrue(refused.getMessage().contains(reason), refused.getMessage());
    }

    private static Parameter parameter(String key) {
        return Catalogue.parameter(new Key(key));
    }
}
