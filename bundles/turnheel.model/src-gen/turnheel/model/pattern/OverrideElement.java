/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Override Element</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What holds instead of a rule's value.
 * <!-- end-model-doc -->
 *
 *
 * @see turnheel.model.pattern.PatternPackage#getOverrideElement()
 * @generated
 */
public interface OverrideElement extends EntryElement {
} // OverrideElement
