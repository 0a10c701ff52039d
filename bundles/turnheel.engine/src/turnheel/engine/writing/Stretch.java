package turnheel.engine.writing;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;

import turnheel.engine.design.LengthMode;
import turnheel.engine.instruction.Line;
import turnheel.engine.instruction.Sized;

/**
 * How far a stretch without shaping is worked, as the pattern says it.
 *
 * @param rounds so many
 * @param mm what is measured at its end, or to fit how much less than the wearer's foot; one for each size
 */
record Stretch(LengthMode mode, EachSize rounds, Line.MeasuredPart part, List<Optional<Double>> mm) {

    Stretch {
        mm = List.copyOf(mm);
    }

    /** The rounds that some sizes are told; empty where they measure instead. */
    Optional<Sized<Integer>> roundsTold(SortedSet<Integer> sizes) {
        return switch (mode) {
            case ROUNDS, BOTH -> rounds.told(sizes);
            case MEASURE, TO_FIT -> Optional.empty();
        };
    }

    /** The length that some sizes are told. */
    Optional<Line.Goal> goalTold(SortedSet<Integer> sizes) {
        return switch (mode) {
            case ROUNDS -> Optional.empty();
            case MEASURE, BOTH -> EachSize.told(mm, sizes).map(length -> new Line.Goal.Measures(part, length));
            case TO_FIT -> EachSize.told(mm, sizes).map(Line.Goal.LessThanFoot::new);
        };
    }
}
