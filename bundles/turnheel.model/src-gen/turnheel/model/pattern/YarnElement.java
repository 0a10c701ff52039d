/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Yarn Element</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A yarn, as its label tells.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.YarnElement#getName <em>Name</em>}</li>
 *   <li>{@link turnheel.model.pattern.YarnElement#getMetresPerBall <em>Metres Per Ball</em>}</li>
 *   <li>{@link turnheel.model.pattern.YarnElement#getGramsPerBall <em>Grams Per Ball</em>}</li>
 *   <li>{@link turnheel.model.pattern.YarnElement#getCategory <em>Category</em>}</li>
 *   <li>{@link turnheel.model.pattern.YarnElement#getColour <em>Colour</em>}</li>
 *   <li>{@link turnheel.model.pattern.YarnElement#getBalls <em>Balls</em>}</li>
 * </ul>
 *
 * @see turnheel.model.pattern.PatternPackage#getYarnElement()
 * @generated
 */
public interface YarnElement extends EObject {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see turnheel.model.pattern.PatternPackage#getYarnElement_Name()
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.YarnElement#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Metres Per Ball</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Metres Per Ball</em>' attribute.
	 * @see #setMetresPerBall(double)
	 * @see turnheel.model.pattern.PatternPackage#getYarnElement_MetresPerBall()
	 * @generated
	 */
	double getMetresPerBall();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.YarnElement#getMetresPerBall <em>Metres Per Ball</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Metres Per Ball</em>' attribute.
	 * @see #getMetresPerBall()
	 * @generated
	 */
	void setMetresPerBall(double value);

	/**
	 * Returns the value of the '<em><b>Grams Per Ball</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Grams Per Ball</em>' attribute.
	 * @see #setGramsPerBall(double)
	 * @see turnheel.model.pattern.PatternPackage#getYarnElement_GramsPerBall()
	 * @generated
	 */
	double getGramsPerBall();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.YarnElement#getGramsPerBall <em>Grams Per Ball</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Grams Per Ball</em>' attribute.
	 * @see #getGramsPerBall()
	 * @generated
	 */
	void setGramsPerBall(double value);

	/**
	 * Returns the value of the '<em><b>Category</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Category</em>' attribute.
	 * @see #setCategory(Integer)
	 * @see turnheel.model.pattern.PatternPackage#getYarnElement_Category()
	 * @generated
	 */
	Integer getCategory();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.YarnElement#getCategory <em>Category</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Category</em>' attribute.
	 * @see #getCategory()
	 * @generated
	 */
	void setCategory(Integer value);

	/**
	 * Returns the value of the '<em><b>Colour</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Colour</em>' attribute.
	 * @see #setColour(String)
	 * @see turnheel.model.pattern.PatternPackage#getYarnElement_Colour()
	 * @generated
	 */
	String getColour();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.YarnElement#getColour <em>Colour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Colour</em>' attribute.
	 * @see #getColour()
	 * @generated
	 */
	void setColour(String value);

	/**
	 * Returns the value of the '<em><b>Balls</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the pattern states for a pair.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Balls</em>' attribute.
	 * @see #setBalls(Integer)
	 * @see turnheel.model.pattern.PatternPackage#getYarnElement_Balls()
	 * @generated
	 */
	Integer getBalls();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.YarnElement#getBalls <em>Balls</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Balls</em>' attribute.
	 * @see #getBalls()
	 * @generated
	 */
	void setBalls(Integer value);

} // YarnElement
