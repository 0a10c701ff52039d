package turnheel.exchange.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

import turnheel.engine.drawing.Ink;
import turnheel.engine.drawing.Paint;
import turnheel.engine.drawing.Pen;
import turnheel.engine.drawing.Picture;
import turnheel.engine.drawing.Point;
import turnheel.engine.drawing.Shape;
import turnheel.engine.drawing.Shape.Segment;
import turnheel.exchange.typeface.Letters;
import turnheel.exchange.typeface.Typeface;

/**
 * Paints a picture as it is seen on white paper. Words are painted as outlines, so that no surface and no machine sets
 * them otherwise.
 */
final class PicturePainter {

    private static final float DASH = 4;

    private final Graphics2D surface;
    private final Letters letters;

    private PicturePainter(Graphics2D surface, Letters letters) {
        this.surface = surface;
        this.letters = letters;
    }

    /** Paints the ground and every shape; a millimetre of the picture is a unit of the surface. */
    static void paint(Picture picture, Graphics2D surface, Letters letters) {
        surface.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        surface.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        PicturePainter painter = new PicturePainter(surface, letters);
        painter.fill(new Rectangle2D.Double(0, 0, picture.width(), picture.height()), Ink.PAPER);
        picture.shapes().forEach(painter::shape);
    }

    private void shape(Shape shape) {
        switch (shape) {
            case Shape.Line(var from, var to, var pen) ->
                edge(new Line2D.Double(from.x(), from.y(), to.x(), to.y()), pen);
            case Shape.Path path -> paint(course(path), path.paint());
            case Shape.Rectangle(var corner, var width, var height, var paint) ->
                paint(new Rectangle2D.Double(corner.x(), corner.y(), width, height), paint);
            case Shape.Circle(var centre, var radius, var paint) -> paint(new Ellipse2D.Double(centre.x() - radius,
                    centre.y() - radius, 2 * radius, 2 * radius), paint);
            case Shape.Text text -> text(text);
            case Shape.Group(var name, var shapes) -> shapes.forEach(this::shape);
        }
    }

    private void paint(java.awt.Shape area, Paint paint) {
        paint.fill().ifPresent(ink -> fill(area, ink));
        paint.edge().ifPresent(pen -> edge(area, pen));
    }

    private void fill(java.awt.Shape area, Ink ink) {
        surface.setColor(colour(ink));
        surface.fill(area);
    }

    private void edge(java.awt.Shape line, Pen pen) {
        float width = (float) pen.width();
        float[] dashes = pen.dashed() ? new float[] {DASH * width} : null;
        surface.setColor(colour(pen.ink()));
        surface.setStroke(new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 1, dashes, 0));
        surface.draw(line);
    }

    private static Color colour(Ink ink) {
        return Color.decode(Tint.of(ink).onLight());
    }

    private static Path2D course(Shape.Path path) {
        Path2D course = new Path2D.Double();
        course.moveTo(path.start().x(), path.start().y());
        for (Segment segment : path.segments()) {
            switch (segment) {
                case Segment.Straight(var to) -> course.lineTo(to.x(), to.y());
                case Segment.Curve(var leaving, var arriving, var to) -> course.curveTo(leaving.x(), leaving.y(),
                        arriving.x(), arriving.y(), to.x(), to.y());
            }
        }
        if (path.closed()) {
            course.closePath();
        }
        return course;
    }

    private void text(Shape.Text text) {
        Letters.Outlined line = letters.of(text.text(), switch (text.weight()) {
            case REGULAR -> Typeface.PLAIN;
            case BOLD -> Typeface.BOLD;
        });
        Point at = text.at();
        double before = switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> line.width() / 2;
            case END -> line.width();
        };
        AffineTransform placed = AffineTransform.getTranslateInstance(at.x() - before * text.size(), at.y());
        placed.scale(text.size(), text.size());
        fill(placed.createTransformedShape(line.outline()), text.ink());
    }
}
