package turnheel.engine.drawing;

import java.util.List;

import turnheel.engine.stitch.Step;

/**
 * A stitch chart as squares: the same knitting as written steps, and turned back into them without loss.
 *
 * @param rows in the order of knitting, so from the bottom up; all equally wide
 * @param times how often the repeat of a row is worked; 1 where there is none
 * @throws IllegalArgumentException when there is no row, or rows differ in width
 */
public record Chart(List<ChartRow> rows, int times) {

    public Chart {
        rows = List.copyOf(rows);
        if (rows.isEmpty() || rows.stream().mapToInt(ChartRow::width).distinct().count() != 1) {
            throw new IllegalArgumentException("a chart has rows of one width, not of %s".formatted(
                    rows.stream().map(ChartRow::width).toList()));
        }
    }

    /**
     * The chart of rounds. Where all rounds are made of the same number of repeats, one repeat is charted; a plain
     * round takes part in whatever the others are made of.
     *
     * @param rounds what is worked on each
     * @param firstNumber of the first round
     * @throws IllegalArgumentException when there is no round
     */
    public static Chart ofRounds(List<List<Step>> rounds, int firstNumber) {
        return new RoundChart(rounds, firstNumber).chart();
    }

    /**
     * The chart of flat rows, the first of them on the right side. Rows may turn before their end; stitches keep their
     * columns.
     *
     * @param stitches on the needle before the first row
     * @param rows what is worked on each, numbered from 1
     * @throws IllegalArgumentException when there is no row, or a row takes stitches that are not there
     */
    public static Chart ofRows(int stitches, List<List<Step>> rows) {
        return new RowChart(stitches).chart(rows);
    }

    /** Columns of the chart. */
    public int width() {
        return rows.getFirst().width();
    }

    /** What is worked, row by row. */
    public List<List<Step>> steps() {
        return rows.stream().map(row -> row.steps(times)).toList();
    }

    boolean isFlat() {
        return rows.stream().anyMatch(row -> row.side() != ChartSide.ROUND);
    }
}
