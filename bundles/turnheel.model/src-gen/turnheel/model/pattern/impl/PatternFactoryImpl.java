/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern.impl;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.impl.EFactoryImpl;

import org.eclipse.emf.ecore.plugin.EcorePlugin;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.CastOn;
import turnheel.engine.design.ColourPlace;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapEdge;
import turnheel.engine.design.FlapFabric;
import turnheel.engine.design.FlapLength;
import turnheel.engine.design.Gauge;
import turnheel.engine.design.HeelTurn;
import turnheel.engine.design.Increase;
import turnheel.engine.design.Lean;
import turnheel.engine.design.LegCount;
import turnheel.engine.design.Length;
import turnheel.engine.design.LengthMode;
import turnheel.engine.design.PickUp;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.Snap;
import turnheel.engine.design.SockLength;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.Swatch;
import turnheel.engine.design.TurnMethod;

import turnheel.engine.term.Key;

import turnheel.model.pattern.*;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Factory</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class PatternFactoryImpl extends EFactoryImpl implements PatternFactory {
	/**
	 * Creates the default factory implementation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static PatternFactory init() {
		try {
			PatternFactory thePatternFactory = (PatternFactory)EPackage.Registry.INSTANCE.getEFactory(PatternPackage.eNS_URI);
			if (thePatternFactory != null) {
				return thePatternFactory;
			}
		}
		catch (Exception exception) {
			EcorePlugin.INSTANCE.log(exception);
		}
		return new PatternFactoryImpl();
	}

	/**
	 * Creates an instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PatternFactoryImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EObject create(EClass eClass) {
		switch (eClass.getClassifierID()) {
			case PatternPackage.PATTERN: return createPattern();
			case PatternPackage.ROUND_TOE_ELEMENT: return createRoundToeElement();
			case PatternPackage.WEDGE_TOE_ELEMENT: return createWedgeToeElement();
			case PatternPackage.STAR_TOE_ELEMENT: return createStarToeElement();
			case PatternPackage.SHORT_ROW_TOE_ELEMENT: return createShortRowToeElement();
			case PatternPackage.ASYMMETRIC_TOE_ELEMENT: return createAsymmetricToeElement();
			case PatternPackage.SHORT_ROW_HEEL_ELEMENT: return createShortRowHeelElement();
			case PatternPackage.FLAP_HEEL_ELEMENT: return createFlapHeelElement();
			case PatternPackage.AFTERTHOUGHT_HEEL_ELEMENT: return createAfterthoughtHeelElement();
			case PatternPackage.STRAIGHT_LEG_ELEMENT: return createStraightLegElement();
			case PatternPackage.CALF_LEG_ELEMENT: return createCalfLegElement();
			case PatternPackage.RIB_CUFF_ELEMENT: return createRibCuffElement();
			case PatternPackage.HEM_CUFF_ELEMENT: return createHemCuffElement();
			case PatternPackage.ROLLED_CUFF_ELEMENT: return createRolledCuffElement();
			case PatternPackage.STITCH_PATTERN_ELEMENT: return createStitchPatternElement();
			case PatternPackage.MATERIALS_ELEMENT: return createMaterialsElement();
			case PatternPackage.YARN_ELEMENT: return createYarnElement();
			case PatternPackage.COLOUR_ELEMENT: return createColourElement();
			case PatternPackage.SWATCH_ELEMENT: return createSwatchElement();
			case PatternPackage.LENGTHS_ELEMENT: return createLengthsElement();
			case PatternPackage.SIZE_ELEMENT: return createSizeElement();
			case PatternPackage.OWN_ROW_ELEMENT: return createOwnRowElement();
			case PatternPackage.INPUT_ELEMENT: return createInputElement();
			case PatternPackage.OVERRIDE_ELEMENT: return createOverrideElement();
			default:
				throw new IllegalArgumentException("The class '" + eClass.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object createFromString(EDataType eDataType, String initialValue) {
		switch (eDataType.getClassifierID()) {
			case PatternPackage.DIRECTION:
				return createDirectionFromString(eDataType, initialValue);
			case PatternPackage.INCREASE:
				return createIncreaseFromString(eDataType, initialValue);
			case PatternPackage.CAST_ON:
				return createCastOnFromString(eDataType, initialValue);
			case PatternPackage.LEAN:
				return createLeanFromString(eDataType, initialValue);
			case PatternPackage.TURN_METHOD:
				return createTurnMethodFromString(eDataType, initialValue);
			case PatternPackage.SOCK_LENGTH:
				return createSockLengthFromString(eDataType, initialValue);
			case PatternPackage.HEEL_TURN:
				return createHeelTurnFromString(eDataType, initialValue);
			case PatternPackage.CAP:
				return createCapFromString(eDataType, initialValue);
			case PatternPackage.LEG_COUNT:
				return createLegCountFromString(eDataType, initialValue);
			case PatternPackage.LENGTH_MODE:
				return createLengthModeFromString(eDataType, initialValue);
			case PatternPackage.SNAP:
				return createSnapFromString(eDataType, initialValue);
			case PatternPackage.ZONE:
				return createZoneFromString(eDataType, initialValue);
			case PatternPackage.FIT:
				return createFitFromString(eDataType, initialValue);
			case PatternPackage.FLAP_LENGTH:
				return createFlapLengthFromString(eDataType, initialValue);
			case PatternPackage.FLAP_FABRIC:
				return createFlapFabricFromString(eDataType, initialValue);
			case PatternPackage.FLAP_EDGE:
				return createFlapEdgeFromString(eDataType, initialValue);
			case PatternPackage.PICK_UP:
				return createPickUpFromString(eDataType, initialValue);
			case PatternPackage.COLOUR_PLACE:
				return createColourPlaceFromString(eDataType, initialValue);
			case PatternPackage.WORKED:
				return createWorkedFromString(eDataType, initialValue);
			case PatternPackage.LENGTH:
				return createLengthFromString(eDataType, initialValue);
			case PatternPackage.GAUGE:
				return createGaugeFromString(eDataType, initialValue);
			case PatternPackage.QUANTITY:
				return createQuantityFromString(eDataType, initialValue);
			case PatternPackage.KEY:
				return createKeyFromString(eDataType, initialValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String convertToString(EDataType eDataType, Object instanceValue) {
		switch (eDataType.getClassifierID()) {
			case PatternPackage.DIRECTION:
				return convertDirectionToString(eDataType, instanceValue);
			case PatternPackage.INCREASE:
				return convertIncreaseToString(eDataType, instanceValue);
			case PatternPackage.CAST_ON:
				return convertCastOnToString(eDataType, instanceValue);
			case PatternPackage.LEAN:
				return convertLeanToString(eDataType, instanceValue);
			case PatternPackage.TURN_METHOD:
				return convertTurnMethodToString(eDataType, instanceValue);
			case PatternPackage.SOCK_LENGTH:
				return convertSockLengthToString(eDataType, instanceValue);
			case PatternPackage.HEEL_TURN:
				return convertHeelTurnToString(eDataType, instanceValue);
			case PatternPackage.CAP:
				return convertCapToString(eDataType, instanceValue);
			case PatternPackage.LEG_COUNT:
				return convertLegCountToString(eDataType, instanceValue);
			case PatternPackage.LENGTH_MODE:
				return convertLengthModeToString(eDataType, instanceValue);
			case PatternPackage.SNAP:
				return convertSnapToString(eDataType, instanceValue);
			case PatternPackage.ZONE:
				return convertZoneToString(eDataType, instanceValue);
			case PatternPackage.FIT:
				return convertFitToString(eDataType, instanceValue);
			case PatternPackage.FLAP_LENGTH:
				return convertFlapLengthToString(eDataType, instanceValue);
			case PatternPackage.FLAP_FABRIC:
				return convertFlapFabricToString(eDataType, instanceValue);
			case PatternPackage.FLAP_EDGE:
				return convertFlapEdgeToString(eDataType, instanceValue);
			case PatternPackage.PICK_UP:
				return convertPickUpToString(eDataType, instanceValue);
			case PatternPackage.COLOUR_PLACE:
				return convertColourPlaceToString(eDataType, instanceValue);
			case PatternPackage.WORKED:
				return convertWorkedToString(eDataType, instanceValue);
			case PatternPackage.LENGTH:
				return convertLengthToString(eDataType, instanceValue);
			case PatternPackage.GAUGE:
				return convertGaugeToString(eDataType, instanceValue);
			case PatternPackage.QUANTITY:
				return convertQuantityToString(eDataType, instanceValue);
			case PatternPackage.KEY:
				return convertKeyToString(eDataType, instanceValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Pattern createPattern() {
		PatternImpl pattern = new PatternImpl();
		return pattern;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RoundToeElement createRoundToeElement() {
		RoundToeElementImpl roundToeElement = new RoundToeElementImpl();
		return roundToeElement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public WedgeToeElement createWedgeToeElement() {
		WedgeToeElementImpl wedgeToeElement = new WedgeToeElementImpl();
		return wedgeToeElement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StarToeElement createStarToeElement() {
		StarToeElementImpl starToeElement = new StarToeElementImpl();
		return starToeElement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ShortRowToeElement createShortRowToeElement() {
		ShortRowToeElementImpl shortRowToeElement = new ShortRowToeElementImpl();
		return shortRowToeElement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public AsymmetricToeElement createAsymmetricToeElement() {
		AsymmetricToeElementImpl asymmetricToeElement = new AsymmetricToeElementImpl();
		return asymmetricToeElement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ShortRowHeelElement createShortRowHeelElement() {
		ShortRowHeelElementImpl shortRowHeelElement = new ShortRowHeelElementImpl();
		return shortRowHeelElement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FlapHeelElement createFlapHeelElement() {
		FlapHeelElementImpl flapHeelElement = new FlapHeelElementImpl();
		return flapHeelElement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public AfterthoughtHeelElement createAfterthoughtHeelElement() {
		AfterthoughtHeelElementImpl afterthoughtHeelElement = new AfterthoughtHeelElementImpl();
		return afterthoughtHeelElement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StraightLegElement createStraightLegElement() {
		StraightLegElementImpl straightLegElement = new StraightLegElementImpl();
		return straightLegElement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CalfLegElement createCalfLegElement() {
		CalfLegElementImpl calfLegElement = new CalfLegElementImpl();
		return calfLegElement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RibCuffElement createRibCuffElement() {
		RibCuffElementImpl ribCuffElement = new RibCuffElementImpl();
		return ribCuffElement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public HemCuffElement createHemCuffElement() {
		HemCuffElementImpl hemCuffElement = new HemCuffElementImpl();
		return hemCuffElement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RolledCuffElement createRolledCuffElement() {
		RolledCuffElementImpl rolledCuffElement = new RolledCuffElementImpl();
		return rolledCuffElement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StitchPatternElement createStitchPatternElement() {
		StitchPatternElementImpl stitchPatternElement = new StitchPatternElementImpl();
		return stitchPatternElement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MaterialsElement createMaterialsElement() {
		MaterialsElementImpl materialsElement = new MaterialsElementImpl();
		return materialsElement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public YarnElement createYarnElement() {
		YarnElementImpl yarnElement = new YarnElementImpl();
		return yarnElement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ColourElement createColourElement() {
		ColourElementImpl colourElement = new ColourElementImpl();
		return colourElement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SwatchElement createSwatchElement() {
		SwatchElementImpl swatchElement = new SwatchElementImpl();
		return swatchElement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LengthsElement createLengthsElement() {
		LengthsElementImpl lengthsElement = new LengthsElementImpl();
		return lengthsElement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SizeElement createSizeElement() {
		SizeElementImpl sizeElement = new SizeElementImpl();
		return sizeElement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public OwnRowElement createOwnRowElement() {
		OwnRowElementImpl ownRowElement = new OwnRowElementImpl();
		return ownRowElement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public InputElement createInputElement() {
		InputElementImpl inputElement = new InputElementImpl();
		return inputElement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public OverrideElement createOverrideElement() {
		OverrideElementImpl overrideElement = new OverrideElementImpl();
		return overrideElement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Direction createDirection(final String it) {
		return it == null ? null : turnheel.model.Literals.parse(Direction.class, it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Direction createDirectionFromString(EDataType eDataType, String initialValue) {
		return createDirection(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDirection(final Direction it) {
		return it == null ? null : turnheel.model.Literals.text(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDirectionToString(EDataType eDataType, Object instanceValue) {
		return convertDirection((Direction)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Increase createIncrease(final String it) {
		return it == null ? null : turnheel.model.Literals.parse(Increase.class, it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Increase createIncreaseFromString(EDataType eDataType, String initialValue) {
		return createIncrease(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertIncrease(final Increase it) {
		return it == null ? null : turnheel.model.Literals.text(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertIncreaseToString(EDataType eDataType, Object instanceValue) {
		return convertIncrease((Increase)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public CastOn createCastOn(final String it) {
		return it == null ? null : turnheel.model.Literals.parse(CastOn.class, it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public CastOn createCastOnFromString(EDataType eDataType, String initialValue) {
		return createCastOn(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertCastOn(final CastOn it) {
		return it == null ? null : turnheel.model.Literals.text(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertCastOnToString(EDataType eDataType, Object instanceValue) {
		return convertCastOn((CastOn)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Lean createLean(final String it) {
		return it == null ? null : turnheel.model.Literals.parse(Lean.class, it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Lean createLeanFromString(EDataType eDataType, String initialValue) {
		return createLean(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLean(final Lean it) {
		return it == null ? null : turnheel.model.Literals.text(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLeanToString(EDataType eDataType, Object instanceValue) {
		return convertLean((Lean)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TurnMethod createTurnMethod(final String it) {
		return it == null ? null : turnheel.model.Literals.parse(TurnMethod.class, it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TurnMethod createTurnMethodFromString(EDataType eDataType, String initialValue) {
		return createTurnMethod(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTurnMethod(final TurnMethod it) {
		return it == null ? null : turnheel.model.Literals.text(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTurnMethodToString(EDataType eDataType, Object instanceValue) {
		return convertTurnMethod((TurnMethod)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SockLength createSockLength(final String it) {
		return it == null ? null : turnheel.model.Literals.parse(SockLength.class, it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SockLength createSockLengthFromString(EDataType eDataType, String initialValue) {
		return createSockLength(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSockLength(final SockLength it) {
		return it == null ? null : turnheel.model.Literals.text(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSockLengthToString(EDataType eDataType, Object instanceValue) {
		return convertSockLength((SockLength)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public HeelTurn createHeelTurn(final String it) {
		return it == null ? null : turnheel.model.Literals.parse(HeelTurn.class, it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public HeelTurn createHeelTurnFromString(EDataType eDataType, String initialValue) {
		return createHeelTurn(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertHeelTurn(final HeelTurn it) {
		return it == null ? null : turnheel.model.Literals.text(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertHeelTurnToString(EDataType eDataType, Object instanceValue) {
		return convertHeelTurn((HeelTurn)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public AfterthoughtHeel.Cap createCap(final String it) {
		return it == null ? null : turnheel.model.Literals.parse(turnheel.engine.design.AfterthoughtHeel.Cap.class, it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public AfterthoughtHeel.Cap createCapFromString(EDataType eDataType, String initialValue) {
		return createCap(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertCap(final AfterthoughtHeel.Cap it) {
		return it == null ? null : turnheel.model.Literals.text(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertCapToString(EDataType eDataType, Object instanceValue) {
		return convertCap((AfterthoughtHeel.Cap)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LegCount createLegCount(final String it) {
		return it == null ? null : turnheel.model.Literals.parse(LegCount.class, it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LegCount createLegCountFromString(EDataType eDataType, String initialValue) {
		return createLegCount(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLegCount(final LegCount it) {
		return it == null ? null : turnheel.model.Literals.text(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLegCountToString(EDataType eDataType, Object instanceValue) {
		return convertLegCount((LegCount)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LengthMode createLengthMode(final String it) {
		return it == null ? null : turnheel.model.Literals.parse(LengthMode.class, it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LengthMode createLengthModeFromString(EDataType eDataType, String initialValue) {
		return createLengthMode(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLengthMode(final LengthMode it) {
		return it == null ? null : turnheel.model.Literals.text(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLengthModeToString(EDataType eDataType, Object instanceValue) {
		return convertLengthMode((LengthMode)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Snap createSnap(final String it) {
		return it == null ? null : turnheel.model.Literals.parse(Snap.class, it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Snap createSnapFromString(EDataType eDataType, String initialValue) {
		return createSnap(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSnap(final Snap it) {
		return it == null ? null : turnheel.model.Literals.text(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSnapToString(EDataType eDataType, Object instanceValue) {
		return convertSnap((Snap)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public StitchPattern.Zone createZone(final String it) {
		return it == null ? null : turnheel.model.Literals.parse(turnheel.engine.design.StitchPattern.Zone.class, it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public StitchPattern.Zone createZoneFromString(EDataType eDataType, String initialValue) {
		return createZone(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertZone(final StitchPattern.Zone it) {
		return it == null ? null : turnheel.model.Literals.text(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertZoneToString(EDataType eDataType, Object instanceValue) {
		return convertZone((StitchPattern.Zone)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public StitchPattern.Fit createFit(final String it) {
		return it == null ? null : turnheel.model.Literals.parse(turnheel.engine.design.StitchPattern.Fit.class, it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public StitchPattern.Fit createFitFromString(EDataType eDataType, String initialValue) {
		return createFit(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFit(final StitchPattern.Fit it) {
		return it == null ? null : turnheel.model.Literals.text(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFitToString(EDataType eDataType, Object instanceValue) {
		return convertFit((StitchPattern.Fit)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FlapLength createFlapLength(final String it) {
		return it == null ? null : FlapLength.parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FlapLength createFlapLengthFromString(EDataType eDataType, String initialValue) {
		return createFlapLength(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFlapLength(final FlapLength it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFlapLengthToString(EDataType eDataType, Object instanceValue) {
		return convertFlapLength((FlapLength)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FlapFabric createFlapFabric(final String it) {
		return it == null ? null : turnheel.model.Literals.parse(FlapFabric.class, it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FlapFabric createFlapFabricFromString(EDataType eDataType, String initialValue) {
		return createFlapFabric(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFlapFabric(final FlapFabric it) {
		return it == null ? null : turnheel.model.Literals.text(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFlapFabricToString(EDataType eDataType, Object instanceValue) {
		return convertFlapFabric((FlapFabric)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FlapEdge createFlapEdge(final String it) {
		return it == null ? null : turnheel.model.Literals.parse(FlapEdge.class, it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FlapEdge createFlapEdgeFromString(EDataType eDataType, String initialValue) {
		return createFlapEdge(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFlapEdge(final FlapEdge it) {
		return it == null ? null : turnheel.model.Literals.text(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFlapEdgeToString(EDataType eDataType, Object instanceValue) {
		return convertFlapEdge((FlapEdge)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PickUp createPickUp(final String it) {
		return it == null ? null : PickUp.parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PickUp createPickUpFromString(EDataType eDataType, String initialValue) {
		return createPickUp(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPickUp(final PickUp it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPickUpToString(EDataType eDataType, Object instanceValue) {
		return convertPickUp((PickUp)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ColourPlace createColourPlace(final String it) {
		return it == null ? null : turnheel.model.Literals.parse(ColourPlace.class, it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ColourPlace createColourPlaceFromString(EDataType eDataType, String initialValue) {
		return createColourPlace(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertColourPlace(final ColourPlace it) {
		return it == null ? null : turnheel.model.Literals.text(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertColourPlaceToString(EDataType eDataType, Object instanceValue) {
		return convertColourPlace((ColourPlace)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Swatch.Worked createWorked(final String it) {
		return it == null ? null : turnheel.model.Literals.parse(turnheel.engine.design.Swatch.Worked.class, it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Swatch.Worked createWorkedFromString(EDataType eDataType, String initialValue) {
		return createWorked(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertWorked(final Swatch.Worked it) {
		return it == null ? null : turnheel.model.Literals.text(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertWorkedToString(EDataType eDataType, Object instanceValue) {
		return convertWorked((Swatch.Worked)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Length createLength(final String it) {
		return it == null ? null : turnheel.model.Literals.length(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Length createLengthFromString(EDataType eDataType, String initialValue) {
		return createLength(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLength(final Length it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLengthToString(EDataType eDataType, Object instanceValue) {
		return convertLength((Length)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Gauge createGauge(final String it) {
		return it == null ? null : turnheel.model.Literals.gauge(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Gauge createGaugeFromString(EDataType eDataType, String initialValue) {
		return createGauge(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertGauge(final Gauge it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertGaugeToString(EDataType eDataType, Object instanceValue) {
		return convertGauge((Gauge)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createQuantity(final String it) {
		return it == null ? null : Quantity.parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createQuantityFromString(EDataType eDataType, String initialValue) {
		return createQuantity(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertQuantity(final Quantity it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertQuantityToString(EDataType eDataType, Object instanceValue) {
		return convertQuantity((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Key createKey(final String it) {
		return it == null ? null : new Key(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Key createKeyFromString(EDataType eDataType, String initialValue) {
		return createKey(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertKey(final Key it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertKeyToString(EDataType eDataType, Object instanceValue) {
		return convertKey((Key)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PatternPackage getPatternPackage() {
		return (PatternPackage)getEPackage();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @deprecated
	 * @generated
	 */
	@Deprecated
	public static PatternPackage getPackage() {
		return PatternPackage.eINSTANCE;
	}

} //PatternFactoryImpl
