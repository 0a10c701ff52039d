package turnheel.model;

import java.util.List;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

import turnheel.engine.design.FlapLength;
import turnheel.engine.design.PickUp;
import turnheel.engine.design.Quantity;
import turnheel.model.pattern.ColourElement;
import turnheel.model.pattern.EntryElement;
import turnheel.model.pattern.Pattern;
import turnheel.model.pattern.PatternFactory;
import turnheel.model.pattern.PatternPackage;
import turnheel.model.pattern.SwatchElement;
import turnheel.model.pattern.YarnElement;

/** One object of every concrete class of the .ecore, found in the .ecore, so that no new class is forgotten. */
final class EveryClass {

    private EveryClass() {
    }

    static List<EObject> onePerConcreteClass() {
        return PatternPackage.eINSTANCE.getEClassifiers().stream()
                .filter(EClass.class::isInstance).map(EClass.class::cast)
                .filter(kind -> !kind.isAbstract()).map(EcoreUtil::create).toList();
    }

    /** A complete pattern with the object in its place. */
    static Pattern patternWith(EObject object) {
        Pattern pattern = Documents.pattern(Patterns.harbour());
        if (object instanceof Pattern given) {
            EObject copy = EcoreUtil.copy(given);
            for (EReference part : pattern.eClass().getEAllContainments()) {
                copy.eSet(part, pattern.eGet(part));
            }
            return (Pattern) copy;
        }
        EObject owner = owner(pattern, object);
        for (EReference part : owner.eClass().getEAllContainments()) {
            if (part.getEReferenceType().isInstance(object)) {
                owner.eSet(part, part.isMany() ? List.of(object) : object);
                return pattern;
            }
        }
        throw new IllegalArgumentException("no place for " + object.eClass().getName());
    }

    private static EObject owner(Pattern pattern, EObject object) {
        if (object instanceof EntryElement) {
            return pattern.getSizes().getFirst();
        }
        if (object instanceof YarnElement || object instanceof SwatchElement || object instanceof ColourElement) {
            pattern.setMaterials(PatternFactory.eINSTANCE.createMaterialsElement());
            if (object instanceof ColourElement) {
                pattern.getMaterials().getYarns().add(yarn());
            }
            return pattern.getMaterials();
        }
        return pattern;
    }

    private static YarnElement yarn() {
        YarnElement yarn = PatternFactory.eINSTANCE.createYarnElement();
        yarn.setMetresPerBall(200);
        yarn.setGramsPerBall(50);
        return yarn;
    }

    /** A value that can stand in a file, and is not the one that stands there by itself. */
    static Object otherThanDefault(EAttribute attribute) {
        Class<?> type = attribute.getEAttributeType().getInstanceClass();
        if (attribute == PatternPackage.Literals.PATTERN__FORMAT) {
            return PatternFiles.FORMAT;
        }
        if (type.isEnum()) {
            Object[] values = type.getEnumConstants();
            return values[values.length - 1];
        }
        return switch (type.getSimpleName()) {
            case "int", "Integer" -> 3;
            case "double", "Double" -> 2.5;
            case "boolean" -> true;
            case "FlapLength" -> FlapLength.parse("60 mm");
            case "PickUp" -> PickUp.parse("0.75 stitches/row");
            case "String" -> "text of " + attribute.getName();
            case "Gauge" -> Literals.gauge("8/1 in");
            case "Length" -> Literals.length("12 mm");
            case "Key" -> Patterns.key("cuff.height");
            case "Quantity" -> Quantity.parse("12.5 cm");
            default -> throw new IllegalArgumentException("no value for " + type);
        };
    }
}
