/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Input Element</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A measurement or a wish: what the rules start from.
 * <!-- end-model-doc -->
 *
 *
 * @see turnheel.model.pattern.PatternPackage#getInputElement()
 * @generated
 */
public interface InputElement extends EntryElement {
} // InputElement
