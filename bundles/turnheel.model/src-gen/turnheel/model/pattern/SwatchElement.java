/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Swatch Element</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A piece of the main fabric that was weighed.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.SwatchElement#getStitches <em>Stitches</em>}</li>
 *   <li>{@link turnheel.model.pattern.SwatchElement#getRounds <em>Rounds</em>}</li>
 *   <li>{@link turnheel.model.pattern.SwatchElement#getGrams <em>Grams</em>}</li>
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
	 * @see #setGrams(double)
	 * @see turnheel.model.pattern.PatternPackage#getSwatchElement_Grams()
	 * @generated
	 */
	double getGrams();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.SwatchElement#getGrams <em>Grams</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Grams</em>' attribute.
	 * @see #getGrams()
	 * @generated
	 */
	void setGrams(double value);

} // SwatchElement
