package turnheel.engine.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PickUpTest {

    @ParameterizedTest
    @ValueSource(strings = {"half-the-rows", "0.75 stitches/row", "0.4 stitches/row", "1 stitches/row"})
    void isReadAsItIsWritten(String text) {
        assertEquals(text, PickUp.parse("  " + text + " ").toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "half", "0.75", "0.75 rows/stitch", "-1 stitches/row", "three stitches/row",
        "0.5.5 stitches/row"})
    void isRefusedWithWhatWouldDo(String text) {
        String message = assertThrows(IllegalArgumentException.class, () -> PickUp.parse(text)).getMessage();
        assertTrue(message.contains('"' + text + '"') && message.contains("0.75 stitches/row"), message);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.39 stitches/row", "1.01 stitches/row", "0 stitches/row"})
    void isRefusedWhereNobodyPicksUpSo(String text) {
        String message = assertThrows(IllegalArgumentException.class, () -> PickUp.parse(text)).getMessage();
        assertTrue(message.contains("0.4 to 1") && message.contains(text.substring(0, text.indexOf(' '))), message);
    }
}
