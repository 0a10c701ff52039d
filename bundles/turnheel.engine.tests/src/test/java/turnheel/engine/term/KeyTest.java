package turnheel.engine.term;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KeyTest {

    @Test
    void tellsItsPart() {
        assertEquals("foot", new Key("foot.stitches").part());
        assertEquals("foot.stitches", new Key("foot.stitches").toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", ".", "foot", "foot.", ".stitches", "Foot.stitches", "foot.Stitches", "foot.sti tches",
        "foot.stitches.more", "foot.stitches ", "füße.maschen", "foot.stitches\n", "1foot.stitches"})
    void refusesWhatIsNotPartDotNameAndQuotesIt(String name) {
        var refused = assertThrows(IllegalArgumentException.class, () -> new Key(name));
        assertTrue(refused.getMessage().contains("\"" + name + "\""), refused::getMessage);
        assertTrue(refused.getMessage().contains("foot.stitches"), refused::getMessage);
    }
}
