package turnheel.engine.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;

/**
 * A row of a chart.
 *
 * @param number as patterns count it, from 1
 * @param squares from right to left, as the chart is seen
 * @param repeat the squares that stand for the whole repeat; absent where every stitch has its own
 */
public record ChartRow(int number, ChartSide side, List<Square> squares, Optional<Span> repeat) {

    /** Some squares of a row: from the {@code from}th on, counted from the right from 0. */
    public record Span(int from, int squares) {
        int end() {
            return from + squares;
        }
    }

    public ChartRow {
        squares = List.copyOf(squares);
    }

    /** Columns that the row fills. */
    int width() {
        return (int) squares.stream().filter(square -> !(square instanceof Square.TurnEdge)).count();
    }

    /**
     * What is worked in this row.
     *
     * @param times how often a repeat is worked
     */
    List<Step> steps(int times) {
        if (repeat.isEmpty()) {
            return steps(worked(0, squares.size()));
        }
        Span span = repeat.get();
        List<Step> steps = new ArrayList<>(steps(worked(0, span.from())));
        List<Step> repeated = steps(worked(span.from(), span.end()));
        if (!repeated.isEmpty()) {
            steps.add(new Step.Repeat(repeated, times));
        }
        steps.addAll(steps(worked(span.end(), squares.size())));
        return Runs.joined(steps);
    }

    /** The stitches of some squares, in the order of working. */
    private List<Stitch> worked(int from, int to) {
        List<Stitch> stitches = new ArrayList<>();
        for (Square square : squares.subList(from, to)) {
            switch (square) {
                case Square.Worked(var stitch) -> stitches.add(stitch);
                case Square.TurnEdge turn -> stitches.add(Stitch.TURN);
                case Square.Waiting waiting -> { }
                case Square.NoStitch noStitch -> { }
            }
        }
        return side == ChartSide.WRONG ? stitches.reversed() : stitches;
    }

    private static List<Step> steps(List<Stitch> stitches) {
        return Runs.joined(stitches.stream().<Step>map(stitch -> new Step.Work(stitch, 1)).toList());
    }
}
