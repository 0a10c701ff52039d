package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.model.PatternFiles;
import turnheel.model.pattern.Pattern;
import turnheel.model.pattern.PatternPackage;

class PatternOptionTest {

    @TempDir
    private Path folder;

    /** Every concrete class of the model that can be a part of a pattern. */
    static List<EClass> kindsOfPart() {
        return parts().flatMap(part -> PatternPackage.eINSTANCE.getEClassifiers().stream()
                .filter(EClass.class::isInstance).map(EClass.class::cast)
                .filter(kind -> part.getEReferenceType().isSuperTypeOf(kind) && !kind.isAbstract())).toList();
    }

    private static Stream<EReference> parts() {
        return PatternPackage.Literals.PATTERN.getEReferences().stream().filter(reference -> reference.isRequired() && !reference.isMany());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("kindsOfPart")
    void everyKindOfPartHasItsWords(EClass kind) throws Exception {
        Pattern document = PatternFiles.load(Patterns.toeUp(folder));
        EReference part = parts().filter(each -> each.getEReferenceType().isSuperTypeOf(kind)).findFirst().orElseThrow();
        document.eSet(part, EcoreUtil.create(kind));
        for (PatternOption option : PatternOption.values()) {
            String word = option.read(document);
            if (!word.isEmpty()) {
                option.write(document, option.word(), word);
                assertEquals(word, option.read(document));
            }
        }
        assertEquals(kind, ((EObject) document.eGet(part)).eClass());
    }

    /** Whatever a kind of part leaves open can be said: its attributes are those of an option, or stand in the kind's word. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("kindsOfPart")
    void everyChoiceOfAKindCanBeSaid(EClass kind) {
        Set<String> said = Set.of("increase", "castOn", "lean", "turn", "flapLength", "fabric", "edge", "pickUp", "cap",
                "length", "count", "mayAdjust", "knit", "purl");
        // lines are toe.points, which a size may set
        assertEquals(Set.of(), kind.getEAllAttributes().stream().map(EAttribute::getName)
                .filter(name -> !said.contains(name) && !name.equals("lines")).collect(Collectors.toSet()));
    }

    @Test
    void aChoiceThatNoPartHasIsRefused() throws Exception {
        Pattern document = PatternFiles.load(Patterns.toeUp(folder));
        assertThrows(Refusal.class, () -> PatternOption.CAP.write(document, "--cap", "wedge"));
    }
}
