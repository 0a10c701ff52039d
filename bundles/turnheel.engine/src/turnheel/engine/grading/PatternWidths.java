package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.FOOT_PANEL;
import static turnheel.engine.design.Catalogue.LEG_STITCHES;

import java.util.OptionalInt;

import turnheel.engine.design.Parameter;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Fit;

/** Over how many stitches of a size a stitch pattern is worked. */
public final class PatternWidths {

    private PatternWidths() {
    }

    /** On the instep; empty where not one repeat has room, or the number is not there or not whole. */
    public static OptionalInt instep(StitchPattern pattern, GradedSize size) {
        return stitches(pattern, size, FOOT_PANEL);
    }

    /** On the leg; how many repeats a panel has there is not graded, so one of them with the edge stands for it. */
    public static OptionalInt leg(StitchPattern pattern, GradedSize size) {
        OptionalInt around = stitches(pattern, size, LEG_STITCHES);
        return around.isEmpty() || pattern.fit() == Fit.WHOLE_REPEATS ? around
                : OptionalInt.of(pattern.repeat() + pattern.edge());
    }

    private static OptionalInt stitches(StitchPattern pattern, GradedSize size, Parameter parameter) {
        return size.cell(parameter).map(Cell::value)
                .filter(value -> value == Math.rint(value) && value >= pattern.repeat() && value < Integer.MAX_VALUE)
                .map(value -> OptionalInt.of(value.intValue())).orElse(OptionalInt.empty());
    }
}
