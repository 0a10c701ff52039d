package turnheel.engine.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import turnheel.engine.stitch.Stitch;

/**
 * The signs of a chart, which shows the fabric from its right side: a stitch purled on the wrong side has the sign of a
 * knitted one. The common signs are the trade's, as published keys agree on them; where they do not, the legend says
 * what is meant.
 */
enum Symbol {
    KNIT, PURL, KNIT_TWISTED, PURL_TWISTED, SLIP, YARN_OVER, MAKE_ONE, MAKE_PURL, MAKE_LEFT, MAKE_RIGHT, LIFTED_LEFT,
            LIFTED_RIGHT, FRONT_AND_BACK,
    PURL_FRONT_AND_BACK, THREE_TOGETHER_LEFT, THREE_TOGETHER_CENTRED, TWO_TOGETHER_RIGHT, TWO_TOGETHER_LEFT,
            PURL_TWO_TOGETHER, PURL_TWO_TOGETHER_LEFT, THREE_TOGETHER,
    PURL_THREE_TOGETHER, WITH_WRAPS_RIGHT, WITH_WRAPS_LEFT, PICK_UP, FREED_LOOP, CAST_ON, PROVISIONAL_CAST_ON, BIND_OFF,
            SEW_DOWN, WITH_EDGE, GRAFT,
    DRAW_CLOSED, WRAP, WITH_WRAPS, MAKE_TWIN, TWIN, MAKE_DOUBLE, DOUBLE, NO_STITCH, TURN;

    /** Signs that mean another stitch on the wrong side. */
    private static final List<Symbol> BOTH_SIDES = List.of(KNIT, PURL, TWO_TOGETHER_RIGHT, TWO_TOGETHER_LEFT,
            PURL_TWO_TOGETHER, PURL_TWO_TOGETHER_LEFT, THREE_TOGETHER, PURL_THREE_TOGETHER);
    private static final Pen STROKE = Pen.of(Ink.SYMBOL, 0.09);
    private static final Point LOW = new Point(0.5, 0.82);
    private static final Point HIGH = new Point(0.5, 0.18);

    /** The sign of a stitch on a row that is worked from this side. */
    static Symbol of(Stitch stitch, ChartSide side) {
        boolean wrong = side == ChartSide.WRONG;
        return switch (stitch) {
            case KNIT -> wrong ? PURL : KNIT;
            case PURL -> wrong ? KNIT : PURL;
            case SLIP -> SLIP;
            case KNIT_THROUGH_BACK -> KNIT_TWISTED;
            case PURL_THROUGH_BACK -> wrong ? KNIT_TWISTED : PURL_TWISTED;
            case YARN_OVER, BACKWARD_YARN_OVER -> YARN_OVER;
            case MAKE_ONE -> MAKE_ONE;
            case MAKE_ONE_PURL -> MAKE_PURL;
            case MAKE_ONE_LEFT -> MAKE_LEFT;
            case MAKE_ONE_RIGHT -> MAKE_RIGHT;
            case LIFTED_LEFT -> LIFTED_LEFT;
            case LIFTED_RIGHT -> LIFTED_RIGHT;
            case FRONT_AND_BACK -> FRONT_AND_BACK;
            case PURL_FRONT_AND_BACK -> PURL_FRONT_AND_BACK;
            case KNIT_TWO_TOGETHER -> wrong ? PURL_TWO_TOGETHER : TWO_TOGETHER_RIGHT;
            case PURL_TWO_TOGETHER -> wrong ? TWO_TOGETHER_RIGHT : PURL_TWO_TOGETHER;
            case SLIP_SLIP_PURL -> wrong ? TWO_TOGETHER_LEFT : PURL_TWO_TOGETHER_LEFT;
            case SLIP_SLIP_SLIP_KNIT, SLIP_KNIT_TWO_PASS -> THREE_TOGETHER_LEFT;
            case SLIP_TWO_KNIT_PASS -> THREE_TOGETHER_CENTRED;
            case SLIP_SLIP_KNIT, SLIP_KNIT_PASS, KNIT_TWO_TOGETHER_BACK ->
                wrong ? PURL_TWO_TOGETHER_LEFT : TWO_TOGETHER_LEFT;
            case KNIT_THREE_TOGETHER -> wrong ? PURL_THREE_TOGETHER : THREE_TOGETHER;
            case PURL_THREE_TOGETHER -> wrong ? THREE_TOGETHER : PURL_THREE_TOGETHER;
            case PICK_UP_AND_KNIT -> PICK_UP;
            case FREED_LOOP -> FREED_LOOP;
            case CAST_ON -> CAST_ON;
            case PROVISIONAL_CAST_ON -> PROVISIONAL_CAST_ON;
            case BIND_OFF -> BIND_OFF;
            case SEW_DOWN -> SEW_DOWN;
            case KNIT_WITH_EDGE -> WITH_EDGE;
            case GRAFT -> GRAFT;
            case DRAW_CLOSED -> DRAW_CLOSED;
            case TURN -> TURN;
            case WRAP_AND_TURN -> WRAP;
            case KNIT_WITH_WRAPS, PURL_WITH_WRAPS -> WITH_WRAPS;
            case SLIP_SLIP_KNIT_WITH_WRAPS -> WITH_WRAPS_LEFT;
            case PURL_TWO_TOGETHER_WITH_WRAPS -> WITH_WRAPS_RIGHT;
            case TWIN_AND_TURN -> MAKE_TWIN;
            case KNIT_TWIN, PURL_TWIN -> TWIN;
            case DOUBLE_STITCH -> MAKE_DOUBLE;
            case KNIT_DOUBLE, PURL_DOUBLE -> DOUBLE;
        };
    }

    /** The sign of a square; a stitch that only waits has none. */
    static Optional<Symbol> of(Square square, ChartSide side) {
        return switch (square) {
            case Square.Worked(var stitch) -> Optional.of(of(stitch, side));
            case Square.Waiting waiting -> Optional.empty();
            case Square.NoStitch noStitch -> Optional.of(NO_STITCH);
            case Square.TurnEdge turn -> Optional.of(TURN);
        };
    }

    /** What it means, in words. */
    String meaning(boolean flat) {
        return Words.text("symbol." + name() + (flat && BOTH_SIDES.contains(this) ? ".flat" : ""));
    }

    /** Whether the whole square is tinted. */
    boolean isTinted() {
        return this == NO_STITCH;
    }

    /** The sign in a square of side 1; empty for an empty square. */
    List<Shape> shapes() {
        Shape rising = stroke(0.2, 0.82, 0.8, 0.18);
        Shape falling = stroke(0.2, 0.18, 0.8, 0.82);
        return switch (this) {
            case KNIT -> List.of();
            case PURL -> List.of(dot(0.5, 0.5, 0.14));
            case KNIT_TWISTED -> List.of(twisted());
            case PURL_TWISTED -> List.of(twisted(), stroke(0.3, 0.93, 0.7, 0.93));
            case MAKE_ONE -> List.of(letterM());
            case MAKE_PURL -> List.of(letterM(), dot(0.5, 0.8, 0.1));
            case PURL_FRONT_AND_BACK -> List.of(strokes(0.22, 0.15, 0.5, 0.5, 0.78, 0.15), stroke(0.5, 0.5, 0.5, 0.82),
                    dot(0.76, 0.7, 0.1));
            case THREE_TOGETHER_LEFT -> List.of(falling, stroke(0.5, 0.5, 0.24, 0.82));
            case THREE_TOGETHER_CENTRED ->
                List.of(strokes(0.2, 0.82, 0.5, 0.18, 0.8, 0.82), stroke(0.5, 0.18, 0.5, 0.82));
            case SLIP -> List.of(strokes(0.2, 0.2, 0.5, 0.8, 0.8, 0.2));
            case YARN_OVER -> List.of(new Shape.Circle(new Point(0.5, 0.5), 0.28, Paint.edged(STROKE)));
            case MAKE_LEFT -> List.of(letterM(), strokes(0.62, 0.72, 0.38, 0.82, 0.62, 0.92));
            case MAKE_RIGHT -> List.of(letterM(), strokes(0.38, 0.72, 0.62, 0.82, 0.38, 0.92));
            case LIFTED_LEFT -> List.of(stroke(0.72, 0.85, 0.28, 0.15), stroke(0.5, 0.5, 0.72, 0.15));
            case LIFTED_RIGHT -> List.of(stroke(0.28, 0.85, 0.72, 0.15), stroke(0.5, 0.5, 0.28, 0.15));
            case FRONT_AND_BACK -> List.of(strokes(0.22, 0.15, 0.5, 0.5, 0.78, 0.15), stroke(0.5, 0.5, 0.5, 0.82),
                    stroke(0.3, 0.82, 0.7, 0.82));
            case TWO_TOGETHER_RIGHT -> List.of(rising);
            case TWO_TOGETHER_LEFT -> List.of(falling);
            case PURL_TWO_TOGETHER -> List.of(rising, dot(0.72, 0.7, 0.1));
            case PURL_TWO_TOGETHER_LEFT -> List.of(falling, dot(0.28, 0.7, 0.1));
            case THREE_TOGETHER -> List.of(rising, stroke(0.5, 0.5, 0.76, 0.82));
            case PURL_THREE_TOGETHER -> List.of(rising, stroke(0.5, 0.5, 0.76, 0.82), dot(0.28, 0.3, 0.1));
            case WITH_WRAPS_RIGHT -> List.of(rising, ring(0.5, 0.66));
            case WITH_WRAPS_LEFT -> List.of(falling, ring(0.5, 0.66));
            case PICK_UP -> List.of(new Shape.Line(LOW, HIGH, STROKE), strokes(0.3, 0.42, 0.5, 0.18, 0.7, 0.42));
            case FREED_LOOP -> List.of(arc(0.24, 0.78, 0.15, 0.76), stroke(0.16, 0.86, 0.84, 0.86));
            case CAST_ON -> List.of(arc(0.18, 0.5, 0.9, 0.82));
            case PROVISIONAL_CAST_ON -> List.of(arc(0.18, 0.4, 0.8, 0.82), stroke(0.18, 0.84, 0.82, 0.84));
            case BIND_OFF -> List.of(arc(0.18, 0.62, 0.22, 0.82));
            case SEW_DOWN -> List.of(strokes(0.16, 0.75, 0.34, 0.45, 0.5, 0.75, 0.68, 0.45, 0.84, 0.75));
            case WITH_EDGE -> List.of(new Shape.Line(LOW, HIGH, STROKE), stroke(0.2, 0.82, 0.8, 0.82));
            case GRAFT -> List.of(arc(0.18, 0.42, 0.1, 0.82), arc(0.18, 0.58, 0.9, 0.82));
            case DRAW_CLOSED -> List.of(arc(0.18, 0.45, 0.05, 0.82), dot(0.5, 0.68, 0.12));
            case WRAP -> List.of(new Shape.Line(LOW, HIGH, STROKE), ring(0.5, 0.66));
            case WITH_WRAPS -> List.of(ring(0.5, 0.5));
            case MAKE_TWIN -> List.of(stroke(0.36, 0.82, 0.36, 0.18), stroke(0.64, 0.82, 0.64, 0.18));
            case TWIN -> List.of(strokes(0.28, 0.82, 0.5, 0.2, 0.72, 0.82));
            case MAKE_DOUBLE -> List.of(strokes(0.2, 0.15, 0.5, 0.5, 0.8, 0.15),
                    strokes(0.2, 0.5, 0.5, 0.85, 0.8, 0.5));
            case DOUBLE -> List.of(strokes(0.2, 0.5, 0.5, 0.15, 0.8, 0.5),
                    strokes(0.2, 0.85, 0.5, 0.5, 0.8, 0.85));
            case NO_STITCH -> List.of();
            case TURN -> List.of(new Shape.Line(new Point(0, 0), new Point(0, 1), Pen.of(Ink.HIGHLIGHT, 0.18)));
        };
    }

    private static Shape stroke(double fromX, double fromY, double toX, double toY) {
        return new Shape.Line(new Point(fromX, fromY), new Point(toX, toY), STROKE);
    }

    private static Shape strokes(double... places) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < places.length; i += 2) {
            points.add(new Point(places[i], places[i + 1]));
        }
        return Shape.Path.through(points, STROKE);
    }

    private static Shape dot(double x, double y, double radius) {
        return new Shape.Circle(new Point(x, y), radius, Paint.filled(Ink.SYMBOL));
    }

    /** From left to right at one height, pulled to another. */
    private static Shape arc(double left, double ends, double pull, double right) {
        return new Shape.Path(new Point(left, ends), List.of(new Shape.Segment.Curve(new Point(left, pull),
                new Point(right, pull), new Point(right, ends))), false, Paint.edged(STROKE));
    }

    /** A loop seen from the front, lying about a stem. */
    private static Shape ring(double x, double y) {
        double across = 0.3;
        double up = 0.13;
        return new Shape.Path(new Point(x - across, y), List.of(
                new Shape.Segment.Curve(new Point(x - across, y - up * 1.33), new Point(x + across, y - up * 1.33),
                        new Point(x + across, y)),
                new Shape.Segment.Curve(new Point(x + across, y + up * 1.33), new Point(x - across, y + up * 1.33),
                        new Point(x - across, y))), true, Paint.edged(STROKE));
    }

    /** A small loop on two crossed legs. */
    private static Shape twisted() {
        return new Shape.Path(new Point(0.24, 0.84), List.of(
                new Shape.Segment.Curve(new Point(0.5, 0.62), new Point(0.76, 0.42), new Point(0.68, 0.26)),
                new Shape.Segment.Curve(new Point(0.6, 0.1), new Point(0.4, 0.1), new Point(0.32, 0.26)),
                new Shape.Segment.Curve(new Point(0.24, 0.42), new Point(0.5, 0.62), new Point(0.76, 0.84))), false,
                Paint.edged(STROKE));
    }

    private static Shape letterM() {
        return strokes(0.22, 0.62, 0.22, 0.12, 0.5, 0.42, 0.78, 0.12, 0.78, 0.62);
    }
}
