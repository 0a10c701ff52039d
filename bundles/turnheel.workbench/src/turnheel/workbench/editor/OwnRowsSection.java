package turnheel.workbench.editor;

import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.forms.IManagedForm;

import turnheel.engine.design.OwnRow;
import turnheel.engine.term.Key;
import turnheel.model.Documents;
import turnheel.model.Door;
import turnheel.model.pattern.OwnRowElement;
import turnheel.workbench.document.GradedDocument;

/** The rows that the designer has computed, each with its formula; here they are added, changed and removed. */
final class OwnRowsSection extends DocumentSection {

    private static final int ROWS = 3;

    private final Table table;
    private final Button edit;
    private final Button remove;

    OwnRowsSection(Composite parent, IManagedForm form, GradedDocument document) {
        super(parent, form, document, Messages.OwnRowsSection_title);
        Composite client = client(2);
        table = table(client);
        Composite buttons = toolkit().createComposite(client);
        GridLayoutFactory.fillDefaults().applyTo(buttons);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.BEGINNING).applyTo(buttons);
        button(buttons, Messages.OwnRowsSection_add, this::add);
        edit = button(buttons, Messages.OwnRowsSection_edit, this::edit);
        remove = button(buttons, Messages.OwnRowsSection_remove, this::remove);
        refresh();
    }

    private Table table(Composite client) {
        Composite holder = toolkit().createComposite(client);
        TableColumnLayout layout = new TableColumnLayout();
        holder.setLayout(layout);
        Table created = toolkit().createTable(holder, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.BORDER);
        created.setHeaderVisible(true);
        GridDataFactory.fillDefaults().grab(true, true).hint(200, created.getItemHeight() * ROWS).applyTo(holder);
        for (String title : List.of(Messages.OwnRowsSection_row, Messages.OwnRowsSection_formula)) {
            TableColumn column = new TableColumn(created, SWT.LEFT);
            column.setText(title);
            layout.setColumnData(column, new ColumnWeightData(1, 80));
        }
        created.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> enableButtons()));
        created.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> edit()));
        created.addKeyListener(KeyListener.keyPressedAdapter(event -> {
            if (event.keyCode == SWT.F2) {
                edit();
            } else if (event.keyCode == SWT.DEL) {
                remove();
            }
        }));
        return created;
    }

    private Button button(Composite buttons, String text, Runnable action) {
        Button button = toolkit().createButton(buttons, text, SWT.PUSH);
        GridDataFactory.fillDefaults().applyTo(button);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
        return button;
    }

    private List<OwnRowElement> rows() {
        return document().pattern().getOwnRows();
    }

    private void add() {
        OwnRowDialog.ask(table.getShell(), Messages.OwnRowsSection_addTitle, null, keysWithout(null)).ifPresent(row -> {
            document().edit(NLS.bind(Messages.OwnRowsSection_addStep_0, row.key()),
                    () -> rows().add(Documents.ownRow(row)));
            select(rows().size() - 1);
        });
    }

    private void edit() {
        selected(element -> OwnRowDialog.ask(table.getShell(), Messages.OwnRowsSection_editTitle, shown(element),
                keysWithout(element)).filter(row -> !row.equals(shown(element))).ifPresent(row -> {
                    int index = rows().indexOf(element);
                    document().edit(NLS.bind(Messages.OwnRowsSection_editStep_0, row.key()),
                            () -> rows().set(index, Documents.ownRow(row)));
                    select(index);
                }));
    }

    private void remove() {
        selected(element -> {
            int index = rows().indexOf(element);
            document().edit(NLS.bind(Messages.OwnRowsSection_removeStep_0, element.getKey()),
                    () -> rows().remove(element));
            select(Math.min(index, rows().size() - 1));
        });
    }

    /** Does it with the row that is selected, if any is. */
    private void selected(Consumer<OwnRowElement> action) {
        int index = table.getSelectionIndex();
        if (index >= 0 && index < rows().size()) {
            action.accept(rows().get(index));
        }
    }

    /** What the fields start with; null, and so empty, for a row of a file that holds no row as it should be. */
    private static OwnRow shown(OwnRowElement element) {
        if (element.getKey() == null || element.getFormula() == null) {
            return null;
        }
        try {
            return Door.ownRow(element);
        } catch (IllegalArgumentException refused) {
            return null;
        }
    }

    private List<Key> keysWithout(OwnRowElement edited) {
        return rows().stream().filter(row -> row != edited).map(OwnRowElement::getKey).filter(Objects::nonNull)
                .toList();
    }

    private void select(int index) {
        table.setSelection(index);
        enableButtons();
    }

    @Override
    public void refresh() {
        super.refresh();
        int selection = table.getSelectionIndex();
        table.setItemCount(rows().size());
        for (int index = 0; index < rows().size(); index++) {
            OwnRowElement row = rows().get(index);
            TableItem item = table.getItem(index);
            boolean unnamed = row.getLabel() == null || row.getLabel().isBlank();
            item.setText(0, unnamed ? String.valueOf(row.getKey()) : row.getLabel());
            item.setText(1, row.getFormula() == null ? "" : row.getFormula()); //$NON-NLS-1$
        }
        if (selection >= 0 && selection < table.getItemCount()) {
            table.setSelection(selection);
        }
        enableButtons();
    }

    private void enableButtons() {
        boolean any = table.getSelectionIndex() >= 0;
        edit.setEnabled(any);
        remove.setEnabled(any);
    }
}
