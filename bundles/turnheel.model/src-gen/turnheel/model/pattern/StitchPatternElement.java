/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

import turnheel.engine.design.StitchPattern;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Stitch Pattern Element</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.StitchPatternElement#getZone <em>Zone</em>}</li>
 *   <li>{@link turnheel.model.pattern.StitchPatternElement#getRepeat <em>Repeat</em>}</li>
 *   <li>{@link turnheel.model.pattern.StitchPatternElement#getEdge <em>Edge</em>}</li>
 *   <li>{@link turnheel.model.pattern.StitchPatternElement#getRows <em>Rows</em>}</li>
 *   <li>{@link turnheel.model.pattern.StitchPatternElement#getFit <em>Fit</em>}</li>
 *   <li>{@link turnheel.model.pattern.StitchPatternElement#getFewestFiller <em>Fewest Filler</em>}</li>
 *   <li>{@link turnheel.model.pattern.StitchPatternElement#isStranded <em>Stranded</em>}</li>
 *   <li>{@link turnheel.model.pattern.StitchPatternElement#getLongestFloat <em>Longest Float</em>}</li>
 *   <li>{@link turnheel.model.pattern.StitchPatternElement#getInstructions <em>Instructions</em>}</li>
 * </ul>
 *
 * @see turnheel.model.pattern.PatternPackage#getStitchPatternElement()
 * @generated
 */
public interface StitchPatternElement extends EObject {
	/**
	 * Returns the value of the '<em><b>Zone</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Zone</em>' attribute.
	 * @see #setZone(StitchPattern.Zone)
	 * @see turnheel.model.pattern.PatternPackage#getStitchPatternElement_Zone()
	 * @generated
	 */
	StitchPattern.Zone getZone();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.StitchPatternElement#getZone <em>Zone</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Zone</em>' attribute.
	 * @see #getZone()
	 * @generated
	 */
	void setZone(StitchPattern.Zone value);

	/**
	 * Returns the value of the '<em><b>Repeat</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Repeat</em>' attribute.
	 * @see #setRepeat(int)
	 * @see turnheel.model.pattern.PatternPackage#getStitchPatternElement_Repeat()
	 * @generated
	 */
	int getRepeat();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.StitchPatternElement#getRepeat <em>Repeat</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Repeat</em>' attribute.
	 * @see #getRepeat()
	 * @generated
	 */
	void setRepeat(int value);

	/**
	 * Returns the value of the '<em><b>Edge</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Edge</em>' attribute.
	 * @see #setEdge(int)
	 * @see turnheel.model.pattern.PatternPackage#getStitchPatternElement_Edge()
	 * @generated
	 */
	int getEdge();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.StitchPatternElement#getEdge <em>Edge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Edge</em>' attribute.
	 * @see #getEdge()
	 * @generated
	 */
	void setEdge(int value);

	/**
	 * Returns the value of the '<em><b>Rows</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rows</em>' attribute.
	 * @see #setRows(int)
	 * @see turnheel.model.pattern.PatternPackage#getStitchPatternElement_Rows()
	 * @generated
	 */
	int getRows();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.StitchPatternElement#getRows <em>Rows</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rows</em>' attribute.
	 * @see #getRows()
	 * @generated
	 */
	void setRows(int value);

	/**
	 * Returns the value of the '<em><b>Fit</b></em>' attribute.
	 * The default value is <code>"whole-repeats"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fit</em>' attribute.
	 * @see #setFit(StitchPattern.Fit)
	 * @see turnheel.model.pattern.PatternPackage#getStitchPatternElement_Fit()
	 * @generated
	 */
	StitchPattern.Fit getFit();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.StitchPatternElement#getFit <em>Fit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fit</em>' attribute.
	 * @see #getFit()
	 * @generated
	 */
	void setFit(StitchPattern.Fit value);

	/**
	 * Returns the value of the '<em><b>Fewest Filler</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fewest Filler</em>' attribute.
	 * @see #setFewestFiller(int)
	 * @see turnheel.model.pattern.PatternPackage#getStitchPatternElement_FewestFiller()
	 * @generated
	 */
	int getFewestFiller();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.StitchPatternElement#getFewestFiller <em>Fewest Filler</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fewest Filler</em>' attribute.
	 * @see #getFewestFiller()
	 * @generated
	 */
	void setFewestFiller(int value);

	/**
	 * Returns the value of the '<em><b>Stranded</b></em>' attribute.
	 * The default value is <code>"false"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether it is worked in two colours, one behind the other.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Stranded</em>' attribute.
	 * @see #setStranded(boolean)
	 * @see turnheel.model.pattern.PatternPackage#getStitchPatternElement_Stranded()
	 * @generated
	 */
	boolean isStranded();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.StitchPatternElement#isStranded <em>Stranded</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stranded</em>' attribute.
	 * @see #isStranded()
	 * @generated
	 */
	void setStranded(boolean value);

	/**
	 * Returns the value of the '<em><b>Longest Float</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Stitches that the longest float of a stranded pattern passes behind.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Longest Float</em>' attribute.
	 * @see #setLongestFloat(Integer)
	 * @see turnheel.model.pattern.PatternPackage#getStitchPatternElement_LongestFloat()
	 * @generated
	 */
	Integer getLongestFloat();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.StitchPatternElement#getLongestFloat <em>Longest Float</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Longest Float</em>' attribute.
	 * @see #getLongestFloat()
	 * @generated
	 */
	void setLongestFloat(Integer value);

	/**
	 * Returns the value of the '<em><b>Instructions</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Its rows as they are worked, the first one first; none where its size alone is known.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Instructions</em>' attribute list.
	 * @see turnheel.model.pattern.PatternPackage#getStitchPatternElement_Instructions()
	 * @generated
	 */
	EList<String> getInstructions();

} // StitchPatternElement
