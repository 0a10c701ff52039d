/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern;

import org.eclipse.emf.ecore.EFactory;

/**
 * <!-- begin-user-doc -->
 * The <b>Factory</b> for the model.
 * It provides a create method for each non-abstract class of the model.
 * <!-- end-user-doc -->
 * @see turnheel.model.pattern.PatternPackage
 * @generated
 */
public interface PatternFactory extends EFactory {
	/**
	 * The singleton instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	PatternFactory eINSTANCE = turnheel.model.pattern.impl.PatternFactoryImpl.init();

	/**
	 * Returns a new object of class '<em>Pattern</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Pattern</em>'.
	 * @generated
	 */
	Pattern createPattern();

	/**
	 * Returns a new object of class '<em>Round Toe Element</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Round Toe Element</em>'.
	 * @generated
	 */
	RoundToeElement createRoundToeElement();

	/**
	 * Returns a new object of class '<em>Wedge Toe Element</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Wedge Toe Element</em>'.
	 * @generated
	 */
	WedgeToeElement createWedgeToeElement();

	/**
	 * Returns a new object of class '<em>Star Toe Element</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Star Toe Element</em>'.
	 * @generated
	 */
	StarToeElement createStarToeElement();

	/**
	 * Returns a new object of class '<em>Short Row Toe Element</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Short Row Toe Element</em>'.
	 * @generated
	 */
	ShortRowToeElement createShortRowToeElement();

	/**
	 * Returns a new object of class '<em>Asymmetric Toe Element</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Asymmetric Toe Element</em>'.
	 * @generated
	 */
	AsymmetricToeElement createAsymmetricToeElement();

	/**
	 * Returns a new object of class '<em>Short Row Heel Element</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Short Row Heel Element</em>'.
	 * @generated
	 */
	ShortRowHeelElement createShortRowHeelElement();

	/**
	 * Returns a new object of class '<em>Flap Heel Element</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Flap Heel Element</em>'.
	 * @generated
	 */
	FlapHeelElement createFlapHeelElement();

	/**
	 * Returns a new object of class '<em>Afterthought Heel Element</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Afterthought Heel Element</em>'.
	 * @generated
	 */
	AfterthoughtHeelElement createAfterthoughtHeelElement();

	/**
	 * Returns a new object of class '<em>Straight Leg Element</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Straight Leg Element</em>'.
	 * @generated
	 */
	StraightLegElement createStraightLegElement();

	/**
	 * Returns a new object of class '<em>Calf Leg Element</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Calf Leg Element</em>'.
	 * @generated
	 */
	CalfLegElement createCalfLegElement();

	/**
	 * Returns a new object of class '<em>Rib Cuff Element</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Rib Cuff Element</em>'.
	 * @generated
	 */
	RibCuffElement createRibCuffElement();

	/**
	 * Returns a new object of class '<em>Hem Cuff Element</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Hem Cuff Element</em>'.
	 * @generated
	 */
	HemCuffElement createHemCuffElement();

	/**
	 * Returns a new object of class '<em>Rolled Cuff Element</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Rolled Cuff Element</em>'.
	 * @generated
	 */
	RolledCuffElement createRolledCuffElement();

	/**
	 * Returns a new object of class '<em>Stitch Pattern Element</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Stitch Pattern Element</em>'.
	 * @generated
	 */
	StitchPatternElement createStitchPatternElement();

	/**
	 * Returns a new object of class '<em>Materials Element</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Materials Element</em>'.
	 * @generated
	 */
	MaterialsElement createMaterialsElement();

	/**
	 * Returns a new object of class '<em>Yarn Element</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Yarn Element</em>'.
	 * @generated
	 */
	YarnElement createYarnElement();

	/**
	 * Returns a new object of class '<em>Colour Element</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Colour Element</em>'.
	 * @generated
	 */
	ColourElement createColourElement();

	/**
	 * Returns a new object of class '<em>Swatch Element</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Swatch Element</em>'.
	 * @generated
	 */
	SwatchElement createSwatchElement();

	/**
	 * Returns a new object of class '<em>Lengths Element</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Lengths Element</em>'.
	 * @generated
	 */
	LengthsElement createLengthsElement();

	/**
	 * Returns a new object of class '<em>Size Element</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Size Element</em>'.
	 * @generated
	 */
	SizeElement createSizeElement();

	/**
	 * Returns a new object of class '<em>Own Row Element</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Own Row Element</em>'.
	 * @generated
	 */
	OwnRowElement createOwnRowElement();

	/**
	 * Returns a new object of class '<em>Input Element</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Input Element</em>'.
	 * @generated
	 */
	InputElement createInputElement();

	/**
	 * Returns a new object of class '<em>Override Element</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Override Element</em>'.
	 * @generated
	 */
	OverrideElement createOverrideElement();

	/**
	 * Returns the package supported by this factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the package supported by this factory.
	 * @generated
	 */
	PatternPackage getPatternPackage();

} //PatternFactory
