package turnheel.cli;

import java.util.List;
import java.util.Locale;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

import turnheel.model.PartKinds;
import turnheel.model.pattern.Pattern;

/**
 * The word for a kind of part, by its class in the document: {@code ShortRowHeelElement} is {@code short-row}. A new kind
 * has its word without being named here.
 */
final class PartKind {

    /** What the trade calls a heel flap is never worked without its gusset. */
    private static final String FLAP = "flap";
    private static final String FLAP_AND_GUSSET = "flap-gusset";

    private PartKind() {
    }

    static String word(EReference part, EClass kind) {
        String name = kind.getName();
        String partName = part.getEReferenceType().getName();
        String plain = name.substring(0, name.length() - partName.length());
        String word = plain.replaceAll("(?<!^)([A-Z])", "-$1").toLowerCase(Locale.ROOT);
        return word.equals(FLAP) ? FLAP_AND_GUSSET : word;
    }

    /** All words for kinds of this part, in the order of the model. */
    static List<String> words(EReference part) {
        return PartKinds.of(part).stream().map(kind -> word(part, kind)).toList();
    }

    /** Puts another kind in place of the part; the same kind stays as it is. */
    static void write(Pattern document, EReference part, String given, String value) throws Refusal {
        EClass kind = PartKinds.of(part).get(Choice.position(given, value, words(part)));
        EObject before = (EObject) document.eGet(part);
        if (!kind.equals(before.eClass())) {
            document.eSet(part, PartKinds.changed(before, kind));
        }
    }
}
