package turnheel.workbench.grid;

import org.eclipse.nebula.widgets.nattable.data.IDataProvider;
import org.eclipse.nebula.widgets.nattable.edit.config.DefaultEditConfiguration;
import org.eclipse.nebula.widgets.nattable.grid.layer.ColumnHeaderLayer;
import org.eclipse.nebula.widgets.nattable.grid.layer.DimensionallyDependentLayer;
import org.eclipse.nebula.widgets.nattable.grid.layer.GridLayer;
import org.eclipse.nebula.widgets.nattable.grid.layer.RowHeaderLayer;
import org.eclipse.nebula.widgets.nattable.layer.DataLayer;
import org.eclipse.nebula.widgets.nattable.selection.SelectionLayer;
import org.eclipse.nebula.widgets.nattable.viewport.ViewportLayer;

/** The layers that the table is composed of: a body that scrolls, sizes above it, label and unit beside it. */
final class GridLayers {

    final DataLayer body;
    final DataLayer rowHeader;
    final DataLayer columnHeader;
    final SelectionLayer selection;
    final ViewportLayer viewport;
    final GridLayer grid;

    GridLayers(GridContent content, GridEdits edits) {
        body = new DataLayer(new GridData.Body(content, edits));
        body.setConfigLabelAccumulator((labels, column, row) -> {
            content.severity(column, row).ifPresent(severity -> labels.addLabel(switch (severity) {
                case ERROR -> KindStyles.ERROR;
                case WARNING -> KindStyles.WARNING;
            }));
            labels.addLabel(content.kind(column, row).map(CellKind::configLabel).orElse(KindStyles.HEADING));
        });
        selection = new SelectionLayer(body);
        viewport = new ViewportLayer(selection);

        columnHeader = new DataLayer(new GridData.ColumnHeader(content));
        ColumnHeaderLayer sizes = new ColumnHeaderLayer(columnHeader, viewport, selection);

        rowHeader = new DataLayer(new GridData.RowHeader(content));
        rowHeader.setConfigLabelAccumulator((labels, column, row) -> {
            if (content.parameter(row).isEmpty()) {
                labels.addLabel(KindStyles.HEADING);
            } else if (column == GridData.RowHeader.UNIT) {
                labels.addLabel(KindStyles.UNIT);
            }
        });
        RowHeaderLayer parameters = new RowHeaderLayer(rowHeader, viewport, selection);

        IDataProvider corner = new GridData.Corner();
        grid = new GridLayer(viewport, sizes, parameters,
                new DimensionallyDependentLayer(new DataLayer(corner), parameters, sizes), false);
        grid.addConfiguration(new DefaultEditConfiguration());
    }
}
