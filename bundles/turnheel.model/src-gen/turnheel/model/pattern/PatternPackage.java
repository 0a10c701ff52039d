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
	 * The feature id for the '<em><b>Stitch Patterns</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATTERN__STITCH_PATTERNS = 11;

	/**
	 * The feature id for the '<em><b>Materials</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATTERN__MATERIALS = 12;

	/**
	 * The feature id for the '<em><b>Lengths</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATTERN__LENGTHS = 13;

	/**
	 * The feature id for the '<em><b>Sizes</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATTERN__SIZES = 14;

	/**
	 * The feature id for the '<em><b>Own Rows</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATTERN__OWN_ROWS = 15;

	/**
	 * The number of structural features of the '<em>Pattern</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATTERN_FEATURE_COUNT = 16;

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
	 * The feature id for the '<em><b>Cast On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROUND_TOE_ELEMENT__CAST_ON = TOE_ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Lean</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROUND_TOE_ELEMENT__LEAN = TOE_ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Round Toe Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROUND_TOE_ELEMENT_FEATURE_COUNT = TOE_ELEMENT_FEATURE_COUNT + 4;

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
	 * The feature id for the '<em><b>Cast On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEDGE_TOE_ELEMENT__CAST_ON = TOE_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Wedge Toe Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEDGE_TOE_ELEMENT_FEATURE_COUNT = TOE_ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.StarToeElementImpl <em>Star Toe Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.StarToeElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getStarToeElement()
	 * @generated
	 */
	int STAR_TOE_ELEMENT = 4;

	/**
	 * The feature id for the '<em><b>Increase</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAR_TOE_ELEMENT__INCREASE = TOE_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Cast On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAR_TOE_ELEMENT__CAST_ON = TOE_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Lean</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAR_TOE_ELEMENT__LEAN = TOE_ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Star Toe Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAR_TOE_ELEMENT_FEATURE_COUNT = TOE_ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.ShortRowToeElementImpl <em>Short Row Toe Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.ShortRowToeElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getShortRowToeElement()
	 * @generated
	 */
	int SHORT_ROW_TOE_ELEMENT = 5;

	/**
	 * The feature id for the '<em><b>Turn</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHORT_ROW_TOE_ELEMENT__TURN = TOE_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Short Row Toe Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHORT_ROW_TOE_ELEMENT_FEATURE_COUNT = TOE_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.AsymmetricToeElementImpl <em>Asymmetric Toe Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.AsymmetricToeElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getAsymmetricToeElement()
	 * @generated
	 */
	int ASYMMETRIC_TOE_ELEMENT = 6;

	/**
	 * The feature id for the '<em><b>Increase</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ASYMMETRIC_TOE_ELEMENT__INCREASE = TOE_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Cast On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ASYMMETRIC_TOE_ELEMENT__CAST_ON = TOE_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Asymmetric Toe Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ASYMMETRIC_TOE_ELEMENT_FEATURE_COUNT = TOE_ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.HeelElementImpl <em>Heel Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.HeelElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getHeelElement()
	 * @generated
	 */
	int HEEL_ELEMENT = 7;

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
	int SHORT_ROW_HEEL_ELEMENT = 8;

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
	 * The meta object id for the '{@link turnheel.model.pattern.impl.FlapHeelElementImpl <em>Flap Heel Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.FlapHeelElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getFlapHeelElement()
	 * @generated
	 */
	int FLAP_HEEL_ELEMENT = 9;

	/**
	 * The feature id for the '<em><b>Turn</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLAP_HEEL_ELEMENT__TURN = HEEL_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Flap Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLAP_HEEL_ELEMENT__FLAP_LENGTH = HEEL_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Fabric</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLAP_HEEL_ELEMENT__FABRIC = HEEL_ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Edge</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLAP_HEEL_ELEMENT__EDGE = HEEL_ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Pick Up</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLAP_HEEL_ELEMENT__PICK_UP = HEEL_ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Flap Heel Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLAP_HEEL_ELEMENT_FEATURE_COUNT = HEEL_ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.AfterthoughtHeelElementImpl <em>Afterthought Heel Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.AfterthoughtHeelElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getAfterthoughtHeelElement()
	 * @generated
	 */
	int AFTERTHOUGHT_HEEL_ELEMENT = 10;

	/**
	 * The feature id for the '<em><b>Cap</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AFTERTHOUGHT_HEEL_ELEMENT__CAP = HEEL_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Lean</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AFTERTHOUGHT_HEEL_ELEMENT__LEAN = HEEL_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Afterthought Heel Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AFTERTHOUGHT_HEEL_ELEMENT_FEATURE_COUNT = HEEL_ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.LegElementImpl <em>Leg Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.LegElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getLegElement()
	 * @generated
	 */
	int LEG_ELEMENT = 11;

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
	int STRAIGHT_LEG_ELEMENT = 12;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STRAIGHT_LEG_ELEMENT__LENGTH = LEG_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STRAIGHT_LEG_ELEMENT__COUNT = LEG_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Straight Leg Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STRAIGHT_LEG_ELEMENT_FEATURE_COUNT = LEG_ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.CalfLegElementImpl <em>Calf Leg Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.CalfLegElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getCalfLegElement()
	 * @generated
	 */
	int CALF_LEG_ELEMENT = 13;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CALF_LEG_ELEMENT__LENGTH = LEG_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CALF_LEG_ELEMENT__COUNT = LEG_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Calf Leg Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CALF_LEG_ELEMENT_FEATURE_COUNT = LEG_ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.CuffElementImpl <em>Cuff Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.CuffElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getCuffElement()
	 * @generated
	 */
	int CUFF_ELEMENT = 14;

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
	int RIB_CUFF_ELEMENT = 15;

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
	 * The feature id for the '<em><b>May Adjust</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RIB_CUFF_ELEMENT__MAY_ADJUST = CUFF_ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Rib Cuff Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RIB_CUFF_ELEMENT_FEATURE_COUNT = CUFF_ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.HemCuffElementImpl <em>Hem Cuff Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.HemCuffElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getHemCuffElement()
	 * @generated
	 */
	int HEM_CUFF_ELEMENT = 16;

	/**
	 * The number of structural features of the '<em>Hem Cuff Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HEM_CUFF_ELEMENT_FEATURE_COUNT = CUFF_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.RolledCuffElementImpl <em>Rolled Cuff Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.RolledCuffElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getRolledCuffElement()
	 * @generated
	 */
	int ROLLED_CUFF_ELEMENT = 17;

	/**
	 * The number of structural features of the '<em>Rolled Cuff Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLLED_CUFF_ELEMENT_FEATURE_COUNT = CUFF_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.StitchPatternElementImpl <em>Stitch Pattern Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.StitchPatternElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getStitchPatternElement()
	 * @generated
	 */
	int STITCH_PATTERN_ELEMENT = 18;

	/**
	 * The feature id for the '<em><b>Zone</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STITCH_PATTERN_ELEMENT__ZONE = 0;

	/**
	 * The feature id for the '<em><b>Repeat</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STITCH_PATTERN_ELEMENT__REPEAT = 1;

	/**
	 * The feature id for the '<em><b>Edge</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STITCH_PATTERN_ELEMENT__EDGE = 2;

	/**
	 * The feature id for the '<em><b>Rows</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STITCH_PATTERN_ELEMENT__ROWS = 3;

	/**
	 * The feature id for the '<em><b>Fit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STITCH_PATTERN_ELEMENT__FIT = 4;

	/**
	 * The feature id for the '<em><b>Fewest Filler</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STITCH_PATTERN_ELEMENT__FEWEST_FILLER = 5;

	/**
	 * The feature id for the '<em><b>Stranded</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STITCH_PATTERN_ELEMENT__STRANDED = 6;

	/**
	 * The feature id for the '<em><b>Longest Float</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STITCH_PATTERN_ELEMENT__LONGEST_FLOAT = 7;

	/**
	 * The feature id for the '<em><b>Instructions</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STITCH_PATTERN_ELEMENT__INSTRUCTIONS = 8;

	/**
	 * The number of structural features of the '<em>Stitch Pattern Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STITCH_PATTERN_ELEMENT_FEATURE_COUNT = 9;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.MaterialsElementImpl <em>Materials Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.MaterialsElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getMaterialsElement()
	 * @generated
	 */
	int MATERIALS_ELEMENT = 19;

	/**
	 * The feature id for the '<em><b>Margin Percent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIALS_ELEMENT__MARGIN_PERCENT = 0;

	/**
	 * The feature id for the '<em><b>Needle</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIALS_ELEMENT__NEEDLE = 1;

	/**
	 * The feature id for the '<em><b>Notions</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIALS_ELEMENT__NOTIONS = 2;

	/**
	 * The feature id for the '<em><b>Yarns</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIALS_ELEMENT__YARNS = 3;

	/**
	 * The feature id for the '<em><b>Colours</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIALS_ELEMENT__COLOURS = 4;

	/**
	 * The feature id for the '<em><b>Swatch</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIALS_ELEMENT__SWATCH = 5;

	/**
	 * The number of structural features of the '<em>Materials Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIALS_ELEMENT_FEATURE_COUNT = 6;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.YarnElementImpl <em>Yarn Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.YarnElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getYarnElement()
	 * @generated
	 */
	int YARN_ELEMENT = 20;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int YARN_ELEMENT__NAME = 0;

	/**
	 * The feature id for the '<em><b>Metres Per Ball</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int YARN_ELEMENT__METRES_PER_BALL = 1;

	/**
	 * The feature id for the '<em><b>Grams Per Ball</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int YARN_ELEMENT__GRAMS_PER_BALL = 2;

	/**
	 * The feature id for the '<em><b>Category</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int YARN_ELEMENT__CATEGORY = 3;

	/**
	 * The feature id for the '<em><b>Colour</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int YARN_ELEMENT__COLOUR = 4;

	/**
	 * The feature id for the '<em><b>Balls</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int YARN_ELEMENT__BALLS = 5;

	/**
	 * The number of structural features of the '<em>Yarn Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int YARN_ELEMENT_FEATURE_COUNT = 6;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.ColourElementImpl <em>Colour Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.ColourElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getColourElement()
	 * @generated
	 */
	int COLOUR_ELEMENT = 21;

	/**
	 * The feature id for the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COLOUR_ELEMENT__PLACE = 0;

	/**
	 * The feature id for the '<em><b>Yarn</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COLOUR_ELEMENT__YARN = 1;

	/**
	 * The number of structural features of the '<em>Colour Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COLOUR_ELEMENT_FEATURE_COUNT = 2;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.SwatchElementImpl <em>Swatch Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.SwatchElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getSwatchElement()
	 * @generated
	 */
	int SWATCH_ELEMENT = 22;

	/**
	 * The feature id for the '<em><b>Stitches</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SWATCH_ELEMENT__STITCHES = 0;

	/**
	 * The feature id for the '<em><b>Rounds</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SWATCH_ELEMENT__ROUNDS = 1;

	/**
	 * The feature id for the '<em><b>Grams</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SWATCH_ELEMENT__GRAMS = 2;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SWATCH_ELEMENT__WIDTH = 3;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SWATCH_ELEMENT__HEIGHT = 4;

	/**
	 * The feature id for the '<em><b>Worked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SWATCH_ELEMENT__WORKED = 5;

	/**
	 * The feature id for the '<em><b>Washed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SWATCH_ELEMENT__WASHED = 6;

	/**
	 * The number of structural features of the '<em>Swatch Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SWATCH_ELEMENT_FEATURE_COUNT = 7;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.LengthsElementImpl <em>Lengths Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.LengthsElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getLengthsElement()
	 * @generated
	 */
	int LENGTHS_ELEMENT = 23;

	/**
	 * The feature id for the '<em><b>Foot</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LENGTHS_ELEMENT__FOOT = 0;

	/**
	 * The feature id for the '<em><b>Leg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LENGTHS_ELEMENT__LEG = 1;

	/**
	 * The feature id for the '<em><b>Cuff</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LENGTHS_ELEMENT__CUFF = 2;

	/**
	 * The feature id for the '<em><b>Snap</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LENGTHS_ELEMENT__SNAP = 3;

	/**
	 * The number of structural features of the '<em>Lengths Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LENGTHS_ELEMENT_FEATURE_COUNT = 4;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.SizeElementImpl <em>Size Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.SizeElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getSizeElement()
	 * @generated
	 */
	int SIZE_ELEMENT = 24;

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
	 * The meta object id for the '{@link turnheel.model.pattern.impl.OwnRowElementImpl <em>Own Row Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.OwnRowElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getOwnRowElement()
	 * @generated
	 */
	int OWN_ROW_ELEMENT = 25;

	/**
	 * The feature id for the '<em><b>Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OWN_ROW_ELEMENT__KEY = 0;

	/**
	 * The feature id for the '<em><b>Label</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OWN_ROW_ELEMENT__LABEL = 1;

	/**
	 * The feature id for the '<em><b>Formula</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OWN_ROW_ELEMENT__FORMULA = 2;

	/**
	 * The number of structural features of the '<em>Own Row Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OWN_ROW_ELEMENT_FEATURE_COUNT = 3;

	/**
	 * The meta object id for the '{@link turnheel.model.pattern.impl.EntryElementImpl <em>Entry Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.model.pattern.impl.EntryElementImpl
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getEntryElement()
	 * @generated
	 */
	int ENTRY_ELEMENT = 26;

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
	int INPUT_ELEMENT = 27;

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
	int OVERRIDE_ELEMENT = 28;

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
	int DIRECTION = 29;

	/**
	 * The meta object id for the '<em>Increase</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.Increase
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getIncrease()
	 * @generated
	 */
	int INCREASE = 30;

	/**
	 * The meta object id for the '<em>Cast On</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.CastOn
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getCastOn()
	 * @generated
	 */
	int CAST_ON = 31;

	/**
	 * The meta object id for the '<em>Lean</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.Lean
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getLean()
	 * @generated
	 */
	int LEAN = 32;

	/**
	 * The meta object id for the '<em>Turn Method</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.TurnMethod
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getTurnMethod()
	 * @generated
	 */
	int TURN_METHOD = 33;

	/**
	 * The meta object id for the '<em>Sock Length</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.SockLength
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getSockLength()
	 * @generated
	 */
	int SOCK_LENGTH = 34;

	/**
	 * The meta object id for the '<em>Heel Turn</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.HeelTurn
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getHeelTurn()
	 * @generated
	 */
	int HEEL_TURN = 35;

	/**
	 * The meta object id for the '<em>Cap</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.AfterthoughtHeel.Cap
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getCap()
	 * @generated
	 */
	int CAP = 36;

	/**
	 * The meta object id for the '<em>Leg Count</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.LegCount
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getLegCount()
	 * @generated
	 */
	int LEG_COUNT = 37;

	/**
	 * The meta object id for the '<em>Length Mode</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.LengthMode
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getLengthMode()
	 * @generated
	 */
	int LENGTH_MODE = 38;

	/**
	 * The meta object id for the '<em>Snap</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.Snap
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getSnap()
	 * @generated
	 */
	int SNAP = 39;

	/**
	 * The meta object id for the '<em>Zone</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.StitchPattern.Zone
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getZone()
	 * @generated
	 */
	int ZONE = 40;

	/**
	 * The meta object id for the '<em>Fit</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.StitchPattern.Fit
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getFit()
	 * @generated
	 */
	int FIT = 41;

	/**
	 * The meta object id for the '<em>Flap Length</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.FlapLength
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getFlapLength()
	 * @generated
	 */
	int FLAP_LENGTH = 42;

	/**
	 * The meta object id for the '<em>Flap Fabric</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.FlapFabric
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getFlapFabric()
	 * @generated
	 */
	int FLAP_FABRIC = 43;

	/**
	 * The meta object id for the '<em>Flap Edge</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.FlapEdge
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getFlapEdge()
	 * @generated
	 */
	int FLAP_EDGE = 44;

	/**
	 * The meta object id for the '<em>Pick Up</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.PickUp
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getPickUp()
	 * @generated
	 */
	int PICK_UP = 45;

	/**
	 * The meta object id for the '<em>Colour Place</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.ColourPlace
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getColourPlace()
	 * @generated
	 */
	int COLOUR_PLACE = 46;

	/**
	 * The meta object id for the '<em>Worked</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.Swatch.Worked
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getWorked()
	 * @generated
	 */
	int WORKED = 47;

	/**
	 * The meta object id for the '<em>Length</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.Length
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getLength()
	 * @generated
	 */
	int LENGTH = 48;

	/**
	 * The meta object id for the '<em>Gauge</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.Gauge
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getGauge()
	 * @generated
	 */
	int GAUGE = 49;

	/**
	 * The meta object id for the '<em>Quantity</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.design.Quantity
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getQuantity()
	 * @generated
	 */
	int QUANTITY = 50;

	/**
	 * The meta object id for the '<em>Key</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see turnheel.engine.term.Key
	 * @see turnheel.model.pattern.impl.PatternPackageImpl#getKey()
	 * @generated
	 */
	int KEY = 51;


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
	 * Returns the meta object for the containment reference list '{@link turnheel.model.pattern.Pattern#getStitchPatterns <em>Stitch Patterns</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Stitch Patterns</em>'.
	 * @see turnheel.model.pattern.Pattern#getStitchPatterns()
	 * @see #getPattern()
	 * @generated
	 */
	EReference getPattern_StitchPatterns();

	/**
	 * Returns the meta object for the containment reference '{@link turnheel.model.pattern.Pattern#getMaterials <em>Materials</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Materials</em>'.
	 * @see turnheel.model.pattern.Pattern#getMaterials()
	 * @see #getPattern()
	 * @generated
	 */
	EReference getPattern_Materials();

	/**
	 * Returns the meta object for the containment reference '{@link turnheel.model.pattern.Pattern#getLengths <em>Lengths</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Lengths</em>'.
	 * @see turnheel.model.pattern.Pattern#getLengths()
	 * @see #getPattern()
	 * @generated
	 */
	EReference getPattern_Lengths();

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
	 * Returns the meta object for the containment reference list '{@link turnheel.model.pattern.Pattern#getOwnRows <em>Own Rows</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Own Rows</em>'.
	 * @see turnheel.model.pattern.Pattern#getOwnRows()
	 * @see #getPattern()
	 * @generated
	 */
	EReference getPattern_OwnRows();

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
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.RoundToeElement#getCastOn <em>Cast On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cast On</em>'.
	 * @see turnheel.model.pattern.RoundToeElement#getCastOn()
	 * @see #getRoundToeElement()
	 * @generated
	 */
	EAttribute getRoundToeElement_CastOn();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.RoundToeElement#getLean <em>Lean</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lean</em>'.
	 * @see turnheel.model.pattern.RoundToeElement#getLean()
	 * @see #getRoundToeElement()
	 * @generated
	 */
	EAttribute getRoundToeElement_Lean();

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
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.WedgeToeElement#getCastOn <em>Cast On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cast On</em>'.
	 * @see turnheel.model.pattern.WedgeToeElement#getCastOn()
	 * @see #getWedgeToeElement()
	 * @generated
	 */
	EAttribute getWedgeToeElement_CastOn();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.StarToeElement <em>Star Toe Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Star Toe Element</em>'.
	 * @see turnheel.model.pattern.StarToeElement
	 * @generated
	 */
	EClass getStarToeElement();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.StarToeElement#getIncrease <em>Increase</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Increase</em>'.
	 * @see turnheel.model.pattern.StarToeElement#getIncrease()
	 * @see #getStarToeElement()
	 * @generated
	 */
	EAttribute getStarToeElement_Increase();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.StarToeElement#getCastOn <em>Cast On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cast On</em>'.
	 * @see turnheel.model.pattern.StarToeElement#getCastOn()
	 * @see #getStarToeElement()
	 * @generated
	 */
	EAttribute getStarToeElement_CastOn();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.StarToeElement#getLean <em>Lean</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lean</em>'.
	 * @see turnheel.model.pattern.StarToeElement#getLean()
	 * @see #getStarToeElement()
	 * @generated
	 */
	EAttribute getStarToeElement_Lean();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.ShortRowToeElement <em>Short Row Toe Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Short Row Toe Element</em>'.
	 * @see turnheel.model.pattern.ShortRowToeElement
	 * @generated
	 */
	EClass getShortRowToeElement();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.ShortRowToeElement#getTurn <em>Turn</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Turn</em>'.
	 * @see turnheel.model.pattern.ShortRowToeElement#getTurn()
	 * @see #getShortRowToeElement()
	 * @generated
	 */
	EAttribute getShortRowToeElement_Turn();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.AsymmetricToeElement <em>Asymmetric Toe Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Asymmetric Toe Element</em>'.
	 * @see turnheel.model.pattern.AsymmetricToeElement
	 * @generated
	 */
	EClass getAsymmetricToeElement();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.AsymmetricToeElement#getIncrease <em>Increase</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Increase</em>'.
	 * @see turnheel.model.pattern.AsymmetricToeElement#getIncrease()
	 * @see #getAsymmetricToeElement()
	 * @generated
	 */
	EAttribute getAsymmetricToeElement_Increase();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.AsymmetricToeElement#getCastOn <em>Cast On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cast On</em>'.
	 * @see turnheel.model.pattern.AsymmetricToeElement#getCastOn()
	 * @see #getAsymmetricToeElement()
	 * @generated
	 */
	EAttribute getAsymmetricToeElement_CastOn();

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
	 * Returns the meta object for class '{@link turnheel.model.pattern.FlapHeelElement <em>Flap Heel Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Flap Heel Element</em>'.
	 * @see turnheel.model.pattern.FlapHeelElement
	 * @generated
	 */
	EClass getFlapHeelElement();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.FlapHeelElement#getTurn <em>Turn</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Turn</em>'.
	 * @see turnheel.model.pattern.FlapHeelElement#getTurn()
	 * @see #getFlapHeelElement()
	 * @generated
	 */
	EAttribute getFlapHeelElement_Turn();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.FlapHeelElement#getFlapLength <em>Flap Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Flap Length</em>'.
	 * @see turnheel.model.pattern.FlapHeelElement#getFlapLength()
	 * @see #getFlapHeelElement()
	 * @generated
	 */
	EAttribute getFlapHeelElement_FlapLength();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.FlapHeelElement#getFabric <em>Fabric</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fabric</em>'.
	 * @see turnheel.model.pattern.FlapHeelElement#getFabric()
	 * @see #getFlapHeelElement()
	 * @generated
	 */
	EAttribute getFlapHeelElement_Fabric();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.FlapHeelElement#getEdge <em>Edge</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Edge</em>'.
	 * @see turnheel.model.pattern.FlapHeelElement#getEdge()
	 * @see #getFlapHeelElement()
	 * @generated
	 */
	EAttribute getFlapHeelElement_Edge();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.FlapHeelElement#getPickUp <em>Pick Up</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pick Up</em>'.
	 * @see turnheel.model.pattern.FlapHeelElement#getPickUp()
	 * @see #getFlapHeelElement()
	 * @generated
	 */
	EAttribute getFlapHeelElement_PickUp();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.AfterthoughtHeelElement <em>Afterthought Heel Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Afterthought Heel Element</em>'.
	 * @see turnheel.model.pattern.AfterthoughtHeelElement
	 * @generated
	 */
	EClass getAfterthoughtHeelElement();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.AfterthoughtHeelElement#getCap <em>Cap</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cap</em>'.
	 * @see turnheel.model.pattern.AfterthoughtHeelElement#getCap()
	 * @see #getAfterthoughtHeelElement()
	 * @generated
	 */
	EAttribute getAfterthoughtHeelElement_Cap();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.AfterthoughtHeelElement#getLean <em>Lean</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lean</em>'.
	 * @see turnheel.model.pattern.AfterthoughtHeelElement#getLean()
	 * @see #getAfterthoughtHeelElement()
	 * @generated
	 */
	EAttribute getAfterthoughtHeelElement_Lean();

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
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.StraightLegElement#getCount <em>Count</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Count</em>'.
	 * @see turnheel.model.pattern.StraightLegElement#getCount()
	 * @see #getStraightLegElement()
	 * @generated
	 */
	EAttribute getStraightLegElement_Count();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.CalfLegElement <em>Calf Leg Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Calf Leg Element</em>'.
	 * @see turnheel.model.pattern.CalfLegElement
	 * @generated
	 */
	EClass getCalfLegElement();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.CalfLegElement#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see turnheel.model.pattern.CalfLegElement#getLength()
	 * @see #getCalfLegElement()
	 * @generated
	 */
	EAttribute getCalfLegElement_Length();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.CalfLegElement#getCount <em>Count</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Count</em>'.
	 * @see turnheel.model.pattern.CalfLegElement#getCount()
	 * @see #getCalfLegElement()
	 * @generated
	 */
	EAttribute getCalfLegElement_Count();

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
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.RibCuffElement#isMayAdjust <em>May Adjust</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>May Adjust</em>'.
	 * @see turnheel.model.pattern.RibCuffElement#isMayAdjust()
	 * @see #getRibCuffElement()
	 * @generated
	 */
	EAttribute getRibCuffElement_MayAdjust();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.HemCuffElement <em>Hem Cuff Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Hem Cuff Element</em>'.
	 * @see turnheel.model.pattern.HemCuffElement
	 * @generated
	 */
	EClass getHemCuffElement();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.RolledCuffElement <em>Rolled Cuff Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Rolled Cuff Element</em>'.
	 * @see turnheel.model.pattern.RolledCuffElement
	 * @generated
	 */
	EClass getRolledCuffElement();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.StitchPatternElement <em>Stitch Pattern Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Stitch Pattern Element</em>'.
	 * @see turnheel.model.pattern.StitchPatternElement
	 * @generated
	 */
	EClass getStitchPatternElement();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.StitchPatternElement#getZone <em>Zone</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Zone</em>'.
	 * @see turnheel.model.pattern.StitchPatternElement#getZone()
	 * @see #getStitchPatternElement()
	 * @generated
	 */
	EAttribute getStitchPatternElement_Zone();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.StitchPatternElement#getRepeat <em>Repeat</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Repeat</em>'.
	 * @see turnheel.model.pattern.StitchPatternElement#getRepeat()
	 * @see #getStitchPatternElement()
	 * @generated
	 */
	EAttribute getStitchPatternElement_Repeat();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.StitchPatternElement#getEdge <em>Edge</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Edge</em>'.
	 * @see turnheel.model.pattern.StitchPatternElement#getEdge()
	 * @see #getStitchPatternElement()
	 * @generated
	 */
	EAttribute getStitchPatternElement_Edge();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.StitchPatternElement#getRows <em>Rows</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rows</em>'.
	 * @see turnheel.model.pattern.StitchPatternElement#getRows()
	 * @see #getStitchPatternElement()
	 * @generated
	 */
	EAttribute getStitchPatternElement_Rows();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.StitchPatternElement#getFit <em>Fit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fit</em>'.
	 * @see turnheel.model.pattern.StitchPatternElement#getFit()
	 * @see #getStitchPatternElement()
	 * @generated
	 */
	EAttribute getStitchPatternElement_Fit();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.StitchPatternElement#getFewestFiller <em>Fewest Filler</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fewest Filler</em>'.
	 * @see turnheel.model.pattern.StitchPatternElement#getFewestFiller()
	 * @see #getStitchPatternElement()
	 * @generated
	 */
	EAttribute getStitchPatternElement_FewestFiller();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.StitchPatternElement#isStranded <em>Stranded</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stranded</em>'.
	 * @see turnheel.model.pattern.StitchPatternElement#isStranded()
	 * @see #getStitchPatternElement()
	 * @generated
	 */
	EAttribute getStitchPatternElement_Stranded();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.StitchPatternElement#getLongestFloat <em>Longest Float</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Longest Float</em>'.
	 * @see turnheel.model.pattern.StitchPatternElement#getLongestFloat()
	 * @see #getStitchPatternElement()
	 * @generated
	 */
	EAttribute getStitchPatternElement_LongestFloat();

	/**
	 * Returns the meta object for the attribute list '{@link turnheel.model.pattern.StitchPatternElement#getInstructions <em>Instructions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Instructions</em>'.
	 * @see turnheel.model.pattern.StitchPatternElement#getInstructions()
	 * @see #getStitchPatternElement()
	 * @generated
	 */
	EAttribute getStitchPatternElement_Instructions();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.MaterialsElement <em>Materials Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Materials Element</em>'.
	 * @see turnheel.model.pattern.MaterialsElement
	 * @generated
	 */
	EClass getMaterialsElement();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.MaterialsElement#getMarginPercent <em>Margin Percent</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Margin Percent</em>'.
	 * @see turnheel.model.pattern.MaterialsElement#getMarginPercent()
	 * @see #getMaterialsElement()
	 * @generated
	 */
	EAttribute getMaterialsElement_MarginPercent();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.MaterialsElement#getNeedle <em>Needle</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Needle</em>'.
	 * @see turnheel.model.pattern.MaterialsElement#getNeedle()
	 * @see #getMaterialsElement()
	 * @generated
	 */
	EAttribute getMaterialsElement_Needle();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.MaterialsElement#getNotions <em>Notions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Notions</em>'.
	 * @see turnheel.model.pattern.MaterialsElement#getNotions()
	 * @see #getMaterialsElement()
	 * @generated
	 */
	EAttribute getMaterialsElement_Notions();

	/**
	 * Returns the meta object for the containment reference list '{@link turnheel.model.pattern.MaterialsElement#getYarns <em>Yarns</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Yarns</em>'.
	 * @see turnheel.model.pattern.MaterialsElement#getYarns()
	 * @see #getMaterialsElement()
	 * @generated
	 */
	EReference getMaterialsElement_Yarns();

	/**
	 * Returns the meta object for the containment reference list '{@link turnheel.model.pattern.MaterialsElement#getColours <em>Colours</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Colours</em>'.
	 * @see turnheel.model.pattern.MaterialsElement#getColours()
	 * @see #getMaterialsElement()
	 * @generated
	 */
	EReference getMaterialsElement_Colours();

	/**
	 * Returns the meta object for the containment reference '{@link turnheel.model.pattern.MaterialsElement#getSwatch <em>Swatch</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Swatch</em>'.
	 * @see turnheel.model.pattern.MaterialsElement#getSwatch()
	 * @see #getMaterialsElement()
	 * @generated
	 */
	EReference getMaterialsElement_Swatch();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.YarnElement <em>Yarn Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Yarn Element</em>'.
	 * @see turnheel.model.pattern.YarnElement
	 * @generated
	 */
	EClass getYarnElement();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.YarnElement#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see turnheel.model.pattern.YarnElement#getName()
	 * @see #getYarnElement()
	 * @generated
	 */
	EAttribute getYarnElement_Name();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.YarnElement#getMetresPerBall <em>Metres Per Ball</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Metres Per Ball</em>'.
	 * @see turnheel.model.pattern.YarnElement#getMetresPerBall()
	 * @see #getYarnElement()
	 * @generated
	 */
	EAttribute getYarnElement_MetresPerBall();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.YarnElement#getGramsPerBall <em>Grams Per Ball</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Grams Per Ball</em>'.
	 * @see turnheel.model.pattern.YarnElement#getGramsPerBall()
	 * @see #getYarnElement()
	 * @generated
	 */
	EAttribute getYarnElement_GramsPerBall();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.YarnElement#getCategory <em>Category</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Category</em>'.
	 * @see turnheel.model.pattern.YarnElement#getCategory()
	 * @see #getYarnElement()
	 * @generated
	 */
	EAttribute getYarnElement_Category();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.YarnElement#getColour <em>Colour</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Colour</em>'.
	 * @see turnheel.model.pattern.YarnElement#getColour()
	 * @see #getYarnElement()
	 * @generated
	 */
	EAttribute getYarnElement_Colour();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.YarnElement#getBalls <em>Balls</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Balls</em>'.
	 * @see turnheel.model.pattern.YarnElement#getBalls()
	 * @see #getYarnElement()
	 * @generated
	 */
	EAttribute getYarnElement_Balls();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.ColourElement <em>Colour Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Colour Element</em>'.
	 * @see turnheel.model.pattern.ColourElement
	 * @generated
	 */
	EClass getColourElement();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.ColourElement#getPlace <em>Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Place</em>'.
	 * @see turnheel.model.pattern.ColourElement#getPlace()
	 * @see #getColourElement()
	 * @generated
	 */
	EAttribute getColourElement_Place();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.ColourElement#getYarn <em>Yarn</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Yarn</em>'.
	 * @see turnheel.model.pattern.ColourElement#getYarn()
	 * @see #getColourElement()
	 * @generated
	 */
	EAttribute getColourElement_Yarn();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.SwatchElement <em>Swatch Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Swatch Element</em>'.
	 * @see turnheel.model.pattern.SwatchElement
	 * @generated
	 */
	EClass getSwatchElement();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.SwatchElement#getStitches <em>Stitches</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stitches</em>'.
	 * @see turnheel.model.pattern.SwatchElement#getStitches()
	 * @see #getSwatchElement()
	 * @generated
	 */
	EAttribute getSwatchElement_Stitches();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.SwatchElement#getRounds <em>Rounds</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rounds</em>'.
	 * @see turnheel.model.pattern.SwatchElement#getRounds()
	 * @see #getSwatchElement()
	 * @generated
	 */
	EAttribute getSwatchElement_Rounds();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.SwatchElement#getGrams <em>Grams</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Grams</em>'.
	 * @see turnheel.model.pattern.SwatchElement#getGrams()
	 * @see #getSwatchElement()
	 * @generated
	 */
	EAttribute getSwatchElement_Grams();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.SwatchElement#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see turnheel.model.pattern.SwatchElement#getWidth()
	 * @see #getSwatchElement()
	 * @generated
	 */
	EAttribute getSwatchElement_Width();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.SwatchElement#getHeight <em>Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height</em>'.
	 * @see turnheel.model.pattern.SwatchElement#getHeight()
	 * @see #getSwatchElement()
	 * @generated
	 */
	EAttribute getSwatchElement_Height();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.SwatchElement#getWorked <em>Worked</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Worked</em>'.
	 * @see turnheel.model.pattern.SwatchElement#getWorked()
	 * @see #getSwatchElement()
	 * @generated
	 */
	EAttribute getSwatchElement_Worked();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.SwatchElement#isWashed <em>Washed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Washed</em>'.
	 * @see turnheel.model.pattern.SwatchElement#isWashed()
	 * @see #getSwatchElement()
	 * @generated
	 */
	EAttribute getSwatchElement_Washed();

	/**
	 * Returns the meta object for class '{@link turnheel.model.pattern.LengthsElement <em>Lengths Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Lengths Element</em>'.
	 * @see turnheel.model.pattern.LengthsElement
	 * @generated
	 */
	EClass getLengthsElement();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.LengthsElement#getFoot <em>Foot</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Foot</em>'.
	 * @see turnheel.model.pattern.LengthsElement#getFoot()
	 * @see #getLengthsElement()
	 * @generated
	 */
	EAttribute getLengthsElement_Foot();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.LengthsElement#getLeg <em>Leg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Leg</em>'.
	 * @see turnheel.model.pattern.LengthsElement#getLeg()
	 * @see #getLengthsElement()
	 * @generated
	 */
	EAttribute getLengthsElement_Leg();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.LengthsElement#getCuff <em>Cuff</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cuff</em>'.
	 * @see turnheel.model.pattern.LengthsElement#getCuff()
	 * @see #getLengthsElement()
	 * @generated
	 */
	EAttribute getLengthsElement_Cuff();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.LengthsElement#getSnap <em>Snap</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Snap</em>'.
	 * @see turnheel.model.pattern.LengthsElement#getSnap()
	 * @see #getLengthsElement()
	 * @generated
	 */
	EAttribute getLengthsElement_Snap();

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
	 * Returns the meta object for class '{@link turnheel.model.pattern.OwnRowElement <em>Own Row Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Own Row Element</em>'.
	 * @see turnheel.model.pattern.OwnRowElement
	 * @generated
	 */
	EClass getOwnRowElement();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.OwnRowElement#getKey <em>Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Key</em>'.
	 * @see turnheel.model.pattern.OwnRowElement#getKey()
	 * @see #getOwnRowElement()
	 * @generated
	 */
	EAttribute getOwnRowElement_Key();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.OwnRowElement#getLabel <em>Label</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Label</em>'.
	 * @see turnheel.model.pattern.OwnRowElement#getLabel()
	 * @see #getOwnRowElement()
	 * @generated
	 */
	EAttribute getOwnRowElement_Label();

	/**
	 * Returns the meta object for the attribute '{@link turnheel.model.pattern.OwnRowElement#getFormula <em>Formula</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Formula</em>'.
	 * @see turnheel.model.pattern.OwnRowElement#getFormula()
	 * @see #getOwnRowElement()
	 * @generated
	 */
	EAttribute getOwnRowElement_Formula();

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
	 * Returns the meta object for data type '{@link turnheel.engine.design.CastOn <em>Cast On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Cast On</em>'.
	 * @see turnheel.engine.design.CastOn
	 * @generated
	 */
	EDataType getCastOn();

	/**
	 * Returns the meta object for data type '{@link turnheel.engine.design.Lean <em>Lean</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Lean</em>'.
	 * @see turnheel.engine.design.Lean
	 * @generated
	 */
	EDataType getLean();

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
	 * Returns the meta object for data type '{@link turnheel.engine.design.HeelTurn <em>Heel Turn</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Heel Turn</em>'.
	 * @see turnheel.engine.design.HeelTurn
	 * @generated
	 */
	EDataType getHeelTurn();

	/**
	 * Returns the meta object for data type '{@link turnheel.engine.design.AfterthoughtHeel.Cap <em>Cap</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Cap</em>'.
	 * @see turnheel.engine.design.AfterthoughtHeel.Cap
	 * @generated
	 */
	EDataType getCap();

	/**
	 * Returns the meta object for data type '{@link turnheel.engine.design.LegCount <em>Leg Count</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Leg Count</em>'.
	 * @see turnheel.engine.design.LegCount
	 * @generated
	 */
	EDataType getLegCount();

	/**
	 * Returns the meta object for data type '{@link turnheel.engine.design.LengthMode <em>Length Mode</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Length Mode</em>'.
	 * @see turnheel.engine.design.LengthMode
	 * @generated
	 */
	EDataType getLengthMode();

	/**
	 * Returns the meta object for data type '{@link turnheel.engine.design.Snap <em>Snap</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Snap</em>'.
	 * @see turnheel.engine.design.Snap
	 * @generated
	 */
	EDataType getSnap();

	/**
	 * Returns the meta object for data type '{@link turnheel.engine.design.StitchPattern.Zone <em>Zone</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Zone</em>'.
	 * @see turnheel.engine.design.StitchPattern.Zone
	 * @generated
	 */
	EDataType getZone();

	/**
	 * Returns the meta object for data type '{@link turnheel.engine.design.StitchPattern.Fit <em>Fit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Fit</em>'.
	 * @see turnheel.engine.design.StitchPattern.Fit
	 * @generated
	 */
	EDataType getFit();

	/**
	 * Returns the meta object for data type '{@link turnheel.engine.design.FlapLength <em>Flap Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Flap Length</em>'.
	 * @see turnheel.engine.design.FlapLength
	 * @generated
	 */
	EDataType getFlapLength();

	/**
	 * Returns the meta object for data type '{@link turnheel.engine.design.FlapFabric <em>Flap Fabric</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Flap Fabric</em>'.
	 * @see turnheel.engine.design.FlapFabric
	 * @generated
	 */
	EDataType getFlapFabric();

	/**
	 * Returns the meta object for data type '{@link turnheel.engine.design.FlapEdge <em>Flap Edge</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Flap Edge</em>'.
	 * @see turnheel.engine.design.FlapEdge
	 * @generated
	 */
	EDataType getFlapEdge();

	/**
	 * Returns the meta object for data type '{@link turnheel.engine.design.PickUp <em>Pick Up</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Pick Up</em>'.
	 * @see turnheel.engine.design.PickUp
	 * @generated
	 */
	EDataType getPickUp();

	/**
	 * Returns the meta object for data type '{@link turnheel.engine.design.ColourPlace <em>Colour Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Colour Place</em>'.
	 * @see turnheel.engine.design.ColourPlace
	 * @generated
	 */
	EDataType getColourPlace();

	/**
	 * Returns the meta object for data type '{@link turnheel.engine.design.Swatch.Worked <em>Worked</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Worked</em>'.
	 * @see turnheel.engine.design.Swatch.Worked
	 * @generated
	 */
	EDataType getWorked();

	/**
	 * Returns the meta object for data type '{@link turnheel.engine.design.Length <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Length</em>'.
	 * @see turnheel.engine.design.Length
	 * @generated
	 */
	EDataType getLength();

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
		 * The meta object literal for the '<em><b>Stitch Patterns</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PATTERN__STITCH_PATTERNS = eINSTANCE.getPattern_StitchPatterns();

		/**
		 * The meta object literal for the '<em><b>Materials</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PATTERN__MATERIALS = eINSTANCE.getPattern_Materials();

		/**
		 * The meta object literal for the '<em><b>Lengths</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PATTERN__LENGTHS = eINSTANCE.getPattern_Lengths();

		/**
		 * The meta object literal for the '<em><b>Sizes</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PATTERN__SIZES = eINSTANCE.getPattern_Sizes();

		/**
		 * The meta object literal for the '<em><b>Own Rows</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PATTERN__OWN_ROWS = eINSTANCE.getPattern_OwnRows();

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
		 * The meta object literal for the '<em><b>Cast On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROUND_TOE_ELEMENT__CAST_ON = eINSTANCE.getRoundToeElement_CastOn();

		/**
		 * The meta object literal for the '<em><b>Lean</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROUND_TOE_ELEMENT__LEAN = eINSTANCE.getRoundToeElement_Lean();

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
		 * The meta object literal for the '<em><b>Cast On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEDGE_TOE_ELEMENT__CAST_ON = eINSTANCE.getWedgeToeElement_CastOn();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.StarToeElementImpl <em>Star Toe Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.StarToeElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getStarToeElement()
		 * @generated
		 */
		EClass STAR_TOE_ELEMENT = eINSTANCE.getStarToeElement();

		/**
		 * The meta object literal for the '<em><b>Increase</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STAR_TOE_ELEMENT__INCREASE = eINSTANCE.getStarToeElement_Increase();

		/**
		 * The meta object literal for the '<em><b>Cast On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STAR_TOE_ELEMENT__CAST_ON = eINSTANCE.getStarToeElement_CastOn();

		/**
		 * The meta object literal for the '<em><b>Lean</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STAR_TOE_ELEMENT__LEAN = eINSTANCE.getStarToeElement_Lean();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.ShortRowToeElementImpl <em>Short Row Toe Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.ShortRowToeElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getShortRowToeElement()
		 * @generated
		 */
		EClass SHORT_ROW_TOE_ELEMENT = eINSTANCE.getShortRowToeElement();

		/**
		 * The meta object literal for the '<em><b>Turn</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHORT_ROW_TOE_ELEMENT__TURN = eINSTANCE.getShortRowToeElement_Turn();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.AsymmetricToeElementImpl <em>Asymmetric Toe Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.AsymmetricToeElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getAsymmetricToeElement()
		 * @generated
		 */
		EClass ASYMMETRIC_TOE_ELEMENT = eINSTANCE.getAsymmetricToeElement();

		/**
		 * The meta object literal for the '<em><b>Increase</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ASYMMETRIC_TOE_ELEMENT__INCREASE = eINSTANCE.getAsymmetricToeElement_Increase();

		/**
		 * The meta object literal for the '<em><b>Cast On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ASYMMETRIC_TOE_ELEMENT__CAST_ON = eINSTANCE.getAsymmetricToeElement_CastOn();

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
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.FlapHeelElementImpl <em>Flap Heel Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.FlapHeelElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getFlapHeelElement()
		 * @generated
		 */
		EClass FLAP_HEEL_ELEMENT = eINSTANCE.getFlapHeelElement();

		/**
		 * The meta object literal for the '<em><b>Turn</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FLAP_HEEL_ELEMENT__TURN = eINSTANCE.getFlapHeelElement_Turn();

		/**
		 * The meta object literal for the '<em><b>Flap Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FLAP_HEEL_ELEMENT__FLAP_LENGTH = eINSTANCE.getFlapHeelElement_FlapLength();

		/**
		 * The meta object literal for the '<em><b>Fabric</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FLAP_HEEL_ELEMENT__FABRIC = eINSTANCE.getFlapHeelElement_Fabric();

		/**
		 * The meta object literal for the '<em><b>Edge</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FLAP_HEEL_ELEMENT__EDGE = eINSTANCE.getFlapHeelElement_Edge();

		/**
		 * The meta object literal for the '<em><b>Pick Up</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FLAP_HEEL_ELEMENT__PICK_UP = eINSTANCE.getFlapHeelElement_PickUp();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.AfterthoughtHeelElementImpl <em>Afterthought Heel Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.AfterthoughtHeelElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getAfterthoughtHeelElement()
		 * @generated
		 */
		EClass AFTERTHOUGHT_HEEL_ELEMENT = eINSTANCE.getAfterthoughtHeelElement();

		/**
		 * The meta object literal for the '<em><b>Cap</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AFTERTHOUGHT_HEEL_ELEMENT__CAP = eINSTANCE.getAfterthoughtHeelElement_Cap();

		/**
		 * The meta object literal for the '<em><b>Lean</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AFTERTHOUGHT_HEEL_ELEMENT__LEAN = eINSTANCE.getAfterthoughtHeelElement_Lean();

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
		 * The meta object literal for the '<em><b>Count</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STRAIGHT_LEG_ELEMENT__COUNT = eINSTANCE.getStraightLegElement_Count();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.CalfLegElementImpl <em>Calf Leg Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.CalfLegElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getCalfLegElement()
		 * @generated
		 */
		EClass CALF_LEG_ELEMENT = eINSTANCE.getCalfLegElement();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CALF_LEG_ELEMENT__LENGTH = eINSTANCE.getCalfLegElement_Length();

		/**
		 * The meta object literal for the '<em><b>Count</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CALF_LEG_ELEMENT__COUNT = eINSTANCE.getCalfLegElement_Count();

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
		 * The meta object literal for the '<em><b>May Adjust</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RIB_CUFF_ELEMENT__MAY_ADJUST = eINSTANCE.getRibCuffElement_MayAdjust();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.HemCuffElementImpl <em>Hem Cuff Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.HemCuffElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getHemCuffElement()
		 * @generated
		 */
		EClass HEM_CUFF_ELEMENT = eINSTANCE.getHemCuffElement();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.RolledCuffElementImpl <em>Rolled Cuff Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.RolledCuffElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getRolledCuffElement()
		 * @generated
		 */
		EClass ROLLED_CUFF_ELEMENT = eINSTANCE.getRolledCuffElement();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.StitchPatternElementImpl <em>Stitch Pattern Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.StitchPatternElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getStitchPatternElement()
		 * @generated
		 */
		EClass STITCH_PATTERN_ELEMENT = eINSTANCE.getStitchPatternElement();

		/**
		 * The meta object literal for the '<em><b>Zone</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STITCH_PATTERN_ELEMENT__ZONE = eINSTANCE.getStitchPatternElement_Zone();

		/**
		 * The meta object literal for the '<em><b>Repeat</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STITCH_PATTERN_ELEMENT__REPEAT = eINSTANCE.getStitchPatternElement_Repeat();

		/**
		 * The meta object literal for the '<em><b>Edge</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STITCH_PATTERN_ELEMENT__EDGE = eINSTANCE.getStitchPatternElement_Edge();

		/**
		 * The meta object literal for the '<em><b>Rows</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STITCH_PATTERN_ELEMENT__ROWS = eINSTANCE.getStitchPatternElement_Rows();

		/**
		 * The meta object literal for the '<em><b>Fit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STITCH_PATTERN_ELEMENT__FIT = eINSTANCE.getStitchPatternElement_Fit();

		/**
		 * The meta object literal for the '<em><b>Fewest Filler</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STITCH_PATTERN_ELEMENT__FEWEST_FILLER = eINSTANCE.getStitchPatternElement_FewestFiller();

		/**
		 * The meta object literal for the '<em><b>Stranded</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STITCH_PATTERN_ELEMENT__STRANDED = eINSTANCE.getStitchPatternElement_Stranded();

		/**
		 * The meta object literal for the '<em><b>Longest Float</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STITCH_PATTERN_ELEMENT__LONGEST_FLOAT = eINSTANCE.getStitchPatternElement_LongestFloat();

		/**
		 * The meta object literal for the '<em><b>Instructions</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STITCH_PATTERN_ELEMENT__INSTRUCTIONS = eINSTANCE.getStitchPatternElement_Instructions();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.MaterialsElementImpl <em>Materials Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.MaterialsElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getMaterialsElement()
		 * @generated
		 */
		EClass MATERIALS_ELEMENT = eINSTANCE.getMaterialsElement();

		/**
		 * The meta object literal for the '<em><b>Margin Percent</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIALS_ELEMENT__MARGIN_PERCENT = eINSTANCE.getMaterialsElement_MarginPercent();

		/**
		 * The meta object literal for the '<em><b>Needle</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIALS_ELEMENT__NEEDLE = eINSTANCE.getMaterialsElement_Needle();

		/**
		 * The meta object literal for the '<em><b>Notions</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIALS_ELEMENT__NOTIONS = eINSTANCE.getMaterialsElement_Notions();

		/**
		 * The meta object literal for the '<em><b>Yarns</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MATERIALS_ELEMENT__YARNS = eINSTANCE.getMaterialsElement_Yarns();

		/**
		 * The meta object literal for the '<em><b>Colours</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MATERIALS_ELEMENT__COLOURS = eINSTANCE.getMaterialsElement_Colours();

		/**
		 * The meta object literal for the '<em><b>Swatch</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MATERIALS_ELEMENT__SWATCH = eINSTANCE.getMaterialsElement_Swatch();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.YarnElementImpl <em>Yarn Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.YarnElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getYarnElement()
		 * @generated
		 */
		EClass YARN_ELEMENT = eINSTANCE.getYarnElement();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute YARN_ELEMENT__NAME = eINSTANCE.getYarnElement_Name();

		/**
		 * The meta object literal for the '<em><b>Metres Per Ball</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute YARN_ELEMENT__METRES_PER_BALL = eINSTANCE.getYarnElement_MetresPerBall();

		/**
		 * The meta object literal for the '<em><b>Grams Per Ball</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute YARN_ELEMENT__GRAMS_PER_BALL = eINSTANCE.getYarnElement_GramsPerBall();

		/**
		 * The meta object literal for the '<em><b>Category</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute YARN_ELEMENT__CATEGORY = eINSTANCE.getYarnElement_Category();

		/**
		 * The meta object literal for the '<em><b>Colour</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute YARN_ELEMENT__COLOUR = eINSTANCE.getYarnElement_Colour();

		/**
		 * The meta object literal for the '<em><b>Balls</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute YARN_ELEMENT__BALLS = eINSTANCE.getYarnElement_Balls();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.ColourElementImpl <em>Colour Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.ColourElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getColourElement()
		 * @generated
		 */
		EClass COLOUR_ELEMENT = eINSTANCE.getColourElement();

		/**
		 * The meta object literal for the '<em><b>Place</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COLOUR_ELEMENT__PLACE = eINSTANCE.getColourElement_Place();

		/**
		 * The meta object literal for the '<em><b>Yarn</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COLOUR_ELEMENT__YARN = eINSTANCE.getColourElement_Yarn();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.SwatchElementImpl <em>Swatch Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.SwatchElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getSwatchElement()
		 * @generated
		 */
		EClass SWATCH_ELEMENT = eINSTANCE.getSwatchElement();

		/**
		 * The meta object literal for the '<em><b>Stitches</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SWATCH_ELEMENT__STITCHES = eINSTANCE.getSwatchElement_Stitches();

		/**
		 * The meta object literal for the '<em><b>Rounds</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SWATCH_ELEMENT__ROUNDS = eINSTANCE.getSwatchElement_Rounds();

		/**
		 * The meta object literal for the '<em><b>Grams</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SWATCH_ELEMENT__GRAMS = eINSTANCE.getSwatchElement_Grams();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SWATCH_ELEMENT__WIDTH = eINSTANCE.getSwatchElement_Width();

		/**
		 * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SWATCH_ELEMENT__HEIGHT = eINSTANCE.getSwatchElement_Height();

		/**
		 * The meta object literal for the '<em><b>Worked</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SWATCH_ELEMENT__WORKED = eINSTANCE.getSwatchElement_Worked();

		/**
		 * The meta object literal for the '<em><b>Washed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SWATCH_ELEMENT__WASHED = eINSTANCE.getSwatchElement_Washed();

		/**
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.LengthsElementImpl <em>Lengths Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.LengthsElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getLengthsElement()
		 * @generated
		 */
		EClass LENGTHS_ELEMENT = eINSTANCE.getLengthsElement();

		/**
		 * The meta object literal for the '<em><b>Foot</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LENGTHS_ELEMENT__FOOT = eINSTANCE.getLengthsElement_Foot();

		/**
		 * The meta object literal for the '<em><b>Leg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LENGTHS_ELEMENT__LEG = eINSTANCE.getLengthsElement_Leg();

		/**
		 * The meta object literal for the '<em><b>Cuff</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LENGTHS_ELEMENT__CUFF = eINSTANCE.getLengthsElement_Cuff();

		/**
		 * The meta object literal for the '<em><b>Snap</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LENGTHS_ELEMENT__SNAP = eINSTANCE.getLengthsElement_Snap();

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
		 * The meta object literal for the '{@link turnheel.model.pattern.impl.OwnRowElementImpl <em>Own Row Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.model.pattern.impl.OwnRowElementImpl
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getOwnRowElement()
		 * @generated
		 */
		EClass OWN_ROW_ELEMENT = eINSTANCE.getOwnRowElement();

		/**
		 * The meta object literal for the '<em><b>Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OWN_ROW_ELEMENT__KEY = eINSTANCE.getOwnRowElement_Key();

		/**
		 * The meta object literal for the '<em><b>Label</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OWN_ROW_ELEMENT__LABEL = eINSTANCE.getOwnRowElement_Label();

		/**
		 * The meta object literal for the '<em><b>Formula</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OWN_ROW_ELEMENT__FORMULA = eINSTANCE.getOwnRowElement_Formula();

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
		 * The meta object literal for the '<em>Cast On</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.engine.design.CastOn
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getCastOn()
		 * @generated
		 */
		EDataType CAST_ON = eINSTANCE.getCastOn();

		/**
		 * The meta object literal for the '<em>Lean</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.engine.design.Lean
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getLean()
		 * @generated
		 */
		EDataType LEAN = eINSTANCE.getLean();

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
		 * The meta object literal for the '<em>Heel Turn</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.engine.design.HeelTurn
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getHeelTurn()
		 * @generated
		 */
		EDataType HEEL_TURN = eINSTANCE.getHeelTurn();

		/**
		 * The meta object literal for the '<em>Cap</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.engine.design.AfterthoughtHeel.Cap
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getCap()
		 * @generated
		 */
		EDataType CAP = eINSTANCE.getCap();

		/**
		 * The meta object literal for the '<em>Leg Count</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.engine.design.LegCount
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getLegCount()
		 * @generated
		 */
		EDataType LEG_COUNT = eINSTANCE.getLegCount();

		/**
		 * The meta object literal for the '<em>Length Mode</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.engine.design.LengthMode
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getLengthMode()
		 * @generated
		 */
		EDataType LENGTH_MODE = eINSTANCE.getLengthMode();

		/**
		 * The meta object literal for the '<em>Snap</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.engine.design.Snap
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getSnap()
		 * @generated
		 */
		EDataType SNAP = eINSTANCE.getSnap();

		/**
		 * The meta object literal for the '<em>Zone</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.engine.design.StitchPattern.Zone
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getZone()
		 * @generated
		 */
		EDataType ZONE = eINSTANCE.getZone();

		/**
		 * The meta object literal for the '<em>Fit</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.engine.design.StitchPattern.Fit
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getFit()
		 * @generated
		 */
		EDataType FIT = eINSTANCE.getFit();

		/**
		 * The meta object literal for the '<em>Flap Length</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.engine.design.FlapLength
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getFlapLength()
		 * @generated
		 */
		EDataType FLAP_LENGTH = eINSTANCE.getFlapLength();

		/**
		 * The meta object literal for the '<em>Flap Fabric</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.engine.design.FlapFabric
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getFlapFabric()
		 * @generated
		 */
		EDataType FLAP_FABRIC = eINSTANCE.getFlapFabric();

		/**
		 * The meta object literal for the '<em>Flap Edge</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.engine.design.FlapEdge
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getFlapEdge()
		 * @generated
		 */
		EDataType FLAP_EDGE = eINSTANCE.getFlapEdge();

		/**
		 * The meta object literal for the '<em>Pick Up</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.engine.design.PickUp
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getPickUp()
		 * @generated
		 */
		EDataType PICK_UP = eINSTANCE.getPickUp();

		/**
		 * The meta object literal for the '<em>Colour Place</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.engine.design.ColourPlace
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getColourPlace()
		 * @generated
		 */
		EDataType COLOUR_PLACE = eINSTANCE.getColourPlace();

		/**
		 * The meta object literal for the '<em>Worked</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.engine.design.Swatch.Worked
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getWorked()
		 * @generated
		 */
		EDataType WORKED = eINSTANCE.getWorked();

		/**
		 * The meta object literal for the '<em>Length</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see turnheel.engine.design.Length
		 * @see turnheel.model.pattern.impl.PatternPackageImpl#getLength()
		 * @generated
		 */
		EDataType LENGTH = eINSTANCE.getLength();

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
