/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;

import turnheel.engine.design.SockLength;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Straight Leg Element</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.StraightLegElement#getLength <em>Length</em>}</li>
 * </ul>
 *
 * @see turnheel.model.pattern.PatternPackage#getStraightLegElement()
 * @generated
 */
public interface StraightLegElement extends LegElement {
	/**
	 * Returns the value of the '<em><b>Length</b></em>' attribute.
	 * The default value is <code>"crew"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Length</em>' attribute.
	 * @see #setLength(SockLength)
	 * @see turnheel.model.pattern.PatternPackage#getStraightLegElement_Length()
	 * @generated
	 */
	SockLength getLength();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.StraightLegElement#getLength <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Length</em>' attribute.
	 * @see #getLength()
	 * @generated
	 */
	void setLength(SockLength value);

} // StraightLegElement
