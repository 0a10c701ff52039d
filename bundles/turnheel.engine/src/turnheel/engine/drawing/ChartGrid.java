package turnheel.engine.drawing;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import turnheel.engine.drawing.Shape.Text.Anchor;
import turnheel.engine.drawing.Shape.Text.Weight;

/** The squares of one chart with their signs, row numbers and the frame of the repeat. */
final class ChartGrid {

    /** Side of a square, mm: small enough for a page, large enough for a sign to be told from another in print. */
    static final double SIDE = 5;
    private static final double LETTERS = 3.2;
    private static final Pen GRID = Pen.of(Ink.GRID, 0.18);
    private static final Pen FRAME = Pen.of(Ink.HIGHLIGHT, 0.7);

    private final Chart chart;
    private final ChartColumns columns;
    private final Set<Symbol> used = EnumSet.noneOf(Symbol.class);
    private final List<Shape> squares = new ArrayList<>();
    private final List<Shape> signs = new ArrayList<>();
    private final double right;

    /** The lower edge of the first row lies at y 0, the left edge of the grid at x 0. */
    ChartGrid(Chart chart) {
        this.chart = chart;
        this.columns = new ChartColumns(chart);
        this.right = columns.width() * SIDE;
        for (int row = 0; row < chart.rows().size(); row++) {
            row(chart.rows().get(row), -(row + 1) * SIDE);
        }
        gaps();
        frames();
    }

    /** Signs that a legend must explain, in its order. */
    Set<Symbol> used() {
        return Set.copyOf(used);
    }

    boolean leavesSomeOut() {
        return !columns.gaps().isEmpty();
    }

    List<Shape> shapes() {
        List<Shape> shapes = new ArrayList<>(squares);
        shapes.addAll(signs);
        return shapes;
    }

    private void row(ChartRow row, double top) {
        int column = 0;
        List<Square> all = row.squares();
        for (int i = 0; i < all.size(); i++) {
            Square square = all.get(i);
            boolean edge = square instanceof Square.TurnEdge;
            // an edge is drawn at the left of the square on its right
            int at = edge ? column - 1 : column;
            if ((edge || columns.isDrawn(column)) && isReached(row, i)) {
                double x = right - (at < 0 ? 0 : (columns.right(at) + 1) * SIDE);
                Symbol.of(square, row.side()).ifPresent(symbol -> sign(symbol, edge, new Point(x, top)));
            }
            column += edge ? 0 : 1;
        }
        boolean onTheLeft = row.side() == ChartSide.WRONG;
        squares.add(new Shape.Text(Integer.toString(row.number()),
                new Point(onTheLeft ? -LETTERS / 2 : right + LETTERS / 2, top + 0.7 * SIDE), LETTERS,
                onTheLeft ? Anchor.END : Anchor.START, Weight.REGULAR, Ink.TEXT));
    }

    /** Short rows show their shape: beyond their ends no square is drawn, not even one for no stitch. */
    private static boolean isReached(ChartRow row, int square) {
        return row.side() == ChartSide.ROUND || row.squares().get(square) instanceof Square.TurnEdge
                || row.squares().subList(0, square + 1).stream().anyMatch(Square.Worked.class::isInstance)
                && row.squares().subList(square, row.squares().size()).stream()
                        .anyMatch(Square.Worked.class::isInstance);
    }

    private void sign(Symbol symbol, boolean edge, Point corner) {
        used.add(symbol);
        if (!edge) {
            squares.add(square(symbol, corner));
        }
        symbol.shapes().forEach(shape -> signs.add(shape.placed(SIDE, corner.x(), corner.y())));
    }

    private static Shape square(Symbol symbol, Point corner) {
        return new Shape.Rectangle(corner, SIDE, SIDE,
                symbol.isTinted() ? Paint.of(Ink.NO_STITCH, GRID) : Paint.edged(GRID));
    }

    /** One sign in a square, as a legend shows it. */
    static List<Shape> sample(Symbol symbol, Point corner) {
        List<Shape> shapes = new ArrayList<>(List.of(square(symbol, corner)));
        symbol.shapes().forEach(shape -> shapes.add(shape.placed(SIDE, corner.x(), corner.y())));
        return shapes;
    }

    /** What is left out is told above and below its gap, and a row of dots shows that the knitting goes on. */
    private void gaps() {
        double top = -chart.rows().size() * SIDE;
        for (ChartColumns.Gap gap : columns.gaps()) {
            double middle = right - (gap.at() + gap.width() / 2) * SIDE;
            squares.add(new Shape.Text(Words.text("chart.leftOut", Integer.toString(gap.stitches())),
                    new Point(middle, top - LETTERS / 2), LETTERS, Anchor.MIDDLE, Weight.REGULAR, Ink.MUTED));
            for (int row = 0; row < chart.rows().size(); row++) {
                for (int dot = -1; dot <= 1; dot++) {
                    signs.add(new Shape.Circle(new Point(middle + dot * SIDE / 2, -(row + 0.5) * SIDE), 0.25,
                            Paint.filled(Ink.MUTED)));
                }
            }
        }
    }

    /** One frame round neighbours whose repeat fills the same columns; round all columns where it fills the row. */
    private void frames() {
        if (chart.times() == 1) {
            return;
        }
        int rows = chart.rows().size();
        List<Optional<Frame>> frames = chart.rows().stream().map(this::frame).toList();
        int from = 0;
        while (from < rows) {
            int to = from + 1;
            while (to < rows && frames.get(to).equals(frames.get(from))) {
                to++;
            }
            int lowest = from;
            int above = to;
            frames.get(from).ifPresent(frame -> signs.add(new Shape.Rectangle(
                    new Point(frame.left(), -above * SIDE), frame.right() - frame.left(), (above - lowest) * SIDE,
                    Paint.edged(FRAME))));
            from = to;
        }
    }

    /** Left and right edge of a repeat, mm. */
    private record Frame(double left, double right) {
    }

    private Optional<Frame> frame(ChartRow row) {
        return row.repeat().filter(span -> span.squares() > 0).map(span -> {
            boolean fillsTheRow = row.squares().stream().filter(Square.Worked.class::isInstance).count()
                    == row.squares().subList(span.from(), span.end()).stream().filter(Square.Worked.class::isInstance)
                            .count();
            return fillsTheRow ? new Frame(0, right)
                    : new Frame(right - (columns.right(span.end() - 1) + 1) * SIDE,
                            right - columns.right(span.from()) * SIDE);
        });
    }
}
