package turnheel.workbench.grid;

import org.eclipse.nebula.widgets.nattable.data.IDataProvider;

import turnheel.engine.design.Quantity;
import turnheel.workbench.grid.GridEdits.Place;

/** The content of the grid's regions in the form that the table asks for. */
final class GridData {

    private GridData() {
    }

    /** Numbers; a new one becomes an edit of the document. */
    record Body(GridContent content, GridEdits edits) implements IDataProvider {

        @Override
        public Object getDataValue(int columnIndex, int rowIndex) {
            return content.cell(columnIndex, rowIndex).orElse(null);
        }

        @Override
        public void setDataValue(int columnIndex, int rowIndex, Object newValue) {
            edits.set(new Place(columnIndex, rowIndex), (Quantity) newValue);
        }

        @Override
        public int getColumnCount() {
            return content.sizes().size();
        }

        @Override
        public int getRowCount() {
            return content.rows().size();
        }
    }

    /** The labels of the sizes. */
    record ColumnHeader(GridContent content) implements IDataProvider {

        @Override
        public Object getDataValue(int columnIndex, int rowIndex) {
            return content.size(columnIndex).orElseThrow().label();
        }

        @Override
        public void setDataValue(int columnIndex, int rowIndex, Object newValue) {
            throw new UnsupportedOperationException("a size is renamed in the overview"); //$NON-NLS-1$
        }

        @Override
        public int getColumnCount() {
            return content.sizes().size();
        }

        @Override
        public int getRowCount() {
            return 1;
        }
    }

    /** Label and unit of the rows; these two columns do not scroll sideways. */
    record RowHeader(GridContent content) implements IDataProvider {

        static final int LABEL = 0;
        static final int UNIT = 1;

        @Override
        public Object getDataValue(int columnIndex, int rowIndex) {
            GridRow row = content.rows().get(rowIndex);
            return switch (row) {
                case GridRow.Heading(var part, var closed) when columnIndex == LABEL ->
                    (closed ? "▸ " : "▾ ") + row.label(); //$NON-NLS-1$ //$NON-NLS-2$
                case GridRow.Heading heading -> ""; //$NON-NLS-1$
                case GridRow.Values(var parameter) -> columnIndex == LABEL ? row.label() : parameter.unit().symbol();
            };
        }

        @Override
        public void setDataValue(int columnIndex, int rowIndex, Object newValue) {
            throw new UnsupportedOperationException("labels and units are the catalogue's"); //$NON-NLS-1$
        }

        @Override
        public int getColumnCount() {
            return 2;
        }

        @Override
        public int getRowCount() {
            return content.rows().size();
        }
    }

    /** What stands over label and unit. */
    record Corner() implements IDataProvider {

        @Override
        public Object getDataValue(int columnIndex, int rowIndex) {
            return columnIndex == RowHeader.LABEL ? Messages.GridData_parameter : Messages.GridData_unit;
        }

        @Override
        public void setDataValue(int columnIndex, int rowIndex, Object newValue) {
            throw new UnsupportedOperationException("headers are not edited"); //$NON-NLS-1$
        }

        @Override
        public int getColumnCount() {
            return 2;
        }

        @Override
        public int getRowCount() {
            return 1;
        }
    }
}
