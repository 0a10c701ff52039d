package turnheel.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;

import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

import turnheel.engine.design.Direction;
import turnheel.engine.design.Increase;
import turnheel.engine.design.Length;
import turnheel.engine.design.LengthUnit;
import turnheel.engine.design.Gauge;
import turnheel.model.pattern.PatternPackage;

class LiteralsTest {

    static Stream<EDataType> enumerations() {
        return PatternPackage.eINSTANCE.getEClassifiers().stream().filter(EDataType.class::isInstance)
                .map(EDataType.class::cast).filter(type -> type.getInstanceClass().isEnum());
    }

    @ParameterizedTest
    @MethodSource("enumerations")
    void everyWordOfTheFileIsReadBack(EDataType type) {
        for (Object value : type.getInstanceClass().getEnumConstants()) {
            String word = EcoreUtil.convertToString(type, value);
            assertTrue(word.matches("[a-z]+(-[a-z]+)*"), word);
            assertEquals(value, EcoreUtil.createFromString(type, word));
        }
    }

    @ParameterizedTest
    @CsvSource({"TOE_UP, toe-up", "CUFF_DOWN, cuff-down"})
    void writesEnumerationsAsWords(Direction direction, String word) {
        assertEquals(word, Literals.text(direction));
        assertEquals(direction, Literals.parse(Direction.class, word));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "toe", "TOE_UP", "Toe-up", " toe-up"})
    void readsNothingElse(String word) {
        assertThrows(IllegalArgumentException.class, () -> Literals.parse(Direction.class, word));
    }

    @Test
    void namesTheWordsThatWouldDo() {
        String message = assertThrows(IllegalArgumentException.class,
                () -> Literals.parse(Increase.class, "none")).getMessage();
        assertEquals("\"none\" is unknown; write yarn-over or make-one or front-and-back or lifted", message);
    }

    @Test
    void readsAGauge() {
        assertEquals(new Gauge(8, new Length(1, LengthUnit.INCH)), Literals.gauge("8/1 in"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "32", "10 cm", "-10 %", "32/10", "0/10 cm", "32/0 cm", "-32/10 cm", "1000000/1 mm"})
    void readsNoOtherQuantityAsAGauge(String text) {
        assertThrows(IllegalArgumentException.class, () -> Literals.gauge(text));
    }
}
