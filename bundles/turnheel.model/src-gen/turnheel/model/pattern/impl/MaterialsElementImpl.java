/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.EObjectImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import turnheel.engine.design.Length;

import turnheel.model.pattern.ColourElement;
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
 *   <li>{@link turnheel.model.pattern.impl.MaterialsElementImpl#getMarginPercent <em>Margin Percent</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.MaterialsElementImpl#getNeedle <em>Needle</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.MaterialsElementImpl#getNotions <em>Notions</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.MaterialsElementImpl#getYarns <em>Yarns</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.MaterialsElementImpl#getColours <em>Colours</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.MaterialsElementImpl#getSwatch <em>Swatch</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MaterialsElementImpl extends EObjectImpl implements MaterialsElement {
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
	 * The default value of the '{@link #getNeedle() <em>Needle</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNeedle()
	 * @generated
	 * @ordered
	 */
	protected static final Length NEEDLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNeedle() <em>Needle</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNeedle()
	 * @generated
	 * @ordered
	 */
	protected Length needle = NEEDLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getNotions() <em>Notions</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNotions()
	 * @generated
	 * @ordered
	 */
	protected static final String NOTIONS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNotions() <em>Notions</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNotions()
	 * @generated
	 * @ordered
	 */
	protected String notions = NOTIONS_EDEFAULT;

	/**
	 * The cached value of the '{@link #getYarns() <em>Yarns</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getYarns()
	 * @generated
	 * @ordered
	 */
	protected EList<YarnElement> yarns;

	/**
	 * The cached value of the '{@link #getColours() <em>Colours</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getColours()
	 * @generated
	 * @ordered
	 */
	protected EList<ColourElement> colours;

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
	public Length getNeedle() {
		return needle;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNeedle(Length newNeedle) {
		Length oldNeedle = needle;
		needle = newNeedle;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.MATERIALS_ELEMENT__NEEDLE, oldNeedle, needle));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getNotions() {
		return notions;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNotions(String newNotions) {
		String oldNotions = notions;
		notions = newNotions;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.MATERIALS_ELEMENT__NOTIONS, oldNotions, notions));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<YarnElement> getYarns() {
		if (yarns == null) {
			yarns = new EObjectContainmentEList<YarnElement>(YarnElement.class, this, PatternPackage.MATERIALS_ELEMENT__YARNS);
		}
		return yarns;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ColourElement> getColours() {
		if (colours == null) {
			colours = new EObjectContainmentEList<ColourElement>(ColourElement.class, this, PatternPackage.MATERIALS_ELEMENT__COLOURS);
		}
		return colours;
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
			case PatternPackage.MATERIALS_ELEMENT__YARNS:
				return ((InternalEList<?>)getYarns()).basicRemove(otherEnd, msgs);
			case PatternPackage.MATERIALS_ELEMENT__COLOURS:
				return ((InternalEList<?>)getColours()).basicRemove(otherEnd, msgs);
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
			case PatternPackage.MATERIALS_ELEMENT__MARGIN_PERCENT:
				return getMarginPercent();
			case PatternPackage.MATERIALS_ELEMENT__NEEDLE:
				return getNeedle();
			case PatternPackage.MATERIALS_ELEMENT__NOTIONS:
				return getNotions();
			case PatternPackage.MATERIALS_ELEMENT__YARNS:
				return getYarns();
			case PatternPackage.MATERIALS_ELEMENT__COLOURS:
				return getColours();
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
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case PatternPackage.MATERIALS_ELEMENT__MARGIN_PERCENT:
				setMarginPercent((Double)newValue);
				return;
			case PatternPackage.MATERIALS_ELEMENT__NEEDLE:
				setNeedle((Length)newValue);
				return;
			case PatternPackage.MATERIALS_ELEMENT__NOTIONS:
				setNotions((String)newValue);
				return;
			case PatternPackage.MATERIALS_ELEMENT__YARNS:
				getYarns().clear();
				getYarns().addAll((Collection<? extends YarnElement>)newValue);
				return;
			case PatternPackage.MATERIALS_ELEMENT__COLOURS:
				getColours().clear();
				getColours().addAll((Collection<? extends ColourElement>)newValue);
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
			case PatternPackage.MATERIALS_ELEMENT__MARGIN_PERCENT:
				setMarginPercent(MARGIN_PERCENT_EDEFAULT);
				return;
			case PatternPackage.MATERIALS_ELEMENT__NEEDLE:
				setNeedle(NEEDLE_EDEFAULT);
				return;
			case PatternPackage.MATERIALS_ELEMENT__NOTIONS:
				setNotions(NOTIONS_EDEFAULT);
				return;
			case PatternPackage.MATERIALS_ELEMENT__YARNS:
				getYarns().clear();
				return;
			case PatternPackage.MATERIALS_ELEMENT__COLOURS:
				getColours().clear();
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
			case PatternPackage.MATERIALS_ELEMENT__MARGIN_PERCENT:
				return marginPercent != MARGIN_PERCENT_EDEFAULT;
			case PatternPackage.MATERIALS_ELEMENT__NEEDLE:
				return NEEDLE_EDEFAULT == null ? needle != null : !NEEDLE_EDEFAULT.equals(needle);
			case PatternPackage.MATERIALS_ELEMENT__NOTIONS:
				return NOTIONS_EDEFAULT == null ? notions != null : !NOTIONS_EDEFAULT.equals(notions);
			case PatternPackage.MATERIALS_ELEMENT__YARNS:
				return yarns != null && !yarns.isEmpty();
			case PatternPackage.MATERIALS_ELEMENT__COLOURS:
				return colours != null && !colours.isEmpty();
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
		result.append(" (marginPercent: ");
		result.append(marginPercent);
		result.append(", needle: ");
		result.append(needle);
		result.append(", notions: ");
		result.append(notions);
		result.append(')');
		return result.toString();
	}

} //MaterialsElementImpl
