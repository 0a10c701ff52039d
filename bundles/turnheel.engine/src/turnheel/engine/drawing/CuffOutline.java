package turnheel.engine.drawing;

import java.util.ArrayList;
import java.util.List;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Cuff;
import turnheel.engine.design.HemCuff;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.RolledCuff;
import turnheel.engine.grading.GradedSize;

/** The cuff from the side: where it begins, and what shows of its kind. */
record CuffOutline(Cuff cuff, GradedSize size, SockMeasures sock, LegOutline leg) {

    /** Lines of ribbing closer than this would run together in print, mm. */
    private static final double CLOSEST = 2.2;
    private static final double OF_A_ROLL = 0.5;

    List<Shape> details(Pen pen) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(new Shape.Line(leg.back(sock.legOnly()), leg.front(sock.legOnly()), pen));
        switch (cuff) {
            case RibCuff rib -> ribs(shapes, rib, pen);
            // the hem is sewn down where it begins; at its top the fabric turns inside
            case HemCuff hem -> shapes.add(across(sock.legOnly() + 0.92 * sock.cuffHeight(), pen.dashes()));
            case RolledCuff rolled -> roll(shapes, pen);
        }
        return shapes;
    }

    private Shape.Line across(double above, Pen pen) {
        return new Shape.Line(leg.back(above), leg.front(above), pen);
    }

    /** One line for each rib that is seen, or for every second, third … where they are too close. */
    private void ribs(List<Shape> shapes, RibCuff rib, Pen pen) {
        int seen = (int) (size.cell(Catalogue.CUFF_STITCHES).map(cell -> cell.value()).orElse(0.0) / rib.repeat() / 2);
        int most = (int) Math.max(1, sock.legTopWidth() / CLOSEST);
        int drawn = seen <= most ? seen : seen / (int) Math.ceil((double) seen / most);
        for (int line = 1; line < drawn; line++) {
            double share = (double) line / drawn;
            shapes.add(new Shape.Line(leg.back(sock.legOnly()).towards(leg.front(sock.legOnly()), share),
                    leg.back(leg.top()).towards(leg.front(leg.top()), share), pen));
        }
    }

    /** The edge rolls outwards, over half of its height. */
    private void roll(List<Shape> shapes, Pen pen) {
        Point back = leg.back(leg.top());
        Point front = leg.front(leg.top());
        double low = OF_A_ROLL * sock.cuffHeight();
        Point lowBack = back.plus(0, low);
        Point lowFront = front.plus(0, low);
        double out = low / 2;
        shapes.add(new Shape.Path(back, List.of(
                new Shape.Segment.Straight(front),
                new Shape.Segment.Curve(front.plus(out, 0), lowFront.plus(out, 0), lowFront),
                new Shape.Segment.Straight(lowBack),
                new Shape.Segment.Curve(lowBack.plus(-out, 0), back.plus(-out, 0), back)), true,
                Paint.of(Ink.FABRIC, pen)));
    }
}
