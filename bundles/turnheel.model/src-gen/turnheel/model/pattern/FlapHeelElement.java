/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;

import turnheel.engine.design.FlapEdge;
import turnheel.engine.design.FlapFabric;
import turnheel.engine.design.FlapLength;
import turnheel.engine.design.HeelTurn;
import turnheel.engine.design.PickUp;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Flap Heel Element</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.FlapHeelElement#getTurn <em>Turn</em>}</li>
 *   <li>{@link turnheel.model.pattern.FlapHeelElement#getFlapLength <em>Flap Length</em>}</li>
 *   <li>{@link turnheel.model.pattern.FlapHeelElement#getFabric <em>Fabric</em>}</li>
 *   <li>{@link turnheel.model.pattern.FlapHeelElement#getEdge <em>Edge</em>}</li>
 *   <li>{@link turnheel.model.pattern.FlapHeelElement#getPickUp <em>Pick Up</em>}</li>
 * </ul>
 *
 * @see turnheel.model.pattern.PatternPackage#getFlapHeelElement()
 * @generated
 */
public interface FlapHeelElement extends HeelElement {
	/**
	 * Returns the value of the '<em><b>Turn</b></em>' attribute.
	 * The default value is <code>"round"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Turn</em>' attribute.
	 * @see #setTurn(HeelTurn)
	 * @see turnheel.model.pattern.PatternPackage#getFlapHeelElement_Turn()
	 * @generated
	 */
	HeelTurn getTurn();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.FlapHeelElement#getTurn <em>Turn</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Turn</em>' attribute.
	 * @see #getTurn()
	 * @generated
	 */
	void setTurn(HeelTurn value);

	/**
	 * Returns the value of the '<em><b>Flap Length</b></em>' attribute.
	 * The default value is <code>"from-body"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Flap Length</em>' attribute.
	 * @see #setFlapLength(FlapLength)
	 * @see turnheel.model.pattern.PatternPackage#getFlapHeelElement_FlapLength()
	 * @generated
	 */
	FlapLength getFlapLength();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.FlapHeelElement#getFlapLength <em>Flap Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Flap Length</em>' attribute.
	 * @see #getFlapLength()
	 * @generated
	 */
	void setFlapLength(FlapLength value);

	/**
	 * Returns the value of the '<em><b>Fabric</b></em>' attribute.
	 * The default value is <code>"plain"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fabric</em>' attribute.
	 * @see #setFabric(FlapFabric)
	 * @see turnheel.model.pattern.PatternPackage#getFlapHeelElement_Fabric()
	 * @generated
	 */
	FlapFabric getFabric();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.FlapHeelElement#getFabric <em>Fabric</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fabric</em>' attribute.
	 * @see #getFabric()
	 * @generated
	 */
	void setFabric(FlapFabric value);

	/**
	 * Returns the value of the '<em><b>Edge</b></em>' attribute.
	 * The default value is <code>"slipped"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Edge</em>' attribute.
	 * @see #setEdge(FlapEdge)
	 * @see turnheel.model.pattern.PatternPackage#getFlapHeelElement_Edge()
	 * @generated
	 */
	FlapEdge getEdge();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.FlapHeelElement#getEdge <em>Edge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Edge</em>' attribute.
	 * @see #getEdge()
	 * @generated
	 */
	void setEdge(FlapEdge value);

	/**
	 * Returns the value of the '<em><b>Pick Up</b></em>' attribute.
	 * The default value is <code>"half-the-rows"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Pick Up</em>' attribute.
	 * @see #setPickUp(PickUp)
	 * @see turnheel.model.pattern.PatternPackage#getFlapHeelElement_PickUp()
	 * @generated
	 */
	PickUp getPickUp();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.FlapHeelElement#getPickUp <em>Pick Up</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pick Up</em>' attribute.
	 * @see #getPickUp()
	 * @generated
	 */
	void setPickUp(PickUp value);

} // FlapHeelElement
