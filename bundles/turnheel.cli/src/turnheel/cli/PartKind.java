package turnheel.cli;

import java.util.List;
import java.util.Locale;
import java.util.Objects;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import turnheel.model.pattern.Pattern;
import turnheel.model.pattern.PatternPackage;

/**
 * The kinds of a part, by the classes of the document: {@code ShortRowHeelElement} is {@code short-row}. Read off the
 * document's own model, so that a new kind has its word without being named here.
 */
final class PartKind {

    /** What the trade calls a heel flap is never worked without its gusset. */
    private static final String FLAP = "flap";
    private static final String FLAP_AND_GUSSET = "flap-gusset";

    private PartKind() {
    }

    /** The word for an element of this part. */
    static String word(EReference part, EClass kind) {
        String name = kind.getName();
        String partName = part.getEReferenceType().getName();
        String plain = name.substring(0, name.length() - partName.length());
        String word = plain.replaceAll("(?<!^)([A-Z])", "-$1").toLowerCase(Locale.ROOT);
        return word.equals(FLAP) ? FLAP_AND_GUSSET : word;
    }

    /** All words for kinds of this part, in the order of the model. */
    static List<String> words(EReference part) {
        return kinds(part).stream().map(kind -> word(part, kind)).toList();
    }

    private static List<EClass> kinds(EReference part) {
        return PatternPackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast)
                .filter(kind -> !kind.isAbstract() && part.getEReferenceType().isSuperTypeOf(kind)).toList();
    }

    /** Puts another kind in place of the part, which keeps what both kinds know; the same kind stays as it is. */
    static void write(Pattern document, EReference part, String given, String value) throws Refusal {
        EClass kind = kinds(part).get(Choice.position(given, value, words(part)));
        EObject before = (EObject) document.eGet(part);
        if (kind.equals(before.eClass())) {
            return;
        }
        EObject after = EcoreUtil.create(kind);
        for (EAttribute attribute : before.eClass().getEAllAttributes()) {
            EStructuralFeature same = kind.getEStructuralFeature(attribute.getName());
            if (same != null && Objects.equals(same.getEType(), attribute.getEType()) && before.eIsSet(attribute)) {
                after.eSet(same, before.eGet(attribute));
            }
        }
        document.eSet(part, after);
    }
}
