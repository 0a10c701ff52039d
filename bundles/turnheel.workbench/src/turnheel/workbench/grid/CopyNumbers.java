package turnheel.workbench.grid;

import org.eclipse.nebula.widgets.nattable.copy.command.CopyDataCommandHandler;
import org.eclipse.nebula.widgets.nattable.copy.command.CopyDataToClipboardCommand;
import org.eclipse.nebula.widgets.nattable.copy.serializing.CopyDataToClipboardSerializer;
import org.eclipse.nebula.widgets.nattable.layer.cell.ILayerCell;
import org.eclipse.nebula.widgets.nattable.selection.SelectionLayer;

import turnheel.engine.grading.Cell;

/** Copies the selected cells as text, tabs between columns, with numbers that a spreadsheet program reads as such. */
final class CopyNumbers extends CopyDataCommandHandler {

    CopyNumbers(SelectionLayer selectionLayer) {
        super(selectionLayer);
    }

    @Override
    protected void internalDoCommand(CopyDataToClipboardCommand command, ILayerCell[][] cells) {
        if (cells == null) {
            return;
        }
        new CopyDataToClipboardSerializer(cells, command) {
            @Override
            protected String getTextForCell(ILayerCell cell) {
                return cell.getDataValue() instanceof Cell number ? CellText.plain(number) : ""; //$NON-NLS-1$
            }
        }.serialize();
    }
}
