/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Rolled Cuff Element</b></em>'.
 * <!-- end-user-doc -->
 *
 *
 * @see turnheel.model.pattern.PatternPackage#getRolledCuffElement()
 * @generated
 */
public interface RolledCuffElement extends CuffElement {
} // RolledCuffElement
