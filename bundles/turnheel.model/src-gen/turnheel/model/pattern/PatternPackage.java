/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

/**
 * <!-- begin-user-doc -->
 * The <b>Package</b> for the model.
 * It contains accessors for the meta objects to represent
 * <ul>
 *   <li>each class,</li>
 *   <li>each feature of each class,</li>
 *   <li>each enum,</li>
 *   <li>and each data type</li>
 * </ul>
 * <!-- end-user-doc -->
 * @see turnheel.model.pattern.PatternFactory
 * @generated
 */
public interface PatternPackage extends EPackage {
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "pattern";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "urn:turnheel:pattern";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "turnheel";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	PatternPackage eINSTANCE = turnheel.model.pattern.impl.PatternPackageImpl.init();

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.PatternImpl <em>Pattern</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.PatternImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getPattern()
	 * @generated
	 */
	int PATTERN = 0;

	/**
	 * The feature id for the '<em><b>Format</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATTERN__FORMAT = 0;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATTERN__TITLE = 1;

	/**
	 * The feature id for the '<em><b>Designer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATTERN__DESIGNER = 2;

	/**
	 * The feature id for the '<em><b>Direction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATTERN__DIRECTION = 3;

	/**
	 * The feature id for the '<em><b>Stitch Gauge</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATTERN__STITCH_GAUGE = 4;

	/**
	 * The feature id for the '<em><b>Round Gauge</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATTERN__ROUND_GAUGE = 5;

	/**
	 * The feature id for the '<em><b>Notes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATTERN__NOTES = 6;

	/**
	 * The feature id for the '<em><b>Toe</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATTERN__TOE = 7;

	/**
	 * The feature id for the '<em><b>Heel</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATTERN__HEEL = 8;

	/**
	 * The feature id for the '<em><b>Leg</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATTERN__LEG = 9;

	/**
	 * The feature id for the '<em><b>Cuff</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATTERN__CUFF = 10;

	/**
	 * The feature id for the '<em><b>Sizes</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATTERN__SIZES = 11;

	/**
	 * The number of structural features of the '<em>Pattern</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATTERN_FEATURE_COUNT = 12;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.ToeElementImpl <em>Toe Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.ToeElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getToeElement()
	 * @generated
	 */
	int TOE_ELEMENT = 1;

	/**
	 * The number of structural features of the '<em>Toe Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TOE_ELEMENT_FEATURE_COUNT = 0;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.RoundToeElementImpl <em>Round Toe Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.RoundToeElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getRoundToeElement()
	 * @generated
	 */
	int ROUND_TOE_ELEMENT = 2;

	/**
	 * The feature id for the '<em><b>Lines</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROUND_TOE_ELEMENT__LINES = TOE_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Increase</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROUND_TOE_ELEMENT__INCREASE = TOE_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Round Toe Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROUND_TOE_ELEMENT_FEATURE_COUNT = TOE_ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.WedgeToeElementImpl <em>Wedge Toe Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.WedgeToeElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getWedgeToeElement()
	 * @generated
	 */
	int WEDGE_TOE_ELEMENT = 3;

	/**
	 * The feature id for the '<em><b>Increase</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEDGE_TOE_ELEMENT__INCREASE = TOE_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Wedge Toe Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEDGE_TOE_ELEMENT_FEATURE_COUNT = TOE_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.HeelElementImpl <em>Heel Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.HeelElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getHeelElement()
	 * @generated
	 */
	int HEEL_ELEMENT = 4;

	/**
	 * The number of structural features of the '<em>Heel Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HEEL_ELEMENT_FEATURE_COUNT = 0;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.ShortRowHeelElementImpl <em>Short Row Heel Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.ShortRowHeelElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getShortRowHeelElement()
	 * @generated
	 */
	int SHORT_ROW_HEEL_ELEMENT = 5;

	/**
	 * The feature id for the '<em><b>Turn</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHORT_ROW_HEEL_ELEMENT__TURN = HEEL_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Short Row Heel Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHORT_ROW_HEEL_ELEMENT_FEATURE_COUNT = HEEL_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.LegElementImpl <em>Leg Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.LegElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getLegElement()
	 * @generated
	 */
	int LEG_ELEMENT = 6;

	/**
	 * The number of structural features of the '<em>Leg Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LEG_ELEMENT_FEATURE_COUNT = 0;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.StraightLegElementImpl <em>Straight Leg Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.StraightLegElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getStraightLegElement()
	 * @generated
	 */
	int STRAIGHT_LEG_ELEMENT = 7;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STRAIGHT_LEG_ELEMENT__LENGTH = LEG_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Straight Leg Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STRAIGHT_LEG_ELEMENT_FEATURE_COUNT = LEG_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.CuffElementImpl <em>Cuff Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.CuffElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getCuffElement()
	 * @generated
	 */
	int CUFF_ELEMENT = 8;

	/**
	 * The number of structural features of the '<em>Cuff Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUFF_ELEMENT_FEATURE_COUNT = 0;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.RibCuffElementImpl <em>Rib Cuff Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.RibCuffElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getRibCuffElement()
	 * @generated
	 */
	int RIB_CUFF_ELEMENT = 9;

	/**
	 * The feature id for the '<em><b>Knit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RIB_CUFF_ELEMENT__KNIT = CUFF_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Purl</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RIB_CUFF_ELEMENT__PURL = CUFF_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Rib Cuff Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RIB_CUFF_ELEMENT_FEATURE_COUNT = CUFF_ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.SizeElementImpl <em>Size Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.SizeElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getSizeElement()
	 * @generated
	 */
	int SIZE_ELEMENT = 10;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_ELEMENT__ID = 0;

	/**
	 * The feature id for the '<em><b>Label</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_ELEMENT__LABEL = 1;

	/**
	 * The feature id for the '<em><b>Inputs</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_ELEMENT__INPUTS = 2;

	/**
	 * The feature id for the '<em><b>Overrides</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_ELEMENT__OVERRIDES = 3;

	/**
	 * The number of structural features of the '<em>Size Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_ELEMENT_FEATURE_COUNT = 4;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.EntryElementImpl <em>Entry Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.EntryElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getEntryElement()
	 * @generated
	 */
	int ENTRY_ELEMENT = 11;

	/**
	 * The feature id for the '<em><b>Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ENTRY_ELEMENT__KEY = 0;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ENTRY_ELEMENT__VALUE = 1;

	/**
	 * The number of structural features of the '<em>Entry Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ENTRY_ELEMENT_FEATURE_COUNT = 2;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.InputElementImpl <em>Input Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.InputElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getInputElement()
	 * @generated
	 */
	int INPUT_ELEMENT = 12;

	/**
	 * The feature id for the '<em><b>Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INPUT_ELEMENT__KEY = ENTRY_ELEMENT__KEY;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INPUT_ELEMENT__VALUE = ENTRY_ELEMENT__VALUE;

	/**
	 * The number of structural features of the '<em>Input Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INPUT_ELEMENT_FEATURE_COUNT = ENTRY_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.OverrideElementImpl <em>Override Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.OverrideElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getOverrideElement()
	 * @generated
	 */
	int OVERRIDE_ELEMENT = 13;

	/**
	 * The feature id for the '<em><b>Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OVERRIDE_ELEMENT__KEY = ENTRY_ELEMENT__KEY;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OVERRIDE_ELEMENT__VALUE = ENTRY_ELEMENT__VALUE;

	/**
	 * The number of structural features of the '<em>Override Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OVERRIDE_ELEMENT_FEATURE_COUNT = ENTRY_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The meta object id for the '<em>Direction</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.Direction
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getDirection()
	 * @generated
	 */
	int DIRECTION = 14;

	/**
	 * The meta object id for the '<em>Increase</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.Increase
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getIncrease()
	 * @generated
	 */
	int INCREASE = 15;

	/**
	 * The meta object id for the '<em>Turn Method</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.TurnMethod
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getTurnMethod()
	 * @generated
	 */
	int TURN_METHOD = 16;

	/**
	 * The meta object id for the '<em>Sock Length</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.SockLength
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getSockLength()
	 * @generated
	 */
	int SOCK_LENGTH = 17;

	/**
	 * The meta object id for the '<em>Gauge</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.Gauge
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getGauge()
	 * @generated
	 */
	int GAUGE = 18;

	/**
	 * The meta object id for the '<em>Quantity</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.Quantity
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getQuantity()
	 * @generated
	 */
	int QUANTITY = 19;

	/**
	 * The meta object id for the '<em>Key</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.term.Key
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getKey()
	 * @generated
	 */
	int KEY = 20;


	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.Pattern <em>Pattern</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Pattern</em>'.
	 * @see turnheel.model.pattern.Pattern
	 * @generated
	 */
	EClass getPattern();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.Pattern#getFormat <em>Format</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Format</em>'.
	 * @see turnheel.model.pattern.Pattern#getFormat()
	 * @see #getPattern()
	 * @generated
	 */
	EAttribute getPattern_Format();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.Pattern#getTitle <em>Title</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Title</em>'.
	 * @see turnheel.model.pattern.Pattern#getTitle()
	 * @see #getPattern()
	 * @generated
	 */
	EAttribute getPattern_Title();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.Pattern#getDesigner <em>Designer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Designer</em>'.
	 * @see turnheel.model.pattern.Pattern#getDesigner()
	 * @see #getPattern()
	 * @generated
	 */
	EAttribute getPattern_Designer();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.Pattern#getDirection <em>Direction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Direction</em>'.
	 * @see turnheel.model.pattern.Pattern#getDirection()
	 * @see #getPattern()
	 * @generated
	 */
	EAttribute getPattern_Direction();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.Pattern#getStitchGauge <em>Stitch Gauge</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stitch Gauge</em>'.
	 * @see turnheel.model.pattern.Pattern#getStitchGauge()
	 * @see #getPattern()
	 * @generated
	 */
	EAttribute getPattern_StitchGauge();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.Pattern#getRoundGauge <em>Round Gauge</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Round Gauge</em>'.
	 * @see turnheel.model.pattern.Pattern#getRoundGauge()
	 * @see #getPattern()
	 * @generated
	 */
	EAttribute getPattern_RoundGauge();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.Pattern#getNotes <em>Notes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Notes</em>'.
	 * @see turnheel.model.pattern.Pattern#getNotes()
	 * @see #getPattern()
	 * @generated
	 */
	EAttribute getPattern_Notes();

	/**
	 * Returns the meta object for the containment reference '{@link turnheel.model.pattern.Pattern#getToe <em>Toe</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Toe</em>'.
	 * @see turnheel.model.pattern.Pattern#getToe()
	 * @see #getPattern()
	 * @generated
	 */
	EReference getPattern_Toe();

	/**
	 * Returns the meta object for the containment reference '{@link turnheel.model.pattern.Pattern#getHeel <em>Heel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Heel</em>'.
	 * @see turnheel.model.pattern.Pattern#getHeel()
	 * @see #getPattern()
	 * @generated
	 */
	EReference getPattern_Heel();

	/**
	 * Returns the meta object for the containment reference '{@link turnheel.model.pattern.Pattern#getLeg <em>Leg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Leg</em>'.
	 * @see turnheel.model.pattern.Pattern#getLeg()
	 * @see #getPattern()
	 * @generated
	 */
	EReference getPattern_Leg();

	/**
	 * Returns the meta object for the containment reference '{@link turnheel.model.pattern.Pattern#getCuff <em>Cuff</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Cuff</em>'.
	 * @see turnheel.model.pattern.Pattern#getCuff()
	 * @see #getPattern()
	 * @generated
	 */
	EReference getPattern_Cuff();

	/**
	 * Returns the meta object for the containment reference list '{@link turnheel.model.pattern.Pattern#getSizes <em>Sizes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Sizes</em>'.
	 * @see turnheel.model.pattern.Pattern#getSizes()
	 * @see #getPattern()
	 * @generated
	 */
	EReference getPattern_Sizes();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.ToeElement <em>Toe Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Toe Element</em>'.
	 * @see turnheel.model.pattern.ToeElement
	 * @generated
	 */
	EClass getToeElement();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.RoundToeElement <em>Round Toe Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Round Toe Element</em>'.
	 * @see turnheel.model.pattern.RoundToeElement
	 * @generated
	 */
	EClass getRoundToeElement();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.RoundToeElement#getLines <em>Lines</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lines</em>'.
	 * @see turnheel.model.pattern.RoundToeElement#getLines()
	 * @see #getRoundToeElement()
	 * @generated
	 */
	EAttribute getRoundToeElement_Lines();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.RoundToeElement#getIncrease <em>Increase</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Increase</em>'.
	 * @see turnheel.model.pattern.RoundToeElement#getIncrease()
	 * @see #getRoundToeElement()
	 * @generated
	 */
	EAttribute getRoundToeElement_Increase();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.WedgeToeElement <em>Wedge Toe Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Wedge Toe Element</em>'.
	 * @see turnheel.model.pattern.WedgeToeElement
	 * @generated
	 */
	EClass getWedgeToeElement();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.WedgeToeElement#getIncrease <em>Increase</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Increase</em>'.
	 * @see turnheel.model.pattern.WedgeToeElement#getIncrease()
	 * @see #getWedgeToeElement()
	 * @generated
	 */
	EAttribute getWedgeToeElement_Increase();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.HeelElement <em>Heel Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Heel Element</em>'.
	 * @see turnheel.model.pattern.HeelElement
	 * @generated
	 */
	EClass getHeelElement();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.ShortRowHeelElement <em>Short Row Heel Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Short Row Heel Element</em>'.
	 * @see turnheel.model.pattern.ShortRowHeelElement
	 * @generated
	 */
	EClass getShortRowHeelElement();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.ShortRowHeelElement#getTurn <em>Turn</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Turn</em>'.
	 * @see turnheel.model.pattern.ShortRowHeelElement#getTurn()
	 * @see #getShortRowHeelElement()
	 * @generated
	 */
	EAttribute getShortRowHeelElement_Turn();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.LegElement <em>Leg Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Leg Element</em>'.
	 * @see turnheel.model.pattern.LegElement
	 * @generated
	 */
	EClass getLegElement();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.StraightLegElement <em>Straight Leg Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Straight Leg Element</em>'.
	 * @see turnheel.model.pattern.StraightLegElement
	 * @generated
	 */
	EClass getStraightLegElement();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.StraightLegElement#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see turnheel.model.pattern.StraightLegElement#getLength()
	 * @see #getStraightLegElement()
	 * @generated
	 */
	EAttribute getStraightLegElement_Length();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.CuffElement <em>Cuff Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Cuff Element</em>'.
	 * @see turnheel.model.pattern.CuffElement
	 * @generated
	 */
	EClass getCuffElement();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.RibCuffElement <em>Rib Cuff Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Rib Cuff Element</em>'.
	 * @see turnheel.model.pattern.RibCuffElement
	 * @generated
	 */
	EClass getRibCuffElement();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.RibCuffElement#getKnit <em>Knit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Knit</em>'.
	 * @see turnheel.model.pattern.RibCuffElement#getKnit()
	 * @see #getRibCuffElement()
	 * @generated
	 */
	EAttribute getRibCuffElement_Knit();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.RibCuffElement#getPurl <em>Purl</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Purl</em>'.
	 * @see turnheel.model.pattern.RibCuffElement#getPurl()
	 * @see #getRibCuffElement()
	 * @generated
	 */
	EAttribute getRibCuffElement_Purl();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.SizeElement <em>Size Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Size Element</em>'.
	 * @see turnheel.model.pattern.SizeElement
	 * @generated
	 */
	EClass getSizeElement();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.SizeElement#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see turnheel.model.pattern.SizeElement#getId()
	 * @see #getSizeElement()
	 * @generated
	 */
	EAttribute getSizeElement_Id();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.SizeElement#getLabel <em>Label</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Label</em>'.
	 * @see turnheel.model.pattern.SizeElement#getLabel()
	 * @see #getSizeElement()
	 * @generated
	 */
	EAttribute getSizeElement_Label();

	/**
	 * Returns the meta object for the containment reference list '{@link turnheel.model.pattern.SizeElement#getInputs <em>Inputs</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Inputs</em>'.
	 * @see turnheel.model.pattern.SizeElement#getInputs()
	 * @see #getSizeElement()
	 * @generated
	 */
	EReference getSizeElement_Inputs();

	/**
	 * Returns the meta object for the containment reference list '{@link turnheel.model.pattern.SizeElement#getOverrides <em>Overrides</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Overrides</em>'.
	 * @see turnheel.model.pattern.SizeElement#getOverrides()
	 * @see #getSizeElement()
	 * @generated
	 */
	EReference getSizeElement_Overrides();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.EntryElement <em>Entry Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Entry Element</em>'.
	 * @see turnheel.model.pattern.EntryElement
	 * @generated
	 */
	EClass getEntryElement();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.EntryElement#getKey <em>Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Key</em>'.
	 * @see turnheel.model.pattern.EntryElement#getKey()
	 * @see #getEntryElement()
	 * @generated
	 */
	EAttribute getEntryElement_Key();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.EntryElement#getValue <em>Value</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Value</em>'.
	 * @see turnheel.model.pattern.EntryElement#getValue()
	 * @see #getEntryElement()
	 * @generated
	 */
	EAttribute getEntryElement_Value();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.InputElement <em>Input Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Input Element</em>'.
	 * @see turnheel.model.pattern.InputElement
	 * @generated
	 */
	EClass getInputElement();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.OverrideElement <em>Override Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Override Element</em>'.
	 * @see turnheel.model.pattern.OverrideElement
	 * @generated
	 */
	EClass getOverrideElement();

	/**
	 * Returns the meta object for data type '{@link turnheel.engine.design.Direction <em>Direction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Direction</em>'.
	 * @see turnheel.engine.design.Direction
	 * @generated
	 */
	EDataType getDirection();

	/**
	 * Returns the meta object for data type '{@link turnheel.engine.design.Increase <em>Increase</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Increase</em>'.
	 * @see turnheel.engine.design.Increase
	 * @generated
	 */
	EDataType getIncrease();

	/**
	 * Returns the meta object for data type '{@link turnheel.engine.design.TurnMethod <em>Turn Method</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Turn Method</em>'.
	 * @see turnheel.engine.design.TurnMethod
	 * @generated
	 */
	EDataType getTurnMethod();

	/**
	 * Returns the meta object for data type '{@link turnheel.engine.design.SockLength <em>Sock Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Sock Length</em>'.
	 * @see turnheel.engine.design.SockLength
	 * @generated
	 */
	EDataType getSockLength();

	/**
	 * Returns the meta object for data type '{@link turnheel.engine.design.Gauge <em>Gauge</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Gauge</em>'.
	 * @see turnheel.engine.design.Gauge
	 * @generated
	 */
	EDataType getGauge();

	/**
	 * Returns the meta object for data type '{@link turnheel.engine.design.Quantity <em>Quantity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Quantity</em>'.
	 * @see turnheel.engine.design.Quantity
	 * @generated
	 */
	EDataType getQuantity();

	/**
	 * Returns the meta object for data type '{@link turnheel.engine.term.Key <em>Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Key</em>'.
	 * @see turnheel.engine.term.Key
	 * @generated
	 */
	EDataType getKey();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	PatternFactory getPatternFactory();

	/**
	 * <!-- begin-user-doc -->
	 * Defines literals for the meta objects that represent
	 * <ul>
	 *   <li>each class,</li>
	 *   <li>each feature of each class,</li>
	 *   <li>each enum,</li>
	 *   <li>and each data type</li>
	 * </ul>
	 * <!-- end-user-doc -->
	 * @generated
	 */
	interface Literals {
		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.PatternImpl <em>Pattern</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.PatternImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getPattern()
		 * @generated
		 */
		EClass PATTERN = eINSTANCE.getPattern();

		/**
		 * The meta object literal for the '<em><b>Format</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PATTERN__FORMAT = eINSTANCE.getPattern_Format();

		/**
		 * The meta object literal for the '<em><b>Title</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PATTERN__TITLE = eINSTANCE.getPattern_Title();

		/**
		 * The meta object literal for the '<em><b>Designer</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PATTERN__DESIGNER = eINSTANCE.getPattern_Designer();

		/**
		 * The meta object literal for the '<em><b>Direction</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PATTERN__DIRECTION = eINSTANCE.getPattern_Direction();

		/**
		 * The meta object literal for the '<em><b>Stitch Gauge</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PATTERN__STITCH_GAUGE = eINSTANCE.getPattern_StitchGauge();

		/**
		 * The meta object literal for the '<em><b>Round Gauge</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PATTERN__ROUND_GAUGE = eINSTANCE.getPattern_RoundGauge();

		/**
		 * The meta object literal for the '<em><b>Notes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PATTERN__NOTES = eINSTANCE.getPattern_Notes();

		/**
		 * The meta object literal for the '<em><b>Toe</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PATTERN__TOE = eINSTANCE.getPattern_Toe();

		/**
		 * The meta object literal for the '<em><b>Heel</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PATTERN__HEEL = eINSTANCE.getPattern_Heel();

		/**
		 * The meta object literal for the '<em><b>Leg</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PATTERN__LEG = eINSTANCE.getPattern_Leg();

		/**
		 * The meta object literal for the '<em><b>Cuff</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PATTERN__CUFF = eINSTANCE.getPattern_Cuff();

		/**
		 * The meta object literal for the '<em><b>Sizes</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PATTERN__SIZES = eINSTANCE.getPattern_Sizes();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.ToeElementImpl <em>Toe Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.ToeElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getToeElement()
		 * @generated
		 */
		EClass TOE_ELEMENT = eINSTANCE.getToeElement();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.RoundToeElementImpl <em>Round Toe Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.RoundToeElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getRoundToeElement()
		 * @generated
		 */
		EClass ROUND_TOE_ELEMENT = eINSTANCE.getRoundToeElement();

		/**
		 * The meta object literal for the '<em><b>Lines</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROUND_TOE_ELEMENT__LINES = eINSTANCE.getRoundToeElement_Lines();

		/**
		 * The meta object literal for the '<em><b>Increase</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROUND_TOE_ELEMENT__INCREASE = eINSTANCE.getRoundToeElement_Increase();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.WedgeToeElementImpl <em>Wedge Toe Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.WedgeToeElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getWedgeToeElement()
		 * @generated
		 */
		EClass WEDGE_TOE_ELEMENT = eINSTANCE.getWedgeToeElement();

		/**
		 * The meta object literal for the '<em><b>Increase</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEDGE_TOE_ELEMENT__INCREASE = eINSTANCE.getWedgeToeElement_Increase();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.HeelElementImpl <em>Heel Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.HeelElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getHeelElement()
		 * @generated
		 */
		EClass HEEL_ELEMENT = eINSTANCE.getHeelElement();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.ShortRowHeelElementImpl <em>Short Row Heel Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.ShortRowHeelElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getShortRowHeelElement()
		 * @generated
		 */
		EClass SHORT_ROW_HEEL_ELEMENT = eINSTANCE.getShortRowHeelElement();

		/**
		 * The meta object literal for the '<em><b>Turn</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHORT_ROW_HEEL_ELEMENT__TURN = eINSTANCE.getShortRowHeelElement_Turn();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.LegElementImpl <em>Leg Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.LegElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getLegElement()
		 * @generated
		 */
		EClass LEG_ELEMENT = eINSTANCE.getLegElement();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.StraightLegElementImpl <em>Straight Leg Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.StraightLegElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getStraightLegElement()
		 * @generated
		 */
		EClass STRAIGHT_LEG_ELEMENT = eINSTANCE.getStraightLegElement();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STRAIGHT_LEG_ELEMENT__LENGTH = eINSTANCE.getStraightLegElement_Length();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.CuffElementImpl <em>Cuff Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.CuffElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getCuffElement()
		 * @generated
		 */
		EClass CUFF_ELEMENT = eINSTANCE.getCuffElement();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.RibCuffElementImpl <em>Rib Cuff Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.RibCuffElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getRibCuffElement()
		 * @generated
		 */
		EClass RIB_CUFF_ELEMENT = eINSTANCE.getRibCuffElement();

		/**
		 * The meta object literal for the '<em><b>Knit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RIB_CUFF_ELEMENT__KNIT = eINSTANCE.getRibCuffElement_Knit();

		/**
		 * The meta object literal for the '<em><b>Purl</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RIB_CUFF_ELEMENT__PURL = eINSTANCE.getRibCuffElement_Purl();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.SizeElementImpl <em>Size Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.SizeElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getSizeElement()
		 * @generated
		 */
		EClass SIZE_ELEMENT = eINSTANCE.getSizeElement();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIZE_ELEMENT__ID = eINSTANCE.getSizeElement_Id();

		/**
		 * The meta object literal for the '<em><b>Label</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIZE_ELEMENT__LABEL = eINSTANCE.getSizeElement_Label();

		/**
		 * The meta object literal for the '<em><b>Inputs</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SIZE_ELEMENT__INPUTS = eINSTANCE.getSizeElement_Inputs();

		/**
		 * The meta object literal for the '<em><b>Overrides</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SIZE_ELEMENT__OVERRIDES = eINSTANCE.getSizeElement_Overrides();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.EntryElementImpl <em>Entry Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.EntryElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getEntryElement()
		 * @generated
		 */
		EClass ENTRY_ELEMENT = eINSTANCE.getEntryElement();

		/**
		 * The meta object literal for the '<em><b>Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ENTRY_ELEMENT__KEY = eINSTANCE.getEntryElement_Key();

		/**
		 * The meta object literal for the '<em><b>Value</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ENTRY_ELEMENT__VALUE = eINSTANCE.getEntryElement_Value();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.InputElementImpl <em>Input Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.InputElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getInputElement()
		 * @generated
		 */
		EClass INPUT_ELEMENT = eINSTANCE.getInputElement();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.OverrideElementImpl <em>Override Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.OverrideElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getOverrideElement()
		 * @generated
		 */
		EClass OVERRIDE_ELEMENT = eINSTANCE.getOverrideElement();

		/**
		 * The meta object literal for the '<em>Direction</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.engine.design.Direction
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getDirection()
		 * @generated
		 */
		EDataType DIRECTION = eINSTANCE.getDirection();

		/**
		 * The meta object literal for the '<em>Increase</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.engine.design.Increase
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getIncrease()
		 * @generated
		 */
		EDataType INCREASE = eINSTANCE.getIncrease();

		/**
		 * The meta object literal for the '<em>Turn Method</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.engine.design.TurnMethod
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getTurnMethod()
		 * @generated
		 */
		EDataType TURN_METHOD = eINSTANCE.getTurnMethod();

		/**
		 * The meta object literal for the '<em>Sock Length</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.engine.design.SockLength
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getSockLength()
		 * @generated
		 */
		EDataType SOCK_LENGTH = eINSTANCE.getSockLength();

		/**
		 * The meta object literal for the '<em>Gauge</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.engine.design.Gauge
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getGauge()
		 * @generated
		 */
		EDataType GAUGE = eINSTANCE.getGauge();

		/**
		 * The meta object literal for the '<em>Quantity</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.engine.design.Quantity
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getQuantity()
		 * @generated
		 */
		EDataType QUANTITY = eINSTANCE.getQuantity();

		/**
		 * The meta object literal for the '<em>Key</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.engine.term.Key
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getKey()
		 * @generated
		 */
		EDataType KEY = eINSTANCE.getKey();

	}

} //PatternPackage
