/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Hem Cuff Element</b></em>'.
 * <!-- end-user-doc -->
 *
 *
 * @see turnheel.model.pattern.PatternPackage#getHemCuffElement()
 * @generated
 */
public interface HemCuffElement extends CuffElement {
} // HemCuffElement
