/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern.impl;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.EObjectImpl;

import turnheel.model.pattern.PatternPackage;
import turnheel.model.pattern.ToeElement;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Toe Element</b></em>'.
 * <!-- end-user-doc -->
 *
 * @generated
 */
public abstract class ToeElementImpl extends EObjectImpl implements ToeElement {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ToeElementImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return PatternPackage.Literals.TOE_ELEMENT;
	}

} //ToeElementImpl
