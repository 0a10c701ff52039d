package turnheel.workbench.editor;

import java.util.ResourceBundle;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;

/**
 * What kinds of part and a designer's choices are called on the screen. The words are in {@code choices.properties}, by the
 * names that the document's model gives them; a test asks for every one.
 */
final class ChoiceWords {

    private static final ResourceBundle WORDS = ResourceBundle.getBundle("turnheel.workbench.editor.choices"); //$NON-NLS-1$

    private ChoiceWords() {
    }

    /** A value of an enumeration. */
    static String of(Enum<?> value) {
        return WORDS.getString(value.getDeclaringClass().getSimpleName() + '.' + value.name());
    }

    /** Yes or no. */
    static String of(boolean value) {
        return WORDS.getString(Boolean.toString(value));
    }

    /** The name of a kind of part. */
    static String of(EClass kind) {
        return WORDS.getString(kind.getName());
    }

    /** The label of a choice that a kind of part leaves open. */
    static String of(EAttribute attribute) {
        return WORDS.getString(attribute.getEContainingClass().getName() + '.' + attribute.getName());
    }
}
