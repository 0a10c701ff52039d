package turnheel.engine.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import turnheel.engine.design.Design;
import turnheel.engine.drawing.Shape.Segment;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;

/**
 * One size's sock from the side, to scale: the back of the heel at x 0, the floor at y 0, the toe to the right, the leg
 * upwards.
 */
record SockOutline(String label, SockMeasures sock, LegOutline leg, HeelOutline heel, ToeOutline toe,
        CuffOutline cuff) {

    private static final double BEND_OF_FOOT = 0.35;
    private static final double SOFT = 0.6;

    /** The outline of a size, or why there is none. */
    sealed interface Drawn {
        record Outline(SockOutline outline) implements Drawn {
        }

        /** @param missing labels of the numbers that are not there; empty where the toe's rounds do not work out */
        record NotDrawn(String label, List<String> missing) implements Drawn {
            public NotDrawn {
                missing = List.copyOf(missing);
            }
        }
    }

    static Drawn of(Graded graded, GradedSize size) {
        Design design = graded.design();
        return switch (SockMeasures.of(graded, size)) {
            case SockMeasures.Taken.Missing(var labels) -> new Drawn.NotDrawn(size.label(), labels);
            case SockMeasures.Taken.Complete(var sock) -> {
                Optional<ToeOutline> toe = ToeOutline.of(graded, size, sock);
                LegOutline leg = new LegOutline(sock);
                yield toe.isEmpty() ? new Drawn.NotDrawn(size.label(), List.of())
                        : new Drawn.Outline(new SockOutline(size.label(), sock, leg,
                                new HeelOutline(design.heel(), design.direction(), size, sock), toe.get(),
                                new CuffOutline(design.cuff(), size, sock, leg)));
            }
        };
    }

    /** The closed edge of the sock. */
    Shape.Path edge(Paint paint) {
        List<Segment> segments = new ArrayList<>();
        Point top = leg.back(leg.top());
        segments.addAll(Curves.rounded(leg.bends().reversed().stream().map(leg::back).toList(), SOFT));
        segments.addAll(heel.edge());
        segments.add(new Segment.Straight(new Point(Math.max(sock.heelDepth(), sock.toeStart()), 0)));
        segments.addAll(toe.edge());
        frontOfLeg(segments);
        return new Shape.Path(top, segments, true, paint);
    }

    /** The instep turns up into the leg in a curve, as far as foot and leg leave room for it; then up the leg. */
    private void frontOfLeg(List<Segment> segments) {
        Point corner = new Point(leg.front(0).x(), -sock.footWidth());
        double room = Math.max(0, Math.min(sock.toeStart() - corner.x(), BEND_OF_FOOT * sock.footWidth()));
        double bend = Math.min(room, leg.top() / 2);
        Point before = corner.plus(room, 0);
        segments.add(new Segment.Straight(before));
        segments.add(Curves.round(before, corner, leg.front(bend), Curves.QUARTER_CIRCLE));
        List<Point> up = new ArrayList<>(List.of(leg.front(bend)));
        leg.bends().stream().filter(height -> height > bend).map(leg::front).forEach(up::add);
        segments.addAll(Curves.rounded(up, SOFT));
    }

    /** What is seen on the sock: where its parts meet and how they are shaped. */
    List<Shape> details(Pen pen) {
        List<Shape> shapes = new ArrayList<>(heel.details(pen));
        shapes.addAll(toe.details(pen));
        shapes.addAll(cuff.details(pen));
        return shapes;
    }
}
