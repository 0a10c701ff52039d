package turnheel.exchange.workbook;

import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LookTest {

    /** Relative luminance as WCAG 2.2 defines it. */
    private static double luminance(byte[] rgb) {
        double[] weights = {0.2126, 0.7152, 0.0722};
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            double share = (rgb[i] & 0xFF) / 255.0;
            sum += weights[i] * (share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4));
        }
        return sum;
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void lettersStandOutFromTheirGround(Look look) {
        double ink = luminance(look.ink().rgb());
        double ground = luminance(look.ground().rgb());
        double contrast = (Math.max(ink, ground) + 0.05) / (Math.min(ink, ground) + 0.05);
        assertTrue(contrast >= 4.5, () -> "contrast " + contrast);
    }

    /** In a black and white print colours are gone; what a value is must show in the type alone, or be plain. */
    @ParameterizedTest
    @EnumSource(value = Look.class, names = {"ENTERED", "COMPUTED", "DEFAULT", "CHOSEN"})
    void anOverrideIsToldFromAllOtherNumbersByItsType(Look look) {
        assertNotEquals(List.of(Look.OVERRIDDEN.isBold(), Look.OVERRIDDEN.isItalic()),
                List.of(look.isBold(), look.isItalic()));
    }
}
