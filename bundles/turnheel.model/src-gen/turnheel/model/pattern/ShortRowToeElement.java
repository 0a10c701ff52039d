/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;

import turnheel.engine.design.TurnMethod;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Short Row Toe Element</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.ShortRowToeElement#getTurn <em>Turn</em>}</li>
 * </ul>
 *
 * @see turnheel.model.pattern.PatternPackage#getShortRowToeElement()
 * @generated
 */
public interface ShortRowToeElement extends ToeElement {
	/**
	 * Returns the value of the '<em><b>Turn</b></em>' attribute.
	 * The default value is <code>"wrapped"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Turn</em>' attribute.
	 * @see #setTurn(TurnMethod)
	 * @see turnheel.model.pattern.PatternPackage#getShortRowToeElement_Turn()
	 * @generated
	 */
	TurnMethod getTurn();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.ShortRowToeElement#getTurn <em>Turn</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Turn</em>' attribute.
	 * @see #getTurn()
	 * @generated
	 */
	void setTurn(TurnMethod value);

} // ShortRowToeElement
