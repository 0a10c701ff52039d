/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.EObjectImpl;

import turnheel.model.pattern.PatternPackage;
import turnheel.model.pattern.YarnElement;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Yarn Element</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.impl.YarnElementImpl#getName <em>Name</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.YarnElementImpl#getMetresPerBall <em>Metres Per Ball</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.YarnElementImpl#getGramsPerBall <em>Grams Per Ball</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.YarnElementImpl#getCategory <em>Category</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.YarnElementImpl#getColour <em>Colour</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.YarnElementImpl#getBalls <em>Balls</em>}</li>
 * </ul>
 *
 * @generated
 */
public class YarnElementImpl extends EObjectImpl implements YarnElement {
	/**
	 * The default value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected static final String NAME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected String name = NAME_EDEFAULT;

	/**
	 * The default value of the '{@link #getMetresPerBall() <em>Metres Per Ball</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMetresPerBall()
	 * @generated
	 * @ordered
	 */
	protected static final double METRES_PER_BALL_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getMetresPerBall() <em>Metres Per Ball</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMetresPerBall()
	 * @generated
	 * @ordered
	 */
	protected double metresPerBall = METRES_PER_BALL_EDEFAULT;

	/**
	 * The default value of the '{@link #getGramsPerBall() <em>Grams Per Ball</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGramsPerBall()
	 * @generated
	 * @ordered
	 */
	protected static final double GRAMS_PER_BALL_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getGramsPerBall() <em>Grams Per Ball</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGramsPerBall()
	 * @generated
	 * @ordered
	 */
	protected double gramsPerBall = GRAMS_PER_BALL_EDEFAULT;

	/**
	 * The default value of the '{@link #getCategory() <em>Category</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCategory()
	 * @generated
	 * @ordered
	 */
	protected static final Integer CATEGORY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCategory() <em>Category</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCategory()
	 * @generated
	 * @ordered
	 */
	protected Integer category = CATEGORY_EDEFAULT;

	/**
	 * The default value of the '{@link #getColour() <em>Colour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getColour()
	 * @generated
	 * @ordered
	 */
	protected static final String COLOUR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getColour() <em>Colour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getColour()
	 * @generated
	 * @ordered
	 */
	protected String colour = COLOUR_EDEFAULT;

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
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected YarnElementImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return PatternPackage.Literals.YARN_ELEMENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
		return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setName(String newName) {
		String oldName = name;
		name = newName;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.YARN_ELEMENT__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getMetresPerBall() {
		return metresPerBall;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMetresPerBall(double newMetresPerBall) {
		double oldMetresPerBall = metresPerBall;
		metresPerBall = newMetresPerBall;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.YARN_ELEMENT__METRES_PER_BALL, oldMetresPerBall, metresPerBall));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getGramsPerBall() {
		return gramsPerBall;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGramsPerBall(double newGramsPerBall) {
		double oldGramsPerBall = gramsPerBall;
		gramsPerBall = newGramsPerBall;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.YARN_ELEMENT__GRAMS_PER_BALL, oldGramsPerBall, gramsPerBall));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getCategory() {
		return category;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCategory(Integer newCategory) {
		Integer oldCategory = category;
		category = newCategory;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.YARN_ELEMENT__CATEGORY, oldCategory, category));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getColour() {
		return colour;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setColour(String newColour) {
		String oldColour = colour;
		colour = newColour;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.YARN_ELEMENT__COLOUR, oldColour, colour));
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
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.YARN_ELEMENT__BALLS, oldBalls, balls));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case PatternPackage.YARN_ELEMENT__NAME:
				return getName();
			case PatternPackage.YARN_ELEMENT__METRES_PER_BALL:
				return getMetresPerBall();
			case PatternPackage.YARN_ELEMENT__GRAMS_PER_BALL:
				return getGramsPerBall();
			case PatternPackage.YARN_ELEMENT__CATEGORY:
				return getCategory();
			case PatternPackage.YARN_ELEMENT__COLOUR:
				return getColour();
			case PatternPackage.YARN_ELEMENT__BALLS:
				return getBalls();
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
			case PatternPackage.YARN_ELEMENT__NAME:
				setName((String)newValue);
				return;
			case PatternPackage.YARN_ELEMENT__METRES_PER_BALL:
				setMetresPerBall((Double)newValue);
				return;
			case PatternPackage.YARN_ELEMENT__GRAMS_PER_BALL:
				setGramsPerBall((Double)newValue);
				return;
			case PatternPackage.YARN_ELEMENT__CATEGORY:
				setCategory((Integer)newValue);
				return;
			case PatternPackage.YARN_ELEMENT__COLOUR:
				setColour((String)newValue);
				return;
			case PatternPackage.YARN_ELEMENT__BALLS:
				setBalls((Integer)newValue);
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
			case PatternPackage.YARN_ELEMENT__NAME:
				setName(NAME_EDEFAULT);
				return;
			case PatternPackage.YARN_ELEMENT__METRES_PER_BALL:
				setMetresPerBall(METRES_PER_BALL_EDEFAULT);
				return;
			case PatternPackage.YARN_ELEMENT__GRAMS_PER_BALL:
				setGramsPerBall(GRAMS_PER_BALL_EDEFAULT);
				return;
			case PatternPackage.YARN_ELEMENT__CATEGORY:
				setCategory(CATEGORY_EDEFAULT);
				return;
			case PatternPackage.YARN_ELEMENT__COLOUR:
				setColour(COLOUR_EDEFAULT);
				return;
			case PatternPackage.YARN_ELEMENT__BALLS:
				setBalls(BALLS_EDEFAULT);
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
			case PatternPackage.YARN_ELEMENT__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case PatternPackage.YARN_ELEMENT__METRES_PER_BALL:
				return metresPerBall != METRES_PER_BALL_EDEFAULT;
			case PatternPackage.YARN_ELEMENT__GRAMS_PER_BALL:
				return gramsPerBall != GRAMS_PER_BALL_EDEFAULT;
			case PatternPackage.YARN_ELEMENT__CATEGORY:
				return CATEGORY_EDEFAULT == null ? category != null : !CATEGORY_EDEFAULT.equals(category);
			case PatternPackage.YARN_ELEMENT__COLOUR:
				return COLOUR_EDEFAULT == null ? colour != null : !COLOUR_EDEFAULT.equals(colour);
			case PatternPackage.YARN_ELEMENT__BALLS:
				return BALLS_EDEFAULT == null ? balls != null : !BALLS_EDEFAULT.equals(balls);
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
		result.append(" (name: ");
		result.append(name);
		result.append(", metresPerBall: ");
		result.append(metresPerBall);
		result.append(", gramsPerBall: ");
		result.append(gramsPerBall);
		result.append(", category: ");
		result.append(category);
		result.append(", colour: ");
		result.append(colour);
		result.append(", balls: ");
		result.append(balls);
		result.append(')');
		return result.toString();
	}

} //YarnElementImpl
