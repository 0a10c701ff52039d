package turnheel.workbench.editor;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import turnheel.model.PartKinds;
import turnheel.model.pattern.PatternPackage.Literals;

/** Every kind of part, choice and value that the overview can show has its word. */
class ChoiceWordsTest {

    static List<EClass> kinds() {
        return Stream.of(Literals.PATTERN__TOE, Literals.PATTERN__HEEL, Literals.PATTERN__LEG, Literals.PATTERN__CUFF)
                .flatMap(part -> PartKinds.of(part).stream()).toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("kinds")
    void haveWords(EClass kind) {
        assertFalse(ChoiceWords.of(kind).isBlank());
        for (EAttribute attribute : kind.getEAllAttributes()) {
            assertFalse(ChoiceWords.of(attribute).isBlank());
            Class<?> type = attribute.getEAttributeType().getInstanceClass();
            if (type.isEnum()) {
                for (Object value : type.getEnumConstants()) {
                    assertFalse(ChoiceWords.of((Enum<?>) value).isBlank());
                }
            }
        }
    }
}
