package turnheel.workbench.editor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.function.IntSupplier;
import java.util.function.Supplier;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.forms.IManagedForm;
import org.eclipse.ui.forms.SectionPart;
import org.eclipse.ui.forms.widgets.ExpandableComposite;
import org.eclipse.ui.forms.widgets.FormToolkit;

import turnheel.workbench.document.GradedDocument;

/** A titled section of the overview with fields for values of the document. */
abstract class DocumentSection extends SectionPart {

    private static final int FIELD_INDENT = 6;

    private final GradedDocument document;
    private final FormToolkit toolkit;
    private final IManagedForm form;
    private final List<DocumentField> fields = new ArrayList<>();

    DocumentSection(Composite parent, IManagedForm form, GradedDocument document, String title) {
        super(parent, form.getToolkit(), ExpandableComposite.TITLE_BAR);
        this.document = document;
        this.toolkit = form.getToolkit();
        this.form = form;
        getSection().setText(title);
        form.addPart(this);
    }

    final GradedDocument document() {
        return document;
    }

    final FormToolkit toolkit() {
        return toolkit;
    }

    /** The section's content, with so many columns. */
    final Composite client(int columns) {
        Composite client = toolkit.createComposite(getSection());
        GridLayoutFactory.fillDefaults().numColumns(columns).margins(2, 4).spacing(8, 6).applyTo(client);
        getSection().setClient(client);
        return client;
    }

    /** A labelled line of text. */
    final Text text(Composite parent, String label, Supplier<String> shown, Consumer<String> take) {
        label(parent, label);
        Text text = new Text(parent, SWT.SINGLE | SWT.BORDER);
        toolkit.adapt(text, true, false);
        GridDataFactory.fillDefaults().grab(true, false).hint(80, SWT.DEFAULT).indent(FIELD_INDENT, 0).applyTo(text);
        fields.add(new TextField(text, label, shown, take, form.getMessageManager(), this::pendingChanged));
        return text;
    }

    /** A labelled choice; where there is one only, it is said and not offered. */
    final <T> void choice(Composite parent, String label, List<T> choices, Function<T, String> word, Supplier<T> shown,
            Consumer<T> take) {
        label(parent, label);
        if (choices.size() == 1) {
            Label only = toolkit.createLabel(parent, word.apply(choices.getFirst()));
            GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).indent(FIELD_INDENT, 0)
                    .applyTo(only);
            return;
        }
        Combo combo = new Combo(parent, SWT.READ_ONLY | SWT.DROP_DOWN);
        toolkit.adapt(combo, true, false);
        combo.setItems(choices.stream().map(word).toArray(String[]::new));
        combo.setVisibleItemCount(choices.size());
        GridDataFactory.fillDefaults().grab(true, false).indent(FIELD_INDENT, 0).applyTo(combo);
        add(() -> combo.select(choices.indexOf(shown.get())));
        combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            T chosen = choices.get(combo.getSelectionIndex());
            if (!chosen.equals(shown.get())) {
                take.accept(chosen);
            }
        }));
    }

    /** A labelled choice among the values of an enumeration. */
    final <T extends Enum<T>> void choice(Composite parent, String label, Class<T> kind, Function<T, String> word,
            Supplier<T> shown, Consumer<T> take) {
        choice(parent, label, Arrays.asList(kind.getEnumConstants()), word, shown, take);
    }

    /** A labelled whole number. */
    final void number(Composite parent, String label, int least, int most, IntSupplier shown, IntConsumer take) {
        label(parent, label);
        Spinner spinner = new Spinner(parent, SWT.BORDER);
        toolkit.adapt(spinner, true, false);
        spinner.setMinimum(least);
        spinner.setMaximum(most);
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).indent(FIELD_INDENT, 0).applyTo(spinner);
        boolean[] refreshing = new boolean[1];
        add(() -> {
            // A value out of range is shown as near as may be; only a person changes the document.
            refreshing[0] = true;
            spinner.setSelection(shown.getAsInt());
            refreshing[0] = false;
        });
        spinner.addModifyListener(event -> {
            if (!refreshing[0] && spinner.getSelection() != shown.getAsInt()) {
                take.accept(spinner.getSelection());
            }
        });
    }

    private void label(Composite parent, String text) {
        Label label = toolkit.createLabel(parent, text);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).applyTo(label);
    }

    /** A field that is never pending: it edits the document as soon as it is touched. */
    private void add(Runnable refresh) {
        fields.add(new DocumentField() {

            @Override
            public boolean isPending() {
                return false;
            }

            @Override
            public boolean commit() {
                return true;
            }

            @Override
            public void reset() {
                // Nothing can be pending.
            }

            @Override
            public void refresh() {
                refresh.run();
            }
        });
        refresh.run();
    }

    /** Forgets the fields, whose widgets are about to be disposed of. */
    final void clearFields() {
        fields.clear();
    }

    private void pendingChanged() {
        form.dirtyStateChanged();
    }

    @Override
    public boolean isDirty() {
        return fields.stream().anyMatch(DocumentField::isPending);
    }

    @Override
    public void commit(boolean onSave) {
        fields.forEach(DocumentField::commit);
    }

    /** Gives up what was typed and not taken over. */
    final void resetPending() {
        fields.forEach(DocumentField::reset);
    }

    @Override
    public void refresh() {
        super.refresh();
        fields.forEach(DocumentField::refresh);
    }
}
