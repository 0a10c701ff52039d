/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;

import org.eclipse.emf.ecore.EObject;

import turnheel.engine.term.Key;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Own Row Element</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A number that the designer has computed in every size; its formula is kept as it was written, right or wrong.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.OwnRowElement#getKey <em>Key</em>}</li>
 *   <li>{@link turnheel.model.pattern.OwnRowElement#getLabel <em>Label</em>}</li>
 *   <li>{@link turnheel.model.pattern.OwnRowElement#getFormula <em>Formula</em>}</li>
 * </ul>
 *
 * @see turnheel.model.pattern.PatternPackage#getOwnRowElement()
 * @generated
 */
public interface OwnRowElement extends EObject {
	/**
	 * Returns the value of the '<em><b>Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Key</em>' attribute.
	 * @see #setKey(Key)
	 * @see turnheel.model.pattern.PatternPackage#getOwnRowElement_Key()
	 * @generated
	 */
	Key getKey();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.OwnRowElement#getKey <em>Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Key</em>' attribute.
	 * @see #getKey()
	 * @generated
	 */
	void setKey(Key value);

	/**
	 * Returns the value of the '<em><b>Label</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Label</em>' attribute.
	 * @see #setLabel(String)
	 * @see turnheel.model.pattern.PatternPackage#getOwnRowElement_Label()
	 * @generated
	 */
	String getLabel();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.OwnRowElement#getLabel <em>Label</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Label</em>' attribute.
	 * @see #getLabel()
	 * @generated
	 */
	void setLabel(String value);

	/**
	 * Returns the value of the '<em><b>Formula</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Formula</em>' attribute.
	 * @see #setFormula(String)
	 * @see turnheel.model.pattern.PatternPackage#getOwnRowElement_Formula()
	 * @generated
	 */
	String getFormula();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.OwnRowElement#getFormula <em>Formula</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Formula</em>' attribute.
	 * @see #getFormula()
	 * @generated
	 */
	void setFormula(String value);

} // OwnRowElement
