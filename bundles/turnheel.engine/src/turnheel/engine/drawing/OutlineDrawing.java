package turnheel.engine.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import turnheel.engine.drawing.Dimensions.Wish;
import turnheel.engine.drawing.Shape.Text.Anchor;
import turnheel.engine.drawing.Shape.Text.Weight;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;

/**
 * The sock from the side, to scale, with its finished measurements: one size with a figure at every line, or all sizes
 * over each other with letters at the lines of the largest and, unless a page sets them itself, a table of figures below.
 */
public final class OutlineDrawing {

    /** Letters are this share of the sock's larger extent, so that children's and knee socks look alike on a page. */
    private static final double LETTERS = 1 / 46.0;
    private static final double SMALLEST_LETTERS_MM = 2;
    /** In heights of its letters. */
    private static final double LONGEST_TITLE = 29;

    private static final double LABEL_LINE = 1.3;

    private final String title;
    private final List<SockOutline> outlines = new ArrayList<>();
    private final List<SockOutline.Drawn.NotDrawn> left = new ArrayList<>();
    private final boolean nested;
    private final boolean withTable;
    private final double letters;
    private final Dimensions dimensions;
    private final MeasureTable table;
    private final List<Shape> shapes = new ArrayList<>();

    private OutlineDrawing(Graded graded, List<GradedSize> sizes, boolean nested, boolean withTable) {
        this.title = graded.design().title().isBlank() ? Words.text("untitled") : graded.design().title();
        this.nested = nested;
        this.withTable = withTable;
        for (GradedSize size : sizes) {
            switch (SockOutline.of(graded, size)) {
                case SockOutline.Drawn.Outline(var outline) -> outlines.add(outline);
                case SockOutline.Drawn.NotDrawn notDrawn -> left.add(notDrawn);
            }
        }
        double extent = outlines.stream().mapToDouble(outline ->
                Math.max(outline.sock().footLength(), outline.sock().legHeight())).max().orElse(200);
        this.letters = Math.max(SMALLEST_LETTERS_MM, extent * LETTERS);
        this.dimensions = new Dimensions(letters);
        this.table = new MeasureTable(outlines, letters);
    }

    /**
     * One size with its measurements. What cannot be drawn for want of a measurement is named in the picture.
     *
     * @throws IllegalArgumentException when there is no size of this label
     */
    public static Picture of(Graded graded, String label) {
        return new OutlineDrawing(graded, List.of(graded.size(label)), false, false).picture();
    }

    /** All sizes over each other, heel on heel, with a table of their measurements. */
    public static Picture nested(Graded graded) {
        return nested(graded, true);
    }

    /** The same without the table, for a page that sets {@link OutlineFigures} beside it. */
    public static Picture lettered(Graded graded) {
        return nested(graded, false);
    }

    private static Picture nested(Graded graded, boolean withTable) {
        return graded.sizes().size() == 1 ? of(graded, graded.sizes().getFirst().label())
                : new OutlineDrawing(graded, graded.sizes(), true, withTable).picture();
    }

    private Picture picture() {
        if (!outlines.isEmpty()) {
            sock();
            measure(largest());
            if (nested) {
                labels();
            }
            if (withTable) {
                shapes.add(new Shape.Group(Words.text("outline.sizes"),
                        table.shapes(drawn().left(), drawn().bottom() + 2 * letters, drawn().width())));
            }
        }
        notes();
        return Picture.of(heading(), description(), shapes, 2 * letters);
    }

    private String sizeLabels() {
        return outlines.stream().map(SockOutline::label).collect(Collectors.joining(", "));
    }

    private String ofOneSize() {
        return outlines.isEmpty() ? left.getFirst().label() : outlines.getFirst().label();
    }

    private String heading() {
        return nested ? Words.text("outline.titleOfAll", title) : Words.text("outline.title", title, ofOneSize());
    }

    private String description() {
        List<String> sentences = new ArrayList<>();
        if (nested && !outlines.isEmpty()) {
            sentences.add(Words.text("outline.descriptionOfAll", sizeLabels()));
        } else if (!outlines.isEmpty()) {
            SockMeasures sock = outlines.getFirst().sock();
            sentences.add(Words.text("outline.description", ofOneSize(), List.of(Measure.values()).stream()
                    .flatMap(measure -> sock.of(measure).stream().map(mm -> Words.text("outline.measured",
                            measure.label(), PrintedLength.centimetres(mm), PrintedLength.inches(mm))))
                    .collect(Collectors.joining("; "))));
        }
        left.forEach(size -> sentences.add(sentence(size)));
        return String.join(" ", sentences);
    }

    private static String sentence(SockOutline.Drawn.NotDrawn size) {
        return size.missing().isEmpty() ? Words.text("outline.noToe", size.label())
                : Words.text("outline.missing", size.label(), String.join(", ", size.missing()));
    }

    /** The largest outline is first and filled; the smaller ones lie on it. */
    private void sock() {
        SockOutline largest = largest();
        Pen detail = Pen.of(Ink.SHAPING, letters / 24);
        for (SockOutline outline : nested ? outlines.reversed() : outlines) {
            Pen edge = Pen.of(Ink.OUTLINE, nested && outline != largest ? letters / 16 : letters / 9);
            List<Shape> sock = new ArrayList<>();
            if (outline == largest) {
                sock.add(outline.edge(Paint.filled(Ink.FABRIC)));
                sock.addAll(outline.details(detail));
            }
            sock.add(outline.edge(Paint.edged(edge)));
            shapes.add(new Shape.Group(Words.text("outline.size", outline.label()), sock));
        }
    }

    private SockOutline largest() {
        return outlines.stream().reduce((one, other) ->
                other.sock().footLength() >= one.sock().footLength() ? other : one).orElseThrow();
    }

    private List<String> label(Measure measure, double mm) {
        return nested ? List.of(table.letter(measure))
                : List.of(measure.label(), PrintedLength.centimetres(mm), PrintedLength.inches(mm));
    }

    private List<String> line(Measure measure, double mm) {
        return nested ? label(measure, mm) : List.of(Words.text("outline.measured", measure.label(),
                PrintedLength.centimetres(mm), PrintedLength.inches(mm)));
    }

    private void measure(SockOutline outline) {
        SockMeasures sock = outline.sock();
        LegOutline leg = outline.leg();
        double gap = dimensions.gap();
        Bounds all = edges();
        shapes.addAll(dimensions.level(0, sock.footLength(), 2 * gap, 0, true,
                line(Measure.FOOT_LENGTH, sock.footLength())));
        double right = all.right() + 2 * gap;
        shapes.addAll(dimensions.uprightRight(right, sock.toeStart(),
                new Wish(-sock.footWidth(), 0, label(Measure.FOOT_WIDTH, sock.footWidth()))));
        Point topBack = leg.back(leg.top());
        Point topFront = leg.front(leg.top());
        Measure top = sock.of(Measure.LEG_TOP_WIDTH).isPresent() ? Measure.LEG_TOP_WIDTH : Measure.LEG_WIDTH;
        shapes.addAll(dimensions.level(topBack.x(), topFront.x(), all.top() - 1.5 * gap,
                Math.min(topBack.y(), topFront.y()), false, line(top, sock.legTopWidth())));
        if (top == Measure.LEG_TOP_WIDTH) {
            // the narrowest place of a leg that widens is measured on the fabric, at the ankle
            double ankle = -Math.max(sock.heelHeight(), sock.footWidth());
            shapes.addAll(dimensions.onFabric(0, sock.legWidth(), ankle, label(Measure.LEG_WIDTH, sock.legWidth())));
        }
        if (sock.of(Measure.CALF_WIDTH).isPresent()) {
            Point back = leg.back(sock.widenOver());
            shapes.addAll(dimensions.onFabric(back.x(), leg.front(sock.widenOver()).x(), back.y(),
                    label(Measure.CALF_WIDTH, sock.calfWidth())));
        }
        double inner = all.left() - 2 * gap;
        List<Wish> wishes = List.of(
                new Wish(topBack.y(), leg.back(sock.legOnly()).y(), label(Measure.CUFF_HEIGHT, sock.cuffHeight())),
                new Wish(-sock.heelHeight(), 0, label(Measure.HEEL_HEIGHT, sock.heelHeight())));
        shapes.addAll(dimensions.uprightLeft(inner, wishes, List.of(topBack.x(), 0.0)));
        double outer = inner - dimensions.widest(wishes) - 2 * gap;
        shapes.addAll(dimensions.uprightLeft(outer,
                List.of(new Wish(topBack.y(), 0, label(Measure.LEG_HEIGHT, sock.legHeight()))), List.of(topBack.x())));
    }

    private Bounds edges() {
        return outlines.stream().map(outline -> outline.edge(Paint.filled(Ink.FABRIC)).bounds()).reduce(Bounds::and)
                .orElseThrow();
    }

    /** The name of each size beside the front edge of its cuff, kept apart and off the foot, with a line to it. */
    private void labels() {
        double x = outlines.stream().mapToDouble(outline -> outline.leg().front(outline.leg().top()).x()).max()
                .orElseThrow() + 3 * letters;
        List<Point> corners = outlines.stream().map(outline -> outline.leg().front(outline.leg().top())).toList();
        double aboveFoot = -outlines.stream().mapToDouble(outline -> outline.sock().footWidth()).max().orElseThrow()
                - letters;
        List<Double> middles = Spread.above(aboveFoot, Spread.apart(corners.stream().map(Point::y).toList(),
                corners.stream().map(corner -> LABEL_LINE * letters).toList()), LABEL_LINE * letters);
        Pen leader = Pen.of(Ink.DIMENSION, letters / 32);
        for (int i = 0; i < outlines.size(); i++) {
            shapes.add(new Shape.Line(corners.get(i), new Point(x, middles.get(i)), leader));
            shapes.addAll(Dimensions.onGround(Ink.PAPER, new Shape.Text(outlines.get(i).label(),
                    new Point(x + letters / 3, middles.get(i) + letters / 3), letters, Anchor.START, Weight.BOLD,
                    Ink.TEXT)));
        }
    }

    private Bounds drawn() {
        return shapes.stream().map(Shape::bounds).reduce(Bounds::and).orElseThrow();
    }

    /** Title above, remarks below. */
    private void notes() {
        Optional<Bounds> drawn = shapes.stream().map(Shape::bounds).reduce(Bounds::and);
        double x = drawn.map(Bounds::left).orElse(0.0);
        double y = drawn.map(Bounds::top).orElse(0.0) - 2.5 * letters;
        String what = nested ? Words.text("outline.sizes") : Words.text("outline.size", ofOneSize());
        shapes.add(new Shape.Text(what, new Point(x, y), 1.1 * letters, Anchor.START, Weight.REGULAR, Ink.TEXT));
        shapes.add(new Shape.Text(TextWidth.cut(title, 1, LONGEST_TITLE), new Point(x, y - 2 * letters),
                1.6 * letters, Anchor.START, Weight.BOLD, Ink.TEXT));
        double below = drawn.map(Bounds::bottom).orElse(0.0) + 2 * letters;
        List<String> remarks = new ArrayList<>();
        if (!outlines.isEmpty()) {
            remarks.add(Words.text("outline.note"));
        }
        left.forEach(size -> remarks.addAll(Wrapped.lines(sentence(size), letters, 60 * letters)));
        for (String remark : remarks) {
            shapes.add(new Shape.Text(remark, new Point(x, below), letters, Anchor.START, Weight.REGULAR, Ink.MUTED));
            below += 1.4 * letters;
        }
    }
}
