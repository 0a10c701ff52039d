/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

import turnheel.engine.design.Direction;
import turnheel.engine.design.Gauge;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Pattern</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The editable document: what a designer decided, and nothing that can be derived from it. It may be incomplete or wrong while it is edited; {@link turnheel.model.Door} says whether it is a design.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.Pattern#getFormat <em>Format</em>}</li>
 *   <li>{@link turnheel.model.pattern.Pattern#getTitle <em>Title</em>}</li>
 *   <li>{@link turnheel.model.pattern.Pattern#getDesigner <em>Designer</em>}</li>
 *   <li>{@link turnheel.model.pattern.Pattern#getDirection <em>Direction</em>}</li>
 *   <li>{@link turnheel.model.pattern.Pattern#getStitchGauge <em>Stitch Gauge</em>}</li>
 *   <li>{@link turnheel.model.pattern.Pattern#getRoundGauge <em>Round Gauge</em>}</li>
 *   <li>{@link turnheel.model.pattern.Pattern#getNotes <em>Notes</em>}</li>
 *   <li>{@link turnheel.model.pattern.Pattern#getToe <em>Toe</em>}</li>
 *   <li>{@link turnheel.model.pattern.Pattern#getHeel <em>Heel</em>}</li>
 *   <li>{@link turnheel.model.pattern.Pattern#getLeg <em>Leg</em>}</li>
 *   <li>{@link turnheel.model.pattern.Pattern#getCuff <em>Cuff</em>}</li>
 *   <li>{@link turnheel.model.pattern.Pattern#getStitchPatterns <em>Stitch Patterns</em>}</li>
 *   <li>{@link turnheel.model.pattern.Pattern#getMaterials <em>Materials</em>}</li>
 *   <li>{@link turnheel.model.pattern.Pattern#getLengths <em>Lengths</em>}</li>
 *   <li>{@link turnheel.model.pattern.Pattern#getSizes <em>Sizes</em>}</li>
 *   <li>{@link turnheel.model.pattern.Pattern#getOwnRows <em>Own Rows</em>}</li>
 * </ul>
 *
 * @see turnheel.model.pattern.PatternPackage#getPattern()
 * @generated
 */
public interface Pattern extends EObject {
	/**
	 * Returns the value of the '<em><b>Format</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The version of the file format, counted from 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Format</em>' attribute.
	 * @see #setFormat(int)
	 * @see turnheel.model.pattern.PatternPackage#getPattern_Format()
	 * @generated
	 */
	int getFormat();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.Pattern#getFormat <em>Format</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Format</em>' attribute.
	 * @see #getFormat()
	 * @generated
	 */
	void setFormat(int value);

	/**
	 * Returns the value of the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Title</em>' attribute.
	 * @see #setTitle(String)
	 * @see turnheel.model.pattern.PatternPackage#getPattern_Title()
	 * @generated
	 */
	String getTitle();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.Pattern#getTitle <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Title</em>' attribute.
	 * @see #getTitle()
	 * @generated
	 */
	void setTitle(String value);

	/**
	 * Returns the value of the '<em><b>Designer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Designer</em>' attribute.
	 * @see #setDesigner(String)
	 * @see turnheel.model.pattern.PatternPackage#getPattern_Designer()
	 * @generated
	 */
	String getDesigner();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.Pattern#getDesigner <em>Designer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Designer</em>' attribute.
	 * @see #getDesigner()
	 * @generated
	 */
	void setDesigner(String value);

	/**
	 * Returns the value of the '<em><b>Direction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Direction</em>' attribute.
	 * @see #setDirection(Direction)
	 * @see turnheel.model.pattern.PatternPackage#getPattern_Direction()
	 * @generated
	 */
	Direction getDirection();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.Pattern#getDirection <em>Direction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Direction</em>' attribute.
	 * @see #getDirection()
	 * @generated
	 */
	void setDirection(Direction value);

	/**
	 * Returns the value of the '<em><b>Stitch Gauge</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Stitch Gauge</em>' attribute.
	 * @see #setStitchGauge(Gauge)
	 * @see turnheel.model.pattern.PatternPackage#getPattern_StitchGauge()
	 * @generated
	 */
	Gauge getStitchGauge();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.Pattern#getStitchGauge <em>Stitch Gauge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stitch Gauge</em>' attribute.
	 * @see #getStitchGauge()
	 * @generated
	 */
	void setStitchGauge(Gauge value);

	/**
	 * Returns the value of the '<em><b>Round Gauge</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Round Gauge</em>' attribute.
	 * @see #setRoundGauge(Gauge)
	 * @see turnheel.model.pattern.PatternPackage#getPattern_RoundGauge()
	 * @generated
	 */
	Gauge getRoundGauge();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.Pattern#getRoundGauge <em>Round Gauge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Round Gauge</em>' attribute.
	 * @see #getRoundGauge()
	 * @generated
	 */
	void setRoundGauge(Gauge value);

	/**
	 * Returns the value of the '<em><b>Notes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Free text of any number of lines; in the file an element, so that a changed line shows as one.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Notes</em>' attribute.
	 * @see #setNotes(String)
	 * @see turnheel.model.pattern.PatternPackage#getPattern_Notes()
	 * @generated
	 */
	String getNotes();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.Pattern#getNotes <em>Notes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Notes</em>' attribute.
	 * @see #getNotes()
	 * @generated
	 */
	void setNotes(String value);

	/**
	 * Returns the value of the '<em><b>Toe</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Toe</em>' containment reference.
	 * @see #setToe(ToeElement)
	 * @see turnheel.model.pattern.PatternPackage#getPattern_Toe()
	 * @generated
	 */
	ToeElement getToe();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.Pattern#getToe <em>Toe</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Toe</em>' containment reference.
	 * @see #getToe()
	 * @generated
	 */
	void setToe(ToeElement value);

	/**
	 * Returns the value of the '<em><b>Heel</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Heel</em>' containment reference.
	 * @see #setHeel(HeelElement)
	 * @see turnheel.model.pattern.PatternPackage#getPattern_Heel()
	 * @generated
	 */
	HeelElement getHeel();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.Pattern#getHeel <em>Heel</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Heel</em>' containment reference.
	 * @see #getHeel()
	 * @generated
	 */
	void setHeel(HeelElement value);

	/**
	 * Returns the value of the '<em><b>Leg</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Leg</em>' containment reference.
	 * @see #setLeg(LegElement)
	 * @see turnheel.model.pattern.PatternPackage#getPattern_Leg()
	 * @generated
	 */
	LegElement getLeg();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.Pattern#getLeg <em>Leg</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Leg</em>' containment reference.
	 * @see #getLeg()
	 * @generated
	 */
	void setLeg(LegElement value);

	/**
	 * Returns the value of the '<em><b>Cuff</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Cuff</em>' containment reference.
	 * @see #setCuff(CuffElement)
	 * @see turnheel.model.pattern.PatternPackage#getPattern_Cuff()
	 * @generated
	 */
	CuffElement getCuff();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.Pattern#getCuff <em>Cuff</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cuff</em>' containment reference.
	 * @see #getCuff()
	 * @generated
	 */
	void setCuff(CuffElement value);

	/**
	 * Returns the value of the '<em><b>Stitch Patterns</b></em>' containment reference list.
	 * The list contents are of type {@link turnheel.model.pattern.StitchPatternElement}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Stitch Patterns</em>' containment reference list.
	 * @see turnheel.model.pattern.PatternPackage#getPattern_StitchPatterns()
	 * @generated
	 */
	EList<StitchPatternElement> getStitchPatterns();

	/**
	 * Returns the value of the '<em><b>Materials</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Materials</em>' containment reference.
	 * @see #setMaterials(MaterialsElement)
	 * @see turnheel.model.pattern.PatternPackage#getPattern_Materials()
	 * @generated
	 */
	MaterialsElement getMaterials();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.Pattern#getMaterials <em>Materials</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Materials</em>' containment reference.
	 * @see #getMaterials()
	 * @generated
	 */
	void setMaterials(MaterialsElement value);

	/**
	 * Returns the value of the '<em><b>Lengths</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lengths</em>' containment reference.
	 * @see #setLengths(LengthsElement)
	 * @see turnheel.model.pattern.PatternPackage#getPattern_Lengths()
	 * @generated
	 */
	LengthsElement getLengths();

	/**
	 * Sets the value of the '{@link turnheel.model.pattern.Pattern#getLengths <em>Lengths</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lengths</em>' containment reference.
	 * @see #getLengths()
	 * @generated
	 */
	void setLengths(LengthsElement value);

	/**
	 * Returns the value of the '<em><b>Sizes</b></em>' containment reference list.
	 * The list contents are of type {@link turnheel.model.pattern.SizeElement}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The sizes in the order in which they are shown and printed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sizes</em>' containment reference list.
	 * @see turnheel.model.pattern.PatternPackage#getPattern_Sizes()
	 * @generated
	 */
	EList<SizeElement> getSizes();

	/**
	 * Returns the value of the '<em><b>Own Rows</b></em>' containment reference list.
	 * The list contents are of type {@link turnheel.model.pattern.OwnRowElement}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Own Rows</em>' containment reference list.
	 * @see turnheel.model.pattern.PatternPackage#getPattern_OwnRows()
	 * @generated
	 */
	EList<OwnRowElement> getOwnRows();

} // Pattern
