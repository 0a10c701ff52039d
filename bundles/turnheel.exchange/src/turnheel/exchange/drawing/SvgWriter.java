package turnheel.exchange.drawing;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

import turnheel.engine.drawing.Ink;
import turnheel.engine.drawing.Paint;
import turnheel.engine.drawing.Pen;
import turnheel.engine.drawing.Picture;
import turnheel.engine.drawing.Point;
import turnheel.engine.drawing.Shape;
import turnheel.engine.drawing.Shape.Segment;
import turnheel.engine.drawing.Shape.Text.Weight;
import turnheel.exchange.markup.XmlText;

/**
 * Writes a picture as SVG 1.1 with units of a millimetre: words are text, colours are classes of a small style sheet
 * that knows light and dark surroundings. The same picture gives the same bytes.
 */
public final class SvgWriter {

    private static final int DECIMALS = 3;
    private static final String FACE = "'Noto Sans','DejaVu Sans',Arial,Helvetica,sans-serif";

    private final StringBuilder svg = new StringBuilder();
    private final Set<Ink> lines = EnumSet.noneOf(Ink.class);
    private final Set<Ink> areas = EnumSet.noneOf(Ink.class);

    private SvgWriter() {
    }

    /** Writes one file; the stream is not closed. */
    public static void write(Picture picture, OutputStream out) throws IOException {
        out.write(text(picture).getBytes(StandardCharsets.UTF_8));
    }

    private static String text(Picture picture) {
        SvgWriter body = new SvgWriter();
        picture.shapes().forEach(body::shape);
        String width = number(picture.width());
        String height = number(picture.height());
        return """
                <?xml version="1.0" encoding="UTF-8"?>
                <svg xmlns="http://www.w3.org/2000/svg" version="1.1" role="img" lang="en" \
                width="%smm" height="%smm" viewBox="0 0 %s %s">
                <title>%s</title>
                <desc>%s</desc>
                <style>
                %s</style>
                <rect class="pic-paper" width="%s" height="%s"/>
                %s</svg>
                """.formatted(width, height, width, height, XmlText.escaped(picture.title()),
                XmlText.escaped(picture.description()), body.style(), width, height, body.svg);
    }

    /**
     * A picture as an element of a page that holds {@link #pageStyle}. It shrinks to the room that the page gives it.
     *
     * @param id begins the ids of its title and description; unique in the page
     */
    public static String element(Picture picture, String id) {
        SvgWriter body = new SvgWriter();
        picture.shapes().forEach(body::shape);
        String width = number(picture.width());
        String height = number(picture.height());
        return """
                <svg xmlns="http://www.w3.org/2000/svg" role="img" aria-labelledby="%s-title" \
                aria-describedby="%s-desc" width="%smm" height="%smm" viewBox="0 0 %s %s" \
                preserveAspectRatio="xMinYMin meet">
                <title id="%s-title">%s</title>
                <desc id="%s-desc">%s</desc>
                <rect class="pic-paper" width="%s" height="%s"/>
                %s</svg>
                """.formatted(id, id, width, height, width, height, id, XmlText.escaped(picture.title()), id,
                XmlText.escaped(picture.description()), width, height, body.svg);
    }

    /**
     * The rules for all elements of a page. Colours are custom properties such as {@code --outline}, which the page can
     * use too; on a screen they follow its scheme, on paper they are the light ones.
     */
    public static String pageStyle() {
        StringBuilder rules = new StringBuilder(":root{").append(properties(false))
                .append("}\n@media screen and (prefers-color-scheme:dark){:root{").append(properties(true))
                .append("}}\n").append(shared()).append(".pic-paper{fill:var(--paper)}\n");
        for (Ink ink : Ink.values()) {
            String name = Tint.name(ink);
            rules.append(".line-%s{stroke:var(--%s)}\n.area-%s{fill:var(--%s)}\n".formatted(name, name, name, name));
        }
        return rules.toString();
    }

    private static String properties(boolean dark) {
        StringBuilder properties = new StringBuilder();
        for (Ink ink : Ink.values()) {
            properties.append("--%s:%s;".formatted(Tint.name(ink), colour(Tint.of(ink), dark)));
        }
        return properties.toString();
    }

    private static String shared() {
        return """
                .pic-line{fill:none;stroke-linecap:round;stroke-linejoin:round}
                .pic-text{font-family:%s}
                .pic-bold{font-weight:bold}
                """.formatted(FACE);
    }

    private String style() {
        return """
                %s%s@media (prefers-color-scheme:dark){
                %s}
                """.formatted(shared(), colours(false), colours(true));
    }

    private String colours(boolean dark) {
        StringBuilder rules = new StringBuilder(".pic-paper{fill:%s}\n".formatted(colour(Tint.of(Ink.PAPER), dark)));
        for (Ink ink : lines) {
            rules.append(".line-%s{stroke:%s}\n".formatted(Tint.name(ink), colour(Tint.of(ink), dark)));
        }
        for (Ink ink : areas) {
            rules.append(".area-%s{fill:%s}\n".formatted(Tint.name(ink), colour(Tint.of(ink), dark)));
        }
        return rules.toString();
    }

    private static String colour(Tint tint, boolean dark) {
        return dark ? tint.onDark() : tint.onLight();
    }

    private void shape(Shape shape) {
        switch (shape) {
            case Shape.Line(var from, var to, var pen) ->
                element("line", "x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\"",
                        new Paint(Optional.empty(), Optional.of(pen)), number(from.x()), number(from.y()),
                        number(to.x()), number(to.y()));
            case Shape.Path path -> element("path", "d=\"%s\"", path.paint(), course(path));
            case Shape.Rectangle(var corner, var width, var height, var paint) ->
                element("rect", "x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\"", paint, number(corner.x()),
                        number(corner.y()), number(width), number(height));
            case Shape.Circle(var centre, var radius, var paint) ->
                element("circle", "cx=\"%s\" cy=\"%s\" r=\"%s\"", paint, number(centre.x()), number(centre.y()),
                        number(radius));
            case Shape.Text text -> text(text);
            case Shape.Group(var name, var shapes) -> {
                svg.append("<g>\n");
                if (!name.isEmpty()) {
                    svg.append("<title>").append(XmlText.escaped(name)).append("</title>\n");
                }
                shapes.forEach(this::shape);
                svg.append("</g>\n");
            }
        }
    }

    private void element(String name, String geometry, Paint paint, Object... numbers) {
        StringBuilder classes = new StringBuilder();
        paint.fill().ifPresentOrElse(ink -> {
            areas.add(ink);
            classes.append("area-").append(Tint.name(ink));
        }, () -> classes.append("pic-line"));
        paint.edge().ifPresent(pen -> {
            lines.add(pen.ink());
            classes.append(" line-").append(Tint.name(pen.ink()));
        });
        svg.append("<%s class=\"%s\" ".formatted(name, classes)).append(geometry.formatted(numbers))
                .append(paint.edge().map(SvgWriter::stroke).orElse("")).append("/>\n");
    }

    private static String stroke(Pen pen) {
        String width = " stroke-width=\"%s\"".formatted(number(pen.width()));
        return pen.dashed() ? width + " stroke-dasharray=\"%s\"".formatted(number(4 * pen.width())) : width;
    }

    private static String course(Shape.Path path) {
        StringBuilder course = new StringBuilder("M").append(place(path.start()));
        for (Segment segment : path.segments()) {
            switch (segment) {
                case Segment.Straight(var to) -> course.append(" L").append(place(to));
                case Segment.Curve(var leaving, var arriving, var to) -> course.append(" C").append(place(leaving))
                        .append(' ').append(place(arriving)).append(' ').append(place(to));
            }
        }
        return path.closed() ? course.append(" Z").toString() : course.toString();
    }

    private void text(Shape.Text text) {
        areas.add(text.ink());
        String weight = text.weight() == Weight.BOLD ? " pic-bold" : "";
        svg.append("<text class=\"pic-text area-%s%s\" x=\"%s\" y=\"%s\" ".formatted(Tint.name(text.ink()), weight,
                number(text.at().x()), number(text.at().y())));
        svg.append("font-size=\"%s\" text-anchor=\"%s\">%s</text>\n".formatted(number(text.size()),
                text.anchor().name().toLowerCase(Locale.ROOT), XmlText.escaped(text.text())));
    }

    private static String place(Point point) {
        return number(point.x()) + "," + number(point.y());
    }

    /** To a thousandth of a millimetre, without trailing zeros. */
    private static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
