package turnheel.engine.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;

/**
 * Charts flat rows that may turn anywhere: every loop has its column as long as it lives. New loops get columns of
 * their own between the others; of loops that are worked together the first keeps its column.
 */
final class RowChart {

    private static final class Column {
        private boolean alive = true;
    }

    /** What one row shows, and the column in whose far edge it turns. */
    private record Worked(ChartSide side, Map<Column, Square> squares, Set<Column> alive, Optional<Column> turnsAfter) {
    }

    /** From right to left, the dead ones too. */
    private final List<Column> columns = new ArrayList<>();
    private int cursor;

    RowChart(int stitches) {
        for (int i = 0; i < stitches; i++) {
            columns.add(new Column());
        }
    }

    Chart chart(List<List<Step>> rows) {
        List<Worked> worked = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            worked.add(row(row % 2 == 0 ? ChartSide.RIGHT : ChartSide.WRONG, Runs.unrolled(rows.get(row))));
        }
        List<ChartRow> charted = new ArrayList<>();
        for (int row = 0; row < worked.size(); row++) {
            charted.add(new ChartRow(row + 1, worked.get(row).side(), squares(worked.get(row)), Optional.empty()));
        }
        return new Chart(charted, 1);
    }

    private List<Square> squares(Worked row) {
        List<Square> squares = new ArrayList<>();
        for (Column column : columns) {
            boolean turnsHere = row.turnsAfter().filter(column::equals).isPresent();
            if (turnsHere && row.side() == ChartSide.WRONG) {
                squares.add(new Square.TurnEdge());
            }
            Square square = row.squares().get(column);
            squares.add(square != null ? square
                    : row.alive().contains(column) ? new Square.Waiting() : new Square.NoStitch());
            if (turnsHere && row.side() == ChartSide.RIGHT) {
                squares.add(new Square.TurnEdge());
            }
        }
        return squares;
    }

    private Worked row(ChartSide side, List<Stitch> stitches) {
        Map<Column, Square> squares = new HashMap<>();
        Optional<Column> last = Optional.empty();
        Optional<Column> turnsAfter = Optional.empty();
        for (Stitch stitch : stitches) {
            if (stitch == Stitch.TURN) {
                turnsAfter = last;
            } else if (stitch.takes() == 0 && stitch.leaves() == 0) {
                // it is the stitch beyond the turn that is wrapped
                squares.put(next(side, cursor), new Square.Worked(stitch));
            } else {
                last = Optional.of(work(side, stitch, squares));
            }
        }
        Set<Column> alive = columns.stream().filter(column -> column.alive).collect(Collectors.toSet());
        return new Worked(side, squares, alive, turnsAfter);
    }

    /** The column in which the stitch is shown. */
    private Column work(ChartSide side, Stitch stitch, Map<Column, Square> squares) {
        List<Column> taken = new ArrayList<>();
        for (int i = 0; i < stitch.takes(); i++) {
            Column column = next(side, cursor);
            cursor = columns.indexOf(column) + (side == ChartSide.RIGHT ? 1 : 0);
            taken.add(column);
        }
        for (int i = stitch.leaves(); i < taken.size(); i++) {
            taken.get(i).alive = false;
        }
        for (int i = taken.size(); i < stitch.leaves(); i++) {
            Column made = new Column();
            columns.add(cursor, made);
            cursor += side == ChartSide.RIGHT ? 1 : 0;
            taken.add(made);
        }
        squares.put(taken.getFirst(), new Square.Worked(stitch));
        taken.stream().skip(1).forEach(column -> squares.put(column, new Square.NoStitch()));
        return taken.getFirst();
    }

    /** The next living column beyond the cursor. */
    private Column next(ChartSide side, int from) {
        int step = side == ChartSide.RIGHT ? 1 : -1;
        int at = side == ChartSide.RIGHT ? from : from - 1;
        while (at >= 0 && at < columns.size()) {
            if (columns.get(at).alive) {
                return columns.get(at);
            }
            at += step;
        }
        throw new IllegalArgumentException("a row takes more stitches than there are on the needle");
    }
}
