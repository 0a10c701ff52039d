package turnheel.engine.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import turnheel.engine.design.AsymmetricToe;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Part;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.ShortRowToe;
import turnheel.engine.design.StarToe;
import turnheel.engine.design.Toe;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.drawing.Shape.Segment;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.shaping.Round;
import turnheel.engine.shaping.RoundKind;
import turnheel.engine.shaping.Rounds;

/**
 * A toe from the side: as wide as its stitches say, taut over the steps that plain rounds leave.
 *
 * @param profile from the foot to the tip: millimetres before the tip, and width there
 * @param lines shaping lines that are seen from this side, as shares of the width from below
 * @param rounding how much of its sides a corner takes
 */
record ToeOutline(SockMeasures sock, List<Point> profile, List<Double> lines, double rounding) {

    private static final double FULL = 0.95;
    private static final double SOFT = 0.8;
    private static final double CRISP = 0.2;

    ToeOutline {
        profile = List.copyOf(profile);
        lines = List.copyOf(lines);
    }

    /** The toe of a size; absent when its rounds do not work out. */
    static Optional<ToeOutline> of(Graded graded, GradedSize size, SockMeasures sock) {
        List<Round> rounds = Rounds.of(graded, size).stream().filter(part -> part.part() == Part.TOE)
                .flatMap(part -> part.rounds().stream()).toList();
        if (rounds.isEmpty()) {
            return Optional.empty();
        }
        Toe toe = graded.design().toe();
        List<Point> profile = switch (toe) {
            case RoundToe round -> counted(rounds, graded.design().direction(), size, sock);
            case WedgeToe wedge -> counted(rounds, graded.design().direction(), size, sock);
            case StarToe star -> counted(rounds, graded.design().direction(), size, sock);
            case AsymmetricToe asymmetric -> counted(rounds, graded.design().direction(), size, sock);
            // the rows of a cup run across it: its sides are folded, not narrowed
            case ShortRowToe shortRow -> List.of(new Point(sock.toeDepth(), sock.footWidth()),
                    new Point(0, sock.footWidth()));
        };
        return Optional.of(new ToeOutline(sock, profile, lines(toe, size), switch (toe) {
            case RoundToe round -> SOFT;
            case StarToe star -> SOFT;
            case ShortRowToe shortRow -> FULL;
            case WedgeToe wedge -> CRISP;
            case AsymmetricToe asymmetric -> CRISP;
        }));
    }

    /** Half of the lines are on this side; the first lies half a section from the fold. */
    private static List<Double> lines(Toe toe, GradedSize size) {
        return switch (toe) {
            case RoundToe round -> spread(size.value(Catalogue.TOE_POINTS));
            case StarToe star -> spread(size.value(Catalogue.TOE_POINTS));
            case WedgeToe wedge -> List.of(0.5);
            case AsymmetricToe asymmetric -> List.of(0.5);
            case ShortRowToe shortRow -> List.of(0.5);
        };
    }

    private static List<Double> spread(double points) {
        List<Double> lines = new ArrayList<>();
        int seen = Math.max(1, (int) points / 2);
        for (int line = 0; line < seen; line++) {
            lines.add((line + 0.5) / seen);
        }
        return lines;
    }

    /** The corners of the taut profile of a toe that is worked in rounds. */
    private static List<Point> counted(List<Round> rounds, Direction direction, GradedSize size, SockMeasures sock) {
        double perStitch = sock.footWidth() / size.value(Catalogue.FOOT_STITCHES);
        List<Round> along = rounds.stream()
                .filter(round -> round.kind() != RoundKind.CAST_ON && round.kind() != RoundKind.GRAFT).toList();
        double perRound = sock.toeDepth() / Math.max(1, along.size());
        boolean toeUp = direction == Direction.TOE_UP;
        List<Point> points = new ArrayList<>();
        points.add(new Point(toeUp ? 0 : sock.toeDepth(),
                perStitch * (toeUp ? rounds.getFirst().stitches() : size.value(Catalogue.FOOT_STITCHES))));
        for (int round = 0; round < along.size(); round++) {
            double done = (round + 1) * perRound;
            points.add(new Point(toeUp ? done : sock.toeDepth() - done, along.get(round).stitches() * perStitch));
        }
        return taut(toeUp ? points.reversed() : points);
    }

    /** What a band shows that is laid over the points: only those at which it bends. */
    private static List<Point> taut(List<Point> points) {
        List<Point> bends = new ArrayList<>();
        for (Point point : points) {
            while (bends.size() > 1 && !bendsAt(bends.get(bends.size() - 2), bends.getLast(), point)) {
                bends.removeLast();
            }
            bends.add(point);
        }
        return bends;
    }

    /** Whether the middle point stands out above the line between its neighbours. */
    private static boolean bendsAt(Point before, Point middle, Point after) {
        double share = (before.x() - middle.x()) / (before.x() - after.x());
        return middle.y() > before.y() + share * (after.y() - before.y()) + 1e-6;
    }

    /** A point of the picture: so far before the tip, at this share of the width there, from below. */
    private Point at(Point profilePoint, double share) {
        double fromMiddle = (share - 0.5) * profilePoint.y();
        return new Point(sock.footLength() - profilePoint.x(), -sock.footWidth() / 2 - fromMiddle);
    }

    /** From the sole round the tip to the instep; the path is at the sole's end. */
    List<Segment> edge() {
        List<Point> points = new ArrayList<>(profile.stream().map(point -> at(point, 0)).toList());
        profile.reversed().forEach(point -> points.add(at(point, 1)));
        return Curves.rounded(points, rounding);
    }

    /** Where the toe begins, and the lines along which it is shaped. */
    List<Shape> details(Pen pen) {
        List<Shape> shapes = new ArrayList<>();
        Point start = profile.getFirst();
        shapes.add(new Shape.Line(at(start, 0), at(start, 1), pen));
        for (double line : lines) {
            List<Point> points = profile.stream().map(point -> at(point, line)).toList();
            shapes.add(Shape.Path.through(points, pen.dashes()));
        }
        return shapes;
    }
}
