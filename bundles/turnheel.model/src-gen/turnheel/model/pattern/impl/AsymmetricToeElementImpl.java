/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import turnheel.engine.design.CastOn;
import turnheel.engine.design.Increase;

import turnheel.model.pattern.AsymmetricToeElement;
import turnheel.model.pattern.PatternFactory;
import turnheel.model.pattern.PatternPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Asymmetric Toe Element</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.impl.AsymmetricToeElementImpl#getIncrease <em>Increase</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.AsymmetricToeElementImpl#getCastOn <em>Cast On</em>}</li>
 * </ul>
 *
 * @generated
 */
public class AsymmetricToeElementImpl extends ToeElementImpl implements AsymmetricToeElement {
	/**
	 * The default value of the '{@link #getIncrease() <em>Increase</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIncrease()
	 * @generated
	 * @ordered
	 */
	protected static final Increase INCREASE_EDEFAULT = (Increase)PatternFactory.eINSTANCE.createFromString(PatternPackage.eINSTANCE.getIncrease(), "make-one");

	/**
	 * The cached value of the '{@link #getIncrease() <em>Increase</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIncrease()
	 * @generated
	 * @ordered
	 */
	protected Increase increase = INCREASE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCastOn() <em>Cast On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCastOn()
	 * @generated
	 * @ordered
	 */
	protected static final CastOn CAST_ON_EDEFAULT = (CastOn)PatternFactory.eINSTANCE.createFromString(PatternPackage.eINSTANCE.getCastOn(), "unworked");

	/**
	 * The cached value of the '{@link #getCastOn() <em>Cast On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCastOn()
	 * @generated
	 * @ordered
	 */
	protected CastOn castOn = CAST_ON_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected AsymmetricToeElementImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return PatternPackage.Literals.ASYMMETRIC_TOE_ELEMENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Increase getIncrease() {
		return increase;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setIncrease(Increase newIncrease) {
		Increase oldIncrease = increase;
		increase = newIncrease;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.ASYMMETRIC_TOE_ELEMENT__INCREASE, oldIncrease, increase));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CastOn getCastOn() {
		return castOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCastOn(CastOn newCastOn) {
		CastOn oldCastOn = castOn;
		castOn = newCastOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.ASYMMETRIC_TOE_ELEMENT__CAST_ON, oldCastOn, castOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case PatternPackage.ASYMMETRIC_TOE_ELEMENT__INCREASE:
				return getIncrease();
			case PatternPackage.ASYMMETRIC_TOE_ELEMENT__CAST_ON:
				return getCastOn();
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
			case PatternPackage.ASYMMETRIC_TOE_ELEMENT__INCREASE:
				setIncrease((Increase)newValue);
				return;
			case PatternPackage.ASYMMETRIC_TOE_ELEMENT__CAST_ON:
				setCastOn((CastOn)newValue);
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
			case PatternPackage.ASYMMETRIC_TOE_ELEMENT__INCREASE:
				setIncrease(INCREASE_EDEFAULT);
				return;
			case PatternPackage.ASYMMETRIC_TOE_ELEMENT__CAST_ON:
				setCastOn(CAST_ON_EDEFAULT);
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
			case PatternPackage.ASYMMETRIC_TOE_ELEMENT__INCREASE:
				return INCREASE_EDEFAULT == null ? increase != null : !INCREASE_EDEFAULT.equals(increase);
			case PatternPackage.ASYMMETRIC_TOE_ELEMENT__CAST_ON:
				return CAST_ON_EDEFAULT == null ? castOn != null : !CAST_ON_EDEFAULT.equals(castOn);
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
		result.append(" (increase: ");
		result.append(increase);
		result.append(", castOn: ");
		result.append(castOn);
		result.append(')');
		return result.toString();
	}

} //AsymmetricToeElementImpl
