/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;

import org.eclipse.emf.ecore.EObject;

import turnheel.engine.design.LengthMode;
import turnheel.engine.design.Snap;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Lengths Element</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * How the pattern says how far stretches without shaping are worked.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.LengthsElement#getFoot <em>Foot</em>}</li>
 *   <li>{@link turnheel.model.pattern.LengthsElement#getLeg <em>Leg</em>}</li>
 *   <li>{@link turnheel.model.pattern.LengthsElement#getCuff <em>Cuff</em>}</li>
 *   <li>{@link turnheel.model.pattern.LengthsElement#getSnap <em>Snap</em>}</li>
 * </ul>
 *
 * @see turnheel.model.pattern.PatternPackage#getLengthsElement()
 * @generated
 */
public interface LengthsElement extends EObject {
	/**
	 * Returns the value of the '<em><b>Foot</b></em>' attribute.
	 * The default value is <code>"both"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Foot</em>' attribute.
	 * @see #setFoot(LengthMode)
	 * @see turnheel.model.pattern.PatternPackage#getLengthsElement_Foot()
	 * @generated
	 */
	LengthMode getFoot();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.LengthsElement#getFoot <em>Foot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Foot</em>' attribute.
	 * @see #getFoot()
	 * @generated
	 */
	void setFoot(LengthMode value);

	/**
	 * Returns the value of the '<em><b>Leg</b></em>' attribute.
	 * The default value is <code>"both"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Leg</em>' attribute.
	 * @see #setLeg(LengthMode)
	 * @see turnheel.model.pattern.PatternPackage#getLengthsElement_Leg()
	 * @generated
	 */
	LengthMode getLeg();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.LengthsElement#getLeg <em>Leg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Leg</em>' attribute.
	 * @see #getLeg()
	 * @generated
	 */
	void setLeg(LengthMode value);

	/**
	 * Returns the value of the '<em><b>Cuff</b></em>' attribute.
	 * The default value is <code>"rounds"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Cuff</em>' attribute.
	 * @see #setCuff(LengthMode)
	 * @see turnheel.model.pattern.PatternPackage#getLengthsElement_Cuff()
	 * @generated
	 */
	LengthMode getCuff();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.LengthsElement#getCuff <em>Cuff</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cuff</em>' attribute.
	 * @see #getCuff()
	 * @generated
	 */
	void setCuff(LengthMode value);

	/**
	 * Returns the value of the '<em><b>Snap</b></em>' attribute.
	 * The default value is <code>"none"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Snap</em>' attribute.
	 * @see #setSnap(Snap)
	 * @see turnheel.model.pattern.PatternPackage#getLengthsElement_Snap()
	 * @generated
	 */
	Snap getSnap();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.LengthsElement#getSnap <em>Snap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Snap</em>' attribute.
	 * @see #getSnap()
	 * @generated
	 */
	void setSnap(Snap value);

} // LengthsElement
