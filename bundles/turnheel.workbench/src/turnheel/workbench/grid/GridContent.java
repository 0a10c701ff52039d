package turnheel.workbench.grid;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

import turnheel.engine.design.Parameter;
import turnheel.engine.design.Part;
import turnheel.engine.grading.Cell;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.grading.Why;
import turnheel.engine.query.Query;
import turnheel.engine.query.Severity;
import turnheel.engine.term.Key;
import turnheel.workbench.document.CellPlace;
import turnheel.workbench.document.CellReason;
import turnheel.workbench.document.Snapshot;

/**
 * What stands where in the grid: the rows of one snapshot under the headings of their parts, a column a size. Which
 * parts are closed is kept from snapshot to snapshot.
 */
final class GridContent {

    private final Set<Part> closed = EnumSet.noneOf(Part.class);
    private Optional<Snapshot> snapshot = Optional.empty();
    private List<GridRow> rows = List.of();

    /**
     * Shows this snapshot from now on.
     *
     * @return whether rows or columns are others than before
     */
    boolean show(Optional<Snapshot> shown) {
        List<String> sizesBefore = sizes().stream().map(GradedSize::label).toList();
        snapshot = shown;
        boolean sameSizes = sizesBefore.equals(sizes().stream().map(GradedSize::label).toList());
        return arrange() || !sameSizes;
    }

    /** Opens a closed part, closes an open one. */
    void toggle(Part part) {
        if (!closed.remove(part)) {
            closed.add(part);
        }
        arrange();
    }

    private boolean arrange() {
        List<GridRow> arranged = new ArrayList<>();
        Part part = null;
        for (Parameter parameter : snapshot.map(shown -> shown.graded().parameters()).orElse(List.of())) {
            boolean isClosed = closed.contains(parameter.part());
            if (parameter.part() != part) {
                part = parameter.part();
                arranged.add(new GridRow.Heading(part, isClosed));
            }
            if (!isClosed) {
                arranged.add(new GridRow.Values(parameter));
            }
        }
        boolean changed = !arranged.equals(rows);
        rows = List.copyOf(arranged);
        return changed;
    }

    List<GridRow> rows() {
        return rows;
    }

    List<GradedSize> sizes() {
        return snapshot.map(shown -> shown.graded().sizes()).orElse(List.of());
    }

    /** The parameter of a row; empty in a heading and outside of the grid. */
    Optional<Parameter> parameter(int row) {
        return row >= 0 && row < rows.size() && rows.get(row) instanceof GridRow.Values(Parameter parameter)
                ? Optional.of(parameter) : Optional.empty();
    }

    /** The size of a column; empty outside of the grid. */
    Optional<GradedSize> size(int column) {
        return column >= 0 && column < sizes().size() ? Optional.of(sizes().get(column)) : Optional.empty();
    }

    /** The number at a place; empty in a heading and where measurements are missing. */
    Optional<Cell> cell(int column, int row) {
        return parameter(row).flatMap(parameter -> size(column).flatMap(size -> size.cell(parameter)));
    }

    /** What a cell is to its reader; empty in a heading and outside of the grid. */
    Optional<CellKind> kind(int column, int row) {
        return parameter(row).flatMap(parameter -> size(column).map(
                size -> CellKind.of(size.cell(parameter), size.size())));
    }

    List<Query> queries(int column, int row) {
        return parameter(row).flatMap(parameter -> size(column).map(
                size -> snapshot.orElseThrow().queries(parameter.key(), size.label()))).orElse(List.of());
    }

    Optional<Severity> severity(int column, int row) {
        return parameter(row).flatMap(parameter -> size(column).flatMap(
                size -> snapshot.orElseThrow().severity(parameter.key(), size.label())));
    }

    /** The number of a size at a place; empty in a heading and outside of the grid. */
    Optional<CellPlace> place(int column, int row) {
        return parameter(row).flatMap(parameter -> size(column).map(
                size -> new CellPlace(parameter.key(), size.label())));
    }

    /** Why the number at a place is what it is; empty where there is none. */
    Optional<Why> why(int column, int row) {
        return place(column, row).flatMap(snapshot.orElseThrow()::why);
    }

    /** What a cell says for itself, in sentences; empty in a heading. */
    List<String> reason(int column, int row) {
        return place(column, row).map(place -> CellReason.lines(snapshot.orElseThrow(), place)).orElse(List.of());
    }

    /** What the row of a key is called, be it one of the catalogue or the designer's own. */
    String label(Key key) {
        return snapshot.orElseThrow().graded().parameter(key).label();
    }

    /** The row of a key, its part opened when it was closed; empty when the pattern has no such row. */
    OptionalInt reveal(Key key) {
        snapshot.stream().flatMap(shown -> shown.graded().parameters().stream())
                .filter(parameter -> parameter.key().equals(key) && closed.contains(parameter.part())).findFirst()
                .ifPresent(parameter -> toggle(parameter.part()));
        for (int row = 0; row < rows.size(); row++) {
            if (rows.get(row) instanceof GridRow.Values(Parameter parameter) && parameter.key().equals(key)) {
                return OptionalInt.of(row);
            }
        }
        return OptionalInt.empty();
    }

    /** The column of a size's label; empty when there is none. */
    OptionalInt column(String size) {
        for (int column = 0; column < sizes().size(); column++) {
            if (sizes().get(column).label().equals(size)) {
                return OptionalInt.of(column);
            }
        }
        return OptionalInt.empty();
    }
}
