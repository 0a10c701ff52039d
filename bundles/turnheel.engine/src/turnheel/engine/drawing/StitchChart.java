package turnheel.engine.drawing;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import turnheel.engine.drawing.Shape.Text.Anchor;
import turnheel.engine.drawing.Shape.Text.Weight;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;

/** Stitch charts as pictures, with a legend of exactly the signs that they use. */
public final class StitchChart {

    private static final double LETTERS = 3.6;
    private static final double HEADING = 5;
    private static final double LINE = 1.5;
    /** In heights of its letters. */
    private static final double LONGEST_TITLE = 29;
    private static final double MARGIN = 8;

    private final List<Shape> shapes = new ArrayList<>();
    private final Set<Symbol> used = EnumSet.noneOf(Symbol.class);
    private boolean flat;
    private boolean leavesSomeOut;
    private double y;

    private StitchChart() {
    }

    /**
     * The chart of a part in one size.
     *
     * @throws IllegalArgumentException when there is no size of this label
     */
    public static Picture of(Graded graded, ChartedPart part, String label) {
        return of(graded, part, List.of(graded.size(label)),
                Words.text("chart.title", title(graded), part.label(), label));
    }

    /** The charts of a part in every size, one below the other, with one legend. */
    public static Picture ofAll(Graded graded, ChartedPart part) {
        return of(graded, part, graded.sizes(), Words.text("chart.titleOfAll", title(graded), part.label()));
    }

    /** A chart of its own, such as a stitch pattern's. */
    public static Picture of(Chart chart, String title) {
        StitchChart picture = new StitchChart();
        picture.heading(title);
        picture.add(chart, Optional.empty());
        picture.legend();
        return Picture.of(title, picture.description(chart), picture.shapes, MARGIN);
    }

    private static Picture of(Graded graded, ChartedPart part, List<GradedSize> sizes, String title) {
        StitchChart picture = new StitchChart();
        picture.heading(title(graded));
        List<String> sentences = new ArrayList<>();
        for (GradedSize size : sizes) {
            Optional<Chart> chart = part.chart(graded, size);
            if (chart.isPresent()) {
                picture.add(chart.get(), Optional.of(Words.text("chart.heading", part.label(), size.label())));
                sentences.add(Words.text("chart.heading", part.label(), size.label()) + ": "
                        + picture.description(chart.get()));
            } else {
                String none = Words.text("chart.none", part.label(), size.label());
                picture.line(none, LETTERS, Weight.REGULAR, Ink.MUTED);
                sentences.add(none);
            }
        }
        picture.legend();
        return Picture.of(title, String.join(" ", sentences), picture.shapes, MARGIN);
    }

    private static String title(Graded graded) {
        return graded.design().title().isBlank() ? Words.text("untitled") : graded.design().title();
    }

    private String description(Chart chart) {
        Set<Symbol> ofChart = new ChartGrid(chart).used();
        return Words.text("chart.description", Integer.toString(chart.rows().size()), Integer.toString(chart.width()),
                used.stream().filter(ofChart::contains).map(symbol -> symbol.meaning(chart.isFlat()))
                        .collect(Collectors.joining("; ")));
    }

    private void heading(String title) {
        line(TextWidth.cut(title, 1, LONGEST_TITLE), HEADING, Weight.BOLD, Ink.TEXT);
    }

    /** One more line of words below all that is there. */
    private void line(String text, double size, Weight weight, Ink ink) {
        y += LINE * size;
        shapes.add(new Shape.Text(text, new Point(0, y), size, Anchor.START, weight, ink));
    }

    private void add(Chart chart, Optional<String> heading) {
        y += LETTERS;
        heading.ifPresent(text -> line(text, LETTERS, Weight.BOLD, Ink.TEXT));
        if (chart.times() > 1) {
            line(Words.text("chart.times", Integer.toString(chart.times())), LETTERS, Weight.REGULAR, Ink.MUTED);
        }
        ChartGrid grid = new ChartGrid(chart);
        used.addAll(grid.used());
        flat |= chart.isFlat();
        leavesSomeOut |= grid.leavesSomeOut();
        Shape.Group group = new Shape.Group(heading.orElse(""), grid.shapes());
        double top = group.bounds().top();
        y += LETTERS;
        shapes.add(group.placed(1, -group.bounds().left(), y - top));
        y += group.bounds().height();
    }

    private void legend() {
        if (used.isEmpty()) {
            return;
        }
        y += LETTERS;
        line(Words.text("legend.heading"), LETTERS, Weight.BOLD, Ink.TEXT);
        y += LETTERS / 2;
        for (Symbol symbol : used) {
            shapes.add(new Shape.Group("", ChartGrid.sample(symbol, new Point(0.5, y))));
            Point beside = new Point(ChartGrid.SIDE + LETTERS, y + 0.7 * ChartGrid.SIDE);
            shapes.add(new Shape.Text(symbol.meaning(flat), beside, LETTERS, Anchor.START, Weight.REGULAR, Ink.TEXT));
            y += 1.2 * ChartGrid.SIDE;
        }
        line(Words.text(flat ? "chart.rows" : "chart.rounds"), LETTERS, Weight.REGULAR, Ink.MUTED);
        if (leavesSomeOut) {
            line(Words.text("chart.gaps"), LETTERS, Weight.REGULAR, Ink.MUTED);
        }
    }
}
