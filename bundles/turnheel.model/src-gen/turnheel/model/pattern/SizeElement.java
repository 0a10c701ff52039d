/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Size Element</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.SizeElement#getId <em>Id</em>}</li>
 *   <li>{@link turnheel.model.pattern.SizeElement#getLabel <em>Label</em>}</li>
 *   <li>{@link turnheel.model.pattern.SizeElement#getInputs <em>Inputs</em>}</li>
 *   <li>{@link turnheel.model.pattern.SizeElement#getOverrides <em>Overrides</em>}</li>
 * </ul>
 *
 * @see turnheel.model.pattern.PatternPackage#getSizeElement()
 * @generated
 */
public interface SizeElement extends EObject {
	/**
	 * Returns the value of the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What other things refer to the size by. Given once, and kept when the label changes.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Id</em>' attribute.
	 * @see #setId(String)
	 * @see turnheel.model.pattern.PatternPackage#getSizeElement_Id()
	 * @generated
	 */
	String getId();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.SizeElement#getId <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Id</em>' attribute.
	 * @see #getId()
	 * @generated
	 */
	void setId(String value);

	/**
	 * Returns the value of the '<em><b>Label</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Label</em>' attribute.
	 * @see #setLabel(String)
	 * @see turnheel.model.pattern.PatternPackage#getSizeElement_Label()
	 * @generated
	 */
	String getLabel();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.SizeElement#getLabel <em>Label</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Label</em>' attribute.
	 * @see #getLabel()
	 * @generated
	 */
	void setLabel(String value);

	/**
	 * Returns the value of the '<em><b>Inputs</b></em>' containment reference list.
	 * The list contents are of type {@link turnheel.model.pattern.InputElement}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Inputs</em>' containment reference list.
	 * @see turnheel.model.pattern.PatternPackage#getSizeElement_Inputs()
	 * @generated
	 */
	EList<InputElement> getInputs();

	/**
	 * Returns the value of the '<em><b>Overrides</b></em>' containment reference list.
	 * The list contents are of type {@link turnheel.model.pattern.OverrideElement}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Overrides</em>' containment reference list.
	 * @see turnheel.model.pattern.PatternPackage#getSizeElement_Overrides()
	 * @generated
	 */
	EList<OverrideElement> getOverrides();

} // SizeElement
