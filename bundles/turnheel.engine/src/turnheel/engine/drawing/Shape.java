package turnheel.engine.drawing;

import java.util.ArrayList;
import java.util.List;

/** Something that is painted; in a list, later shapes cover earlier ones. */
public sealed interface Shape {

    /** The rectangle that it stays within; a text's is estimated, generously. */
    Bounds bounds();

    /** The same, scaled about the origin and then moved. */
    Shape placed(double scale, double right, double down);

    /** A straight line. */
    record Line(Point from, Point to, Pen pen) implements Shape {
        @Override
        public Bounds bounds() {
            return Bounds.around(List.of(from, to), pen.width() / 2);
        }

        @Override
        public Line placed(double scale, double right, double down) {
            return new Line(from.times(scale).plus(right, down), to.times(scale).plus(right, down), pen.scaled(scale));
        }
    }

    /** Straight and curved lines, each from where the one before ended. */
    record Path(Point start, List<Segment> segments, boolean closed, Paint paint) implements Shape {
        public Path {
            segments = List.copyOf(segments);
        }

        /** An open line from point to point. */
        static Path through(List<Point> points, Pen pen) {
            return new Path(points.getFirst(),
                    points.stream().skip(1).<Segment>map(Segment.Straight::new).toList(), false, Paint.edged(pen));
        }

        /** A closed shape of straight sides. */
        static Path polygon(List<Point> points, Paint paint) {
            return new Path(points.getFirst(),
                    points.stream().skip(1).<Segment>map(Segment.Straight::new).toList(), true, paint);
        }

        @Override
        public Bounds bounds() {
            // a curve stays within its end points and handles
            List<Point> points = new ArrayList<>(List.of(start));
            segments.forEach(segment -> points.addAll(segment.points()));
            return Bounds.around(points, paint.overhang());
        }

        @Override
        public Path placed(double scale, double right, double down) {
            return new Path(start.times(scale).plus(right, down),
                    segments.stream().map(segment -> segment.placed(scale, right, down)).toList(), closed,
                    paint.scaled(scale));
        }
    }

    /** A piece of a path. */
    sealed interface Segment {

        /** Its handles and its end. */
        List<Point> points();

        Segment placed(double scale, double right, double down);

        /** Straight to a point. */
        record Straight(Point to) implements Segment {
            @Override
            public List<Point> points() {
                return List.of(to);
            }

            @Override
            public Straight placed(double scale, double right, double down) {
                return new Straight(to.times(scale).plus(right, down));
            }
        }

        /** A cubic Bézier curve: it leaves towards the first handle and arrives from the second. */
        record Curve(Point leaving, Point arriving, Point to) implements Segment {
            @Override
            public List<Point> points() {
                return List.of(leaving, arriving, to);
            }

            @Override
            public Curve placed(double scale, double right, double down) {
                return new Curve(leaving.times(scale).plus(right, down), arriving.times(scale).plus(right, down),
                        to.times(scale).plus(right, down));
            }
        }
    }

    /** An upright rectangle; {@code corner} is its left upper one. */
    record Rectangle(Point corner, double width, double height, Paint paint) implements Shape {
        public Rectangle {
            if (!(width >= 0 && height >= 0)) {
                throw new IllegalArgumentException("a rectangle of %s by %s mm has no area".formatted(width, height));
            }
        }

        @Override
        public Bounds bounds() {
            return Bounds.around(List.of(corner, corner.plus(width, height)), paint.overhang());
        }

        @Override
        public Rectangle placed(double scale, double right, double down) {
            return new Rectangle(corner.times(scale).plus(right, down), scale * width, scale * height,
                    paint.scaled(scale));
        }
    }

    /** A circle. */
    record Circle(Point centre, double radius, Paint paint) implements Shape {
        public Circle {
            if (!(radius > 0)) {
                throw new IllegalArgumentException("a circle's radius is above 0 mm, not %s".formatted(radius));
            }
        }

        @Override
        public Bounds bounds() {
            return Bounds.around(List.of(centre), radius + paint.overhang());
        }

        @Override
        public Circle placed(double scale, double right, double down) {
            return new Circle(centre.times(scale).plus(right, down), scale * radius, paint.scaled(scale));
        }
    }

    /**
     * One line of text in a sans-serif face.
     *
     * @param at on the base line, where the anchor says
     * @param size height of a line without leading, in millimetres
     */
    record Text(String text, Point at, double size, Anchor anchor, Weight weight, Ink ink) implements Shape {

        /** Which of its ends lies at the point. */
        public enum Anchor {
            START, MIDDLE, END
        }

        /** How heavy the letters are. */
        public enum Weight {
            REGULAR, BOLD
        }

        private static final double DESCENT = 0.3;

        public Text {
            if (!(size > 0)) {
                throw new IllegalArgumentException("letters are higher than 0 mm, not %s".formatted(size));
            }
        }

        @Override
        public Bounds bounds() {
            double width = TextWidth.of(text, size);
            double left = at.x() - switch (anchor) {
                case START -> 0;
                case MIDDLE -> width / 2;
                case END -> width;
            };
            return new Bounds(left, at.y() - size, left + width, at.y() + DESCENT * size);
        }

        @Override
        public Text placed(double scale, double right, double down) {
            return new Text(text, at.times(scale).plus(right, down), scale * size, anchor, weight, ink);
        }
    }

    /**
     * Shapes that belong together.
     *
     * @param name what they are, for somebody who cannot see them; may be empty
     */
    record Group(String name, List<Shape> shapes) implements Shape {
        public Group {
            shapes = List.copyOf(shapes);
            if (shapes.isEmpty()) {
                throw new IllegalArgumentException("a group needs a shape; \"%s\" has none".formatted(name));
            }
        }

        @Override
        public Bounds bounds() {
            return shapes.stream().map(Shape::bounds).reduce(Bounds::and).orElseThrow();
        }

        @Override
        public Group placed(double scale, double right, double down) {
            return new Group(name, shapes.stream().map(shape -> shape.placed(scale, right, down)).toList());
        }
    }
}
