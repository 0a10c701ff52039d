/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Leg Element</b></em>'.
 * <!-- end-user-doc -->
 *
 *
 * @see turnheel.model.pattern.PatternPackage#getLegElement()
 * @generated
 */
public interface LegElement extends EObject {
} // LegElement
