package turnheel.exchange.pdf;

import java.awt.Color;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;

import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;

import turnheel.engine.drawing.Ink;
import turnheel.engine.drawing.Paint;
import turnheel.engine.drawing.Pen;
import turnheel.engine.drawing.Picture;
import turnheel.engine.drawing.Point;
import turnheel.engine.drawing.Shape;
import turnheel.engine.drawing.Shape.Segment;
import turnheel.exchange.drawing.Tint;
import turnheel.exchange.typeface.Typeface;

/** A picture as vectors and text, in points of 1/72 inch, to be placed on a page at any scale. */
final class PictureForm {

    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final int ROUND = 1;
    private static final int DASH = 4;
    /** How far the handles of a quarter circle lie from its ends, as a share of the radius. */
    private static final double QUARTER = 4 * (Math.sqrt(2) - 1) / 3;
    private static final int THOUSANDTHS = 1000;

    private final Faces faces;
    private final PDPageContentStream stream;

    private PictureForm(Faces faces, PDPageContentStream stream) {
        this.faces = faces;
        this.stream = stream;
    }

    /** What lies outside of the picture's edges is cut off. */
    static PDFormXObject of(Picture picture, PDDocument file, Faces faces) throws IOException {
        // of the forms that the library offers, the one whose stream tells the file which letters it uses
        PDAppearanceStream form = new PDAppearanceStream(file);
        form.setBBox(new PDRectangle(points(picture.width()), points(picture.height())));
        form.setResources(new PDResources());
        try (OutputStream content = form.getStream().createOutputStream(COSName.FLATE_DECODE);
                PDPageContentStream stream = new PDPageContentStream(file, form, content)) {
            stream.setLineCapStyle(ROUND);
            stream.setLineJoinStyle(ROUND);
            PictureForm painter = new PictureForm(faces, stream);
            for (Shape shape : picture.shapes()) {
                painter.paint(shape.placed(1, 0, -picture.height()));
            }
        }
        return form;
    }

    static float points(double mm) {
        return (float) (mm * POINTS_PER_MM);
    }

    /** A page's height grows upwards. */
    private static float up(double mm) {
        return points(-mm);
    }

    private void paint(Shape shape) throws IOException {
        switch (shape) {
            case Shape.Line(var from, var to, var pen) -> {
                take(new Paint(Optional.empty(), Optional.of(pen)));
                move(from);
                line(to);
                stream.stroke();
            }
            case Shape.Path path -> {
                take(path.paint());
                trace(path);
                finish(path.paint());
            }
            case Shape.Rectangle(var corner, var width, var height, var paint) -> {
                take(paint);
                stream.addRect(points(corner.x()), up(corner.y() + height), points(width), points(height));
                finish(paint);
            }
            case Shape.Circle(var centre, var radius, var paint) -> {
                take(paint);
                trace(centre, radius);
                finish(paint);
            }
            case Shape.Text text -> write(text);
            case Shape.Group group -> {
                for (Shape member : group.shapes()) {
                    paint(member);
                }
            }
        }
    }

    private void move(Point to) throws IOException {
        stream.moveTo(points(to.x()), up(to.y()));
    }

    private void line(Point to) throws IOException {
        stream.lineTo(points(to.x()), up(to.y()));
    }

    private void curve(double leavingX, double leavingY, double arrivingX, double arrivingY, double x, double y)
            throws IOException {
        stream.curveTo(points(leavingX), up(leavingY), points(arrivingX), up(arrivingY), points(x), up(y));
    }

    private void trace(Shape.Path path) throws IOException {
        move(path.start());
        for (Segment segment : path.segments()) {
            switch (segment) {
                case Segment.Straight(var to) -> line(to);
                case Segment.Curve(var leaving, var arriving, var to) ->
                    curve(leaving.x(), leaving.y(), arriving.x(), arriving.y(), to.x(), to.y());
            }
        }
        if (path.closed()) {
            stream.closePath();
        }
    }

    private void trace(Point centre, double radius) throws IOException {
        double x = centre.x();
        double y = centre.y();
        double handle = QUARTER * radius;
        stream.moveTo(points(x + radius), up(y));
        curve(x + radius, y + handle, x + handle, y + radius, x, y + radius);
        curve(x - handle, y + radius, x - radius, y + handle, x - radius, y);
        curve(x - radius, y - handle, x - handle, y - radius, x, y - radius);
        curve(x + handle, y - radius, x + radius, y - handle, x + radius, y);
        stream.closePath();
    }

    /** Colours and pens, which must be chosen before a path begins. */
    private void take(Paint paint) throws IOException {
        if (paint.fill().isPresent()) {
            stream.setNonStrokingColor(colour(paint.fill().get()));
        }
        if (paint.edge().isPresent()) {
            Pen pen = paint.edge().get();
            stream.setStrokingColor(colour(pen.ink()));
            stream.setLineWidth(points(pen.width()));
            stream.setLineDashPattern(pen.dashed() ? new float[] {points(DASH * pen.width())} : new float[0], 0);
        }
    }

    private void finish(Paint paint) throws IOException {
        if (paint.fill().isEmpty()) {
            stream.stroke();
        } else if (paint.edge().isEmpty()) {
            stream.fill();
        } else {
            stream.fillAndStroke();
        }
    }

    private static Color colour(Ink ink) {
        return Color.decode(Tint.of(ink).onLight());
    }

    private void write(Shape.Text text) throws IOException {
        Typeface face = switch (text.weight()) {
            case REGULAR -> Typeface.PLAIN;
            case BOLD -> Typeface.BOLD;
        };
        PDFont font = faces.font(face);
        String printed = faces.printable(face, PrintedText.said(text.text()));
        double width = text.size() * font.getStringWidth(printed) / THOUSANDTHS;
        double left = text.at().x() - switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        };
        stream.setNonStrokingColor(colour(text.ink()));
        stream.beginText();
        stream.setFont(font, points(text.size()));
        stream.newLineAtOffset(points(left), up(text.at().y()));
        stream.showText(printed);
        stream.endText();
    }
}
