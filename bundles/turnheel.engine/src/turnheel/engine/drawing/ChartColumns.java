package turnheel.engine.drawing;

import java.util.ArrayList;
import java.util.List;

import turnheel.engine.stitch.Stitch;

/**
 * Which columns of a chart are drawn, and where: a long plain stretch in which nothing ever happens is left out but for
 * its ends, and its number of stitches is told.
 */
final class ChartColumns {

    /** Plain columns from which leaving some out saves more than it costs in clearness. */
    private static final int LONG = 12;
    private static final int KEPT = 3;
    private static final double GAP = 2;

    /** A stretch that is left out, at the right edge of its gap, in squares from the right. */
    record Gap(double at, int stitches) {
        double width() {
            return GAP;
        }
    }

    private final double[] rights;
    private final boolean[] drawn;
    private final List<Gap> gaps = new ArrayList<>();
    private final double width;

    ChartColumns(Chart chart) {
        int columns = chart.width();
        rights = new double[columns];
        drawn = new boolean[columns];
        boolean[] plain = plain(chart);
        double at = 0;
        int column = 0;
        while (column < columns) {
            int end = column;
            while (end < columns && plain[end]) {
                end++;
            }
            if (end - column >= LONG) {
                at = draw(column, column + KEPT, at);
                gaps.add(new Gap(at, end - column - 2 * KEPT));
                at = draw(end - KEPT, end, at + GAP);
                column = end;
            } else {
                at = draw(column, Math.max(end, column + 1), at);
                column = Math.max(end, column + 1);
            }
        }
        width = at;
    }

    private double draw(int from, int to, double at) {
        for (int column = from; column < to; column++) {
            drawn[column] = true;
            rights[column] = at + column - from;
        }
        return at + to - from;
    }

    /** Columns in which every row has a knitted stitch; rows that turn can leave none out. */
    private static boolean[] plain(Chart chart) {
        boolean[] plain = new boolean[chart.width()];
        if (chart.isFlat()) {
            return plain;
        }
        for (int column = 0; column < plain.length; column++) {
            int at = column;
            plain[column] = chart.rows().stream()
                    .allMatch(row -> row.squares().get(at).equals(new Square.Worked(Stitch.KNIT)));
        }
        return plain;
    }

    boolean isDrawn(int column) {
        return drawn[column];
    }

    /** The right edge of a column, in squares from the right edge of the chart. */
    double right(int column) {
        return rights[column];
    }

    List<Gap> gaps() {
        return List.copyOf(gaps);
    }

    /** Of all that is drawn, in squares. */
    double width() {
        return width;
    }
}
