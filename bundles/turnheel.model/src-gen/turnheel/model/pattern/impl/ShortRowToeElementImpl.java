/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import turnheel.engine.design.TurnMethod;

import turnheel.model.pattern.PatternFactory;
import turnheel.model.pattern.PatternPackage;
import turnheel.model.pattern.ShortRowToeElement;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Short Row Toe Element</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.impl.ShortRowToeElementImpl#getTurn <em>Turn</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ShortRowToeElementImpl extends ToeElementImpl implements ShortRowToeElement {
	/**
	 * The default value of the '{@link #getTurn() <em>Turn</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTurn()
	 * @generated
	 * @ordered
	 */
	protected static final TurnMethod TURN_EDEFAULT = (TurnMethod)PatternFactory.eINSTANCE.createFromString(PatternPackage.eINSTANCE.getTurnMethod(), "wrapped");

	/**
	 * The cached value of the '{@link #getTurn() <em>Turn</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTurn()
	 * @generated
	 * @ordered
	 */
	protected TurnMethod turn = TURN_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ShortRowToeElementImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return PatternPackage.Literals.SHORT_ROW_TOE_ELEMENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TurnMethod getTurn() {
		return turn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTurn(TurnMethod newTurn) {
		TurnMethod oldTurn = turn;
		turn = newTurn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.SHORT_ROW_TOE_ELEMENT__TURN, oldTurn, turn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case PatternPackage.SHORT_ROW_TOE_ELEMENT__TURN:
				return getTurn();
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
			case PatternPackage.SHORT_ROW_TOE_ELEMENT__TURN:
				setTurn((TurnMethod)newValue);
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
			case PatternPackage.SHORT_ROW_TOE_ELEMENT__TURN:
				setTurn(TURN_EDEFAULT);
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
			case PatternPackage.SHORT_ROW_TOE_ELEMENT__TURN:
				return TURN_EDEFAULT == null ? turn != null : !TURN_EDEFAULT.equals(turn);
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
		result.append(')');
		return result.toString();
	}

} //ShortRowToeElementImpl
