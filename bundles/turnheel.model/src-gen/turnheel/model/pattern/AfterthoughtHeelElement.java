/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.Lean;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Afterthought Heel Element</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.AfterthoughtHeelElement#getCap <em>Cap</em>}</li>
 *   <li>{@link turnheel.model.pattern.AfterthoughtHeelElement#getLean <em>Lean</em>}</li>
 * </ul>
 *
 * @see turnheel.model.pattern.PatternPackage#getAfterthoughtHeelElement()
 * @generated
 */
public interface AfterthoughtHeelElement extends HeelElement {
	/**
	 * Returns the value of the '<em><b>Cap</b></em>' attribute.
	 * The default value is <code>"wedge"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Cap</em>' attribute.
	 * @see #setCap(AfterthoughtHeel.Cap)
	 * @see turnheel.model.pattern.PatternPackage#getAfterthoughtHeelElement_Cap()
	 * @generated
	 */
	AfterthoughtHeel.Cap getCap();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.AfterthoughtHeelElement#getCap <em>Cap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cap</em>' attribute.
	 * @see #getCap()
	 * @generated
	 */
	void setCap(AfterthoughtHeel.Cap value);

	/**
	 * Returns the value of the '<em><b>Lean</b></em>' attribute.
	 * The default value is <code>"right"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lean</em>' attribute.
	 * @see #setLean(Lean)
	 * @see turnheel.model.pattern.PatternPackage#getAfterthoughtHeelElement_Lean()
	 * @generated
	 */
	Lean getLean();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.AfterthoughtHeelElement#getLean <em>Lean</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lean</em>' attribute.
	 * @see #getLean()
	 * @generated
	 */
	void setLean(Lean value);

} // AfterthoughtHeelElement
