/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;

import org.eclipse.emf.ecore.EObject;

import turnheel.engine.design.Length;
import turnheel.engine.design.Swatch;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Swatch Element</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A piece of the main fabric that was measured, weighed, or both.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.SwatchElement#getStitches <em>Stitches</em>}</li>
 *   <li>{@link turnheel.model.pattern.SwatchElement#getRounds <em>Rounds</em>}</li>
 *   <li>{@link turnheel.model.pattern.SwatchElement#getGrams <em>Grams</em>}</li>
 *   <li>{@link turnheel.model.pattern.SwatchElement#getWidth <em>Width</em>}</li>
 *   <li>{@link turnheel.model.pattern.SwatchElement#getHeight <em>Height</em>}</li>
 *   <li>{@link turnheel.model.pattern.SwatchElement#getWorked <em>Worked</em>}</li>
 *   <li>{@link turnheel.model.pattern.SwatchElement#isWashed <em>Washed</em>}</li>
 * </ul>
 *
 * @see turnheel.model.pattern.PatternPackage#getSwatchElement()
 * @generated
 */
public interface SwatchElement extends EObject {
	/**
	 * Returns the value of the '<em><b>Stitches</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Stitches</em>' attribute.
	 * @see #setStitches(int)
	 * @see turnheel.model.pattern.PatternPackage#getSwatchElement_Stitches()
	 * @generated
	 */
	int getStitches();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.SwatchElement#getStitches <em>Stitches</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stitches</em>' attribute.
	 * @see #getStitches()
	 * @generated
	 */
	void setStitches(int value);

	/**
	 * Returns the value of the '<em><b>Rounds</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rounds</em>' attribute.
	 * @see #setRounds(int)
	 * @see turnheel.model.pattern.PatternPackage#getSwatchElement_Rounds()
	 * @generated
	 */
	int getRounds();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.SwatchElement#getRounds <em>Rounds</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rounds</em>' attribute.
	 * @see #getRounds()
	 * @generated
	 */
	void setRounds(int value);

	/**
	 * Returns the value of the '<em><b>Grams</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Grams</em>' attribute.
	 * @see #setGrams(Double)
	 * @see turnheel.model.pattern.PatternPackage#getSwatchElement_Grams()
	 * @generated
	 */
	Double getGrams();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.SwatchElement#getGrams <em>Grams</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Grams</em>' attribute.
	 * @see #getGrams()
	 * @generated
	 */
	void setGrams(Double value);

	/**
	 * Returns the value of the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Width</em>' attribute.
	 * @see #setWidth(Length)
	 * @see turnheel.model.pattern.PatternPackage#getSwatchElement_Width()
	 * @generated
	 */
	Length getWidth();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.SwatchElement#getWidth <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width</em>' attribute.
	 * @see #getWidth()
	 * @generated
	 */
	void setWidth(Length value);

	/**
	 * Returns the value of the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Height</em>' attribute.
	 * @see #setHeight(Length)
	 * @see turnheel.model.pattern.PatternPackage#getSwatchElement_Height()
	 * @generated
	 */
	Length getHeight();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.SwatchElement#getHeight <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height</em>' attribute.
	 * @see #getHeight()
	 * @generated
	 */
	void setHeight(Length value);

	/**
	 * Returns the value of the '<em><b>Worked</b></em>' attribute.
	 * The default value is <code>"in-the-round"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Worked</em>' attribute.
	 * @see #setWorked(Swatch.Worked)
	 * @see turnheel.model.pattern.PatternPackage#getSwatchElement_Worked()
	 * @generated
	 */
	Swatch.Worked getWorked();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.SwatchElement#getWorked <em>Worked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Worked</em>' attribute.
	 * @see #getWorked()
	 * @generated
	 */
	void setWorked(Swatch.Worked value);

	/**
	 * Returns the value of the '<em><b>Washed</b></em>' attribute.
	 * The default value is <code>"false"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Washed</em>' attribute.
	 * @see #setWashed(boolean)
	 * @see turnheel.model.pattern.PatternPackage#getSwatchElement_Washed()
	 * @generated
	 */
	boolean isWashed();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.SwatchElement#isWashed <em>Washed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Washed</em>' attribute.
	 * @see #isWashed()
	 * @generated
	 */
	void setWashed(boolean value);

} // SwatchElement
