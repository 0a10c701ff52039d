/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import turnheel.engine.design.FlapEdge;
import turnheel.engine.design.FlapFabric;
import turnheel.engine.design.FlapLength;
import turnheel.engine.design.HeelTurn;
import turnheel.engine.design.PickUp;

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
 *   <li>{@link turnheel.model.pattern.impl.FlapHeelElementImpl#getFabric <em>Fabric</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.FlapHeelElementImpl#getEdge <em>Edge</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.FlapHeelElementImpl#getPickUp <em>Pick Up</em>}</li>
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
	 * The default value of the '{@link #getFabric() <em>Fabric</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFabric()
	 * @generated
	 * @ordered
	 */
	protected static final FlapFabric FABRIC_EDEFAULT = (FlapFabric)PatternFactory.eINSTANCE.createFromString(PatternPackage.eINSTANCE.getFlapFabric(), "plain");

	/**
	 * The cached value of the '{@link #getFabric() <em>Fabric</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFabric()
	 * @generated
	 * @ordered
	 */
	protected FlapFabric fabric = FABRIC_EDEFAULT;

	/**
	 * The default value of the '{@link #getEdge() <em>Edge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEdge()
	 * @generated
	 * @ordered
	 */
	protected static final FlapEdge EDGE_EDEFAULT = (FlapEdge)PatternFactory.eINSTANCE.createFromString(PatternPackage.eINSTANCE.getFlapEdge(), "slipped");

	/**
	 * The cached value of the '{@link #getEdge() <em>Edge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEdge()
	 * @generated
	 * @ordered
	 */
	protected FlapEdge edge = EDGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getPickUp() <em>Pick Up</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPickUp()
	 * @generated
	 * @ordered
	 */
	protected static final PickUp PICK_UP_EDEFAULT = (PickUp)PatternFactory.eINSTANCE.createFromString(PatternPackage.eINSTANCE.getPickUp(), "half-the-rows");

	/**
	 * The cached value of the '{@link #getPickUp() <em>Pick Up</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPickUp()
	 * @generated
	 * @ordered
	 */
	protected PickUp pickUp = PICK_UP_EDEFAULT;

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
	public FlapFabric getFabric() {
		return fabric;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFabric(FlapFabric newFabric) {
		FlapFabric oldFabric = fabric;
		fabric = newFabric;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.FLAP_HEEL_ELEMENT__FABRIC, oldFabric, fabric));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FlapEdge getEdge() {
		return edge;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEdge(FlapEdge newEdge) {
		FlapEdge oldEdge = edge;
		edge = newEdge;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.FLAP_HEEL_ELEMENT__EDGE, oldEdge, edge));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PickUp getPickUp() {
		return pickUp;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPickUp(PickUp newPickUp) {
		PickUp oldPickUp = pickUp;
		pickUp = newPickUp;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.FLAP_HEEL_ELEMENT__PICK_UP, oldPickUp, pickUp));
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
			case PatternPackage.FLAP_HEEL_ELEMENT__FABRIC:
				return getFabric();
			case PatternPackage.FLAP_HEEL_ELEMENT__EDGE:
				return getEdge();
			case PatternPackage.FLAP_HEEL_ELEMENT__PICK_UP:
				return getPickUp();
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
			case PatternPackage.FLAP_HEEL_ELEMENT__FABRIC:
				setFabric((FlapFabric)newValue);
				return;
			case PatternPackage.FLAP_HEEL_ELEMENT__EDGE:
				setEdge((FlapEdge)newValue);
				return;
			case PatternPackage.FLAP_HEEL_ELEMENT__PICK_UP:
				setPickUp((PickUp)newValue);
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
			case PatternPackage.FLAP_HEEL_ELEMENT__FABRIC:
				setFabric(FABRIC_EDEFAULT);
				return;
			case PatternPackage.FLAP_HEEL_ELEMENT__EDGE:
				setEdge(EDGE_EDEFAULT);
				return;
			case PatternPackage.FLAP_HEEL_ELEMENT__PICK_UP:
				setPickUp(PICK_UP_EDEFAULT);
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
			case PatternPackage.FLAP_HEEL_ELEMENT__FABRIC:
				return FABRIC_EDEFAULT == null ? fabric != null : !FABRIC_EDEFAULT.equals(fabric);
			case PatternPackage.FLAP_HEEL_ELEMENT__EDGE:
				return EDGE_EDEFAULT == null ? edge != null : !EDGE_EDEFAULT.equals(edge);
			case PatternPackage.FLAP_HEEL_ELEMENT__PICK_UP:
				return PICK_UP_EDEFAULT == null ? pickUp != null : !PICK_UP_EDEFAULT.equals(pickUp);
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
		result.append(", fabric: ");
		result.append(fabric);
		result.append(", edge: ");
		result.append(edge);
		result.append(", pickUp: ");
		result.append(pickUp);
		result.append(')');
		return result.toString();
	}

} //FlapHeelElementImpl
