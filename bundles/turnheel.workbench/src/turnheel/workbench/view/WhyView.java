package turnheel.workbench.view;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Text;

import turnheel.engine.grading.Graded;
import turnheel.engine.grading.Why;
import turnheel.engine.term.Key;
import turnheel.workbench.document.CellPlace;
import turnheel.workbench.document.CellReason;

/**
 * Why the selected number is what it is: its derivation with the values filled in, what it was made from and what
 * follows from it, each a link to its cell.
 */
public final class WhyView extends PatternView {

    public static final String ID = "turnheel.workbench.whyView"; //$NON-NLS-1$

    private Text derivation;
    private Label basisLabel;
    private Link basis;
    private Label dependentsLabel;
    private Link dependents;

    @Override
    protected void createContent(Composite parent) {
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(8, 8).spacing(4, 4).applyTo(area);
        derivation = new Text(area, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(true, true).hint(200, 60).applyTo(derivation);
        basisLabel = label(area, Messages.WhyView_basis);
        basis = link(area);
        dependentsLabel = label(area, Messages.WhyView_dependents);
        dependents = link(area);
    }

    private static Label label(Composite parent, String text) {
        Label label = new Label(parent, SWT.NONE);
        label.setText(text);
        GridDataFactory.fillDefaults().applyTo(label);
        return label;
    }

    private Link link(Composite parent) {
        Link link = new Link(parent, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(200, SWT.DEFAULT).applyTo(link);
        link.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> subject().ifPresent(subject ->
                subject.place().ifPresent(place ->
                        subject.editor().show(new CellPlace(new Key(event.text), place.size()))))));
        return link;
    }

    @Override
    protected void show(Subject subject) {
        Optional<CellPlace> place = subject.place();
        Optional<Why> why = place.flatMap(subject.snapshot()::why);
        derivation.setText(place.map(cell -> String.join("\n", CellReason.lines(subject.snapshot(), cell))) //$NON-NLS-1$
                .orElse(Messages.WhyView_hint));
        links(basisLabel, basis, subject.graded(), why.map(Why::basis).orElse(List.of()));
        links(dependentsLabel, dependents, subject.graded(), why.map(Why::dependents).orElse(List.of()));
        derivation.getParent().layout();
    }

    private static void links(Label label, Link link, Graded graded, List<Key> keys) {
        link.setText(String.join(", ", keys.stream() //$NON-NLS-1$
                .map(key -> "<a href=\"%s\">%s</a>".formatted(key.name(), //$NON-NLS-1$
                        escaped(graded.parameter(key).label()))).toList()));
        for (Control control : List.of(label, link)) {
            control.setVisible(!keys.isEmpty());
            ((GridData) control.getLayoutData()).exclude = keys.isEmpty();
        }
    }

    /** A designer's own label is no markup. */
    private static String escaped(String label) {
        return label.replace('<', '‹').replace('>', '›');
    }

    @Override
    public void setFocus() {
        derivation.setFocus();
    }
}
