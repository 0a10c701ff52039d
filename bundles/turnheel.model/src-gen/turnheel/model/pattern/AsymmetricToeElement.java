/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;

import turnheel.engine.design.CastOn;
import turnheel.engine.design.Increase;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Asymmetric Toe Element</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.AsymmetricToeElement#getIncrease <em>Increase</em>}</li>
 *   <li>{@link turnheel.model.pattern.AsymmetricToeElement#getCastOn <em>Cast On</em>}</li>
 * </ul>
 *
 * @see turnheel.model.pattern.PatternPackage#getAsymmetricToeElement()
 * @generated
 */
public interface AsymmetricToeElement extends ToeElement {
	/**
	 * Returns the value of the '<em><b>Increase</b></em>' attribute.
	 * The default value is <code>"make-one"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Increase</em>' attribute.
	 * @see #setIncrease(Increase)
	 * @see turnheel.model.pattern.PatternPackage#getAsymmetricToeElement_Increase()
	 * @generated
	 */
	Increase getIncrease();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.AsymmetricToeElement#getIncrease <em>Increase</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Increase</em>' attribute.
	 * @see #getIncrease()
	 * @generated
	 */
	void setIncrease(Increase value);

	/**
	 * Returns the value of the '<em><b>Cast On</b></em>' attribute.
	 * The default value is <code>"unworked"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Cast On</em>' attribute.
	 * @see #setCastOn(CastOn)
	 * @see turnheel.model.pattern.PatternPackage#getAsymmetricToeElement_CastOn()
	 * @generated
	 */
	CastOn getCastOn();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.AsymmetricToeElement#getCastOn <em>Cast On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cast On</em>' attribute.
	 * @see #getCastOn()
	 * @generated
	 */
	void setCastOn(CastOn value);

} // AsymmetricToeElement
