/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;

import org.eclipse.emf.ecore.EObject;

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
 *   <li>{@link turnheel.model.pattern.MaterialsElement#getBalls <em>Balls</em>}</li>
 *   <li>{@link turnheel.model.pattern.MaterialsElement#getMarginPercent <em>Margin Percent</em>}</li>
 *   <li>{@link turnheel.model.pattern.MaterialsElement#getYarn <em>Yarn</em>}</li>
 *   <li>{@link turnheel.model.pattern.MaterialsElement#getSwatch <em>Swatch</em>}</li>
 * </ul>
 *
 * @see turnheel.model.pattern.PatternPackage#getMaterialsElement()
 * @generated
 */
public interface MaterialsElement extends EObject {
	/**
	 * Returns the value of the '<em><b>Balls</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Balls</em>' attribute.
	 * @see #setBalls(Integer)
	 * @see turnheel.model.pattern.PatternPackage#getMaterialsElement_Balls()
	 * @generated
	 */
	Integer getBalls();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.MaterialsElement#getBalls <em>Balls</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Balls</em>' attribute.
	 * @see #getBalls()
	 * @generated
	 */
	void setBalls(Integer value);

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
	 * Returns the value of the '<em><b>Yarn</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Yarn</em>' containment reference.
	 * @see #setYarn(YarnElement)
	 * @see turnheel.model.pattern.PatternPackage#getMaterialsElement_Yarn()
	 * @generated
	 */
	YarnElement getYarn();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.MaterialsElement#getYarn <em>Yarn</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Yarn</em>' containment reference.
	 * @see #getYarn()
	 * @generated
	 */
	void setYarn(YarnElement value);

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
