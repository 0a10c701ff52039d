/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.EObjectImpl;

import org.eclipse.emf.ecore.util.EDataTypeEList;

import turnheel.engine.design.StitchPattern;

import turnheel.model.pattern.PatternFactory;
import turnheel.model.pattern.PatternPackage;
import turnheel.model.pattern.StitchPatternElement;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Stitch Pattern Element</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.impl.StitchPatternElementImpl#getZone <em>Zone</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.StitchPatternElementImpl#getRepeat <em>Repeat</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.StitchPatternElementImpl#getEdge <em>Edge</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.StitchPatternElementImpl#getRows <em>Rows</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.StitchPatternElementImpl#getFit <em>Fit</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.StitchPatternElementImpl#getFewestFiller <em>Fewest Filler</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.StitchPatternElementImpl#isStranded <em>Stranded</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.StitchPatternElementImpl#getLongestFloat <em>Longest Float</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.StitchPatternElementImpl#getInstructions <em>Instructions</em>}</li>
 * </ul>
 *
 * @generated
 */
public class StitchPatternElementImpl extends EObjectImpl implements StitchPatternElement {
	/**
	 * The default value of the '{@link #getZone() <em>Zone</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getZone()
	 * @generated
	 * @ordered
	 */
	protected static final StitchPattern.Zone ZONE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getZone() <em>Zone</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getZone()
	 * @generated
	 * @ordered
	 */
	protected StitchPattern.Zone zone = ZONE_EDEFAULT;

	/**
	 * The default value of the '{@link #getRepeat() <em>Repeat</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRepeat()
	 * @generated
	 * @ordered
	 */
	protected static final int REPEAT_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getRepeat() <em>Repeat</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRepeat()
	 * @generated
	 * @ordered
	 */
	protected int repeat = REPEAT_EDEFAULT;

	/**
	 * The default value of the '{@link #getEdge() <em>Edge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEdge()
	 * @generated
	 * @ordered
	 */
	protected static final int EDGE_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getEdge() <em>Edge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEdge()
	 * @generated
	 * @ordered
	 */
	protected int edge = EDGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getRows() <em>Rows</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRows()
	 * @generated
	 * @ordered
	 */
	protected static final int ROWS_EDEFAULT = 1;

	/**
	 * The cached value of the '{@link #getRows() <em>Rows</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRows()
	 * @generated
	 * @ordered
	 */
	protected int rows = ROWS_EDEFAULT;

	/**
	 * The default value of the '{@link #getFit() <em>Fit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFit()
	 * @generated
	 * @ordered
	 */
	protected static final StitchPattern.Fit FIT_EDEFAULT = (StitchPattern.Fit)PatternFactory.eINSTANCE.createFromString(PatternPackage.eINSTANCE.getFit(), "whole-repeats");

	/**
	 * The cached value of the '{@link #getFit() <em>Fit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFit()
	 * @generated
	 * @ordered
	 */
	protected StitchPattern.Fit fit = FIT_EDEFAULT;

	/**
	 * The default value of the '{@link #getFewestFiller() <em>Fewest Filler</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFewestFiller()
	 * @generated
	 * @ordered
	 */
	protected static final int FEWEST_FILLER_EDEFAULT = 1;

	/**
	 * The cached value of the '{@link #getFewestFiller() <em>Fewest Filler</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFewestFiller()
	 * @generated
	 * @ordered
	 */
	protected int fewestFiller = FEWEST_FILLER_EDEFAULT;

	/**
	 * The default value of the '{@link #isStranded() <em>Stranded</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isStranded()
	 * @generated
	 * @ordered
	 */
	protected static final boolean STRANDED_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isStranded() <em>Stranded</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isStranded()
	 * @generated
	 * @ordered
	 */
	protected boolean stranded = STRANDED_EDEFAULT;

	/**
	 * The default value of the '{@link #getLongestFloat() <em>Longest Float</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLongestFloat()
	 * @generated
	 * @ordered
	 */
	protected static final Integer LONGEST_FLOAT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLongestFloat() <em>Longest Float</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLongestFloat()
	 * @generated
	 * @ordered
	 */
	protected Integer longestFloat = LONGEST_FLOAT_EDEFAULT;

	/**
	 * The cached value of the '{@link #getInstructions() <em>Instructions</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInstructions()
	 * @generated
	 * @ordered
	 */
	protected EList<String> instructions;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected StitchPatternElementImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return PatternPackage.Literals.STITCH_PATTERN_ELEMENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StitchPattern.Zone getZone() {
		return zone;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setZone(StitchPattern.Zone newZone) {
		StitchPattern.Zone oldZone = zone;
		zone = newZone;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.STITCH_PATTERN_ELEMENT__ZONE, oldZone, zone));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getRepeat() {
		return repeat;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRepeat(int newRepeat) {
		int oldRepeat = repeat;
		repeat = newRepeat;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.STITCH_PATTERN_ELEMENT__REPEAT, oldRepeat, repeat));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getEdge() {
		return edge;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEdge(int newEdge) {
		int oldEdge = edge;
		edge = newEdge;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.STITCH_PATTERN_ELEMENT__EDGE, oldEdge, edge));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getRows() {
		return rows;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRows(int newRows) {
		int oldRows = rows;
		rows = newRows;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.STITCH_PATTERN_ELEMENT__ROWS, oldRows, rows));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StitchPattern.Fit getFit() {
		return fit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFit(StitchPattern.Fit newFit) {
		StitchPattern.Fit oldFit = fit;
		fit = newFit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.STITCH_PATTERN_ELEMENT__FIT, oldFit, fit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getFewestFiller() {
		return fewestFiller;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFewestFiller(int newFewestFiller) {
		int oldFewestFiller = fewestFiller;
		fewestFiller = newFewestFiller;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.STITCH_PATTERN_ELEMENT__FEWEST_FILLER, oldFewestFiller, fewestFiller));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isStranded() {
		return stranded;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStranded(boolean newStranded) {
		boolean oldStranded = stranded;
		stranded = newStranded;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.STITCH_PATTERN_ELEMENT__STRANDED, oldStranded, stranded));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getLongestFloat() {
		return longestFloat;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLongestFloat(Integer newLongestFloat) {
		Integer oldLongestFloat = longestFloat;
		longestFloat = newLongestFloat;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.STITCH_PATTERN_ELEMENT__LONGEST_FLOAT, oldLongestFloat, longestFloat));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getInstructions() {
		if (instructions == null) {
			instructions = new EDataTypeEList<String>(String.class, this, PatternPackage.STITCH_PATTERN_ELEMENT__INSTRUCTIONS);
		}
		return instructions;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case PatternPackage.STITCH_PATTERN_ELEMENT__ZONE:
				return getZone();
			case PatternPackage.STITCH_PATTERN_ELEMENT__REPEAT:
				return getRepeat();
			case PatternPackage.STITCH_PATTERN_ELEMENT__EDGE:
				return getEdge();
			case PatternPackage.STITCH_PATTERN_ELEMENT__ROWS:
				return getRows();
			case PatternPackage.STITCH_PATTERN_ELEMENT__FIT:
				return getFit();
			case PatternPackage.STITCH_PATTERN_ELEMENT__FEWEST_FILLER:
				return getFewestFiller();
			case PatternPackage.STITCH_PATTERN_ELEMENT__STRANDED:
				return isStranded();
			case PatternPackage.STITCH_PATTERN_ELEMENT__LONGEST_FLOAT:
				return getLongestFloat();
			case PatternPackage.STITCH_PATTERN_ELEMENT__INSTRUCTIONS:
				return getInstructions();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case PatternPackage.STITCH_PATTERN_ELEMENT__ZONE:
				setZone((StitchPattern.Zone)newValue);
				return;
			case PatternPackage.STITCH_PATTERN_ELEMENT__REPEAT:
				setRepeat((Integer)newValue);
				return;
			case PatternPackage.STITCH_PATTERN_ELEMENT__EDGE:
				setEdge((Integer)newValue);
				return;
			case PatternPackage.STITCH_PATTERN_ELEMENT__ROWS:
				setRows((Integer)newValue);
				return;
			case PatternPackage.STITCH_PATTERN_ELEMENT__FIT:
				setFit((StitchPattern.Fit)newValue);
				return;
			case PatternPackage.STITCH_PATTERN_ELEMENT__FEWEST_FILLER:
				setFewestFiller((Integer)newValue);
				return;
			case PatternPackage.STITCH_PATTERN_ELEMENT__STRANDED:
				setStranded((Boolean)newValue);
				return;
			case PatternPackage.STITCH_PATTERN_ELEMENT__LONGEST_FLOAT:
				setLongestFloat((Integer)newValue);
				return;
			case PatternPackage.STITCH_PATTERN_ELEMENT__INSTRUCTIONS:
				getInstructions().clear();
				getInstructions().addAll((Collection<? extends String>)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case PatternPackage.STITCH_PATTERN_ELEMENT__ZONE:
				setZone(ZONE_EDEFAULT);
				return;
			case PatternPackage.STITCH_PATTERN_ELEMENT__REPEAT:
				setRepeat(REPEAT_EDEFAULT);
				return;
			case PatternPackage.STITCH_PATTERN_ELEMENT__EDGE:
				setEdge(EDGE_EDEFAULT);
				return;
			case PatternPackage.STITCH_PATTERN_ELEMENT__ROWS:
				setRows(ROWS_EDEFAULT);
				return;
			case PatternPackage.STITCH_PATTERN_ELEMENT__FIT:
				setFit(FIT_EDEFAULT);
				return;
			case PatternPackage.STITCH_PATTERN_ELEMENT__FEWEST_FILLER:
				setFewestFiller(FEWEST_FILLER_EDEFAULT);
				return;
			case PatternPackage.STITCH_PATTERN_ELEMENT__STRANDED:
				setStranded(STRANDED_EDEFAULT);
				return;
			case PatternPackage.STITCH_PATTERN_ELEMENT__LONGEST_FLOAT:
				setLongestFloat(LONGEST_FLOAT_EDEFAULT);
				return;
			case PatternPackage.STITCH_PATTERN_ELEMENT__INSTRUCTIONS:
				getInstructions().clear();
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case PatternPackage.STITCH_PATTERN_ELEMENT__ZONE:
				return ZONE_EDEFAULT == null ? zone != null : !ZONE_EDEFAULT.equals(zone);
			case PatternPackage.STITCH_PATTERN_ELEMENT__REPEAT:
				return repeat != REPEAT_EDEFAULT;
			case PatternPackage.STITCH_PATTERN_ELEMENT__EDGE:
				return edge != EDGE_EDEFAULT;
			case PatternPackage.STITCH_PATTERN_ELEMENT__ROWS:
				return rows != ROWS_EDEFAULT;
			case PatternPackage.STITCH_PATTERN_ELEMENT__FIT:
				return FIT_EDEFAULT == null ? fit != null : !FIT_EDEFAULT.equals(fit);
			case PatternPackage.STITCH_PATTERN_ELEMENT__FEWEST_FILLER:
				return fewestFiller != FEWEST_FILLER_EDEFAULT;
			case PatternPackage.STITCH_PATTERN_ELEMENT__STRANDED:
				return stranded != STRANDED_EDEFAULT;
			case PatternPackage.STITCH_PATTERN_ELEMENT__LONGEST_FLOAT:
				return LONGEST_FLOAT_EDEFAULT == null ? longestFloat != null : !LONGEST_FLOAT_EDEFAULT.equals(longestFloat);
			case PatternPackage.STITCH_PATTERN_ELEMENT__INSTRUCTIONS:
				return instructions != null && !instructions.isEmpty();
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (zone: ");
		result.append(zone);
		result.append(", repeat: ");
		result.append(repeat);
		result.append(", edge: ");
		result.append(edge);
		result.append(", rows: ");
		result.append(rows);
		result.append(", fit: ");
		result.append(fit);
		result.append(", fewestFiller: ");
		result.append(fewestFiller);
		result.append(", stranded: ");
		result.append(stranded);
		result.append(", longestFloat: ");
		result.append(longestFloat);
		result.append(", instructions: ");
		result.append(instructions);
		result.append(')');
		return result.toString();
	}

} //StitchPatternElementImpl
