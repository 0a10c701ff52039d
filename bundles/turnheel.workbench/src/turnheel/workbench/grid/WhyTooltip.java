package turnheel.workbench.grid;

import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.grid.GridRegion;
import org.eclipse.nebula.widgets.nattable.layer.cell.ILayerCell;
import org.eclipse.nebula.widgets.nattable.tooltip.NatTableContentTooltip;
import org.eclipse.swt.widgets.Event;

import turnheel.engine.design.Parameter;

/** Says of a cell why it is what it is and what is asked about it; of a parameter what it means. */
final class WhyTooltip extends NatTableContentTooltip {

    private final GridContent content;

    WhyTooltip(NatTable table, GridContent content) {
        super(table, GridRegion.BODY, GridRegion.ROW_HEADER);
        this.content = content;
    }

    @Override
    protected String getText(Event event) {
        ILayerCell cell = natTable.getCellByPosition(natTable.getColumnPositionByX(event.x),
                natTable.getRowPositionByY(event.y));
        if (cell == null || natTable.getRegionLabelsByXY(event.x, event.y) == null) {
            return null;
        }
        int row = cell.getRowIndex();
        String text = natTable.getRegionLabelsByXY(event.x, event.y).hasLabel(GridRegion.ROW_HEADER)
                ? content.parameter(row).map(WhyTooltip::meaning).orElse("") //$NON-NLS-1$
                : String.join("\n", content.reason(cell.getColumnIndex(), row)); //$NON-NLS-1$
        return text.isEmpty() ? null : text;
    }

    private static String meaning(Parameter parameter) {
        return parameter.description() + "\n" + parameter.key(); //$NON-NLS-1$
    }
}
