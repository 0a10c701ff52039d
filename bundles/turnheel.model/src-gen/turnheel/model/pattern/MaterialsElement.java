/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

import turnheel.engine.design.Length;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Materials Element</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What a pair is made of, as far as somebody has decided it.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.MaterialsElement#getMarginPercent <em>Margin Percent</em>}</li>
 *   <li>{@link turnheel.model.pattern.MaterialsElement#getNeedle <em>Needle</em>}</li>
 *   <li>{@link turnheel.model.pattern.MaterialsElement#getNotions <em>Notions</em>}</li>
 *   <li>{@link turnheel.model.pattern.MaterialsElement#getYarns <em>Yarns</em>}</li>
 *   <li>{@link turnheel.model.pattern.MaterialsElement#getColours <em>Colours</em>}</li>
 *   <li>{@link turnheel.model.pattern.MaterialsElement#getSwatch <em>Swatch</em>}</li>
 * </ul>
 *
 * @see turnheel.model.pattern.PatternPackage#getMaterialsElement()
 * @generated
 */
public interface MaterialsElement extends EObject {
	/**
	 * Returns the value of the '<em><b>Margin Percent</b></em>' attribute.
	 * The default value is <code>"10"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Margin Percent</em>' attribute.
	 * @see #setMarginPercent(double)
	 * @see turnheel.model.pattern.PatternPackage#getMaterialsElement_MarginPercent()
	 * @generated
	 */
	double getMarginPercent();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.MaterialsElement#getMarginPercent <em>Margin Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Margin Percent</em>' attribute.
	 * @see #getMarginPercent()
	 * @generated
	 */
	void setMarginPercent(double value);

	/**
	 * Returns the value of the '<em><b>Needle</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Needle</em>' attribute.
	 * @see #setNeedle(Length)
	 * @see turnheel.model.pattern.PatternPackage#getMaterialsElement_Needle()
	 * @generated
	 */
	Length getNeedle();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.MaterialsElement#getNeedle <em>Needle</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Needle</em>' attribute.
	 * @see #getNeedle()
	 * @generated
	 */
	void setNeedle(Length value);

	/**
	 * Returns the value of the '<em><b>Notions</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What else is needed, a line each; in the file an element, so that a changed line shows as one.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Notions</em>' attribute.
	 * @see #setNotions(String)
	 * @see turnheel.model.pattern.PatternPackage#getMaterialsElement_Notions()
	 * @generated
	 */
	String getNotions();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.MaterialsElement#getNotions <em>Notions</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Notions</em>' attribute.
	 * @see #getNotions()
	 * @generated
	 */
	void setNotions(String value);

	/**
	 * Returns the value of the '<em><b>Yarns</b></em>' containment reference list.
	 * The list contents are of type {@link turnheel.model.pattern.YarnElement}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The yarns, the main one first.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Yarns</em>' containment reference list.
	 * @see turnheel.model.pattern.PatternPackage#getMaterialsElement_Yarns()
	 * @generated
	 */
	EList<YarnElement> getYarns();

	/**
	 * Returns the value of the '<em><b>Colours</b></em>' containment reference list.
	 * The list contents are of type {@link turnheel.model.pattern.ColourElement}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is worked in another yarn than the main one.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Colours</em>' containment reference list.
	 * @see turnheel.model.pattern.PatternPackage#getMaterialsElement_Colours()
	 * @generated
	 */
	EList<ColourElement> getColours();

	/**
	 * Returns the value of the '<em><b>Swatch</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Swatch</em>' containment reference.
	 * @see #setSwatch(SwatchElement)
	 * @see turnheel.model.pattern.PatternPackage#getMaterialsElement_Swatch()
	 * @generated
	 */
	SwatchElement getSwatch();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.MaterialsElement#getSwatch <em>Swatch</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Swatch</em>' containment reference.
	 * @see #getSwatch()
	 * @generated
	 */
	void setSwatch(SwatchElement value);

} // MaterialsElement
