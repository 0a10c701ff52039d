/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.EObjectImpl;

import turnheel.engine.design.Length;
import turnheel.engine.design.Swatch;

import turnheel.model.pattern.PatternFactory;
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
 *   <li>{@link turnheel.model.pattern.impl.SwatchElementImpl#getWidth <em>Width</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.SwatchElementImpl#getHeight <em>Height</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.SwatchElementImpl#getWorked <em>Worked</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.SwatchElementImpl#isWashed <em>Washed</em>}</li>
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
	protected static final Double GRAMS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGrams() <em>Grams</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGrams()
	 * @generated
	 * @ordered
	 */
	protected Double grams = GRAMS_EDEFAULT;

	/**
	 * The default value of the '{@link #getWidth() <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidth()
	 * @generated
	 * @ordered
	 */
	protected static final Length WIDTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWidth() <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidth()
	 * @generated
	 * @ordered
	 */
	protected Length width = WIDTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeight() <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeight()
	 * @generated
	 * @ordered
	 */
	protected static final Length HEIGHT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHeight() <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeight()
	 * @generated
	 * @ordered
	 */
	protected Length height = HEIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getWorked() <em>Worked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorked()
	 * @generated
	 * @ordered
	 */
	protected static final Swatch.Worked WORKED_EDEFAULT = (Swatch.Worked)PatternFactory.eINSTANCE.createFromString(PatternPackage.eINSTANCE.getWorked(), "in-the-round");

	/**
	 * The cached value of the '{@link #getWorked() <em>Worked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorked()
	 * @generated
	 * @ordered
	 */
	protected Swatch.Worked worked = WORKED_EDEFAULT;

	/**
	 * The default value of the '{@link #isWashed() <em>Washed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isWashed()
	 * @generated
	 * @ordered
	 */
	protected static final boolean WASHED_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isWashed() <em>Washed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isWashed()
	 * @generated
	 * @ordered
	 */
	protected boolean washed = WASHED_EDEFAULT;

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
	public Double getGrams() {
		return grams;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGrams(Double newGrams) {
		Double oldGrams = grams;
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
	public Length getWidth() {
		return width;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWidth(Length newWidth) {
		Length oldWidth = width;
		width = newWidth;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.SWATCH_ELEMENT__WIDTH, oldWidth, width));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getHeight() {
		return height;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeight(Length newHeight) {
		Length oldHeight = height;
		height = newHeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.SWATCH_ELEMENT__HEIGHT, oldHeight, height));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Swatch.Worked getWorked() {
		return worked;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWorked(Swatch.Worked newWorked) {
		Swatch.Worked oldWorked = worked;
		worked = newWorked;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.SWATCH_ELEMENT__WORKED, oldWorked, worked));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isWashed() {
		return washed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWashed(boolean newWashed) {
		boolean oldWashed = washed;
		washed = newWashed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.SWATCH_ELEMENT__WASHED, oldWashed, washed));
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
			case PatternPackage.SWATCH_ELEMENT__WIDTH:
				return getWidth();
			case PatternPackage.SWATCH_ELEMENT__HEIGHT:
				return getHeight();
			case PatternPackage.SWATCH_ELEMENT__WORKED:
				return getWorked();
			case PatternPackage.SWATCH_ELEMENT__WASHED:
				return isWashed();
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
			case PatternPackage.SWATCH_ELEMENT__WIDTH:
				setWidth((Length)newValue);
				return;
			case PatternPackage.SWATCH_ELEMENT__HEIGHT:
				setHeight((Length)newValue);
				return;
			case PatternPackage.SWATCH_ELEMENT__WORKED:
				setWorked((Swatch.Worked)newValue);
				return;
			case PatternPackage.SWATCH_ELEMENT__WASHED:
				setWashed((Boolean)newValue);
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
			case PatternPackage.SWATCH_ELEMENT__WIDTH:
				setWidth(WIDTH_EDEFAULT);
				return;
			case PatternPackage.SWATCH_ELEMENT__HEIGHT:
				setHeight(HEIGHT_EDEFAULT);
				return;
			case PatternPackage.SWATCH_ELEMENT__WORKED:
				setWorked(WORKED_EDEFAULT);
				return;
			case PatternPackage.SWATCH_ELEMENT__WASHED:
				setWashed(WASHED_EDEFAULT);
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
				return GRAMS_EDEFAULT == null ? grams != null : !GRAMS_EDEFAULT.equals(grams);
			case PatternPackage.SWATCH_ELEMENT__WIDTH:
				return WIDTH_EDEFAULT == null ? width != null : !WIDTH_EDEFAULT.equals(width);
			case PatternPackage.SWATCH_ELEMENT__HEIGHT:
				return HEIGHT_EDEFAULT == null ? height != null : !HEIGHT_EDEFAULT.equals(height);
			case PatternPackage.SWATCH_ELEMENT__WORKED:
				return WORKED_EDEFAULT == null ? worked != null : !WORKED_EDEFAULT.equals(worked);
			case PatternPackage.SWATCH_ELEMENT__WASHED:
				return washed != WASHED_EDEFAULT;
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
		result.append(", width: ");
		result.append(width);
		result.append(", height: ");
		result.append(height);
		result.append(", worked: ");
		result.append(worked);
		result.append(", washed: ");
		result.append(washed);
		result.append(')');
		return result.toString();
	}

} //SwatchElementImpl
