/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;

import turnheel.engine.design.LegCount;
import turnheel.engine.design.SockLength;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Calf Leg Element</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.CalfLegElement#getLength <em>Length</em>}</li>
 *   <li>{@link turnheel.model.pattern.CalfLegElement#getCount <em>Count</em>}</li>
 * </ul>
 *
 * @see turnheel.model.pattern.PatternPackage#getCalfLegElement()
 * @generated
 */
public interface CalfLegElement extends LegElement {
	/**
	 * Returns the value of the '<em><b>Length</b></em>' attribute.
	 * The default value is <code>"knee"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Length</em>' attribute.
	 * @see #setLength(SockLength)
	 * @see turnheel.model.pattern.PatternPackage#getCalfLegElement_Length()
	 * @generated
	 */
	SockLength getLength();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.CalfLegElement#getLength <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Length</em>' attribute.
	 * @see #getLength()
	 * @generated
	 */
	void setLength(SockLength value);

	/**
	 * Returns the value of the '<em><b>Count</b></em>' attribute.
	 * The default value is <code>"as-foot"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Count</em>' attribute.
	 * @see #setCount(LegCount)
	 * @see turnheel.model.pattern.PatternPackage#getCalfLegElement_Count()
	 * @generated
	 */
	LegCount getCount();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.CalfLegElement#getCount <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Count</em>' attribute.
	 * @see #getCount()
	 * @generated
	 */
	void setCount(LegCount value);

} // CalfLegElement
