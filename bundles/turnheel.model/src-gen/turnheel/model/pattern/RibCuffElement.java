/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Rib Cuff Element</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.RibCuffElement#getKnit <em>Knit</em>}</li>
 *   <li>{@link turnheel.model.pattern.RibCuffElement#getPurl <em>Purl</em>}</li>
 *   <li>{@link turnheel.model.pattern.RibCuffElement#isMayAdjust <em>May Adjust</em>}</li>
 * </ul>
 *
 * @see turnheel.model.pattern.PatternPackage#getRibCuffElement()
 * @generated
 */
public interface RibCuffElement extends CuffElement {
	/**
	 * Returns the value of the '<em><b>Knit</b></em>' attribute.
	 * The default value is <code>"2"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Knit</em>' attribute.
	 * @see #setKnit(int)
	 * @see turnheel.model.pattern.PatternPackage#getRibCuffElement_Knit()
	 * @generated
	 */
	int getKnit();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.RibCuffElement#getKnit <em>Knit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Knit</em>' attribute.
	 * @see #getKnit()
	 * @generated
	 */
	void setKnit(int value);

	/**
	 * Returns the value of the '<em><b>Purl</b></em>' attribute.
	 * The default value is <code>"2"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Purl</em>' attribute.
	 * @see #setPurl(int)
	 * @see turnheel.model.pattern.PatternPackage#getRibCuffElement_Purl()
	 * @generated
	 */
	int getPurl();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.RibCuffElement#getPurl <em>Purl</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Purl</em>' attribute.
	 * @see #getPurl()
	 * @generated
	 */
	void setPurl(int value);

	/**
	 * Returns the value of the '<em><b>May Adjust</b></em>' attribute.
	 * The default value is <code>"false"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>May Adjust</em>' attribute.
	 * @see #setMayAdjust(boolean)
	 * @see turnheel.model.pattern.PatternPackage#getRibCuffElement_MayAdjust()
	 * @generated
	 */
	boolean isMayAdjust();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.RibCuffElement#isMayAdjust <em>May Adjust</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>May Adjust</em>' attribute.
	 * @see #isMayAdjust()
	 * @generated
	 */
	void setMayAdjust(boolean value);

} // RibCuffElement
