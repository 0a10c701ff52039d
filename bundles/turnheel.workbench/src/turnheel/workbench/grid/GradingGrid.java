package turnheel.workbench.grid;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.eclipse.core.runtime.ListenerList;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.config.AbstractRegistryConfiguration;
import org.eclipse.nebula.widgets.nattable.config.CellConfigAttributes;
import org.eclipse.nebula.widgets.nattable.config.DefaultNatTableStyleConfiguration;
import org.eclipse.nebula.widgets.nattable.config.IConfigRegistry;
import org.eclipse.nebula.widgets.nattable.config.IEditableRule;
import org.eclipse.nebula.widgets.nattable.coordinate.PositionCoordinate;
import org.eclipse.nebula.widgets.nattable.copy.command.CopyDataToClipboardCommand;
import org.eclipse.nebula.widgets.nattable.edit.EditConfigAttributes;
import org.eclipse.nebula.widgets.nattable.edit.event.InlineCellEditEvent;
import org.eclipse.nebula.widgets.nattable.grid.GridRegion;
import org.eclipse.nebula.widgets.nattable.layer.cell.ILayerCell;
import org.eclipse.nebula.widgets.nattable.selection.SelectionLayer;
import org.eclipse.nebula.widgets.nattable.selection.command.SelectAllCommand;
import org.eclipse.nebula.widgets.nattable.selection.command.SelectCellCommand;
import org.eclipse.nebula.widgets.nattable.selection.event.ISelectionEvent;
import org.eclipse.nebula.widgets.nattable.style.DisplayMode;
import org.eclipse.nebula.widgets.nattable.config.EditableRule;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

import turnheel.engine.design.Parameter;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.term.Key;
import turnheel.workbench.document.CellPlace;
import turnheel.workbench.document.GradedDocument;
import turnheel.workbench.grid.GridEdits.Place;

/**
 * The grading grid of one document: parameters by sizes, edited in place. Follows the document until it is disposed of
 * with its parent.
 */
public final class GradingGrid {

    private final GradedDocument document;
    private final GridFeedback feedback;
    private final GridContent content = new GridContent();
    private final GridEdits edits;
    private final GridLayers layers;
    private final NatTable table;
    private final GridMeasures measures;
    private final ListenerList<Runnable> selectionListeners = new ListenerList<>();

    public GradingGrid(Composite parent, GradedDocument document, GridFeedback feedback) {
        this.document = document;
        this.feedback = feedback;
        content.show(document.snapshot());
        edits = new GridEdits(document, content);
        layers = new GridLayers(content, edits);
        layers.selection.registerCommandHandler(new CopyNumbers(layers.selection));
        table = new NatTable(parent, NatTable.DEFAULT_STYLE_OPTIONS, layers.grid, false);
        table.addConfiguration(new DefaultNatTableStyleConfiguration());
        table.addConfiguration(new CellConfiguration());
        table.addConfiguration(new GridBindings(new Bound()));
        table.configure();
        measures = new GridMeasures(table, layers, content);
        measures.fit();
        new GridThemes(table, this::mark);
        new WhyTooltip(table, content);
        layers.selection.addLayerListener(event -> {
            if (event instanceof ISelectionEvent) {
                selectionListeners.forEach(Runnable::run);
            }
        });
        Runnable follow = this::follow;
        document.addListener(follow);
        table.addDisposeListener(event -> document.removeListener(follow));
    }

    public Control control() {
        return table;
    }

    /** {@code listener} is run when other cells are selected, and when the selected ones changed. */
    public void addSelectionListener(Runnable listener) {
        selectionListeners.add(listener);
    }

    /** What the selected cell says for itself; empty in a heading and when none is selected. */
    public List<String> selectedReason() {
        return selected().map(place -> content.reason(place.column(), place.row())).orElse(List.of());
    }

    /** The parameter of the selected cell. */
    public Optional<Parameter> selectedParameter() {
        return selected().flatMap(place -> content.parameter(place.row()));
    }

    /** The selected cell; empty in a heading and when none is selected. */
    public Optional<CellPlace> selectedPlace() {
        return selected().flatMap(place -> content.place(place.column(), place.row()));
    }

    /** The size of the selected cell. */
    public Optional<GradedSize> selectedSize() {
        return selected().flatMap(place -> content.size(place.column()));
    }

    /**
     * Selects a cell and scrolls to it, its part opened when it was closed.
     *
     * @param size label of the size; the first one when there is none of this label
     * @return whether the pattern has such a row
     */
    public boolean reveal(Key key, String size) {
        int rowsBefore = content.rows().size();
        OptionalInt row = content.reveal(key);
        if (content.rows().size() != rowsBefore) {
            structureChanged();
        }
        row.ifPresent(found -> select(new Place(content.column(size).orElse(0), found)));
        return row.isPresent();
    }

    /** Whether a text stands in a cell that is not in the document yet. */
    public boolean isTyping() {
        return !table.isDisposed() && table.getActiveCellEditor() instanceof QuantityEditor editor && editor.isTyping();
    }

    /** Takes over the text of an open cell editor; one that cannot be taken stays open and says why. */
    public void takeTyped() {
        table.commitAndCloseActiveCellEditor();
    }

    /** Closes an open cell editor; the cell stays as it was. */
    public void giveUpTyped() {
        if (table.getActiveCellEditor() != null) {
            table.getActiveCellEditor().close();
        }
    }

    /** Copies the selected cells as text, tabs between columns. */
    public void copy() {
        table.doCommand(new CopyDataToClipboardCommand("\t", System.lineSeparator(), //$NON-NLS-1$
                table.getConfigRegistry()));
    }

    public void selectAll() {
        table.doCommand(new SelectAllCommand());
    }

    /** Drops the inputs and overrides of the selected cells. */
    public void dropSelected() {
        feedback.clear();
        List<Place> places = Arrays.stream(layers.selection.getSelectedCellPositions())
                .map(position -> new Place(position.getColumnPosition(), position.getRowPosition())).toList();
        if (edits.drop(places) == 0) {
            feedback.refused(selected().flatMap(edits::refusal).orElse(Messages.GradingGrid_nothingToDrop));
        }
    }

    private void follow() {
        Optional<Key> key = selectedParameter().map(Parameter::key);
        Optional<String> size = selectedSize().map(GradedSize::label);
        if (content.show(document.snapshot())) {
            structureChanged();
            key.ifPresent(row -> reveal(row, size.orElse(""))); //$NON-NLS-1$
        } else {
            table.refresh(false);
        }
        selectionListeners.forEach(Runnable::run);
    }

    private void structureChanged() {
        measures.fit();
        table.refresh();
    }

    private Optional<Place> selected() {
        PositionCoordinate anchor = layers.selection.getSelectionAnchor();
        boolean isNone = anchor.getColumnPosition() == SelectionLayer.NO_SELECTION
                || anchor.getRowPosition() >= content.rows().size();
        return isNone ? Optional.empty()
                : Optional.of(new Place(anchor.getColumnPosition(), anchor.getRowPosition()));
    }

    private void select(Place place) {
        table.doCommand(new SelectCellCommand(layers.selection, place.column(), place.row(), false, false));
    }

    /** The marks in front of a value: of its kind, and of what is asked about it. */
    private String mark(int column, int row) {
        String kind = content.kind(column, row).map(CellKind::mark).orElse(""); //$NON-NLS-1$
        return content.severity(column, row).map(severity -> switch (severity) {
            case ERROR -> kind + "‼"; //$NON-NLS-1$
            case WARNING -> kind + "!"; //$NON-NLS-1$
        }).orElse(kind);
    }

    /** How cells turn into text and back, and which of them can be edited. */
    private final class CellConfiguration extends AbstractRegistryConfiguration {

        @Override
        public void configureRegistry(IConfigRegistry registry) {
            registry.registerConfigAttribute(CellConfigAttributes.DISPLAY_CONVERTER, new CellConverter(edits, false),
                    DisplayMode.NORMAL, GridRegion.BODY);
            registry.registerConfigAttribute(CellConfigAttributes.DISPLAY_CONVERTER, new CellConverter(edits, true),
                    DisplayMode.EDIT, GridRegion.BODY);
            IEditableRule editable = new EditableRule() {
                @Override
                public boolean isEditable(int columnIndex, int rowIndex) {
                    return edits.isEditable(new Place(columnIndex, rowIndex));
                }
            };
            registry.registerConfigAttribute(EditConfigAttributes.CELL_EDITABLE_RULE, editable, DisplayMode.EDIT,
                    GridRegion.BODY);
            QuantityEditor editor = new QuantityEditor(feedback);
            registry.registerConfigAttribute(EditConfigAttributes.CELL_EDITOR, editor, DisplayMode.EDIT,
                    GridRegion.BODY);
            registry.registerConfigAttribute(EditConfigAttributes.CONVERSION_ERROR_HANDLER, editor.errors(),
                    DisplayMode.EDIT, GridRegion.BODY);
        }
    }

    private final class Bound implements GridBindings.Actions {

        @Override
        public void edit(Character typed) {
            feedback.clear();
            selected().ifPresent(place -> edits.refusal(place).ifPresentOrElse(feedback::refused,
                    () -> open(place, typed)));
        }

        private void open(Place place, Character typed) {
            if (!edits.isEditable(place)) {
                return;
            }
            // One cell is edited at a time, and it must be in sight.
            select(place);
            ILayerCell cell = layers.selection.getCellByPosition(place.column(), place.row());
            layers.selection.fireLayerEvent(new InlineCellEditEvent(
                    new PositionCoordinate(layers.selection, place.column(), place.row()), table,
                    table.getConfigRegistry(), typed == null ? cell.getDataValue() : typed));
        }

        @Override
        public void drop() {
            dropSelected();
        }

        @Override
        public boolean isHeadingSelected() {
            return selected().filter(place -> isHeading(place.row())).isPresent();
        }

        @Override
        public void toggleSelected() {
            selected().ifPresent(place -> toggle(place.row()));
        }

        @Override
        public boolean isHeading(int row) {
            return row >= 0 && row < content.rows().size() && content.rows().get(row) instanceof GridRow.Heading;
        }

        @Override
        public void toggle(int row) {
            int column = selected().map(Place::column).orElse(0);
            content.toggle(content.rows().get(row).part());
            structureChanged();
            select(new Place(column, row));
        }
    }
}
