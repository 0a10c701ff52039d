package turnheel.engine.drawing;

import java.util.Optional;
import java.util.OptionalInt;

import turnheel.engine.design.Design;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.grading.PatternWidths;
import turnheel.engine.knitting.PatternRows;

/** Charts of the rows that a designer wrote for a stitch pattern. */
final class PatternChart {

    private PatternChart() {
    }

    /** Over the panel of a size; absent without rows, and where they do not come out. */
    static Optional<Chart> instep(Design design, GradedSize size) {
        return rows(design, Zone.INSTEP).flatMap(pattern -> over(pattern, PatternWidths.instep(pattern, size)));
    }

    /** Over the leg of a size, or one repeat of a panel there. */
    static Optional<Chart> leg(Design design, GradedSize size) {
        return rows(design, Zone.LEG).flatMap(pattern -> over(pattern, PatternWidths.leg(pattern, size)));
    }

    private static Optional<StitchPattern> rows(Design design, Zone zone) {
        return design.stitchPattern(zone).filter(pattern -> !pattern.instructions().isEmpty());
    }

    private static Optional<Chart> over(StitchPattern pattern, OptionalInt stitches) {
        if (stitches.isEmpty()) {
            return Optional.empty();
        }
        return switch (PatternRows.read(pattern.instructions()).over(stitches.getAsInt())) {
            case PatternRows.Worked(var rows) -> Optional.of(Chart.ofRounds(rows, 1));
            // the checks tell what is wrong
            case PatternRows.Unread unread -> Optional.empty();
            case PatternRows.Misfit misfit -> Optional.empty();
            case PatternRows.NotReturning notReturning -> Optional.empty();
        };
    }
}
