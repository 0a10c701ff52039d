package turnheel.model;

import java.util.List;
import java.util.Objects;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import turnheel.model.pattern.PatternPackage;

/** The kinds that a part of the sock can be of, read off the document's own model. */
public final class PartKinds {

    private PartKinds() {
    }

    /** The kinds of a part, in the order of the model. */
    public static List<EClass> of(EReference part) {
        return PatternPackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast)
                .filter(kind -> !kind.isAbstract() && part.getEReferenceType().isSuperTypeOf(kind)).toList();
    }

    /** A part of another kind, which keeps every choice that both kinds know. */
    public static EObject changed(EObject before, EClass kind) {
        EObject after = EcoreUtil.create(kind);
        for (EAttribute attribute : before.eClass().getEAllAttributes()) {
            EStructuralFeature same = kind.getEStructuralFeature(attribute.getName());
            if (same != null && Objects.equals(same.getEType(), attribute.getEType()) && before.eIsSet(attribute)) {
                after.eSet(same, before.eGet(attribute));
            }
        }
        return after;
    }
}
