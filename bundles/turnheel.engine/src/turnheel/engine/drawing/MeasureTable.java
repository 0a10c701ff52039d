package turnheel.engine.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import turnheel.engine.drawing.Shape.Text.Anchor;
import turnheel.engine.drawing.Shape.Text.Weight;

/** The measurements of all sizes below their outlines: a column for each size, centimetres over inches. */
final class MeasureTable {

    private static final double LINE = 1.35;

    private final List<SockOutline> sizes;
    private final double size;
    private final List<Shape> shapes = new ArrayList<>();

    MeasureTable(List<SockOutline> sizes, double size) {
        this.sizes = sizes;
        this.size = size;
    }

    /** Measures that some size has. */
    List<Measure> measures() {
        return Arrays.stream(Measure.values())
                .filter(measure -> sizes.stream().anyMatch(outline -> outline.sock().of(measure).isPresent())).toList();
    }

    /** The letter that stands at the measure's line in the drawing. */
    String letter(Measure measure) {
        return Character.toString('A' + measures().indexOf(measure));
    }

    /**
     * The table with its left upper corner at a place, mm. Sizes that have no room beside the others continue below.
     *
     * @param width of the room, mm; a size that is wider has a line of its own
     */
    List<Shape> shapes(double left, double top, double width) {
        double labels = measures().stream().mapToDouble(measure -> TextWidth.of(measure.label(), size)).max().orElse(0)
                + 3 * size;
        double y = top;
        List<SockOutline> line = new ArrayList<>();
        double taken = labels;
        for (SockOutline outline : sizes) {
            if (!line.isEmpty() && taken + columnWidth(outline) > width) {
                y = block(line, left, labels, y) + LINE * size;
                line.clear();
                taken = labels;
            }
            line.add(outline);
            taken += columnWidth(outline);
        }
        block(line, left, labels, y);
        return shapes;
    }

    /** Some sizes side by side; returns where the table ends. */
    private double block(List<SockOutline> columns, double left, double labels, double top) {
        List<Double> rights = new ArrayList<>();
        double right = left + labels;
        for (SockOutline outline : columns) {
            right += columnWidth(outline);
            rights.add(right);
        }
        double y = top + LINE * size;
        for (int column = 0; column < columns.size(); column++) {
            put(columns.get(column).label(), rights.get(column), y, Anchor.END, Weight.BOLD, Ink.TEXT);
        }
        y += size / 2;
        rule(y, left, right);
        for (Measure measure : measures()) {
            y += LINE * size;
            put(letter(measure), left, y, Anchor.START, Weight.BOLD, Ink.TEXT);
            put(measure.label(), left + 2 * size, y, Anchor.START, Weight.REGULAR, Ink.TEXT);
            for (int column = 0; column < columns.size(); column++) {
                Optional<Double> mm = columns.get(column).sock().of(measure);
                if (mm.isPresent()) {
                    double at = rights.get(column);
                    put(PrintedLength.centimetres(mm.get()), at, y, Anchor.END, Weight.REGULAR, Ink.TEXT);
                    put(PrintedLength.inches(mm.get()), at, y + LINE * size, Anchor.END, Weight.REGULAR, Ink.MUTED);
                }
            }
            y += LINE * size + size / 2;
            rule(y, left, right);
        }
        return y;
    }

    private double columnWidth(SockOutline outline) {
        double widest = TextWidth.of(outline.label(), size);
        for (Measure measure : measures()) {
            Optional<Double> mm = outline.sock().of(measure);
            if (mm.isPresent()) {
                widest = Math.max(widest, Math.max(TextWidth.of(PrintedLength.centimetres(mm.get()), size),
                        TextWidth.of(PrintedLength.inches(mm.get()), size)));
            }
        }
        return widest + size;
    }

    private void put(String text, double x, double y, Anchor anchor, Weight weight, Ink ink) {
        shapes.add(new Shape.Text(text, new Point(x, y), size, anchor, weight, ink));
    }

    private void rule(double y, double left, double right) {
        shapes.add(new Shape.Line(new Point(left, y), new Point(right, y), Pen.of(Ink.GRID, size / 24)));
    }
}
