/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern.impl;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.EObjectImpl;

import turnheel.model.pattern.MaterialsElement;
import turnheel.model.pattern.PatternPackage;
import turnheel.model.pattern.SwatchElement;
import turnheel.model.pattern.YarnElement;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Materials Element</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.impl.MaterialsElementImpl#getBalls <em>Balls</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.MaterialsElementImpl#getMarginPercent <em>Margin Percent</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.MaterialsElementImpl#getYarn <em>Yarn</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.MaterialsElementImpl#getSwatch <em>Swatch</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MaterialsElementImpl extends EObjectImpl implements MaterialsElement {
	/**
	 * The default value of the '{@link #getBalls() <em>Balls</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBalls()
	 * @generated
	 * @ordered
	 */
	protected static final Integer BALLS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBalls() <em>Balls</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBalls()
	 * @generated
	 * @ordered
	 */
	protected Integer balls = BALLS_EDEFAULT;

	/**
	 * The default value of the '{@link #getMarginPercent() <em>Margin Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMarginPercent()
	 * @generated
	 * @ordered
	 */
	protected static final double MARGIN_PERCENT_EDEFAULT = 10.0;

	/**
	 * The cached value of the '{@link #getMarginPercent() <em>Margin Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMarginPercent()
	 * @generated
	 * @ordered
	 */
	protected double marginPercent = MARGIN_PERCENT_EDEFAULT;

	/**
	 * The cached value of the '{@link #getYarn() <em>Yarn</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getYarn()
	 * @generated
	 * @ordered
	 */
	protected YarnElement yarn;

	/**
	 * The cached value of the '{@link #getSwatch() <em>Swatch</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSwatch()
	 * @generated
	 * @ordered
	 */
	protected SwatchElement swatch;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MaterialsElementImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return PatternPackage.Literals.MATERIALS_ELEMENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getBalls() {
		return balls;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBalls(Integer newBalls) {
		Integer oldBalls = balls;
		balls = newBalls;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.MATERIALS_ELEMENT__BALLS, oldBalls, balls));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getMarginPercent() {
		return marginPercent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMarginPercent(double newMarginPercent) {
		double oldMarginPercent = marginPercent;
		marginPercent = newMarginPercent;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.MATERIALS_ELEMENT__MARGIN_PERCENT, oldMarginPercent, marginPercent));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public YarnElement getYarn() {
		return yarn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetYarn(YarnElement newYarn, NotificationChain msgs) {
		YarnElement oldYarn = yarn;
		yarn = newYarn;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, PatternPackage.MATERIALS_ELEMENT__YARN, oldYarn, newYarn);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setYarn(YarnElement newYarn) {
		if (newYarn != yarn) {
			NotificationChain msgs = null;
			if (yarn != null)
				msgs = ((InternalEObject)yarn).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - PatternPackage.MATERIALS_ELEMENT__YARN, null, msgs);
			if (newYarn != null)
				msgs = ((InternalEObject)newYarn).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - PatternPackage.MATERIALS_ELEMENT__YARN, null, msgs);
			msgs = basicSetYarn(newYarn, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.MATERIALS_ELEMENT__YARN, newYarn, newYarn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SwatchElement getSwatch() {
		return swatch;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetSwatch(SwatchElement newSwatch, NotificationChain msgs) {
		SwatchElement oldSwatch = swatch;
		swatch = newSwatch;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, PatternPackage.MATERIALS_ELEMENT__SWATCH, oldSwatch, newSwatch);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSwatch(SwatchElement newSwatch) {
		if (newSwatch != swatch) {
			NotificationChain msgs = null;
			if (swatch != null)
				msgs = ((InternalEObject)swatch).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - PatternPackage.MATERIALS_ELEMENT__SWATCH, null, msgs);
			if (newSwatch != null)
				msgs = ((InternalEObject)newSwatch).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - PatternPackage.MATERIALS_ELEMENT__SWATCH, null, msgs);
			msgs = basicSetSwatch(newSwatch, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.MATERIALS_ELEMENT__SWATCH, newSwatch, newSwatch));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case PatternPackage.MATERIALS_ELEMENT__YARN:
				return basicSetYarn(null, msgs);
			case PatternPackage.MATERIALS_ELEMENT__SWATCH:
				return basicSetSwatch(null, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case PatternPackage.MATERIALS_ELEMENT__BALLS:
				return getBalls();
			case PatternPackage.MATERIALS_ELEMENT__MARGIN_PERCENT:
				return getMarginPercent();
			case PatternPackage.MATERIALS_ELEMENT__YARN:
				return getYarn();
			case PatternPackage.MATERIALS_ELEMENT__SWATCH:
				return getSwatch();
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
			case PatternPackage.MATERIALS_ELEMENT__BALLS:
				setBalls((Integer)newValue);
				return;
			case PatternPackage.MATERIALS_ELEMENT__MARGIN_PERCENT:
				setMarginPercent((Double)newValue);
				return;
			case PatternPackage.MATERIALS_ELEMENT__YARN:
				setYarn((YarnElement)newValue);
				return;
			case PatternPackage.MATERIALS_ELEMENT__SWATCH:
				setSwatch((SwatchElement)newValue);
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
			case PatternPackage.MATERIALS_ELEMENT__BALLS:
				setBalls(BALLS_EDEFAULT);
				return;
			case PatternPackage.MATERIALS_ELEMENT__MARGIN_PERCENT:
				setMarginPercent(MARGIN_PERCENT_EDEFAULT);
				return;
			case PatternPackage.MATERIALS_ELEMENT__YARN:
				setYarn((YarnElement)null);
				return;
			case PatternPackage.MATERIALS_ELEMENT__SWATCH:
				setSwatch((SwatchElement)null);
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
			case PatternPackage.MATERIALS_ELEMENT__BALLS:
				return BALLS_EDEFAULT == null ? balls != null : !BALLS_EDEFAULT.equals(balls);
			case PatternPackage.MATERIALS_ELEMENT__MARGIN_PERCENT:
				return marginPercent != MARGIN_PERCENT_EDEFAULT;
			case PatternPackage.MATERIALS_ELEMENT__YARN:
				return yarn != null;
			case PatternPackage.MATERIALS_ELEMENT__SWATCH:
				return swatch != null;
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
		result.append(" (balls: ");
		result.append(balls);
		result.append(", marginPercent: ");
		result.append(marginPercent);
		result.append(')');
		return result.toString();
	}

} //MaterialsElementImpl
