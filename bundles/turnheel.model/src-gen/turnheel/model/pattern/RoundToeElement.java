/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;

import turnheel.engine.design.CastOn;
import turnheel.engine.design.Increase;
import turnheel.engine.design.Lean;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Round Toe Element</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.RoundToeElement#getLines <em>Lines</em>}</li>
 *   <li>{@link turnheel.model.pattern.RoundToeElement#getIncrease <em>Increase</em>}</li>
 *   <li>{@link turnheel.model.pattern.RoundToeElement#getCastOn <em>Cast On</em>}</li>
 *   <li>{@link turnheel.model.pattern.RoundToeElement#getLean <em>Lean</em>}</li>
 * </ul>
 *
 * @see turnheel.model.pattern.PatternPackage#getRoundToeElement()
 * @generated
 */
public interface RoundToeElement extends ToeElement {
	/**
	 * Returns the value of the '<em><b>Lines</b></em>' attribute.
	 * The default value is <code>"4"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The number of shaping lines that run from the tip.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Lines</em>' attribute.
	 * @see #setLines(int)
	 * @see turnheel.model.pattern.PatternPackage#getRoundToeElement_Lines()
	 * @generated
	 */
	int getLines();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.RoundToeElement#getLines <em>Lines</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lines</em>' attribute.
	 * @see #getLines()
	 * @generated
	 */
	void setLines(int value);

	/**
	 * Returns the value of the '<em><b>Increase</b></em>' attribute.
	 * The default value is <code>"yarn-over"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Increase</em>' attribute.
	 * @see #setIncrease(Increase)
	 * @see turnheel.model.pattern.PatternPackage#getRoundToeElement_Increase()
	 * @generated
	 */
	Increase getIncrease();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.RoundToeElement#getIncrease <em>Increase</em>}' attribute.
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
	 * @see turnheel.model.pattern.PatternPackage#getRoundToeElement_CastOn()
	 * @generated
	 */
	CastOn getCastOn();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.RoundToeElement#getCastOn <em>Cast On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cast On</em>' attribute.
	 * @see #getCastOn()
	 * @generated
	 */
	void setCastOn(CastOn value);

	/**
	 * Returns the value of the '<em><b>Lean</b></em>' attribute.
	 * The default value is <code>"right"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lean</em>' attribute.
	 * @see #setLean(Lean)
	 * @see turnheel.model.pattern.PatternPackage#getRoundToeElement_Lean()
	 * @generated
	 */
	Lean getLean();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.RoundToeElement#getLean <em>Lean</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lean</em>' attribute.
	 * @see #getLean()
	 * @generated
	 */
	void setLean(Lean value);

} // RoundToeElement
