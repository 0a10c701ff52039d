package turnheel.model;

import org.eclipse.emf.common.notify.Adapter;
import org.eclipse.emf.common.notify.impl.AdapterImpl;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Where an object stood in the file that it was read from. It stays with the object while it is edited, and is not
 * saved; an object that was made otherwise has none.
 */
final class Origin extends AdapterImpl {

    private final SourceText.Tag tag;

    Origin(SourceText.Tag tag) {
        this.tag = tag;
    }

    /** Where the object began, or {@link Position#NONE}. */
    static Position of(EObject object) {
        return tag(object).start();
    }

    /** Where the feature was written, else where its object began, or {@link Position#NONE}. */
    static Position of(EObject object, EStructuralFeature feature) {
        return tag(object).attribute(FileNames.of(feature));
    }

    private static SourceText.Tag tag(EObject object) {
        for (Adapter adapter : object.eAdapters()) {
            if (adapter instanceof Origin origin) {
                return origin.tag;
            }
        }
        return SourceText.Tag.NONE;
    }
}
