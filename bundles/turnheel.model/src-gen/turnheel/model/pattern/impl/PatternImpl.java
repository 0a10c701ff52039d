/**
 * Generated from model/pattern.ecore by releng/emf-gen; nobody edits it.
 */
package turnheel.model.pattern.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.EObjectImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import turnheel.engine.design.Direction;
import turnheel.engine.design.Gauge;

import turnheel.model.pattern.CuffElement;
import turnheel.model.pattern.HeelElement;
import turnheel.model.pattern.LegElement;
import turnheel.model.pattern.LengthsElement;
import turnheel.model.pattern.MaterialsElement;
import turnheel.model.pattern.OwnRowElement;
import turnheel.model.pattern.Pattern;
import turnheel.model.pattern.PatternPackage;
import turnheel.model.pattern.SizeElement;
import turnheel.model.pattern.StitchPatternElement;
import turnheel.model.pattern.ToeElement;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Pattern</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link turnheel.model.pattern.impl.PatternImpl#getFormat <em>Format</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.PatternImpl#getTitle <em>Title</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.PatternImpl#getDesigner <em>Designer</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.PatternImpl#getDirection <em>Direction</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.PatternImpl#getStitchGauge <em>Stitch Gauge</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.PatternImpl#getRoundGauge <em>Round Gauge</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.PatternImpl#getNotes <em>Notes</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.PatternImpl#getToe <em>Toe</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.PatternImpl#getHeel <em>Heel</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.PatternImpl#getLeg <em>Leg</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.PatternImpl#getCuff <em>Cuff</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.PatternImpl#getStitchPatterns <em>Stitch Patterns</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.PatternImpl#getMaterials <em>Materials</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.PatternImpl#getLengths <em>Lengths</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.PatternImpl#getSizes <em>Sizes</em>}</li>
 *   <li>{@link turnheel.model.pattern.impl.PatternImpl#getOwnRows <em>Own Rows</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PatternImpl extends EObjectImpl implements Pattern {
	/**
	 * The default value of the '{@link #getFormat() <em>Format</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFormat()
	 * @generated
	 * @ordered
	 */
	protected static final int FORMAT_EDEFAULT = 1;

	/**
	 * The cached value of the '{@link #getFormat() <em>Format</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFormat()
	 * @generated
	 * @ordered
	 */
	protected int format = FORMAT_EDEFAULT;

	/**
	 * The default value of the '{@link #getTitle() <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTitle()
	 * @generated
	 * @ordered
	 */
	protected static final String TITLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTitle() <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTitle()
	 * @generated
	 * @ordered
	 */
	protected String title = TITLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getDesigner() <em>Designer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDesigner()
	 * @generated
	 * @ordered
	 */
	protected static final String DESIGNER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDesigner() <em>Designer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDesigner()
	 * @generated
	 * @ordered
	 */
	protected String designer = DESIGNER_EDEFAULT;

	/**
	 * The default value of the '{@link #getDirection() <em>Direction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDirection()
	 * @generated
	 * @ordered
	 */
	protected static final Direction DIRECTION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDirection() <em>Direction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDirection()
	 * @generated
	 * @ordered
	 */
	protected Direction direction = DIRECTION_EDEFAULT;

	/**
	 * The default value of the '{@link #getStitchGauge() <em>Stitch Gauge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStitchGauge()
	 * @generated
	 * @ordered
	 */
	protected static final Gauge STITCH_GAUGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStitchGauge() <em>Stitch Gauge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStitchGauge()
	 * @generated
	 * @ordered
	 */
	protected Gauge stitchGauge = STITCH_GAUGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getRoundGauge() <em>Round Gauge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRoundGauge()
	 * @generated
	 * @ordered
	 */
	protected static final Gauge ROUND_GAUGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRoundGauge() <em>Round Gauge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRoundGauge()
	 * @generated
	 * @ordered
	 */
	protected Gauge roundGauge = ROUND_GAUGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getNotes() <em>Notes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNotes()
	 * @generated
	 * @ordered
	 */
	protected static final String NOTES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNotes() <em>Notes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNotes()
	 * @generated
	 * @ordered
	 */
	protected String notes = NOTES_EDEFAULT;

	/**
	 * The cached value of the '{@link #getToe() <em>Toe</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getToe()
	 * @generated
	 * @ordered
	 */
	protected ToeElement toe;

	/**
	 * The cached value of the '{@link #getHeel() <em>Heel</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeel()
	 * @generated
	 * @ordered
	 */
	protected HeelElement heel;

	/**
	 * The cached value of the '{@link #getLeg() <em>Leg</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeg()
	 * @generated
	 * @ordered
	 */
	protected LegElement leg;

	/**
	 * The cached value of the '{@link #getCuff() <em>Cuff</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCuff()
	 * @generated
	 * @ordered
	 */
	protected CuffElement cuff;

	/**
	 * The cached value of the '{@link #getStitchPatterns() <em>Stitch Patterns</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStitchPatterns()
	 * @generated
	 * @ordered
	 */
	protected EList<StitchPatternElement> stitchPatterns;

	/**
	 * The cached value of the '{@link #getMaterials() <em>Materials</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterials()
	 * @generated
	 * @ordered
	 */
	protected MaterialsElement materials;

	/**
	 * The cached value of the '{@link #getLengths() <em>Lengths</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLengths()
	 * @generated
	 * @ordered
	 */
	protected LengthsElement lengths;

	/**
	 * The cached value of the '{@link #getSizes() <em>Sizes</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSizes()
	 * @generated
	 * @ordered
	 */
	protected EList<SizeElement> sizes;

	/**
	 * The cached value of the '{@link #getOwnRows() <em>Own Rows</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOwnRows()
	 * @generated
	 * @ordered
	 */
	protected EList<OwnRowElement> ownRows;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PatternImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return PatternPackage.Literals.PATTERN;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getFormat() {
		return format;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFormat(int newFormat) {
		int oldFormat = format;
		format = newFormat;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.PATTERN__FORMAT, oldFormat, format));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTitle() {
		return title;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTitle(String newTitle) {
		String oldTitle = title;
		title = newTitle;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.PATTERN__TITLE, oldTitle, title));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDesigner() {
		return designer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDesigner(String newDesigner) {
		String oldDesigner = designer;
		designer = newDesigner;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.PATTERN__DESIGNER, oldDesigner, designer));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Direction getDirection() {
		return direction;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDirection(Direction newDirection) {
		Direction oldDirection = direction;
		direction = newDirection;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.PATTERN__DIRECTION, oldDirection, direction));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Gauge getStitchGauge() {
		return stitchGauge;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStitchGauge(Gauge newStitchGauge) {
		Gauge oldStitchGauge = stitchGauge;
		stitchGauge = newStitchGauge;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.PATTERN__STITCH_GAUGE, oldStitchGauge, stitchGauge));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Gauge getRoundGauge() {
		return roundGauge;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRoundGauge(Gauge newRoundGauge) {
		Gauge oldRoundGauge = roundGauge;
		roundGauge = newRoundGauge;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.PATTERN__ROUND_GAUGE, oldRoundGauge, roundGauge));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getNotes() {
		return notes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNotes(String newNotes) {
		String oldNotes = notes;
		notes = newNotes;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.PATTERN__NOTES, oldNotes, notes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ToeElement getToe() {
		return toe;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetToe(ToeElement newToe, NotificationChain msgs) {
		ToeElement oldToe = toe;
		toe = newToe;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, PatternPackage.PATTERN__TOE, oldToe, newToe);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setToe(ToeElement newToe) {
		if (newToe != toe) {
			NotificationChain msgs = null;
			if (toe != null)
				msgs = ((InternalEObject)toe).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - PatternPackage.PATTERN__TOE, null, msgs);
			if (newToe != null)
				msgs = ((InternalEObject)newToe).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - PatternPackage.PATTERN__TOE, null, msgs);
			msgs = basicSetToe(newToe, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.PATTERN__TOE, newToe, newToe));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public HeelElement getHeel() {
		return heel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetHeel(HeelElement newHeel, NotificationChain msgs) {
		HeelElement oldHeel = heel;
		heel = newHeel;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, PatternPackage.PATTERN__HEEL, oldHeel, newHeel);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeel(HeelElement newHeel) {
		if (newHeel != heel) {
			NotificationChain msgs = null;
			if (heel != null)
				msgs = ((InternalEObject)heel).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - PatternPackage.PATTERN__HEEL, null, msgs);
			if (newHeel != null)
				msgs = ((InternalEObject)newHeel).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - PatternPackage.PATTERN__HEEL, null, msgs);
			msgs = basicSetHeel(newHeel, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.PATTERN__HEEL, newHeel, newHeel));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LegElement getLeg() {
		return leg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetLeg(LegElement newLeg, NotificationChain msgs) {
		LegElement oldLeg = leg;
		leg = newLeg;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, PatternPackage.PATTERN__LEG, oldLeg, newLeg);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLeg(LegElement newLeg) {
		if (newLeg != leg) {
			NotificationChain msgs = null;
			if (leg != null)
				msgs = ((InternalEObject)leg).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - PatternPackage.PATTERN__LEG, null, msgs);
			if (newLeg != null)
				msgs = ((InternalEObject)newLeg).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - PatternPackage.PATTERN__LEG, null, msgs);
			msgs = basicSetLeg(newLeg, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.PATTERN__LEG, newLeg, newLeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CuffElement getCuff() {
		return cuff;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetCuff(CuffElement newCuff, NotificationChain msgs) {
		CuffElement oldCuff = cuff;
		cuff = newCuff;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, PatternPackage.PATTERN__CUFF, oldCuff, newCuff);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCuff(CuffElement newCuff) {
		if (newCuff != cuff) {
			NotificationChain msgs = null;
			if (cuff != null)
				msgs = ((InternalEObject)cuff).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - PatternPackage.PATTERN__CUFF, null, msgs);
			if (newCuff != null)
				msgs = ((InternalEObject)newCuff).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - PatternPackage.PATTERN__CUFF, null, msgs);
			msgs = basicSetCuff(newCuff, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.PATTERN__CUFF, newCuff, newCuff));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<StitchPatternElement> getStitchPatterns() {
		if (stitchPatterns == null) {
			stitchPatterns = new EObjectContainmentEList<StitchPatternElement>(StitchPatternElement.class, this, PatternPackage.PATTERN__STITCH_PATTERNS);
		}
		return stitchPatterns;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MaterialsElement getMaterials() {
		return materials;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetMaterials(MaterialsElement newMaterials, NotificationChain msgs) {
		MaterialsElement oldMaterials = materials;
		materials = newMaterials;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, PatternPackage.PATTERN__MATERIALS, oldMaterials, newMaterials);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaterials(MaterialsElement newMaterials) {
		if (newMaterials != materials) {
			NotificationChain msgs = null;
			if (materials != null)
				msgs = ((InternalEObject)materials).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - PatternPackage.PATTERN__MATERIALS, null, msgs);
			if (newMaterials != null)
				msgs = ((InternalEObject)newMaterials).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - PatternPackage.PATTERN__MATERIALS, null, msgs);
			msgs = basicSetMaterials(newMaterials, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.PATTERN__MATERIALS, newMaterials, newMaterials));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LengthsElement getLengths() {
		return lengths;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetLengths(LengthsElement newLengths, NotificationChain msgs) {
		LengthsElement oldLengths = lengths;
		lengths = newLengths;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, PatternPackage.PATTERN__LENGTHS, oldLengths, newLengths);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLengths(LengthsElement newLengths) {
		if (newLengths != lengths) {
			NotificationChain msgs = null;
			if (lengths != null)
				msgs = ((InternalEObject)lengths).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - PatternPackage.PATTERN__LENGTHS, null, msgs);
			if (newLengths != null)
				msgs = ((InternalEObject)newLengths).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - PatternPackage.PATTERN__LENGTHS, null, msgs);
			msgs = basicSetLengths(newLengths, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, PatternPackage.PATTERN__LENGTHS, newLengths, newLengths));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<SizeElement> getSizes() {
		if (sizes == null) {
			sizes = new EObjectContainmentEList<SizeElement>(SizeElement.class, this, PatternPackage.PATTERN__SIZES);
		}
		return sizes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<OwnRowElement> getOwnRows() {
		if (ownRows == null) {
			ownRows = new EObjectContainmentEList<OwnRowElement>(OwnRowElement.class, this, PatternPackage.PATTERN__OWN_ROWS);
		}
		return ownRows;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case PatternPackage.PATTERN__TOE:
				return basicSetToe(null, msgs);
			case PatternPackage.PATTERN__HEEL:
				return basicSetHeel(null, msgs);
			case PatternPackage.PATTERN__LEG:
				return basicSetLeg(null, msgs);
			case PatternPackage.PATTERN__CUFF:
				return basicSetCuff(null, msgs);
			case PatternPackage.PATTERN__STITCH_PATTERNS:
				return ((InternalEList<?>)getStitchPatterns()).basicRemove(otherEnd, msgs);
			case PatternPackage.PATTERN__MATERIALS:
				return basicSetMaterials(null, msgs);
			case PatternPackage.PATTERN__LENGTHS:
				return basicSetLengths(null, msgs);
			case PatternPackage.PATTERN__SIZES:
				return ((InternalEList<?>)getSizes()).basicRemove(otherEnd, msgs);
			case PatternPackage.PATTERN__OWN_ROWS:
				return ((InternalEList<?>)getOwnRows()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case PatternPackage.PATTERN__FORMAT:
				return getFormat();
			case PatternPackage.PATTERN__TITLE:
				return getTitle();
			case PatternPackage.PATTERN__DESIGNER:
				return getDesigner();
			case PatternPackage.PATTERN__DIRECTION:
				return getDirection();
			case PatternPackage.PATTERN__STITCH_GAUGE:
				return getStitchGauge();
			case PatternPackage.PATTERN__ROUND_GAUGE:
				return getRoundGauge();
			case PatternPackage.PATTERN__NOTES:
				return getNotes();
			case PatternPackage.PATTERN__TOE:
				return getToe();
			case PatternPackage.PATTERN__HEEL:
				return getHeel();
			case PatternPackage.PATTERN__LEG:
				return getLeg();
			case PatternPackage.PATTERN__CUFF:
				return getCuff();
			case PatternPackage.PATTERN__STITCH_PATTERNS:
				return getStitchPatterns();
			case PatternPackage.PATTERN__MATERIALS:
				return getMaterials();
			case PatternPackage.PATTERN__LENGTHS:
				return getLengths();
			case PatternPackage.PATTERN__SIZES:
				return getSizes();
			case PatternPackage.PATTERN__OWN_ROWS:
				return getOwnRows();
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
			case PatternPackage.PATTERN__FORMAT:
				setFormat((Integer)newValue);
				return;
			case PatternPackage.PATTERN__TITLE:
				setTitle((String)newValue);
				return;
			case PatternPackage.PATTERN__DESIGNER:
				setDesigner((String)newValue);
				return;
			case PatternPackage.PATTERN__DIRECTION:
				setDirection((Direction)newValue);
				return;
			case PatternPackage.PATTERN__STITCH_GAUGE:
				setStitchGauge((Gauge)newValue);
				return;
			case PatternPackage.PATTERN__ROUND_GAUGE:
				setRoundGauge((Gauge)newValue);
				return;
			case PatternPackage.PATTERN__NOTES:
				setNotes((String)newValue);
				return;
			case PatternPackage.PATTERN__TOE:
				setToe((ToeElement)newValue);
				return;
			case PatternPackage.PATTERN__HEEL:
				setHeel((HeelElement)newValue);
				return;
			case PatternPackage.PATTERN__LEG:
				setLeg((LegElement)newValue);
				return;
			case PatternPackage.PATTERN__CUFF:
				setCuff((CuffElement)newValue);
				return;
			case PatternPackage.PATTERN__STITCH_PATTERNS:
				getStitchPatterns().clear();
				getStitchPatterns().addAll((Collection<? extends StitchPatternElement>)newValue);
				return;
			case PatternPackage.PATTERN__MATERIALS:
				setMaterials((MaterialsElement)newValue);
				return;
			case PatternPackage.PATTERN__LENGTHS:
				setLengths((LengthsElement)newValue);
				return;
			case PatternPackage.PATTERN__SIZES:
				getSizes().clear();
				getSizes().addAll((Collection<? extends SizeElement>)newValue);
				return;
			case PatternPackage.PATTERN__OWN_ROWS:
				getOwnRows().clear();
				getOwnRows().addAll((Collection<? extends OwnRowElement>)newValue);
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
			case PatternPackage.PATTERN__FORMAT:
				setFormat(FORMAT_EDEFAULT);
				return;
			case PatternPackage.PATTERN__TITLE:
				setTitle(TITLE_EDEFAULT);
				return;
			case PatternPackage.PATTERN__DESIGNER:
				setDesigner(DESIGNER_EDEFAULT);
				return;
			case PatternPackage.PATTERN__DIRECTION:
				setDirection(DIRECTION_EDEFAULT);
				return;
			case PatternPackage.PATTERN__STITCH_GAUGE:
				setStitchGauge(STITCH_GAUGE_EDEFAULT);
				return;
			case PatternPackage.PATTERN__ROUND_GAUGE:
				setRoundGauge(ROUND_GAUGE_EDEFAULT);
				return;
			case PatternPackage.PATTERN__NOTES:
				setNotes(NOTES_EDEFAULT);
				return;
			case PatternPackage.PATTERN__TOE:
				setToe((ToeElement)null);
				return;
			case PatternPackage.PATTERN__HEEL:
				setHeel((HeelElement)null);
				return;
			case PatternPackage.PATTERN__LEG:
				setLeg((LegElement)null);
				return;
			case PatternPackage.PATTERN__CUFF:
				setCuff((CuffElement)null);
				return;
			case PatternPackage.PATTERN__STITCH_PATTERNS:
				getStitchPatterns().clear();
				return;
			case PatternPackage.PATTERN__MATERIALS:
				setMaterials((MaterialsElement)null);
				return;
			case PatternPackage.PATTERN__LENGTHS:
				setLengths((LengthsElement)null);
				return;
			case PatternPackage.PATTERN__SIZES:
				getSizes().clear();
				return;
			case PatternPackage.PATTERN__OWN_ROWS:
				getOwnRows().clear();
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
			case PatternPackage.PATTERN__FORMAT:
				return format != FORMAT_EDEFAULT;
			case PatternPackage.PATTERN__TITLE:
				return TITLE_EDEFAULT == null ? title != null : !TITLE_EDEFAULT.equals(title);
			case PatternPackage.PATTERN__DESIGNER:
				return DESIGNER_EDEFAULT == null ? designer != null : !DESIGNER_EDEFAULT.equals(designer);
			case PatternPackage.PATTERN__DIRECTION:
				return DIRECTION_EDEFAULT == null ? direction != null : !DIRECTION_EDEFAULT.equals(direction);
			case PatternPackage.PATTERN__STITCH_GAUGE:
				return STITCH_GAUGE_EDEFAULT == null ? stitchGauge != null : !STITCH_GAUGE_EDEFAULT.equals(stitchGauge);
			case PatternPackage.PATTERN__ROUND_GAUGE:
				return ROUND_GAUGE_EDEFAULT == null ? roundGauge != null : !ROUND_GAUGE_EDEFAULT.equals(roundGauge);
			case PatternPackage.PATTERN__NOTES:
				return NOTES_EDEFAULT == null ? notes != null : !NOTES_EDEFAULT.equals(notes);
			case PatternPackage.PATTERN__TOE:
				return toe != null;
			case PatternPackage.PATTERN__HEEL:
				return heel != null;
			case PatternPackage.PATTERN__LEG:
				return leg != null;
			case PatternPackage.PATTERN__CUFF:
				return cuff != null;
			case PatternPackage.PATTERN__STITCH_PATTERNS:
				return stitchPatterns != null && !stitchPatterns.isEmpty();
			case PatternPackage.PATTERN__MATERIALS:
				return materials != null;
			case PatternPackage.PATTERN__LENGTHS:
				return lengths != null;
			case PatternPackage.PATTERN__SIZES:
				return sizes != null && !sizes.isEmpty();
			case PatternPackage.PATTERN__OWN_ROWS:
				return ownRows != null && !ownRows.isEmpty();
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
		result.append(" (format: ");
		result.append(format);
		result.append(", title: ");
		result.append(title);
		result.append(", designer: ");
		result.append(designer);
		result.append(", direction: ");
		result.append(direction);
		result.append(", stitchGauge: ");
		result.append(stitchGauge);
		result.append(", roundGauge: ");
		result.append(roundGauge);
		result.append(", notes: ");
		result.append(notes);
		result.append(')');
		return result.toString();
	}

} //PatternImpl
