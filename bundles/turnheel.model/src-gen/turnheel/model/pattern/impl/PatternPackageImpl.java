/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern.impl;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

import org.eclipse.emf.ecore.impl.EPackageImpl;

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

import turnheel.model.pattern.AfterthoughtHeelElement;
import turnheel.model.pattern.AsymmetricToeElement;
import turnheel.model.pattern.CalfLegElement;
import turnheel.model.pattern.ColourElement;
import turnheel.model.pattern.CuffElement;
import turnheel.model.pattern.EntryElement;
import turnheel.model.pattern.FlapHeelElement;
import turnheel.model.pattern.HeelElement;
import turnheel.model.pattern.HemCuffElement;
import turnheel.model.pattern.InputElement;
import turnheel.model.pattern.LegElement;
import turnheel.model.pattern.LengthsElement;
import turnheel.model.pattern.MaterialsElement;
import turnheel.model.pattern.OverrideElement;
import turnheel.model.pattern.OwnRowElement;
import turnheel.model.pattern.Pattern;
import turnheel.model.pattern.PatternFactory;
import turnheel.model.pattern.PatternPackage;
import turnheel.model.pattern.RibCuffElement;
import turnheel.model.pattern.RolledCuffElement;
import turnheel.model.pattern.RoundToeElement;
import turnheel.model.pattern.ShortRowHeelElement;
import turnheel.model.pattern.ShortRowToeElement;
import turnheel.model.pattern.SizeElement;
import turnheel.model.pattern.StarToeElement;
import turnheel.model.pattern.StitchPatternElement;
import turnheel.model.pattern.StraightLegElement;
import turnheel.model.pattern.SwatchElement;
import turnheel.model.pattern.ToeElement;
import turnheel.model.pattern.WedgeToeElement;
import turnheel.model.pattern.YarnElement;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Package</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class PatternPackageImpl extends EPackageImpl implements PatternPackage {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass patternEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass toeElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass roundToeElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass wedgeToeElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass starToeElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass shortRowToeElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass asymmetricToeElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass heelElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass shortRowHeelElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass flapHeelElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass afterthoughtHeelElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass legElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass straightLegElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass calfLegElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass cuffElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass ribCuffElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass hemCuffElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass rolledCuffElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass stitchPatternElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass materialsElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass yarnElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass colourElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass swatchElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass lengthsElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass sizeElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass ownRowElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass entryElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass inputElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass overrideElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType directionEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType increaseEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType castOnEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType leanEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType turnMethodEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType sockLengthEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType heelTurnEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType capEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType legCountEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType lengthModeEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType snapEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType zoneEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType fitEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType flapLengthEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType flapFabricEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType flapEdgeEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType pickUpEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType colourPlaceEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType workedEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType lengthEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType gaugeEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType quantityEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType keyEDataType = null;

	/**
	 * Creates an instance of the model <b>Package</b>, registered with
	 * {@link org.eclipse.emf.ecore.EPackage.Registry EPackage.Registry} by the package
	 * package URI value.
	 * <p>Note: the correct way to create the package is via the static
	 * factory method {@link #init init()}, which also performs
	 * initialization of the package, or returns the registered package,
	 * if one already exists.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.eclipse.emf.ecore.EPackage.Registry
	 * @see turnheel.model.pattern.PatternPackage#eNS_URI
	 * @see #init()
	 * @generated
	 */
	private PatternPackageImpl() {
		super(eNS_URI, PatternFactory.eINSTANCE);
	}
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static boolean isInited = false;

	/**
	 * Creates, registers, and initializes the <b>Package</b> for this model, and for any others upon which it depends.
	 *
	 * <p>This method is used to initialize {@link PatternPackage#eINSTANCE} when that field is accessed.
	 * Clients should not invoke it directly. Instead, they should simply access that field to obtain the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #eNS_URI
	 * @see #createPackageContents()
	 * @see #initializePackageContents()
	 * @generated
	 */
	public static PatternPackage init() {
		if (isInited) return (PatternPackage)EPackage.Registry.INSTANCE.getEPackage(PatternPackage.eNS_URI);

		// Obtain or create and register package
		Object registeredPatternPackage = EPackage.Registry.INSTANCE.get(eNS_URI);
		PatternPackageImpl thePatternPackage = registeredPatternPackage instanceof PatternPackageImpl ? (PatternPackageImpl)registeredPatternPackage : new PatternPackageImpl();

		isInited = true;

		// Create package meta-data objects
		thePatternPackage.createPackageContents();

		// Initialize created meta-data
		thePatternPackage.initializePackageContents();

		// Mark meta-data to indicate it can't be changed
		thePatternPackage.freeze();

		// Update the registry and return the package
		EPackage.Registry.INSTANCE.put(PatternPackage.eNS_URI, thePatternPackage);
		return thePatternPackage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPattern() {
		return patternEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPattern_Format() {
		return (EAttribute)patternEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPattern_Title() {
		return (EAttribute)patternEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPattern_Designer() {
		return (EAttribute)patternEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPattern_Direction() {
		return (EAttribute)patternEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPattern_StitchGauge() {
		return (EAttribute)patternEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPattern_RoundGauge() {
		return (EAttribute)patternEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPattern_Notes() {
		return (EAttribute)patternEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPattern_Toe() {
		return (EReference)patternEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPattern_Heel() {
		return (EReference)patternEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPattern_Leg() {
		return (EReference)patternEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPattern_Cuff() {
		return (EReference)patternEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPattern_StitchPatterns() {
		return (EReference)patternEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPattern_Materials() {
		return (EReference)patternEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPattern_Lengths() {
		return (EReference)patternEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPattern_Sizes() {
		return (EReference)patternEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPattern_OwnRows() {
		return (EReference)patternEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getToeElement() {
		return toeElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRoundToeElement() {
		return roundToeElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoundToeElement_Lines() {
		return (EAttribute)roundToeElementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoundToeElement_Increase() {
		return (EAttribute)roundToeElementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoundToeElement_CastOn() {
		return (EAttribute)roundToeElementEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoundToeElement_Lean() {
		return (EAttribute)roundToeElementEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getWedgeToeElement() {
		return wedgeToeElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWedgeToeElement_Increase() {
		return (EAttribute)wedgeToeElementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWedgeToeElement_CastOn() {
		return (EAttribute)wedgeToeElementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStarToeElement() {
		return starToeElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStarToeElement_Increase() {
		return (EAttribute)starToeElementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStarToeElement_CastOn() {
		return (EAttribute)starToeElementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStarToeElement_Lean() {
		return (EAttribute)starToeElementEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getShortRowToeElement() {
		return shortRowToeElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShortRowToeElement_Turn() {
		return (EAttribute)shortRowToeElementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getAsymmetricToeElement() {
		return asymmetricToeElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAsymmetricToeElement_Increase() {
		return (EAttribute)asymmetricToeElementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAsymmetricToeElement_CastOn() {
		return (EAttribute)asymmetricToeElementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getHeelElement() {
		return heelElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getShortRowHeelElement() {
		return shortRowHeelElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShortRowHeelElement_Turn() {
		return (EAttribute)shortRowHeelElementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getFlapHeelElement() {
		return flapHeelElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFlapHeelElement_Turn() {
		return (EAttribute)flapHeelElementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFlapHeelElement_FlapLength() {
		return (EAttribute)flapHeelElementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFlapHeelElement_Fabric() {
		return (EAttribute)flapHeelElementEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFlapHeelElement_Edge() {
		return (EAttribute)flapHeelElementEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFlapHeelElement_PickUp() {
		return (EAttribute)flapHeelElementEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getAfterthoughtHeelElement() {
		return afterthoughtHeelElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAfterthoughtHeelElement_Cap() {
		return (EAttribute)afterthoughtHeelElementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAfterthoughtHeelElement_Lean() {
		return (EAttribute)afterthoughtHeelElementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getLegElement() {
		return legElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStraightLegElement() {
		return straightLegElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStraightLegElement_Length() {
		return (EAttribute)straightLegElementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStraightLegElement_Count() {
		return (EAttribute)straightLegElementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCalfLegElement() {
		return calfLegElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCalfLegElement_Length() {
		return (EAttribute)calfLegElementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCalfLegElement_Count() {
		return (EAttribute)calfLegElementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCuffElement() {
		return cuffElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRibCuffElement() {
		return ribCuffElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRibCuffElement_Knit() {
		return (EAttribute)ribCuffElementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRibCuffElement_Purl() {
		return (EAttribute)ribCuffElementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRibCuffElement_MayAdjust() {
		return (EAttribute)ribCuffElementEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getHemCuffElement() {
		return hemCuffElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRolledCuffElement() {
		return rolledCuffElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStitchPatternElement() {
		return stitchPatternElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStitchPatternElement_Zone() {
		return (EAttribute)stitchPatternElementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStitchPatternElement_Repeat() {
		return (EAttribute)stitchPatternElementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStitchPatternElement_Edge() {
		return (EAttribute)stitchPatternElementEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStitchPatternElement_Rows() {
		return (EAttribute)stitchPatternElementEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStitchPatternElement_Fit() {
		return (EAttribute)stitchPatternElementEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStitchPatternElement_FewestFiller() {
		return (EAttribute)stitchPatternElementEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStitchPatternElement_Stranded() {
		return (EAttribute)stitchPatternElementEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStitchPatternElement_LongestFloat() {
		return (EAttribute)stitchPatternElementEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStitchPatternElement_Instructions() {
		return (EAttribute)stitchPatternElementEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMaterialsElement() {
		return materialsElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterialsElement_MarginPercent() {
		return (EAttribute)materialsElementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterialsElement_Needle() {
		return (EAttribute)materialsElementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterialsElement_Notions() {
		return (EAttribute)materialsElementEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMaterialsElement_Yarns() {
		return (EReference)materialsElementEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMaterialsElement_Colours() {
		return (EReference)materialsElementEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMaterialsElement_Swatch() {
		return (EReference)materialsElementEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getYarnElement() {
		return yarnElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getYarnElement_Name() {
		return (EAttribute)yarnElementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getYarnElement_MetresPerBall() {
		return (EAttribute)yarnElementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getYarnElement_GramsPerBall() {
		return (EAttribute)yarnElementEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getYarnElement_Category() {
		return (EAttribute)yarnElementEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getYarnElement_Colour() {
		return (EAttribute)yarnElementEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getYarnElement_Balls() {
		return (EAttribute)yarnElementEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getColourElement() {
		return colourElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getColourElement_Place() {
		return (EAttribute)colourElementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getColourElement_Yarn() {
		return (EAttribute)colourElementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSwatchElement() {
		return swatchElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSwatchElement_Stitches() {
		return (EAttribute)swatchElementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSwatchElement_Rounds() {
		return (EAttribute)swatchElementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSwatchElement_Grams() {
		return (EAttribute)swatchElementEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSwatchElement_Width() {
		return (EAttribute)swatchElementEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSwatchElement_Height() {
		return (EAttribute)swatchElementEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSwatchElement_Worked() {
		return (EAttribute)swatchElementEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSwatchElement_Washed() {
		return (EAttribute)swatchElementEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getLengthsElement() {
		return lengthsElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLengthsElement_Foot() {
		return (EAttribute)lengthsElementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLengthsElement_Leg() {
		return (EAttribute)lengthsElementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLengthsElement_Cuff() {
		return (EAttribute)lengthsElementEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLengthsElement_Snap() {
		return (EAttribute)lengthsElementEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSizeElement() {
		return sizeElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSizeElement_Id() {
		return (EAttribute)sizeElementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSizeElement_Label() {
		return (EAttribute)sizeElementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSizeElement_Inputs() {
		return (EReference)sizeElementEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSizeElement_Overrides() {
		return (EReference)sizeElementEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getOwnRowElement() {
		return ownRowElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOwnRowElement_Key() {
		return (EAttribute)ownRowElementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOwnRowElement_Label() {
		return (EAttribute)ownRowElementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOwnRowElement_Formula() {
		return (EAttribute)ownRowElementEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getEntryElement() {
		return entryElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEntryElement_Key() {
		return (EAttribute)entryElementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEntryElement_Value() {
		return (EAttribute)entryElementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getInputElement() {
		return inputElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getOverrideElement() {
		return overrideElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getDirection() {
		return directionEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getIncrease() {
		return increaseEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getCastOn() {
		return castOnEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getLean() {
		return leanEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getTurnMethod() {
		return turnMethodEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getSockLength() {
		return sockLengthEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getHeelTurn() {
		return heelTurnEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getCap() {
		return capEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getLegCount() {
		return legCountEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getLengthMode() {
		return lengthModeEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getSnap() {
		return snapEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getZone() {
		return zoneEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getFit() {
		return fitEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getFlapLength() {
		return flapLengthEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getFlapFabric() {
		return flapFabricEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getFlapEdge() {
		return flapEdgeEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getPickUp() {
		return pickUpEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getColourPlace() {
		return colourPlaceEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getWorked() {
		return workedEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getLength() {
		return lengthEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getGauge() {
		return gaugeEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getQuantity() {
		return quantityEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getKey() {
		return keyEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PatternFactory getPatternFactory() {
		return (PatternFactory)getEFactoryInstance();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isCreated = false;

	/**
	 * Creates the meta-model objects for the package.  This method is
	 * guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void createPackageContents() {
		if (isCreated) return;
		isCreated = true;

		// Create classes and their features
		patternEClass = createEClass(PATTERN);
		createEAttribute(patternEClass, PATTERN__FORMAT);
		createEAttribute(patternEClass, PATTERN__TITLE);
		createEAttribute(patternEClass, PATTERN__DESIGNER);
		createEAttribute(patternEClass, PATTERN__DIRECTION);
		createEAttribute(patternEClass, PATTERN__STITCH_GAUGE);
		createEAttribute(patternEClass, PATTERN__ROUND_GAUGE);
		createEAttribute(patternEClass, PATTERN__NOTES);
		createEReference(patternEClass, PATTERN__TOE);
		createEReference(patternEClass, PATTERN__HEEL);
		createEReference(patternEClass, PATTERN__LEG);
		createEReference(patternEClass, PATTERN__CUFF);
		createEReference(patternEClass, PATTERN__STITCH_PATTERNS);
		createEReference(patternEClass, PATTERN__MATERIALS);
		createEReference(patternEClass, PATTERN__LENGTHS);
		createEReference(patternEClass, PATTERN__SIZES);
		createEReference(patternEClass, PATTERN__OWN_ROWS);

		toeElementEClass = createEClass(TOE_ELEMENT);

		roundToeElementEClass = createEClass(ROUND_TOE_ELEMENT);
		createEAttribute(roundToeElementEClass, ROUND_TOE_ELEMENT__LINES);
		createEAttribute(roundToeElementEClass, ROUND_TOE_ELEMENT__INCREASE);
		createEAttribute(roundToeElementEClass, ROUND_TOE_ELEMENT__CAST_ON);
		createEAttribute(roundToeElementEClass, ROUND_TOE_ELEMENT__LEAN);

		wedgeToeElementEClass = createEClass(WEDGE_TOE_ELEMENT);
		createEAttribute(wedgeToeElementEClass, WEDGE_TOE_ELEMENT__INCREASE);
		createEAttribute(wedgeToeElementEClass, WEDGE_TOE_ELEMENT__CAST_ON);

		starToeElementEClass = createEClass(STAR_TOE_ELEMENT);
		createEAttribute(starToeElementEClass, STAR_TOE_ELEMENT__INCREASE);
		createEAttribute(starToeElementEClass, STAR_TOE_ELEMENT__CAST_ON);
		createEAttribute(starToeElementEClass, STAR_TOE_ELEMENT__LEAN);

		shortRowToeElementEClass = createEClass(SHORT_ROW_TOE_ELEMENT);
		createEAttribute(shortRowToeElementEClass, SHORT_ROW_TOE_ELEMENT__TURN);

		asymmetricToeElementEClass = createEClass(ASYMMETRIC_TOE_ELEMENT);
		createEAttribute(asymmetricToeElementEClass, ASYMMETRIC_TOE_ELEMENT__INCREASE);
		createEAttribute(asymmetricToeElementEClass, ASYMMETRIC_TOE_ELEMENT__CAST_ON);

		heelElementEClass = createEClass(HEEL_ELEMENT);

		shortRowHeelElementEClass = createEClass(SHORT_ROW_HEEL_ELEMENT);
		createEAttribute(shortRowHeelElementEClass, SHORT_ROW_HEEL_ELEMENT__TURN);

		flapHeelElementEClass = createEClass(FLAP_HEEL_ELEMENT);
		createEAttribute(flapHeelElementEClass, FLAP_HEEL_ELEMENT__TURN);
		createEAttribute(flapHeelElementEClass, FLAP_HEEL_ELEMENT__FLAP_LENGTH);
		createEAttribute(flapHeelElementEClass, FLAP_HEEL_ELEMENT__FABRIC);
		createEAttribute(flapHeelElementEClass, FLAP_HEEL_ELEMENT__EDGE);
		createEAttribute(flapHeelElementEClass, FLAP_HEEL_ELEMENT__PICK_UP);

		afterthoughtHeelElementEClass = createEClass(AFTERTHOUGHT_HEEL_ELEMENT);
		createEAttribute(afterthoughtHeelElementEClass, AFTERTHOUGHT_HEEL_ELEMENT__CAP);
		createEAttribute(afterthoughtHeelElementEClass, AFTERTHOUGHT_HEEL_ELEMENT__LEAN);

		legElementEClass = createEClass(LEG_ELEMENT);

		straightLegElementEClass = createEClass(STRAIGHT_LEG_ELEMENT);
		createEAttribute(straightLegElementEClass, STRAIGHT_LEG_ELEMENT__LENGTH);
		createEAttribute(straightLegElementEClass, STRAIGHT_LEG_ELEMENT__COUNT);

		calfLegElementEClass = createEClass(CALF_LEG_ELEMENT);
		createEAttribute(calfLegElementEClass, CALF_LEG_ELEMENT__LENGTH);
		createEAttribute(calfLegElementEClass, CALF_LEG_ELEMENT__COUNT);

		cuffElementEClass = createEClass(CUFF_ELEMENT);

		ribCuffElementEClass = createEClass(RIB_CUFF_ELEMENT);
		createEAttribute(ribCuffElementEClass, RIB_CUFF_ELEMENT__KNIT);
		createEAttribute(ribCuffElementEClass, RIB_CUFF_ELEMENT__PURL);
		createEAttribute(ribCuffElementEClass, RIB_CUFF_ELEMENT__MAY_ADJUST);

		hemCuffElementEClass = createEClass(HEM_CUFF_ELEMENT);

		rolledCuffElementEClass = createEClass(ROLLED_CUFF_ELEMENT);

		stitchPatternElementEClass = createEClass(STITCH_PATTERN_ELEMENT);
		createEAttribute(stitchPatternElementEClass, STITCH_PATTERN_ELEMENT__ZONE);
		createEAttribute(stitchPatternElementEClass, STITCH_PATTERN_ELEMENT__REPEAT);
		createEAttribute(stitchPatternElementEClass, STITCH_PATTERN_ELEMENT__EDGE);
		createEAttribute(stitchPatternElementEClass, STITCH_PATTERN_ELEMENT__ROWS);
		createEAttribute(stitchPatternElementEClass, STITCH_PATTERN_ELEMENT__FIT);
		createEAttribute(stitchPatternElementEClass, STITCH_PATTERN_ELEMENT__FEWEST_FILLER);
		createEAttribute(stitchPatternElementEClass, STITCH_PATTERN_ELEMENT__STRANDED);
		createEAttribute(stitchPatternElementEClass, STITCH_PATTERN_ELEMENT__LONGEST_FLOAT);
		createEAttribute(stitchPatternElementEClass, STITCH_PATTERN_ELEMENT__INSTRUCTIONS);

		materialsElementEClass = createEClass(MATERIALS_ELEMENT);
		createEAttribute(materialsElementEClass, MATERIALS_ELEMENT__MARGIN_PERCENT);
		createEAttribute(materialsElementEClass, MATERIALS_ELEMENT__NEEDLE);
		createEAttribute(materialsElementEClass, MATERIALS_ELEMENT__NOTIONS);
		createEReference(materialsElementEClass, MATERIALS_ELEMENT__YARNS);
		createEReference(materialsElementEClass, MATERIALS_ELEMENT__COLOURS);
		createEReference(materialsElementEClass, MATERIALS_ELEMENT__SWATCH);

		yarnElementEClass = createEClass(YARN_ELEMENT);
		createEAttribute(yarnElementEClass, YARN_ELEMENT__NAME);
		createEAttribute(yarnElementEClass, YARN_ELEMENT__METRES_PER_BALL);
		createEAttribute(yarnElementEClass, YARN_ELEMENT__GRAMS_PER_BALL);
		createEAttribute(yarnElementEClass, YARN_ELEMENT__CATEGORY);
		createEAttribute(yarnElementEClass, YARN_ELEMENT__COLOUR);
		createEAttribute(yarnElementEClass, YARN_ELEMENT__BALLS);

		colourElementEClass = createEClass(COLOUR_ELEMENT);
		createEAttribute(colourElementEClass, COLOUR_ELEMENT__PLACE);
		createEAttribute(colourElementEClass, COLOUR_ELEMENT__YARN);

		swatchElementEClass = createEClass(SWATCH_ELEMENT);
		createEAttribute(swatchElementEClass, SWATCH_ELEMENT__STITCHES);
		createEAttribute(swatchElementEClass, SWATCH_ELEMENT__ROUNDS);
		createEAttribute(swatchElementEClass, SWATCH_ELEMENT__GRAMS);
		createEAttribute(swatchElementEClass, SWATCH_ELEMENT__WIDTH);
		createEAttribute(swatchElementEClass, SWATCH_ELEMENT__HEIGHT);
		createEAttribute(swatchElementEClass, SWATCH_ELEMENT__WORKED);
		createEAttribute(swatchElementEClass, SWATCH_ELEMENT__WASHED);

		lengthsElementEClass = createEClass(LENGTHS_ELEMENT);
		createEAttribute(lengthsElementEClass, LENGTHS_ELEMENT__FOOT);
		createEAttribute(lengthsElementEClass, LENGTHS_ELEMENT__LEG);
		createEAttribute(lengthsElementEClass, LENGTHS_ELEMENT__CUFF);
		createEAttribute(lengthsElementEClass, LENGTHS_ELEMENT__SNAP);

		sizeElementEClass = createEClass(SIZE_ELEMENT);
		createEAttribute(sizeElementEClass, SIZE_ELEMENT__ID);
		createEAttribute(sizeElementEClass, SIZE_ELEMENT__LABEL);
		createEReference(sizeElementEClass, SIZE_ELEMENT__INPUTS);
		createEReference(sizeElementEClass, SIZE_ELEMENT__OVERRIDES);

		ownRowElementEClass = createEClass(OWN_ROW_ELEMENT);
		createEAttribute(ownRowElementEClass, OWN_ROW_ELEMENT__KEY);
		createEAttribute(ownRowElementEClass, OWN_ROW_ELEMENT__LABEL);
		createEAttribute(ownRowElementEClass, OWN_ROW_ELEMENT__FORMULA);

		entryElementEClass = createEClass(ENTRY_ELEMENT);
		createEAttribute(entryElementEClass, ENTRY_ELEMENT__KEY);
		createEAttribute(entryElementEClass, ENTRY_ELEMENT__VALUE);

		inputElementEClass = createEClass(INPUT_ELEMENT);

		overrideElementEClass = createEClass(OVERRIDE_ELEMENT);

		// Create data types
		directionEDataType = createEDataType(DIRECTION);
		increaseEDataType = createEDataType(INCREASE);
		castOnEDataType = createEDataType(CAST_ON);
		leanEDataType = createEDataType(LEAN);
		turnMethodEDataType = createEDataType(TURN_METHOD);
		sockLengthEDataType = createEDataType(SOCK_LENGTH);
		heelTurnEDataType = createEDataType(HEEL_TURN);
		capEDataType = createEDataType(CAP);
		legCountEDataType = createEDataType(LEG_COUNT);
		lengthModeEDataType = createEDataType(LENGTH_MODE);
		snapEDataType = createEDataType(SNAP);
		zoneEDataType = createEDataType(ZONE);
		fitEDataType = createEDataType(FIT);
		flapLengthEDataType = createEDataType(FLAP_LENGTH);
		flapFabricEDataType = createEDataType(FLAP_FABRIC);
		flapEdgeEDataType = createEDataType(FLAP_EDGE);
		pickUpEDataType = createEDataType(PICK_UP);
		colourPlaceEDataType = createEDataType(COLOUR_PLACE);
		workedEDataType = createEDataType(WORKED);
		lengthEDataType = createEDataType(LENGTH);
		gaugeEDataType = createEDataType(GAUGE);
		quantityEDataType = createEDataType(QUANTITY);
		keyEDataType = createEDataType(KEY);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isInitialized = false;

	/**
	 * Complete the initialization of the package and its meta-model.  This
	 * method is guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void initializePackageContents() {
		if (isInitialized) return;
		isInitialized = true;

		// Initialize package
		setName(eNAME);
		setNsPrefix(eNS_PREFIX);
		setNsURI(eNS_URI);

		// Create type parameters

		// Set bounds for type parameters

		// Add supertypes to classes
		roundToeElementEClass.getESuperTypes().add(this.getToeElement());
		wedgeToeElementEClass.getESuperTypes().add(this.getToeElement());
		starToeElementEClass.getESuperTypes().add(this.getToeElement());
		shortRowToeElementEClass.getESuperTypes().add(this.getToeElement());
		asymmetricToeElementEClass.getESuperTypes().add(this.getToeElement());
		shortRowHeelElementEClass.getESuperTypes().add(this.getHeelElement());
		flapHeelElementEClass.getESuperTypes().add(this.getHeelElement());
		afterthoughtHeelElementEClass.getESuperTypes().add(this.getHeelElement());
		straightLegElementEClass.getESuperTypes().add(this.getLegElement());
		calfLegElementEClass.getESuperTypes().add(this.getLegElement());
		ribCuffElementEClass.getESuperTypes().add(this.getCuffElement());
		hemCuffElementEClass.getESuperTypes().add(this.getCuffElement());
		rolledCuffElementEClass.getESuperTypes().add(this.getCuffElement());
		inputElementEClass.getESuperTypes().add(this.getEntryElement());
		overrideElementEClass.getESuperTypes().add(this.getEntryElement());

		// Initialize classes and features; add operations and parameters
		initEClass(patternEClass, Pattern.class, "Pattern", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPattern_Format(), ecorePackage.getEInt(), "format", "1", 1, 1, Pattern.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPattern_Title(), ecorePackage.getEString(), "title", null, 0, 1, Pattern.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPattern_Designer(), ecorePackage.getEString(), "designer", null, 0, 1, Pattern.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPattern_Direction(), this.getDirection(), "direction", null, 1, 1, Pattern.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPattern_StitchGauge(), this.getGauge(), "stitchGauge", null, 1, 1, Pattern.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPattern_RoundGauge(), this.getGauge(), "roundGauge", null, 1, 1, Pattern.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPattern_Notes(), ecorePackage.getEString(), "notes", null, 0, 1, Pattern.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPattern_Toe(), this.getToeElement(), null, "toe", null, 1, 1, Pattern.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPattern_Heel(), this.getHeelElement(), null, "heel", null, 1, 1, Pattern.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPattern_Leg(), this.getLegElement(), null, "leg", null, 1, 1, Pattern.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPattern_Cuff(), this.getCuffElement(), null, "cuff", null, 1, 1, Pattern.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPattern_StitchPatterns(), this.getStitchPatternElement(), null, "stitchPatterns", null, 0, -1, Pattern.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPattern_Materials(), this.getMaterialsElement(), null, "materials", null, 0, 1, Pattern.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPattern_Lengths(), this.getLengthsElement(), null, "lengths", null, 0, 1, Pattern.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPattern_Sizes(), this.getSizeElement(), null, "sizes", null, 1, -1, Pattern.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPattern_OwnRows(), this.getOwnRowElement(), null, "ownRows", null, 0, -1, Pattern.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(toeElementEClass, ToeElement.class, "ToeElement", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);

		initEClass(roundToeElementEClass, RoundToeElement.class, "RoundToeElement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getRoundToeElement_Lines(), ecorePackage.getEInt(), "lines", "4", 1, 1, RoundToeElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoundToeElement_Increase(), this.getIncrease(), "increase", "yarn-over", 1, 1, RoundToeElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoundToeElement_CastOn(), this.getCastOn(), "castOn", "unworked", 1, 1, RoundToeElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoundToeElement_Lean(), this.getLean(), "lean", "right", 1, 1, RoundToeElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(wedgeToeElementEClass, WedgeToeElement.class, "WedgeToeElement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getWedgeToeElement_Increase(), this.getIncrease(), "increase", "yarn-over", 1, 1, WedgeToeElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWedgeToeElement_CastOn(), this.getCastOn(), "castOn", "unworked", 1, 1, WedgeToeElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(starToeElementEClass, StarToeElement.class, "StarToeElement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getStarToeElement_Increase(), this.getIncrease(), "increase", "make-one", 1, 1, StarToeElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStarToeElement_CastOn(), this.getCastOn(), "castOn", "unworked", 1, 1, StarToeElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStarToeElement_Lean(), this.getLean(), "lean", "right", 1, 1, StarToeElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(shortRowToeElementEClass, ShortRowToeElement.class, "ShortRowToeElement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getShortRowToeElement_Turn(), this.getTurnMethod(), "turn", "wrapped", 1, 1, ShortRowToeElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(asymmetricToeElementEClass, AsymmetricToeElement.class, "AsymmetricToeElement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getAsymmetricToeElement_Increase(), this.getIncrease(), "increase", "make-one", 1, 1, AsymmetricToeElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAsymmetricToeElement_CastOn(), this.getCastOn(), "castOn", "unworked", 1, 1, AsymmetricToeElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(heelElementEClass, HeelElement.class, "HeelElement", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);

		initEClass(shortRowHeelElementEClass, ShortRowHeelElement.class, "ShortRowHeelElement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getShortRowHeelElement_Turn(), this.getTurnMethod(), "turn", "wrapped", 1, 1, ShortRowHeelElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(flapHeelElementEClass, FlapHeelElement.class, "FlapHeelElement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getFlapHeelElement_Turn(), this.getHeelTurn(), "turn", "round", 1, 1, FlapHeelElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFlapHeelElement_FlapLength(), this.getFlapLength(), "flapLength", "from-body", 1, 1, FlapHeelElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFlapHeelElement_Fabric(), this.getFlapFabric(), "fabric", "plain", 1, 1, FlapHeelElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFlapHeelElement_Edge(), this.getFlapEdge(), "edge", "slipped", 1, 1, FlapHeelElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFlapHeelElement_PickUp(), this.getPickUp(), "pickUp", "half-the-rows", 1, 1, FlapHeelElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(afterthoughtHeelElementEClass, AfterthoughtHeelElement.class, "AfterthoughtHeelElement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getAfterthoughtHeelElement_Cap(), this.getCap(), "cap", "wedge", 1, 1, AfterthoughtHeelElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAfterthoughtHeelElement_Lean(), this.getLean(), "lean", "right", 1, 1, AfterthoughtHeelElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(legElementEClass, LegElement.class, "LegElement", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);

		initEClass(straightLegElementEClass, StraightLegElement.class, "StraightLegElement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getStraightLegElement_Length(), this.getSockLength(), "length", "crew", 1, 1, StraightLegElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStraightLegElement_Count(), this.getLegCount(), "count", "as-foot", 1, 1, StraightLegElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(calfLegElementEClass, CalfLegElement.class, "CalfLegElement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCalfLegElement_Length(), this.getSockLength(), "length", "knee", 1, 1, CalfLegElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCalfLegElement_Count(), this.getLegCount(), "count", "as-foot", 1, 1, CalfLegElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(cuffElementEClass, CuffElement.class, "CuffElement", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);

		initEClass(ribCuffElementEClass, RibCuffElement.class, "RibCuffElement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getRibCuffElement_Knit(), ecorePackage.getEInt(), "knit", "2", 1, 1, RibCuffElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRibCuffElement_Purl(), ecorePackage.getEInt(), "purl", "2", 1, 1, RibCuffElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRibCuffElement_MayAdjust(), ecorePackage.getEBoolean(), "mayAdjust", "false", 1, 1, RibCuffElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(hemCuffElementEClass, HemCuffElement.class, "HemCuffElement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);

		initEClass(rolledCuffElementEClass, RolledCuffElement.class, "RolledCuffElement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);

		initEClass(stitchPatternElementEClass, StitchPatternElement.class, "StitchPatternElement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getStitchPatternElement_Zone(), this.getZone(), "zone", null, 1, 1, StitchPatternElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStitchPatternElement_Repeat(), ecorePackage.getEInt(), "repeat", null, 1, 1, StitchPatternElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStitchPatternElement_Edge(), ecorePackage.getEInt(), "edge", "0", 1, 1, StitchPatternElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStitchPatternElement_Rows(), ecorePackage.getEInt(), "rows", "1", 1, 1, StitchPatternElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStitchPatternElement_Fit(), this.getFit(), "fit", "whole-repeats", 1, 1, StitchPatternElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStitchPatternElement_FewestFiller(), ecorePackage.getEInt(), "fewestFiller", "1", 1, 1, StitchPatternElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStitchPatternElement_Stranded(), ecorePackage.getEBoolean(), "stranded", "false", 1, 1, StitchPatternElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStitchPatternElement_LongestFloat(), ecorePackage.getEIntegerObject(), "longestFloat", null, 0, 1, StitchPatternElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStitchPatternElement_Instructions(), ecorePackage.getEString(), "instructions", null, 0, -1, StitchPatternElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(materialsElementEClass, MaterialsElement.class, "MaterialsElement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getMaterialsElement_MarginPercent(), ecorePackage.getEDouble(), "marginPercent", "10", 1, 1, MaterialsElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterialsElement_Needle(), this.getLength(), "needle", null, 0, 1, MaterialsElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterialsElement_Notions(), ecorePackage.getEString(), "notions", null, 0, 1, MaterialsElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMaterialsElement_Yarns(), this.getYarnElement(), null, "yarns", null, 0, -1, MaterialsElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMaterialsElement_Colours(), this.getColourElement(), null, "colours", null, 0, -1, MaterialsElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMaterialsElement_Swatch(), this.getSwatchElement(), null, "swatch", null, 0, 1, MaterialsElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(yarnElementEClass, YarnElement.class, "YarnElement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getYarnElement_Name(), ecorePackage.getEString(), "name", null, 0, 1, YarnElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getYarnElement_MetresPerBall(), ecorePackage.getEDouble(), "metresPerBall", null, 1, 1, YarnElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getYarnElement_GramsPerBall(), ecorePackage.getEDouble(), "gramsPerBall", null, 1, 1, YarnElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getYarnElement_Category(), ecorePackage.getEIntegerObject(), "category", null, 0, 1, YarnElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getYarnElement_Colour(), ecorePackage.getEString(), "colour", null, 0, 1, YarnElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getYarnElement_Balls(), ecorePackage.getEIntegerObject(), "balls", null, 0, 1, YarnElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(colourElementEClass, ColourElement.class, "ColourElement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getColourElement_Place(), this.getColourPlace(), "place", null, 1, 1, ColourElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getColourElement_Yarn(), ecorePackage.getEInt(), "yarn", null, 1, 1, ColourElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(swatchElementEClass, SwatchElement.class, "SwatchElement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSwatchElement_Stitches(), ecorePackage.getEInt(), "stitches", null, 1, 1, SwatchElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSwatchElement_Rounds(), ecorePackage.getEInt(), "rounds", null, 1, 1, SwatchElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSwatchElement_Grams(), ecorePackage.getEDoubleObject(), "grams", null, 0, 1, SwatchElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSwatchElement_Width(), this.getLength(), "width", null, 0, 1, SwatchElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSwatchElement_Height(), this.getLength(), "height", null, 0, 1, SwatchElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSwatchElement_Worked(), this.getWorked(), "worked", "in-the-round", 1, 1, SwatchElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSwatchElement_Washed(), ecorePackage.getEBoolean(), "washed", "false", 1, 1, SwatchElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(lengthsElementEClass, LengthsElement.class, "LengthsElement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getLengthsElement_Foot(), this.getLengthMode(), "foot", "both", 1, 1, LengthsElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLengthsElement_Leg(), this.getLengthMode(), "leg", "both", 1, 1, LengthsElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLengthsElement_Cuff(), this.getLengthMode(), "cuff", "rounds", 1, 1, LengthsElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLengthsElement_Snap(), this.getSnap(), "snap", "none", 1, 1, LengthsElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(sizeElementEClass, SizeElement.class, "SizeElement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSizeElement_Id(), ecorePackage.getEString(), "id", null, 1, 1, SizeElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSizeElement_Label(), ecorePackage.getEString(), "label", null, 1, 1, SizeElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSizeElement_Inputs(), this.getInputElement(), null, "inputs", null, 0, -1, SizeElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSizeElement_Overrides(), this.getOverrideElement(), null, "overrides", null, 0, -1, SizeElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(ownRowElementEClass, OwnRowElement.class, "OwnRowElement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getOwnRowElement_Key(), this.getKey(), "key", null, 1, 1, OwnRowElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOwnRowElement_Label(), ecorePackage.getEString(), "label", null, 0, 1, OwnRowElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOwnRowElement_Formula(), ecorePackage.getEString(), "formula", null, 1, 1, OwnRowElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(entryElementEClass, EntryElement.class, "EntryElement", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getEntryElement_Key(), this.getKey(), "key", null, 1, 1, EntryElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEntryElement_Value(), this.getQuantity(), "value", null, 1, 1, EntryElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(inputElementEClass, InputElement.class, "InputElement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);

		initEClass(overrideElementEClass, OverrideElement.class, "OverrideElement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);

		// Initialize data types
		initEDataType(directionEDataType, Direction.class, "Direction", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(increaseEDataType, Increase.class, "Increase", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(castOnEDataType, CastOn.class, "CastOn", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(leanEDataType, Lean.class, "Lean", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(turnMethodEDataType, TurnMethod.class, "TurnMethod", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(sockLengthEDataType, SockLength.class, "SockLength", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(heelTurnEDataType, HeelTurn.class, "HeelTurn", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(capEDataType, AfterthoughtHeel.Cap.class, "Cap", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(legCountEDataType, LegCount.class, "LegCount", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(lengthModeEDataType, LengthMode.class, "LengthMode", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(snapEDataType, Snap.class, "Snap", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(zoneEDataType, StitchPattern.Zone.class, "Zone", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(fitEDataType, StitchPattern.Fit.class, "Fit", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(flapLengthEDataType, FlapLength.class, "FlapLength", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(flapFabricEDataType, FlapFabric.class, "FlapFabric", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(flapEdgeEDataType, FlapEdge.class, "FlapEdge", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(pickUpEDataType, PickUp.class, "PickUp", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(colourPlaceEDataType, ColourPlace.class, "ColourPlace", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(workedEDataType, Swatch.Worked.class, "Worked", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(lengthEDataType, Length.class, "Length", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(gaugeEDataType, Gauge.class, "Gauge", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(quantityEDataType, Quantity.class, "Quantity", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(keyEDataType, Key.class, "Key", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);

		// Create resource
		createResource(eNS_URI);

		// Create annotations
		// http:///org/eclipse/emf/ecore/util/ExtendedMetaData
		createExtendedMetaDataAnnotations();
	}

	/**
	 * Initializes the annotations for <b>http:///org/eclipse/emf/ecore/util/ExtendedMetaData</b>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void createExtendedMetaDataAnnotations() {
		String source = "http:///org/eclipse/emf/ecore/util/ExtendedMetaData";
		addAnnotation
		  (getPattern_Notes(),
		   source,
		   new String[] {
			   "kind", "element"
		   });
		addAnnotation
		  (getPattern_StitchPatterns(),
		   source,
		   new String[] {
			   "name", "stitchPattern",
			   "kind", "element"
		   });
		addAnnotation
		  (getPattern_Sizes(),
		   source,
		   new String[] {
			   "name", "size",
			   "kind", "element"
		   });
		addAnnotation
		  (getPattern_OwnRows(),
		   source,
		   new String[] {
			   "name", "ownRow",
			   "kind", "element"
		   });
		addAnnotation
		  (roundToeElementEClass,
		   source,
		   new String[] {
			   "name", "RoundToe"
		   });
		addAnnotation
		  (wedgeToeElementEClass,
		   source,
		   new String[] {
			   "name", "WedgeToe"
		   });
		addAnnotation
		  (starToeElementEClass,
		   source,
		   new String[] {
			   "name", "StarToe"
		   });
		addAnnotation
		  (shortRowToeElementEClass,
		   source,
		   new String[] {
			   "name", "ShortRowToe"
		   });
		addAnnotation
		  (asymmetricToeElementEClass,
		   source,
		   new String[] {
			   "name", "AsymmetricToe"
		   });
		addAnnotation
		  (shortRowHeelElementEClass,
		   source,
		   new String[] {
			   "name", "ShortRowHeel"
		   });
		addAnnotation
		  (flapHeelElementEClass,
		   source,
		   new String[] {
			   "name", "FlapHeel"
		   });
		addAnnotation
		  (afterthoughtHeelElementEClass,
		   source,
		   new String[] {
			   "name", "AfterthoughtHeel"
		   });
		addAnnotation
		  (straightLegElementEClass,
		   source,
		   new String[] {
			   "name", "StraightLeg"
		   });
		addAnnotation
		  (calfLegElementEClass,
		   source,
		   new String[] {
			   "name", "CalfLeg"
		   });
		addAnnotation
		  (ribCuffElementEClass,
		   source,
		   new String[] {
			   "name", "RibCuff"
		   });
		addAnnotation
		  (hemCuffElementEClass,
		   source,
		   new String[] {
			   "name", "HemCuff"
		   });
		addAnnotation
		  (rolledCuffElementEClass,
		   source,
		   new String[] {
			   "name", "RolledCuff"
		   });
		addAnnotation
		  (stitchPatternElementEClass,
		   source,
		   new String[] {
			   "name", "StitchPattern"
		   });
		addAnnotation
		  (getStitchPatternElement_Instructions(),
		   source,
		   new String[] {
			   "name", "row",
			   "kind", "element"
		   });
		addAnnotation
		  (materialsElementEClass,
		   source,
		   new String[] {
			   "name", "Materials"
		   });
		addAnnotation
		  (getMaterialsElement_Notions(),
		   source,
		   new String[] {
			   "kind", "element"
		   });
		addAnnotation
		  (getMaterialsElement_Yarns(),
		   source,
		   new String[] {
			   "name", "yarn",
			   "kind", "element"
		   });
		addAnnotation
		  (getMaterialsElement_Colours(),
		   source,
		   new String[] {
			   "name", "colour",
			   "kind", "element"
		   });
		addAnnotation
		  (yarnElementEClass,
		   source,
		   new String[] {
			   "name", "Yarn"
		   });
		addAnnotation
		  (colourElementEClass,
		   source,
		   new String[] {
			   "name", "Colour"
		   });
		addAnnotation
		  (swatchElementEClass,
		   source,
		   new String[] {
			   "name", "Swatch"
		   });
		addAnnotation
		  (lengthsElementEClass,
		   source,
		   new String[] {
			   "name", "Lengths"
		   });
		addAnnotation
		  (sizeElementEClass,
		   source,
		   new String[] {
			   "name", "Size"
		   });
		addAnnotation
		  (getSizeElement_Inputs(),
		   source,
		   new String[] {
			   "name", "input",
			   "kind", "element"
		   });
		addAnnotation
		  (getSizeElement_Overrides(),
		   source,
		   new String[] {
			   "name", "override",
			   "kind", "element"
		   });
		addAnnotation
		  (ownRowElementEClass,
		   source,
		   new String[] {
			   "name", "OwnRow"
		   });
		addAnnotation
		  (inputElementEClass,
		   source,
		   new String[] {
			   "name", "Input"
		   });
		addAnnotation
		  (overrideElementEClass,
		   source,
		   new String[] {
			   "name", "Override"
		   });
	}

} //PatternPackageImpl
