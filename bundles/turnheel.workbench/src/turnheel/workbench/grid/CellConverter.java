package turnheel.workbench.grid;

import org.eclipse.nebula.widgets.nattable.config.IConfigRegistry;
import org.eclipse.nebula.widgets.nattable.data.convert.ConversionFailedException;
import org.eclipse.nebula.widgets.nattable.data.convert.ContextualDisplayConverter;
import org.eclipse.nebula.widgets.nattable.layer.cell.ILayerCell;

import turnheel.engine.grading.Cell;
import turnheel.workbench.grid.GridEdits.Place;

/** The text of the cells of the body; in the other direction the quantity that a typed text means there. */
final class CellConverter extends ContextualDisplayConverter {

    private final GridEdits edits;
    private final boolean forEditing;

    /** @param forEditing whether entries are written as the designer wrote them, instead of in the unit of the row */
    CellConverter(GridEdits edits, boolean forEditing) {
        this.edits = edits;
        this.forEditing = forEditing;
    }

    @Override
    public Object canonicalToDisplayValue(ILayerCell place, IConfigRegistry registry, Object canonicalValue) {
        if (canonicalValue instanceof Cell cell) {
            return forEditing ? CellText.edited(cell) : CellText.shown(cell);
        }
        return ""; //$NON-NLS-1$
    }

    @Override
    public Object displayToCanonicalValue(ILayerCell place, IConfigRegistry registry, Object displayValue) {
        try {
            return edits.quantity(new Place(place.getColumnIndex(), place.getRowIndex()), String.valueOf(displayValue));
        } catch (IllegalArgumentException refused) {
            throw new ConversionFailedException(refused.getMessage(), refused);
        }
    }
}
