package turnheel.engine.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;

/**
 * The figures of an outline drawing as a table, for whoever cannot see it or wants to set them anew: the finished sock laid
 * flat, so that a circumference counts half.
 *
 * @param sizes labels of the sizes that are drawn, in the designer's order
 * @param rows a measure each, in the order of the table in the drawing
 */
public record OutlineFigures(List<String> sizes, List<Row> rows) {

    public OutlineFigures {
        sizes = List.copyOf(sizes);
        rows = List.copyOf(rows);
    }

    /**
     * A measure in all sizes.
     *
     * @param letter at its line in a drawing of all sizes; empty where only one size is drawn, which has words there
     * @param mm one for each size, in the same order; empty where the sock has no such thing of its own
     */
    public record Row(String letter, String label, List<OptionalDouble> mm) {
        public Row {
            mm = List.copyOf(mm);
        }
    }

    /** The figures of every size that can be drawn. */
    public static OutlineFigures of(Graded graded) {
        List<SockOutline> drawn = new ArrayList<>();
        for (GradedSize size : graded.sizes()) {
            if (SockOutline.of(graded, size) instanceof SockOutline.Drawn.Outline(var outline)) {
                drawn.add(outline);
            }
        }
        MeasureTable table = new MeasureTable(drawn, 1);
        boolean nested = graded.sizes().size() > 1;
        return new OutlineFigures(drawn.stream().map(SockOutline::label).toList(),
                table.measures().stream().map(measure -> new Row(nested ? table.letter(measure) : "", measure.label(),
                        drawn.stream().map(outline -> figure(outline.sock().of(measure))).toList())).toList());
    }

    private static OptionalDouble figure(Optional<Double> mm) {
        return mm.isPresent() ? OptionalDouble.of(mm.get()) : OptionalDouble.empty();
    }
}
