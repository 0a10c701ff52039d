package turnheel.engine.drawing;

/**
 * A place in a picture.
 *
 * @param x millimetres to the right
 * @param y millimetres down
 * @throws IllegalArgumentException when either is not a finite number
 */
public record Point(double x, double y) {

    public Point {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("a point lies at two numbers, not at %s, %s".formatted(x, y));
        }
    }

    Point plus(double right, double down) {
        return new Point(x + right, y + down);
    }

    Point times(double scale) {
        return new Point(scale * x, scale * y);
    }

    /** The point at this share of the way to another: 0 is here, 1 is there. */
    Point towards(Point other, double share) {
        return new Point(x + share * (other.x - x), y + share * (other.y - y));
    }
}
