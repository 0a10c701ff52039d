/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;

import org.eclipse.emf.ecore.EObject;

import turnheel.engine.design.Quantity;

import turnheel.engine.term.Key;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Entry Element</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A value that a designer gave for one parameter of one size.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.EntryElement#getKey <em>Key</em>}</li>
 *   <li>{@link turnheel.model.pattern.EntryElement#getValue <em>Value</em>}</li>
 * </ul>
 *
 * @see turnheel.model.pattern.PatternPackage#getEntryElement()
 * @generated
 */
public interface EntryElement extends EObject {
	/**
	 * Returns the value of the '<em><b>Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Key</em>' attribute.
	 * @see #setKey(Key)
	 * @see turnheel.model.pattern.PatternPackage#getEntryElement_Key()
	 * @generated
	 */
	Key getKey();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.EntryElement#getKey <em>Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Key</em>' attribute.
	 * @see #getKey()
	 * @generated
	 */
	void setKey(Key value);

	/**
	 * Returns the value of the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Value</em>' attribute.
	 * @see #setValue(Quantity)
	 * @see turnheel.model.pattern.PatternPackage#getEntryElement_Value()
	 * @generated
	 */
	Quantity getValue();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.EntryElement#getValue <em>Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Value</em>' attribute.
	 * @see #getValue()
	 * @generated
	 */
	void setValue(Quantity value);

} // EntryElement
