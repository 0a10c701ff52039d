package turnheel.exchange.drawing;

import java.util.List;
import java.util.Optional;

import turnheel.engine.drawing.ChartedPart;
import turnheel.engine.drawing.OutlineDrawing;
import turnheel.engine.drawing.Picture;
import turnheel.engine.drawing.StitchChart;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;

/**
 * What of a pattern is drawn.
 *
 * @param size label of the only size; empty for all of them
 */
public record Drawn(What what, Optional<String> size) {

    /** What a drawing can show. */
    public enum What {
        /** The finished sock with its measurements. */
        OUTLINE,
        /** A chart of a part's rounds. */
        TOE, HEEL, GUSSET,
        /** A chart of a stitch pattern's rows. */
        INSTEP_PATTERN, LEG_PATTERN
    }

    private Optional<ChartedPart> charted() {
        return switch (what) {
            case OUTLINE -> Optional.empty();
            case TOE -> Optional.of(ChartedPart.TOE);
            case HEEL -> Optional.of(ChartedPart.HEEL);
            case GUSSET -> Optional.of(ChartedPart.GUSSET);
            case INSTEP_PATTERN -> Optional.of(ChartedPart.INSTEP_PATTERN);
            case LEG_PATTERN -> Optional.of(ChartedPart.LEG_PATTERN);
        };
    }

    private boolean includes(GradedSize graded) {
        return size.isEmpty() || size.get().equals(graded.label());
    }

    /** Whether there is anything to see: a sock without a gusset has no chart of one. */
    public boolean showsSomething(Graded graded) {
        return charted().isEmpty() || graded.sizes().stream().filter(this::includes)
                .anyMatch(one -> charted().get().chart(graded, one).isPresent());
    }

    /**
     * The picture.
     *
     * @throws IllegalArgumentException when the pattern has no such size
     */
    public Picture of(Graded graded) {
        return charted().map(part -> size.map(label -> StitchChart.of(graded, part, label))
                .orElseGet(() -> StitchChart.ofAll(graded, part)))
                .orElseGet(() -> size.map(label -> OutlineDrawing.of(graded, label))
                        .orElseGet(() -> OutlineDrawing.nested(graded)));
    }

    /**
     * The pictures one by one, for paper: of a chart one for each size that has it.
     *
     * @throws IllegalArgumentException when the pattern has no such size
     */
    public List<Picture> each(Graded graded) {
        return charted().map(part -> graded.sizes().stream().filter(this::includes)
                .filter(one -> part.chart(graded, one).isPresent())
                .map(one -> StitchChart.of(graded, part, one.label())).toList())
                .orElseGet(() -> List.of(of(graded)));
    }
}
