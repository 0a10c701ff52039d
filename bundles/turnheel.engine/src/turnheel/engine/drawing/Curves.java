package turnheel.engine.drawing;

import java.util.ArrayList;
import java.util.List;

import turnheel.engine.drawing.Shape.Segment;

/** Lines from point to point, straight or smooth. */
final class Curves {

    /** The handles of a quarter circle, as a share of its radius. */
    static final double QUARTER_CIRCLE = 0.5523;

    private Curves() {
    }

    /**
     * From the first point, where the path is, through the others, with corners rounded off.
     *
     * @param share of the sides that each corner takes: 0 leaves it sharp, 1 takes what the next corner leaves
     */
    static List<Segment> rounded(List<Point> points, double share) {
        List<Segment> segments = new ArrayList<>();
        int last = points.size() - 1;
        for (int i = 1; i < last; i++) {
            Point corner = points.get(i);
            // a side between two corners is shared by both
            double before = length(points.get(i - 1), corner) * (i == 1 ? 1 : 0.5);
            double after = length(corner, points.get(i + 1)) * (i == last - 1 ? 1 : 0.5);
            double cut = share * Math.min(before, after);
            if (cut > 0) {
                Point from = corner.towards(points.get(i - 1), cut / length(points.get(i - 1), corner));
                Point to = corner.towards(points.get(i + 1), cut / length(corner, points.get(i + 1)));
                segments.add(new Segment.Straight(from));
                segments.add(round(from, corner, to, QUARTER_CIRCLE));
            } else {
                segments.add(new Segment.Straight(corner));
            }
        }
        segments.add(new Segment.Straight(points.get(last)));
        return segments;
    }

    private static double length(Point from, Point to) {
        return Math.hypot(to.x() - from.x(), to.y() - from.y());
    }

    /** A corner rounded off: towards it, and away from it to a point. {@code fullness} 0 cuts it off, 1 fills it. */
    static Segment round(Point from, Point corner, Point to, double fullness) {
        return new Segment.Curve(from.towards(corner, fullness), to.towards(corner, fullness), to);
    }
}
