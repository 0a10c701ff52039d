package turnheel.engine.drawing;

import static turnheel.engine.design.Catalogue.HEEL_AFTER_TURN;
import static turnheel.engine.design.Catalogue.HEEL_CENTRE;
import static turnheel.engine.design.Catalogue.HEEL_STITCHES;
import static turnheel.engine.design.Catalogue.HEEL_TIP;

import java.util.ArrayList;
import java.util.List;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.Heel;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.drawing.Shape.Segment;
import turnheel.engine.grading.GradedSize;

/** A heel from the side: the corner between back and sole, and the lines where it meets leg and foot. */
record HeelOutline(Heel heel, Direction direction, GradedSize size, SockMeasures sock) {

    private static final double FULL_CUP = 0.8;
    /** How far a full cup's corner is rounded off, as a share of its diagonal: by the curve's formula. */
    private static final double ROUNDED_OFF = 0.2;
    /** A turn rounds off less than the flap is high. */
    private static final double SHARE_OF_FLAP = 0.6;
    private static final double SQUARE_CORNER = 0.35;

    private Point top() {
        return new Point(0, -sock.heelHeight());
    }

    private Point front() {
        return new Point(sock.heelDepth(), 0);
    }

    /** From the top of the heel's back to where its sole ends; the path is at its top. */
    List<Segment> edge() {
        Point corner = new Point(0, 0);
        return switch (heel) {
            case ShortRowHeel cup -> List.of(Curves.round(top(), corner, front(), FULL_CUP));
            case FlapHeel flap when direction == Direction.TOE_UP -> turned(1);
            case FlapHeel flap -> switch (flap.turn()) {
                case ROUND -> turned(1);
                case SQUARE -> turned(SQUARE_CORNER);
            };
            case AfterthoughtHeel afterthought -> switch (afterthought.cap()) {
                case ROUND -> List.of(Curves.round(top(), corner, front(), Curves.QUARTER_CIRCLE));
                case WEDGE -> wedge();
            };
        };
    }

    private List<Segment> turned(double share) {
        double across = share * sock.heelDepth();
        double up = Math.min(share * sock.heelDepth(), SHARE_OF_FLAP * sock.heelHeight());
        return List.of(new Segment.Straight(new Point(0, -up)),
                Curves.round(new Point(0, -up), new Point(0, 0), new Point(across, 0), Curves.QUARTER_CIRCLE),
                new Segment.Straight(front()));
    }

    /** The cap points out at the corner; its tip is as wide as it is grafted. */
    private List<Segment> wedge() {
        double tip = half(HEEL_TIP) / 2 * Math.sqrt(2);
        return List.of(new Segment.Straight(new Point(0, -Math.min(tip, sock.heelHeight()))),
                new Segment.Straight(new Point(Math.min(tip, sock.heelDepth()), 0)), new Segment.Straight(front()));
    }

    /** Stitches seen from this side, in mm. */
    private double half(Parameter stitches) {
        return size.cell(stitches).map(cell -> cell.value() / size.value(HEEL_STITCHES) * sock.heelWidth()).orElse(0.0);
    }

    /** Where the heel meets leg and foot, and the lines along which it is shaped. */
    List<Shape> details(Pen pen) {
        return switch (heel) {
            case ShortRowHeel cup -> cup(pen, ROUNDED_OFF + half(HEEL_CENTRE) / diagonal());
            case AfterthoughtHeel afterthought -> cup(pen, half(HEEL_TIP) / 2 / diagonal());
            case FlapHeel flap -> switch (direction) {
                case CUFF_DOWN -> flap(pen, half(HEEL_AFTER_TURN),
                        size.cell(Catalogue.HEEL_GUSSET_DECREASES).map(cell -> cell.value()).orElse(0.0));
                case TOE_UP -> flap(pen, half(HEEL_CENTRE),
                        size.cell(Catalogue.HEEL_GUSSET_INCREASES).map(cell -> cell.value()).orElse(0.0));
            };
        };
    }

    private double diagonal() {
        return Math.max(1, Math.hypot(sock.heelDepth(), sock.heelHeight()));
    }

    /**
     * The shaping line runs from the side of the foot to the corner, which the middle stitches go round.
     *
     * @param before the corner it ends, as a share of its way
     */
    private List<Shape> cup(Pen pen, double before) {
        Point side = new Point(sock.heelDepth(), -sock.heelHeight());
        return List.of(Shape.Path.through(List.of(top(), side, front()), pen),
                new Shape.Line(side, new Point(0, 0).towards(side, Math.min(0.9, before)), pen.dashes()));
    }

    /** The flap's top and side, the end of the turn, and the triangle of the gusset beside them. */
    private List<Shape> flap(Pen pen, double middle, double pairs) {
        double perRound = sock.heelDepth() / Math.max(1, size.value(Catalogue.HEEL_TURN_ROWS));
        Point flapTop = new Point(sock.heelWidth(), -sock.heelHeight());
        Point turnEnd = new Point(sock.heelDepth(), -middle);
        Point gussetEnd = new Point(sock.heelDepth() + 2 * pairs * perRound, -sock.heelWidth());
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Shape.Path.through(List.of(top(), flapTop, turnEnd, front()), pen));
        if (pairs > 0) {
            shapes.add(new Shape.Line(flapTop, gussetEnd, pen.dashes()));
        }
        return shapes;
    }
}
