package turnheel.engine.drawing;

import java.util.Collection;

/**
 * The upright rectangle around something.
 *
 * @throws IllegalArgumentException when right lies left of left, or bottom above top
 */
public record Bounds(double left, double top, double right, double bottom) {

    public Bounds {
        if (!(left <= right && top <= bottom)) {
            throw new IllegalArgumentException(
                    "bounds from %s, %s to %s, %s are no rectangle".formatted(left, top, right, bottom));
        }
    }

    static Bounds around(Collection<Point> points, double overhang) {
        return new Bounds(points.stream().mapToDouble(Point::x).min().orElseThrow() - overhang,
                points.stream().mapToDouble(Point::y).min().orElseThrow() - overhang,
                points.stream().mapToDouble(Point::x).max().orElseThrow() + overhang,
                points.stream().mapToDouble(Point::y).max().orElseThrow() + overhang);
    }

    Bounds and(Bounds other) {
        return new Bounds(Math.min(left, other.left), Math.min(top, other.top), Math.max(right, other.right),
                Math.max(bottom, other.bottom));
    }

    public double width() {
        return right - left;
    }

    public double height() {
        return bottom - top;
    }
}
