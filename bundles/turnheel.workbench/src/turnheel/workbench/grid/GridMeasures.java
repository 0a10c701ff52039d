package turnheel.workbench.grid;

import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;

import turnheel.engine.grading.Cell;
import turnheel.engine.grading.GradedSize;

/** Widths and heights that follow the font and the text, so that nothing is cut off and nothing gapes. */
final class GridMeasures {

    private static final int ROW_SPACE = 8;
    private static final int COLUMN_SPACE = 18;
    /** Room in a size's column for a mark and a number of three digits with a decimal. */
    private static final String USUAL_CELL = "✎! 888.8"; //$NON-NLS-1$

    private final NatTable table;
    private final GridLayers layers;
    private final GridContent content;

    GridMeasures(NatTable table, GridLayers layers, GridContent content) {
        this.table = table;
        this.layers = layers;
        this.content = content;
    }

    /** Fits rows and columns to the content as it is now. */
    void fit() {
        Font bold = GridTheme.styled(table.getFont(), SWT.BOLD);
        GC gc = new GC(table);
        try {
            gc.setFont(bold);
            int height = gc.getFontMetrics().getHeight() + ROW_SPACE;
            layers.body.setDefaultRowHeight(height);
            layers.rowHeader.setDefaultRowHeight(height);
            layers.columnHeader.setDefaultRowHeight(height);
            for (int column : new int[] { GridData.RowHeader.LABEL, GridData.RowHeader.UNIT }) {
                layers.rowHeader.setColumnWidthByPosition(column, headerWidth(gc, column));
            }
            layers.body.setDefaultColumnWidth(sizeWidth(gc));
        } finally {
            gc.dispose();
        }
    }

    private int headerWidth(GC gc, int column) {
        GridData.RowHeader header = new GridData.RowHeader(content);
        int widest = gc.textExtent((String) new GridData.Corner().getDataValue(column, 0)).x;
        for (int row = 0; row < header.getRowCount(); row++) {
            widest = Math.max(widest, gc.textExtent((String) header.getDataValue(column, row)).x);
        }
        return widest + COLUMN_SPACE;
    }

    private int sizeWidth(GC gc) {
        int widest = gc.textExtent(USUAL_CELL).x;
        for (GradedSize size : content.sizes()) {
            widest = Math.max(widest, gc.textExtent(size.label()).x);
            for (Cell cell : size.cells().values()) {
                widest = Math.max(widest, gc.textExtent("✎! " + CellText.shown(cell)).x); //$NON-NLS-1$
            }
        }
        return widest + COLUMN_SPACE;
    }
}
