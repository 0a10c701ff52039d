/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.EObjectImpl;

import turnheel.model.pattern.PatternPackage;
import turnheel.model.pattern.SwatchElement;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Swatch Element</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.impl.SwatchElementImpl#getStitches <em>Stitches</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.SwatchElementImpl#getRounds <em>Rounds</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.SwatchElementImpl#getGrams <em>Grams</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SwatchElementImpl extends EObjectImpl implements SwatchElement {
	/**
	 * The default value of the '{@link #getStitches() <em>Stitches</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStitches()
	 * @generated
	 * @ordered
	 */
	protected static final int STITCHES_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getStitches() <em>Stitches</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStitches()
	 * @generated
	 * @ordered
	 */
	protected int stitches = STITCHES_EDEFAULT;

	/**
	 * The default value of the '{@link #getRounds() <em>Rounds</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRounds()
	 * @generated
	 * @ordered
	 */
	protected static final int ROUNDS_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getRounds() <em>Rounds</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRounds()
	 * @generated
	 * @ordered
	 */
	protected int rounds = ROUNDS_EDEFAULT;

	/**
	 * The default value of the '{@link #getGrams() <em>Grams</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGrams()
	 * @generated
	 * @ordered
	 */
	protected static final double GRAMS_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getGrams() <em>Grams</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGrams()
	 * @generated
	 * @ordered
	 */
	protected double grams = GRAMS_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SwatchElementImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return PatternPackage.Literals.SWATCH_ELEMENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getStitches() {
		return stitches;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStitches(int newStitches) {
		int oldStitches = stitches;
		stitches = newStitches;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.SWATCH_ELEMENT__STITCHES, oldStitches, stitches));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getRounds() {
		return rounds;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRounds(int newRounds) {
		int oldRounds = rounds;
		rounds = newRounds;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.SWATCH_ELEMENT__ROUNDS, oldRounds, rounds));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getGrams() {
		return grams;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGrams(double newGrams) {
		double oldGrams = grams;
		grams = newGrams;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.SWATCH_ELEMENT__GRAMS, oldGrams, grams));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case PatternPackage.SWATCH_ELEMENT__STITCHES:
				return getStitches();
			case PatternPackage.SWATCH_ELEMENT__ROUNDS:
				return getRounds();
			case PatternPackage.SWATCH_ELEMENT__GRAMS:
				return getGrams();
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
			case PatternPackage.SWATCH_ELEMENT__STITCHES:
				setStitches((Integer)newValue);
				return;
			case PatternPackage.SWATCH_ELEMENT__ROUNDS:
				setRounds((Integer)newValue);
				return;
			case PatternPackage.SWATCH_ELEMENT__GRAMS:
				setGrams((Double)newValue);
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
			case PatternPackage.SWATCH_ELEMENT__STITCHES:
				setStitches(STITCHES_EDEFAULT);
				return;
			case PatternPackage.SWATCH_ELEMENT__ROUNDS:
				setRounds(ROUNDS_EDEFAULT);
				return;
			case PatternPackage.SWATCH_ELEMENT__GRAMS:
				setGrams(GRAMS_EDEFAULT);
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
			case PatternPackage.SWATCH_ELEMENT__STITCHES:
				return stitches != STITCHES_EDEFAULT;
			case PatternPackage.SWATCH_ELEMENT__ROUNDS:
				return rounds != ROUNDS_EDEFAULT;
			case PatternPackage.SWATCH_ELEMENT__GRAMS:
				return grams != GRAMS_EDEFAULT;
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
		result.append(" (stitches: ");
		result.append(stitches);
		result.append(", rounds: ");
		result.append(rounds);
		result.append(", grams: ");
		result.append(grams);
		result.append(')');
		return result.toString();
	}

} //SwatchElementImpl
