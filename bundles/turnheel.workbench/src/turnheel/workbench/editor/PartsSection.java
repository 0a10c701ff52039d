package turnheel.workbench.editor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.forms.IManagedForm;

import turnheel.engine.design.Increase;
import turnheel.engine.design.SockLength;
import turnheel.engine.design.TurnMethod;
import turnheel.model.pattern.PatternPackage.Literals;
import turnheel.model.pattern.RibCuffElement;
import turnheel.model.pattern.RoundToeElement;
import turnheel.model.pattern.ShortRowHeelElement;
import turnheel.model.pattern.StraightLegElement;
import turnheel.model.pattern.WedgeToeElement;
import turnheel.workbench.document.GradedDocument;

/** Which kind of toe, heel, leg and cuff the sock has, and the choices that each kind leaves to the designer. */
final class PartsSection extends DocumentSection {

    private static final int FEWEST_LINES = 2;
    private static final int WIDEST = 12;

    /** A part of the pattern with the kinds that it can be of. */
    private record Slot(EReference reference, String label, List<EClass> kinds) {
    }

    private final List<Slot> slots = List.of(
            new Slot(Literals.PATTERN__TOE, Messages.PartsSection_toe,
                    Arrays.asList(Literals.ROUND_TOE_ELEMENT, Literals.WEDGE_TOE_ELEMENT)),
            new Slot(Literals.PATTERN__HEEL, Messages.PartsSection_heel,
                    Arrays.asList(Literals.SHORT_ROW_HEEL_ELEMENT)),
            new Slot(Literals.PATTERN__LEG, Messages.PartsSection_leg, Arrays.asList(Literals.STRAIGHT_LEG_ELEMENT)),
            new Slot(Literals.PATTERN__CUFF, Messages.PartsSection_cuff, Arrays.asList(Literals.RIB_CUFF_ELEMENT)));
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
        EObject other = EcoreUtil.create(kind);
        EObject before = element(slot);
        if (before != null) {
            for (EAttribute attribute : kind.getEAllAttributes()) {
                EStructuralFeature same = before.eClass().getEStructuralFeature(attribute.getName());
                if (same != null) {
                    other.eSet(attribute, before.eGet(same));
                }
            }
        }
        document().edit(NLS.bind(Messages.OverviewPage_change_0, slot.label()),
                () -> document().pattern().eSet(slot.reference(), other));
    }

    private void options(Slot slot) {
        switch (element(slot)) {
            case RoundToeElement round -> {
                number(client, Messages.PartsSection_lines, FEWEST_LINES, WIDEST, () -> roundToe(slot).getLines(),
                        lines -> edit(Messages.PartsSection_lines, () -> roundToe(slot).setLines(lines)));
                increase(() -> roundToe(slot).getIncrease(), chosen -> roundToe(slot).setIncrease(chosen));
            }
            case WedgeToeElement wedge -> increase(() -> ((WedgeToeElement) element(slot)).getIncrease(),
                    chosen -> ((WedgeToeElement) element(slot)).setIncrease(chosen));
            case ShortRowHeelElement heel -> choice(client, Messages.PartsSection_turn, TurnMethod.class,
                    ChoiceWords::of, () -> ((ShortRowHeelElement) element(slot)).getTurn(),
                    chosen -> edit(Messages.PartsSection_turn,
                            () -> ((ShortRowHeelElement) element(slot)).setTurn(chosen)));
            case StraightLegElement leg -> choice(client, Messages.PartsSection_length, SockLength.class,
                    ChoiceWords::of, () -> ((StraightLegElement) element(slot)).getLength(),
                    chosen -> edit(Messages.PartsSection_length,
                            () -> ((StraightLegElement) element(slot)).setLength(chosen)));
            case RibCuffElement cuff -> {
                number(client, Messages.PartsSection_knit, 1, WIDEST, () -> rib(slot).getKnit(),
                        stitches -> edit(Messages.PartsSection_knit, () -> rib(slot).setKnit(stitches)));
                number(client, Messages.PartsSection_purl, 1, WIDEST, () -> rib(slot).getPurl(),
                        stitches -> edit(Messages.PartsSection_purl, () -> rib(slot).setPurl(stitches)));
            }
            default -> throw new IllegalStateException(
                    "%s has no fields".formatted(element(slot).eClass().getName())); //$NON-NLS-1$
        }
    }

    private void increase(Supplier<Increase> shown, Consumer<Increase> take) {
        choice(client, Messages.PartsSection_increase, Increase.class, ChoiceWords::of, shown,
                chosen -> edit(Messages.PartsSection_increase, () -> take.accept(chosen)));
    }

    private RoundToeElement roundToe(Slot slot) {
        return (RoundToeElement) element(slot);
    }

    private RibCuffElement rib(Slot slot) {
        return (RibCuffElement) element(slot);
    }

    private void edit(String label, Runnable change) {
        document().edit(NLS.bind(Messages.OverviewPage_change_0, label), change);
    }
}
