/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import turnheel.model.pattern.PatternPackage;
import turnheel.model.pattern.RibCuffElement;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Rib Cuff Element</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.impl.RibCuffElementImpl#getKnit <em>Knit</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.RibCuffElementImpl#getPurl <em>Purl</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.RibCuffElementImpl#isMayAdjust <em>May Adjust</em>}</li>
 * </ul>
 *
 * @generated
 */
public class RibCuffElementImpl extends CuffElementImpl implements RibCuffElement {
	/**
	 * The default value of the '{@link #getKnit() <em>Knit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKnit()
	 * @generated
	 * @ordered
	 */
	protected static final int KNIT_EDEFAULT = 2;

	/**
	 * The cached value of the '{@link #getKnit() <em>Knit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKnit()
	 * @generated
	 * @ordered
	 */
	protected int knit = KNIT_EDEFAULT;

	/**
	 * The default value of the '{@link #getPurl() <em>Purl</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPurl()
	 * @generated
	 * @ordered
	 */
	protected static final int PURL_EDEFAULT = 2;

	/**
	 * The cached value of the '{@link #getPurl() <em>Purl</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPurl()
	 * @generated
	 * @ordered
	 */
	protected int purl = PURL_EDEFAULT;

	/**
	 * The default value of the '{@link #isMayAdjust() <em>May Adjust</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isMayAdjust()
	 * @generated
	 * @ordered
	 */
	protected static final boolean MAY_ADJUST_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isMayAdjust() <em>May Adjust</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isMayAdjust()
	 * @generated
	 * @ordered
	 */
	protected boolean mayAdjust = MAY_ADJUST_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected RibCuffElementImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return PatternPackage.Literals.RIB_CUFF_ELEMENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getKnit() {
		return knit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKnit(int newKnit) {
		int oldKnit = knit;
		knit = newKnit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.RIB_CUFF_ELEMENT__KNIT, oldKnit, knit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getPurl() {
		return purl;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPurl(int newPurl) {
		int oldPurl = purl;
		purl = newPurl;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.RIB_CUFF_ELEMENT__PURL, oldPurl, purl));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isMayAdjust() {
		return mayAdjust;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMayAdjust(boolean newMayAdjust) {
		boolean oldMayAdjust = mayAdjust;
		mayAdjust = newMayAdjust;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.RIB_CUFF_ELEMENT__MAY_ADJUST, oldMayAdjust, mayAdjust));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case PatternPackage.RIB_CUFF_ELEMENT__KNIT:
				return getKnit();
			case PatternPackage.RIB_CUFF_ELEMENT__PURL:
				return getPurl();
			case PatternPackage.RIB_CUFF_ELEMENT__MAY_ADJUST:
				return isMayAdjust();
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
			case PatternPackage.RIB_CUFF_ELEMENT__KNIT:
				setKnit((Integer)newValue);
				return;
			case PatternPackage.RIB_CUFF_ELEMENT__PURL:
				setPurl((Integer)newValue);
				return;
			case PatternPackage.RIB_CUFF_ELEMENT__MAY_ADJUST:
				setMayAdjust((Boolean)newValue);
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
			case PatternPackage.RIB_CUFF_ELEMENT__KNIT:
				setKnit(KNIT_EDEFAULT);
				return;
			case PatternPackage.RIB_CUFF_ELEMENT__PURL:
				setPurl(PURL_EDEFAULT);
				return;
			case PatternPackage.RIB_CUFF_ELEMENT__MAY_ADJUST:
				setMayAdjust(MAY_ADJUST_EDEFAULT);
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
			case PatternPackage.RIB_CUFF_ELEMENT__KNIT:
				return knit != KNIT_EDEFAULT;
			case PatternPackage.RIB_CUFF_ELEMENT__PURL:
				return purl != PURL_EDEFAULT;
			case PatternPackage.RIB_CUFF_ELEMENT__MAY_ADJUST:
				return mayAdjust != MAY_ADJUST_EDEFAULT;
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
		result.append(" (knit: ");
		result.append(knit);
		result.append(", purl: ");
		result.append(purl);
		result.append(", mayAdjust: ");
		result.append(mayAdjust);
		result.append(')');
		return result.toString();
	}

} //RibCuffElementImpl
