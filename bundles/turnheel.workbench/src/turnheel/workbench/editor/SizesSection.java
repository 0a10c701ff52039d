package turnheel.workbench.editor;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.dialogs.IInputValidator;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.window.Window;
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

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Unit;
import turnheel.engine.grading.Cell;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.term.Notation;
import turnheel.model.Documents;
import turnheel.model.pattern.PatternFactory;
import turnheel.model.pattern.SizeElement;
import turnheel.workbench.document.GradedDocument;
import turnheel.workbench.document.Snapshot;

/** The sizes in their order, each with what it comes to; here they are added, renamed, moved and removed. */
final class SizesSection extends DocumentSection {

    private record Column(String title, Parameter parameter) {
    }

    private static final List<Column> COLUMNS = List.of(
            new Column(Messages.SizesSection_stitches, Catalogue.FOOT_STITCHES),
            new Column(Messages.SizesSection_around, Catalogue.FINISHED_CIRCUMFERENCE),
            new Column(Messages.SizesSection_length, Catalogue.FINISHED_LENGTH));
    private static final int LONGEST_LABEL = 40;
    private static final int ROWS = 8;

    private final Table table;
    private final Button rename;
    private final Button remove;
    private final Button up;
    private final Button down;

    SizesSection(Composite parent, IManagedForm form, GradedDocument document) {
        super(parent, form, document, Messages.SizesSection_title);
        Composite client = client(2);
        table = table(client);
        Composite buttons = toolkit().createComposite(client);
        GridLayoutFactory.fillDefaults().applyTo(buttons);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.BEGINNING).applyTo(buttons);
        button(buttons, Messages.SizesSection_add, this::add);
        rename = button(buttons, Messages.SizesSection_rename, this::rename);
        remove = button(buttons, Messages.SizesSection_remove, this::remove);
        up = button(buttons, Messages.SizesSection_up, () -> move(-1));
        down = button(buttons, Messages.SizesSection_down, () -> move(1));
        refresh();
    }

    private Table table(Composite client) {
        Composite holder = toolkit().createComposite(client);
        TableColumnLayout layout = new TableColumnLayout();
        holder.setLayout(layout);
        Table created = toolkit().createTable(holder, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.BORDER);
        created.setHeaderVisible(true);
        GridDataFactory.fillDefaults().grab(true, true).hint(200, created.getItemHeight() * ROWS).applyTo(holder);
        layout.setColumnData(column(created, Messages.SizesSection_size, Messages.SizesSection_size, SWT.LEFT),
                new ColumnWeightData(2, 40));
        for (Column shown : COLUMNS) {
            layout.setColumnData(column(created, shown.title(), shown.parameter().label(), SWT.RIGHT),
                    new ColumnWeightData(3, 60));
        }
        created.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> enableButtons()));
        created.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> rename()));
        created.addKeyListener(KeyListener.keyPressedAdapter(event -> {
            if (event.keyCode == SWT.F2) {
                rename();
            } else if (event.keyCode == SWT.DEL && remove.isEnabled()) {
                remove();
            }
        }));
        return created;
    }

    private static TableColumn column(Table table, String text, String meaning, int alignment) {
        TableColumn column = new TableColumn(table, alignment);
        column.setText(text);
        column.setToolTipText(meaning);
        return column;
    }

    private Button button(Composite buttons, String text, Runnable action) {
        Button button = toolkit().createButton(buttons, text, SWT.PUSH);
        GridDataFactory.fillDefaults().applyTo(button);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
        return button;
    }

    private List<SizeElement> sizes() {
        return document().pattern().getSizes();
    }

    private Optional<SizeElement> selected() {
        int index = table.getSelectionIndex();
        return index >= 0 && index < sizes().size() ? Optional.of(sizes().get(index)) : Optional.empty();
    }

    private void add() {
        askLabel(Messages.SizesSection_addTitle, "", null).ifPresent(label -> { //$NON-NLS-1$
            SizeElement size = PatternFactory.eINSTANCE.createSizeElement();
            size.setId(Documents.sizeId(label, sizes().stream().map(SizeElement::getId).toList()));
            size.setLabel(label);
            document().edit(NLS.bind(Messages.SizesSection_addStep_0, label), () -> sizes().add(size));
            select(sizes().size() - 1);
        });
    }

    private void rename() {
        selected().ifPresent(size -> askLabel(Messages.SizesSection_renameTitle, size.getLabel(), size).ifPresent(
                label -> document().edit(NLS.bind(Messages.SizesSection_renameStep_0, size.getLabel()),
                        () -> size.setLabel(label))));
    }

    private void remove() {
        selected().ifPresent(size -> {
            int index = table.getSelectionIndex();
            document().edit(NLS.bind(Messages.SizesSection_removeStep_0, size.getLabel()), () -> sizes().remove(size));
            select(Math.min(index, sizes().size() - 1));
        });
    }

    private void move(int by) {
        selected().ifPresent(size -> {
            int target = table.getSelectionIndex() + by;
            document().edit(NLS.bind(Messages.SizesSection_moveStep_0, size.getLabel()),
                    () -> document().pattern().getSizes().move(target, size));
            select(target);
        });
    }

    private void select(int index) {
        table.setSelection(index);
        enableButtons();
    }

    private Optional<String> askLabel(String title, String before, SizeElement renamed) {
        IInputValidator validator = typed -> objection(typed.strip(), renamed);
        InputDialog dialog = new InputDialog(table.getShell(), title, Messages.SizesSection_label, before, validator);
        return dialog.open() == Window.OK && !dialog.getValue().strip().equals(before)
                ? Optional.of(dialog.getValue().strip()) : Optional.empty();
    }

    /** Why a label cannot be taken; null when it can, as the dialog wants it. */
    private String objection(String label, SizeElement renamed) {
        if (label.isEmpty()) {
            return ""; //$NON-NLS-1$
        }
        if (label.length() > LONGEST_LABEL) {
            return NLS.bind(Messages.SizesSection_tooLong_0, LONGEST_LABEL);
        }
        boolean taken = sizes().stream().anyMatch(size -> size != renamed && label.equals(size.getLabel()));
        return taken ? NLS.bind(Messages.SizesSection_taken_0, label) : null;
    }

    @Override
    public void refresh() {
        super.refresh();
        table.setRedraw(false);
        int selection = table.getSelectionIndex();
        table.setItemCount(sizes().size());
        for (int index = 0; index < sizes().size(); index++) {
            SizeElement size = sizes().get(index);
            TableItem item = table.getItem(index);
            item.setText(0, size.getLabel() == null ? "" : size.getLabel()); //$NON-NLS-1$
            for (int column = 0; column < COLUMNS.size(); column++) {
                item.setText(column + 1, number(size, COLUMNS.get(column).parameter()));
            }
        }
        if (selection >= 0 && selection < table.getItemCount()) {
            table.setSelection(selection);
        }
        table.setRedraw(true);
        enableButtons();
    }

    private String number(SizeElement size, Parameter parameter) {
        return document().snapshot().map(Snapshot::graded).stream().flatMap(graded -> graded.sizes().stream())
                .filter(graded -> graded.size().id().equals(size.getId())).findFirst()
                .flatMap((GradedSize graded) -> graded.cell(parameter))
                .map(SizesSection::text).orElse("–"); //$NON-NLS-1$
    }

    private static String text(Cell cell) {
        String number = Notation.number(Math.round(cell.value() * 10) / 10.0);
        return cell.parameter().unit() == Unit.MILLIMETRES ? NLS.bind(Messages.SizesSection_millimetres_0, number)
                : number;
    }

    private void enableButtons() {
        int index = table.getSelectionIndex();
        rename.setEnabled(index >= 0);
        // A pattern without sizes is none.
        remove.setEnabled(index >= 0 && sizes().size() > 1);
        up.setEnabled(index > 0);
        down.setEnabled(index >= 0 && index < sizes().size() - 1);
    }
}
