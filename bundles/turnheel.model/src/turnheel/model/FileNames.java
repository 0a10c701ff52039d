package turnheel.model;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.ExtendedMetaData;

import turnheel.model.pattern.PatternPackage;

/** What the classes and features of the document are called in its file; the {@code .ecore} says so. */
final class FileNames {

    /** The prefix that qualified names are written with. */
    static final String PREFIX = PatternPackage.eNS_PREFIX + ":";

    private static final ExtendedMetaData NAMES = ExtendedMetaData.INSTANCE;

    private FileNames() {
    }

    static String of(EStructuralFeature feature) {
        return NAMES.getName(feature);
    }

    static String of(EClass kind) {
        return NAMES.getName(kind);
    }

    /** Whether the feature is written as an element; the others are attributes. */
    static boolean isElement(EStructuralFeature feature) {
        return feature instanceof EReference || NAMES.getFeatureKind(feature) == ExtendedMetaData.ELEMENT_FEATURE;
    }

    static Optional<EStructuralFeature> feature(EClass owner, boolean element, String name) {
        return owner.getEAllStructuralFeatures().stream()
                .filter(feature -> isElement(feature) == element && of(feature).equals(name)).findFirst();
    }

    /** The names of a class's elements or attributes, as a list to read. */
    static String list(EClass owner, boolean element) {
        String names = owner.getEAllStructuralFeatures().stream().filter(feature -> isElement(feature) == element)
                .map(FileNames::of).collect(Collectors.joining(", "));
        return names.isEmpty() ? ProblemWords.nothing() : names;
    }

    /** The classes that can stand where this one is asked for. */
    static List<EClass> kinds(EClass asked) {
        return PatternPackage.eINSTANCE.getEClassifiers().stream()
                .filter(EClass.class::isInstance).map(EClass.class::cast)
                .filter(kind -> asked.isSuperTypeOf(kind) && !kind.isAbstract()).toList();
    }
}
