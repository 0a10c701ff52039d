/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern.impl;

import org.eclipse.emf.ecore.EClass;

import turnheel.model.pattern.PatternPackage;
import turnheel.model.pattern.RolledCuffElement;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Rolled Cuff Element</b></em>'.
 * <!-- end-user-doc -->
 *
 * @generated
 */
public class RolledCuffElementImpl extends CuffElementImpl implements RolledCuffElement {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected RolledCuffElementImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return PatternPackage.Literals.ROLLED_CUFF_ELEMENT;
	}

} //RolledCuffElementImpl
