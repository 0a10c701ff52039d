/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;

import org.eclipse.emf.ecore.EObject;

import turnheel.engine.design.ColourPlace;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Colour Element</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A part that is worked in another yarn than the main one.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.ColourElement#getPlace <em>Place</em>}</li>
 *   <li>{@link turnheel.model.pattern.ColourElement#getYarn <em>Yarn</em>}</li>
 * </ul>
 *
 * @see turnheel.model.pattern.PatternPackage#getColourElement()
 * @generated
 */
public interface ColourElement extends EObject {
	/**
	 * Returns the value of the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Place</em>' attribute.
	 * @see #setPlace(ColourPlace)
	 * @see turnheel.model.pattern.PatternPackage#getColourElement_Place()
	 * @generated
	 */
	ColourPlace getPlace();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.ColourElement#getPlace <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Place</em>' attribute.
	 * @see #getPlace()
	 * @generated
	 */
	void setPlace(ColourPlace value);

	/**
	 * Returns the value of the '<em><b>Yarn</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The number of the yarn, counted from 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Yarn</em>' attribute.
	 * @see #setYarn(int)
	 * @see turnheel.model.pattern.PatternPackage#getColourElement_Yarn()
	 * @generated
	 */
	int getYarn();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.ColourElement#getYarn <em>Yarn</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Yarn</em>' attribute.
	 * @see #getYarn()
	 * @generated
	 */
	void setYarn(int value);

} // ColourElement
