/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Cuff Element</b></em>'.
 * <!-- end-user-doc -->
 *
 *
 * @see turnheel.model.pattern.PatternPackage#getCuffElement()
 * @generated
 */
public interface CuffElement extends EObject {
} // CuffElement
