/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.Lean;

import turnheel.model.pattern.AfterthoughtHeelElement;
import turnheel.model.pattern.PatternFactory;
import turnheel.model.pattern.PatternPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Afterthought Heel Element</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.impl.AfterthoughtHeelElementImpl#getCap <em>Cap</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.AfterthoughtHeelElementImpl#getLean <em>Lean</em>}</li>
 * </ul>
 *
 * @generated
 */
public class AfterthoughtHeelElementImpl extends HeelElementImpl implements AfterthoughtHeelElement {
	/**
	 * The default value of the '{@link #getCap() <em>Cap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCap()
	 * @generated
	 * @ordered
	 */
	protected static final AfterthoughtHeel.Cap CAP_EDEFAULT = (AfterthoughtHeel.Cap)PatternFactory.eINSTANCE.createFromString(PatternPackage.eINSTANCE.getCap(), "wedge");

	/**
	 * The cached value of the '{@link #getCap() <em>Cap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCap()
	 * @generated
	 * @ordered
	 */
	protected AfterthoughtHeel.Cap cap = CAP_EDEFAULT;

	/**
	 * The default value of the '{@link #getLean() <em>Lean</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLean()
	 * @generated
	 * @ordered
	 */
	protected static final Lean LEAN_EDEFAULT = (Lean)PatternFactory.eINSTANCE.createFromString(PatternPackage.eINSTANCE.getLean(), "right");

	/**
	 * The cached value of the '{@link #getLean() <em>Lean</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLean()
	 * @generated
	 * @ordered
	 */
	protected Lean lean = LEAN_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected AfterthoughtHeelElementImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return PatternPackage.Literals.AFTERTHOUGHT_HEEL_ELEMENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public AfterthoughtHeel.Cap getCap() {
		return cap;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCap(AfterthoughtHeel.Cap newCap) {
		AfterthoughtHeel.Cap oldCap = cap;
		cap = newCap;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.AFTERTHOUGHT_HEEL_ELEMENT__CAP, oldCap, cap));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Lean getLean() {
		return lean;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLean(Lean newLean) {
		Lean oldLean = lean;
		lean = newLean;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.AFTERTHOUGHT_HEEL_ELEMENT__LEAN, oldLean, lean));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case PatternPackage.AFTERTHOUGHT_HEEL_ELEMENT__CAP:
				return getCap();
			case PatternPackage.AFTERTHOUGHT_HEEL_ELEMENT__LEAN:
				return getLean();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case PatternPackage.AFTERTHOUGHT_HEEL_ELEMENT__CAP:
				setCap((AfterthoughtHeel.Cap)newValue);
				return;
			case PatternPackage.AFTERTHOUGHT_HEEL_ELEMENT__LEAN:
				setLean((Lean)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case PatternPackage.AFTERTHOUGHT_HEEL_ELEMENT__CAP:
				setCap(CAP_EDEFAULT);
				return;
			case PatternPackage.AFTERTHOUGHT_HEEL_ELEMENT__LEAN:
				setLean(LEAN_EDEFAULT);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case PatternPackage.AFTERTHOUGHT_HEEL_ELEMENT__CAP:
				return CAP_EDEFAULT == null ? cap != null : !CAP_EDEFAULT.equals(cap);
			case PatternPackage.AFTERTHOUGHT_HEEL_ELEMENT__LEAN:
				return LEAN_EDEFAULT == null ? lean != null : !LEAN_EDEFAULT.equals(lean);
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (cap: ");
		result.append(cap);
		result.append(", lean: ");
		result.append(lean);
		result.append(')');
		return result.toString();
	}

} //AfterthoughtHeelElementImpl
