/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import turnheel.engine.design.FlapLength;
import turnheel.engine.design.HeelTurn;

import turnheel.model.pattern.FlapHeelElement;
import turnheel.model.pattern.PatternFactory;
import turnheel.model.pattern.PatternPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Flap Heel Element</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.impl.FlapHeelElementImpl#getTurn <em>Turn</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.FlapHeelElementImpl#getFlapLength <em>Flap Length</em>}</li>
 * </ul>
 *
 * @generated
 */
public class FlapHeelElementImpl extends HeelElementImpl implements FlapHeelElement {
	/**
	 * The default value of the '{@link #getTurn() <em>Turn</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTurn()
	 * @generated
	 * @ordered
	 */
	protected static final HeelTurn TURN_EDEFAULT = (HeelTurn)PatternFactory.eINSTANCE.createFromString(PatternPackage.eINSTANCE.getHeelTurn(), "round");

	/**
	 * The cached value of the '{@link #getTurn() <em>Turn</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTurn()
	 * @generated
	 * @ordered
	 */
	protected HeelTurn turn = TURN_EDEFAULT;

	/**
	 * The default value of the '{@link #getFlapLength() <em>Flap Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlapLength()
	 * @generated
	 * @ordered
	 */
	protected static final FlapLength FLAP_LENGTH_EDEFAULT = (FlapLength)PatternFactory.eINSTANCE.createFromString(PatternPackage.eINSTANCE.getFlapLength(), "from-body");

	/**
	 * The cached value of the '{@link #getFlapLength() <em>Flap Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlapLength()
	 * @generated
	 * @ordered
	 */
	protected FlapLength flapLength = FLAP_LENGTH_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected FlapHeelElementImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return PatternPackage.Literals.FLAP_HEEL_ELEMENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public HeelTurn getTurn() {
		return turn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTurn(HeelTurn newTurn) {
		HeelTurn oldTurn = turn;
		turn = newTurn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.FLAP_HEEL_ELEMENT__TURN, oldTurn, turn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FlapLength getFlapLength() {
		return flapLength;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFlapLength(FlapLength newFlapLength) {
		FlapLength oldFlapLength = flapLength;
		flapLength = newFlapLength;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.FLAP_HEEL_ELEMENT__FLAP_LENGTH, oldFlapLength, flapLength));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case PatternPackage.FLAP_HEEL_ELEMENT__TURN:
				return getTurn();
			case PatternPackage.FLAP_HEEL_ELEMENT__FLAP_LENGTH:
				return getFlapLength();
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
			case PatternPackage.FLAP_HEEL_ELEMENT__TURN:
				setTurn((HeelTurn)newValue);
				return;
			case PatternPackage.FLAP_HEEL_ELEMENT__FLAP_LENGTH:
				setFlapLength((FlapLength)newValue);
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
			case PatternPackage.FLAP_HEEL_ELEMENT__TURN:
				setTurn(TURN_EDEFAULT);
				return;
			case PatternPackage.FLAP_HEEL_ELEMENT__FLAP_LENGTH:
				setFlapLength(FLAP_LENGTH_EDEFAULT);
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
			case PatternPackage.FLAP_HEEL_ELEMENT__TURN:
				return TURN_EDEFAULT == null ? turn != null : !TURN_EDEFAULT.equals(turn);
			case PatternPackage.FLAP_HEEL_ELEMENT__FLAP_LENGTH:
				return FLAP_LENGTH_EDEFAULT == null ? flapLength != null : !FLAP_LENGTH_EDEFAULT.equals(flapLength);
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
		result.append(" (turn: ");
		result.append(turn);
		result.append(", flapLength: ");
		result.append(flapLength);
		result.append(')');
		return result.toString();
	}

} //FlapHeelElementImpl
