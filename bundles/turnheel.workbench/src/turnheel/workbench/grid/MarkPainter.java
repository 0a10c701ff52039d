package turnheel.workbench.grid;

import org.eclipse.nebula.widgets.nattable.config.IConfigRegistry;
import org.eclipse.nebula.widgets.nattable.layer.cell.ILayerCell;
import org.eclipse.nebula.widgets.nattable.painter.cell.TextPainter;
import org.eclipse.nebula.widgets.nattable.style.CellStyleUtil;
import org.eclipse.nebula.widgets.nattable.style.IStyle;
import org.eclipse.swt.graphics.GC;

/** Paints what stands in front of a value: the mark of its kind, and one for what is asked about it. */
final class MarkPainter extends TextPainter {

    /** The mark of a cell of the body. */
    interface Marks {
        String of(int column, int row);
    }

    private final Marks marks;

    MarkPainter(Marks marks) {
        super(false, false);
        this.marks = marks;
    }

    @Override
    protected String convertDataType(ILayerCell cell, IConfigRegistry configRegistry) {
        return marks.of(cell.getColumnIndex(), cell.getRowIndex());
    }

    @Override
    protected boolean renderUnderlined(IStyle cellStyle) {
        return false;
    }

    @Override
    public int getPreferredHeight(ILayerCell cell, GC gc, IConfigRegistry configRegistry) {
        // As high as the value, so that both stand on one base line.
        setupGCFromConfig(gc, CellStyleUtil.getCellStyle(cell, configRegistry));
        return gc.getFontMetrics().getHeight();
    }
}
