package turnheel.engine.drawing;

import java.util.ArrayList;
import java.util.List;

import turnheel.engine.drawing.Shape.Text.Anchor;
import turnheel.engine.drawing.Shape.Text.Weight;

/**
 * Lines that measure a sock, outside it, with arrows at both ends and thin lines back to where they measure from.
 *
 * @param size of the letters, mm; all distances follow from it
 */
record Dimensions(double size) {

    private static final double LEADING = 1.25;

    /** Somewhere to write beside an upright line: what is wanted, before labels are kept apart. */
    record Wish(double from, double to, List<String> lines) {
        Wish {
            lines = List.copyOf(lines);
        }

        double middle() {
            return (from + to) / 2;
        }
    }

    Pen pen() {
        return Pen.of(Ink.DIMENSION, size / 18);
    }

    private Pen thin() {
        return Pen.of(Ink.DIMENSION, size / 32);
    }

    double gap() {
        return size;
    }

    /** A level line from {@code left} to {@code right} at height {@code y}, labelled above or below it. */
    List<Shape> level(double left, double right, double y, double measuredAt, boolean labelBelow, List<String> lines) {
        List<Shape> shapes = new ArrayList<>();
        double past = Math.signum(y - measuredAt) * size / 3;
        for (double x : List.of(left, right)) {
            shapes.add(new Shape.Line(new Point(x, measuredAt + past), new Point(x, y + past), thin()));
        }
        shapes.addAll(arrows(new Point(left, y), new Point(right, y)));
        double first = labelBelow ? y + 1.5 * size : y - size / 2 - (lines.size() - 1) * LEADING * size;
        text(shapes, lines, new Point((left + right) / 2, first), Anchor.MIDDLE);
        return shapes;
    }

    /** A level line on the fabric, labelled above it; the label hides the outlines of other sizes. */
    List<Shape> onFabric(double left, double right, double y, List<String> lines) {
        List<Shape> shapes = new ArrayList<>(arrows(new Point(left, y), new Point(right, y)));
        List<Shape> words = new ArrayList<>();
        Point first = new Point((left + right) / 2, y - size / 2 - (lines.size() - 1) * LEADING * size);
        text(words, lines, first, Anchor.MIDDLE);
        words.forEach(word -> shapes.addAll(onGround(Ink.FABRIC, word)));
        return shapes;
    }

    /** Words that hide what lies behind them. */
    static List<Shape> onGround(Ink ground, Shape words) {
        Bounds around = words.bounds();
        return List.of(new Shape.Rectangle(new Point(around.left(), around.top()), around.width(), around.height(),
                Paint.filled(ground)), words);
    }

    /** Upright lines at {@code x}, each labelled on its left, with labels kept apart. */
    List<Shape> uprightLeft(double x, List<Wish> wishes, List<Double> measuredAt) {
        List<Shape> shapes = new ArrayList<>();
        List<Double> middles = Spread.apart(wishes.stream().map(Wish::middle).toList(),
                wishes.stream().map(wish -> height(wish.lines())).toList());
        for (int i = 0; i < wishes.size(); i++) {
            Wish wish = wishes.get(i);
            for (double y : List.of(wish.from(), wish.to())) {
                shapes.add(new Shape.Line(new Point(measuredAt.get(i) - size / 3, y), new Point(x - size / 3, y),
                        thin()));
            }
            shapes.addAll(arrows(new Point(x, wish.from()), new Point(x, wish.to())));
            text(shapes, wish.lines(), firstLine(x - size / 2, middles.get(i), wish.lines()), Anchor.END);
        }
        return shapes;
    }

    /** One upright line at {@code x}, labelled on its right. */
    List<Shape> uprightRight(double x, double measuredAt, Wish wish) {
        List<Shape> shapes = new ArrayList<>();
        for (double y : List.of(wish.from(), wish.to())) {
            shapes.add(new Shape.Line(new Point(measuredAt + size / 3, y), new Point(x + size / 3, y), thin()));
        }
        shapes.addAll(arrows(new Point(x, wish.from()), new Point(x, wish.to())));
        text(shapes, wish.lines(), firstLine(x + size / 2, wish.middle(), wish.lines()), Anchor.START);
        return shapes;
    }

    private Point firstLine(double x, double middle, List<String> lines) {
        return new Point(x, middle - height(lines) / 2 + size);
    }

    private double height(List<String> lines) {
        return LEADING * size * lines.size();
    }

    /** How much room labels take beside their line. */
    double widest(List<Wish> wishes) {
        return wishes.stream().flatMap(wish -> wish.lines().stream())
                .mapToDouble(line -> TextWidth.of(line, size)).max().orElse(0);
    }

    private void text(List<Shape> shapes, List<String> lines, Point first, Anchor anchor) {
        for (int line = 0; line < lines.size(); line++) {
            shapes.add(new Shape.Text(lines.get(line), first.plus(0, line * LEADING * size), size, anchor,
                    line == 0 ? Weight.BOLD : Weight.REGULAR, Ink.TEXT));
        }
    }

    /** The line itself; on a short one the arrows shrink. */
    private List<Shape> arrows(Point from, Point to) {
        double length = Math.hypot(to.x() - from.x(), to.y() - from.y());
        if (length == 0) {
            return List.of();
        }
        double head = Math.min(size * 0.6, length / 3) / length;
        return List.of(new Shape.Line(from.towards(to, head / 2), to.towards(from, head / 2), pen()),
                arrow(from, to, head), arrow(to, from, head));
    }

    private static Shape arrow(Point tip, Point other, double head) {
        Point base = tip.towards(other, head);
        double acrossX = (base.y() - tip.y()) / 4;
        double acrossY = (tip.x() - base.x()) / 4;
        return Shape.Path.polygon(List.of(tip, base.plus(acrossX, acrossY), base.plus(-acrossX, -acrossY)),
                Paint.filled(Ink.DIMENSION));
    }
}
