package turnheel.exchange.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

import turnheel.engine.drawing.Chart;
import turnheel.engine.drawing.ChartedPart;
import turnheel.engine.drawing.OutlineDrawing;
import turnheel.engine.drawing.OutlineFigures;
import turnheel.engine.drawing.PrintedLength;
import turnheel.engine.drawing.StitchChart;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.wording.HouseStyle;
import turnheel.engine.wording.NoBreak;

/**
 * The outline with its measurements, and the charts. For all sizes, a chart that differs between them is shown in a middle
 * one, as a sample beside the text that is written for all; each size has its own in its edition and as a drawing.
 */
final class PatternFigures {

    private final Graded graded;
    private final HouseStyle style;
    private final Optional<String> only;
    private final List<Block> blocks = new ArrayList<>();

    private PatternFigures(Graded graded, HouseStyle style, Optional<String> only) {
        this.graded = graded;
        this.style = style;
        this.only = only;
    }

    /** @param only label of the only size; empty for all of them */
    static List<Block> of(Graded graded, HouseStyle style, Optional<String> only) {
        PatternFigures figures = new PatternFigures(graded, style, only);
        figures.outline();
        figures.charts();
        return figures.blocks;
    }

    private void outline() {
        blocks.add(new Block.Heading(1, Words.text("pattern.drawing")));
        if (only.isPresent() || graded.sizes().size() == 1) {
            String label = only.orElseGet(() -> graded.sizes().getFirst().label());
            blocks.add(new Block.Drawn(OutlineDrawing.of(graded, label)));
            return;
        }
        blocks.add(new Block.Drawn(OutlineDrawing.lettered(graded)));
        OutlineFigures figures = OutlineFigures.of(graded);
        if (!figures.sizes().isEmpty()) {
            tables(figures);
        }
    }

    private void tables(OutlineFigures figures) {
        switch (style.lengths()) {
            case CENTIMETRES -> blocks.add(table(figures, "centimetres", this::centimetres));
            case INCHES -> blocks.add(table(figures, "inches", PrintedLength::inches));
            case BOTH -> {
                blocks.add(table(figures, "centimetres", this::centimetres));
                blocks.add(table(figures, "inches", PrintedLength::inches));
            }
        }
    }

    private String centimetres(double mm) {
        return PrintedLength.centimetres(mm).replace(".", style.decimal());
    }

    /** A size in each row: however many there are, the table is no wider. */
    private static Block.Table table(OutlineFigures figures, String unit, DoubleFunction<String> printed) {
        List<String> head = new ArrayList<>(List.of(Words.text("pattern.size")));
        figures.rows().forEach(row -> head.add(Words.text("pattern.measure", row.letter(), row.label())));
        List<Block.Row> rows = new ArrayList<>();
        for (int size = 0; size < figures.sizes().size(); size++) {
            List<Block.Cell> cells = new ArrayList<>();
            cells.add(new Block.Cell.Words(NoBreak.whole(figures.sizes().get(size))));
            for (OutlineFigures.Row row : figures.rows()) {
                OptionalDouble mm = row.mm().get(size);
                cells.add(mm.isEmpty() ? new Block.Cell.Nothing()
                        : new Block.Cell.Figure(NoBreak.whole(printed.apply(mm.getAsDouble()))));
            }
            rows.add(new Block.Row(cells));
        }
        return new Block.Table(Words.text("pattern.measurements." + unit), head, rows);
    }

    private void charts() {
        for (ChartedPart part : ChartedPart.values()) {
            List<GradedSize> charted = graded.sizes().stream()
                    .filter(size -> only.isEmpty() || only.get().equals(size.label()))
                    .filter(size -> part.chart(graded, size).isPresent()).toList();
            if (!charted.isEmpty()) {
                blocks.add(new Block.Heading(1, Words.text("pattern.chart", part.label())));
                chart(part, charted);
            }
        }
    }

    private void chart(ChartedPart part, List<GradedSize> charted) {
        List<Chart> different = charted.stream().flatMap(size -> part.chart(graded, size).stream()).distinct().toList();
        GradedSize middle = charted.get((charted.size() - 1) / 2);
        if (different.size() > 1) {
            blocks.add(new Block.Paragraph(Purpose.NOTE, Words.text("pattern.chart.sample", middle.label())));
        } else if (charted.size() > 1) {
            blocks.add(new Block.Paragraph(Purpose.NOTE, Words.text("pattern.chart.alike")));
        }
        blocks.add(new Block.Drawn(StitchChart.of(graded, part, middle.label())));
    }
}
