/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.EObjectImpl;

import turnheel.engine.design.LengthMode;
import turnheel.engine.design.Snap;

import turnheel.model.pattern.LengthsElement;
import turnheel.model.pattern.PatternFactory;
import turnheel.model.pattern.PatternPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Lengths Element</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.impl.LengthsElementImpl#getFoot <em>Foot</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.LengthsElementImpl#getLeg <em>Leg</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.LengthsElementImpl#getCuff <em>Cuff</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.LengthsElementImpl#getSnap <em>Snap</em>}</li>
 * </ul>
 *
 * @generated
 */
public class LengthsElementImpl extends EObjectImpl implements LengthsElement {
	/**
	 * The default value of the '{@link #getFoot() <em>Foot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFoot()
	 * @generated
	 * @ordered
	 */
	protected static final LengthMode FOOT_EDEFAULT = (LengthMode)PatternFactory.eINSTANCE.createFromString(PatternPackage.eINSTANCE.getLengthMode(), "both");

	/**
	 * The cached value of the '{@link #getFoot() <em>Foot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFoot()
	 * @generated
	 * @ordered
	 */
	protected LengthMode foot = FOOT_EDEFAULT;

	/**
	 * The default value of the '{@link #getLeg() <em>Leg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeg()
	 * @generated
	 * @ordered
	 */
	protected static final LengthMode LEG_EDEFAULT = (LengthMode)PatternFactory.eINSTANCE.createFromString(PatternPackage.eINSTANCE.getLengthMode(), "both");

	/**
	 * The cached value of the '{@link #getLeg() <em>Leg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeg()
	 * @generated
	 * @ordered
	 */
	protected LengthMode leg = LEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getCuff() <em>Cuff</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCuff()
	 * @generated
	 * @ordered
	 */
	protected static final LengthMode CUFF_EDEFAULT = (LengthMode)PatternFactory.eINSTANCE.createFromString(PatternPackage.eINSTANCE.getLengthMode(), "rounds");

	/**
	 * The cached value of the '{@link #getCuff() <em>Cuff</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCuff()
	 * @generated
	 * @ordered
	 */
	protected LengthMode cuff = CUFF_EDEFAULT;

	/**
	 * The default value of the '{@link #getSnap() <em>Snap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSnap()
	 * @generated
	 * @ordered
	 */
	protected static final Snap SNAP_EDEFAULT = (Snap)PatternFactory.eINSTANCE.createFromString(PatternPackage.eINSTANCE.getSnap(), "none");

	/**
	 * The cached value of the '{@link #getSnap() <em>Snap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSnap()
	 * @generated
	 * @ordered
	 */
	protected Snap snap = SNAP_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected LengthsElementImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return PatternPackage.Literals.LENGTHS_ELEMENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LengthMode getFoot() {
		return foot;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFoot(LengthMode newFoot) {
		LengthMode oldFoot = foot;
		foot = newFoot;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.LENGTHS_ELEMENT__FOOT, oldFoot, foot));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LengthMode getLeg() {
		return leg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLeg(LengthMode newLeg) {
		LengthMode oldLeg = leg;
		leg = newLeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.LENGTHS_ELEMENT__LEG, oldLeg, leg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LengthMode getCuff() {
		return cuff;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCuff(LengthMode newCuff) {
		LengthMode oldCuff = cuff;
		cuff = newCuff;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.LENGTHS_ELEMENT__CUFF, oldCuff, cuff));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Snap getSnap() {
		return snap;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSnap(Snap newSnap) {
		Snap oldSnap = snap;
		snap = newSnap;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.LENGTHS_ELEMENT__SNAP, oldSnap, snap));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case PatternPackage.LENGTHS_ELEMENT__FOOT:
				return getFoot();
			case PatternPackage.LENGTHS_ELEMENT__LEG:
				return getLeg();
			case PatternPackage.LENGTHS_ELEMENT__CUFF:
				return getCuff();
			case PatternPackage.LENGTHS_ELEMENT__SNAP:
				return getSnap();
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
			case PatternPackage.LENGTHS_ELEMENT__FOOT:
				setFoot((LengthMode)newValue);
				return;
			case PatternPackage.LENGTHS_ELEMENT__LEG:
				setLeg((LengthMode)newValue);
				return;
			case PatternPackage.LENGTHS_ELEMENT__CUFF:
				setCuff((LengthMode)newValue);
				return;
			case PatternPackage.LENGTHS_ELEMENT__SNAP:
				setSnap((Snap)newValue);
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
			case PatternPackage.LENGTHS_ELEMENT__FOOT:
				setFoot(FOOT_EDEFAULT);
				return;
			case PatternPackage.LENGTHS_ELEMENT__LEG:
				setLeg(LEG_EDEFAULT);
				return;
			case PatternPackage.LENGTHS_ELEMENT__CUFF:
				setCuff(CUFF_EDEFAULT);
				return;
			case PatternPackage.LENGTHS_ELEMENT__SNAP:
				setSnap(SNAP_EDEFAULT);
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
			case PatternPackage.LENGTHS_ELEMENT__FOOT:
				return FOOT_EDEFAULT == null ? foot != null : !FOOT_EDEFAULT.equals(foot);
			case PatternPackage.LENGTHS_ELEMENT__LEG:
				return LEG_EDEFAULT == null ? leg != null : !LEG_EDEFAULT.equals(leg);
			case PatternPackage.LENGTHS_ELEMENT__CUFF:
				return CUFF_EDEFAULT == null ? cuff != null : !CUFF_EDEFAULT.equals(cuff);
			case PatternPackage.LENGTHS_ELEMENT__SNAP:
				return SNAP_EDEFAULT == null ? snap != null : !SNAP_EDEFAULT.equals(snap);
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
		result.append(" (foot: ");
		result.append(foot);
		result.append(", leg: ");
		result.append(leg);
		result.append(", cuff: ");
		result.append(cuff);
		result.append(", snap: ");
		result.append(snap);
		result.append(')');
		return result.toString();
	}

} //LengthsElementImpl
