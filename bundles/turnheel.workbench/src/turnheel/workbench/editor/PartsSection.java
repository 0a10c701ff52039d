package turnheel.workbench.editor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.forms.IManagedForm;

import turnheel.engine.design.LengthMode;
import turnheel.engine.design.Lengths;
import turnheel.model.PartElements;
import turnheel.model.PartKinds;
import turnheel.model.StitchPatternText;
import turnheel.model.pattern.LengthsElement;
import turnheel.model.pattern.PatternPackage.Literals;
import turnheel.model.pattern.StitchPatternElement;
import turnheel.workbench.document.GradedDocument;

/** Which kind of toe, heel, leg and cuff the sock has, and the choices that each kind leaves to the designer. */
final class PartsSection extends DocumentSection {

    private static final int FEWEST_LINES = 2;
    private static final int WIDEST = 12;

    /** A part of the pattern with the kinds that it can be of. */
    private record Slot(EReference reference, String label, List<EClass> kinds) {
    }

    private final List<Slot> slots = List.of(slot(Literals.PATTERN__TOE, Messages.PartsSection_toe),
            slot(Literals.PATTERN__HEEL, Messages.PartsSection_heel), slot(Literals.PATTERN__LEG, Messages.PartsSection_leg),
            slot(Literals.PATTERN__CUFF, Messages.PartsSection_cuff));
    private final Composite client;
    private List<EClass> shownKinds = List.of();

    PartsSection(Composite parent, IManagedForm form, GradedDocument document) {
        super(parent, form, document, Messages.PartsSection_title);
        client = client(2);
        showKinds();
    }

    @Override
    public void refresh() {
        if (!kinds().equals(shownKinds)) {
            showKinds();
            getManagedForm().reflow(true);
        }
        super.refresh();
    }

    private static Slot slot(EReference part, String label) {
        return new Slot(part, label, PartKinds.of(part));
    }

    private List<EClass> kinds() {
        List<EClass> kinds = new ArrayList<>();
        for (Slot slot : slots) {
            EObject element = element(slot);
            kinds.add(element == null ? null : element.eClass());
        }
        return kinds;
    }

    private EObject element(Slot slot) {
        return (EObject) document().pattern().eGet(slot.reference());
    }

    private void showKinds() {
        shownKinds = kinds();
        boolean hadFocus = hasFocus();
        clearFields();
        for (Control control : client.getChildren()) {
            control.dispose();
        }
        for (Slot slot : slots) {
            choice(client, slot.label(), slot.kinds(), ChoiceWords::of,
                    () -> element(slot) == null ? null : element(slot).eClass(), kind -> become(slot, kind));
            if (element(slot) != null) {
                options(slot);
            }
        }
        stitchPatterns();
        lengths();
        client.layout(true, true);
        if (hadFocus) {
            client.setFocus();
        }
    }

    private boolean hasFocus() {
        for (Control control = client.getDisplay().getFocusControl(); control != null; control = control.getParent()) {
            if (control == client) {
                return true;
            }
        }
        return false;
    }

    /** Puts a part of another kind in its place; what both kinds know is kept, as are all overrides. */
    private void become(Slot slot, EClass kind) {
        EObject before = element(slot);
        EObject other = before == null ? EcoreUtil.create(kind) : PartKinds.changed(before, kind);
        document().edit(NLS.bind(Messages.OverviewPage_change_0, slot.label()),
                () -> document().pattern().eSet(slot.reference(), other));
    }

    /** A field for every choice of the part, by what kind of value it is. */
    private void options(Slot slot) {
        for (EAttribute attribute : element(slot).eClass().getEAllAttributes()) {
            String label = ChoiceWords.of(attribute);
            Class<?> type = attribute.getEAttributeType().getInstanceClass();
            if (type.isEnum()) {
                choice(client, label, Arrays.asList(type.getEnumConstants()), value -> ChoiceWords.of((Enum<?>) value),
                        () -> element(slot).eGet(attribute), chosen -> set(slot, attribute, chosen));
            } else if (type == boolean.class) {
                choice(client, label, List.of(false, true), ChoiceWords::of, () -> (Boolean) element(slot).eGet(attribute),
                        chosen -> set(slot, attribute, chosen));
            } else if (type == int.class) {
                int least = attribute == Literals.ROUND_TOE_ELEMENT__LINES ? FEWEST_LINES : 1;
                number(client, label, least, WIDEST, () -> (Integer) element(slot).eGet(attribute),
                        number -> set(slot, attribute, number));
            } else {
                text(client, label, () -> EcoreUtil.convertToString(attribute.getEAttributeType(),
                        element(slot).eGet(attribute)), text -> set(slot, attribute,
                                EcoreUtil.createFromString(attribute.getEAttributeType(), text)));
            }
        }
    }

    private void set(Slot slot, EAttribute attribute, Object value) {
        document().edit(NLS.bind(Messages.OverviewPage_change_0, ChoiceWords.of(attribute)),
                () -> element(slot).eSet(attribute, value));
    }

    /** A document that says nothing of its lengths has them as usual. */
    private void lengths() {
        for (EAttribute attribute : Literals.LENGTHS_ELEMENT.getEAllAttributes()) {
            List<Object> values = Arrays.<Object>stream(
                    attribute.getEAttributeType().getInstanceClass().getEnumConstants())
                    .filter(value -> value != LengthMode.TO_FIT || attribute == Literals.LENGTHS_ELEMENT__FOOT).toList();
            choice(client, ChoiceWords.of(attribute), values, value -> ChoiceWords.of((Enum<?>) value),
                    () -> lengthsElement().eGet(attribute),
                    chosen -> document().edit(NLS.bind(Messages.OverviewPage_change_0, ChoiceWords.of(attribute)), () -> {
                        LengthsElement lengths = lengthsElement();
                        document().pattern().setLengths(lengths);
                        lengths.eSet(attribute, chosen);
                    }));
        }
    }

    private LengthsElement lengthsElement() {
        LengthsElement said = document().pattern().getLengths();
        return said == null ? PartElements.lengths(Lengths.USUAL) : said;
    }

    private void stitchPatterns() {
        text(client, Messages.PartsSection_stitchPatterns,
                () -> StitchPatternText.of(document().pattern().getStitchPatterns()), typed -> {
                    List<StitchPatternElement> elements = StitchPatternText.parse(typed);
                    document().edit(NLS.bind(Messages.OverviewPage_change_0, Messages.PartsSection_stitchPatterns), () -> {
                        document().pattern().getStitchPatterns().clear();
                        document().pattern().getStitchPatterns().addAll(elements);
                    });
                });
    }
}
