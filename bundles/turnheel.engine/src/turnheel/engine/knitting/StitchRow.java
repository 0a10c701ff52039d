package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

import turnheel.engine.instruction.Instruction;
import turnheel.engine.instruction.Sized;
import turnheel.engine.instruction.Until;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;

/** One row of a stitch pattern, worked over a number of stitches. */
final class StitchRow {

    /** What a fabric is made of; casting on, turning and finishing belong to no row of a pattern. */
    private static final Set<Stitch> OF_FABRIC = EnumSet.range(Stitch.KNIT, Stitch.SLIP_TWO_KNIT_PASS);

    private final List<Step> steps = new ArrayList<>();
    private final int stitches;

    private StitchRow(int stitches) {
        this.stitches = stitches;
    }

    /** Whether all of it can be worked over any number of stitches: no marker, no gap, no repeat to the end in another. */
    static boolean isMadeOfStitches(List<Instruction> row) {
        return row.stream().allMatch(instruction -> switch (instruction) {
            case Instruction.WorkTo(var stitch, var until) ->
                OF_FABRIC.contains(stitch) && stitch.takes() > 0 && leaves(until).isPresent();
            case Instruction.RepeatTo(var body, var until) ->
                leaves(until).isPresent() && fixed(body).filter(steps -> takes(steps) > 0).isPresent();
            default -> fixed(List.of(instruction)).isPresent();
        });
    }

    /**
     * Works a row. Where its stitches do not come out, {@link #takes} is not {@code stitches}.
     *
     * @param row made of stitches
     */
    static StitchRow over(List<Instruction> row, int stitches) {
        StitchRow worked = new StitchRow(stitches);
        row.forEach(worked::work);
        return worked;
    }

    List<Step> steps() {
        return List.copyOf(steps);
    }

    int takes() {
        return takes(steps);
    }

    int leaves() {
        return steps.stream().mapToInt(Step::leaves).sum();
    }

    private void work(Instruction instruction) {
        switch (instruction) {
            case Instruction.WorkTo(var stitch, var until) -> {
                int times = room(until) / stitch.takes();
                if (times > 0) {
                    steps.add(new Step.Work(stitch, times));
                }
            }
            case Instruction.RepeatTo(var body, var until) -> {
                List<Step> section = fixed(body).orElseThrow();
                // a repeat is worked before one looks whether it is over
                steps.add(new Step.Repeat(section, Math.max(1, room(until) / takes(section))));
            }
            default -> steps.addAll(fixed(List.of(instruction)).orElseThrow());
        }
    }

    private int room(Until until) {
        return stitches - takes() - leaves(until).orElseThrow();
    }

    /** How many stitches are left at the end; absent for a place that is not told from the end. */
    private static OptionalInt leaves(Until until) {
        return switch (until) {
            case Until.End end -> OptionalInt.of(0);
            case Until.Last(var last) -> shared(last);
            case Until.Next next -> OptionalInt.empty();
            case Until.Marker marker -> OptionalInt.empty();
            case Until.Gap gap -> OptionalInt.empty();
            case Until.TurnedStitch turned -> OptionalInt.empty();
            case Until.Held held -> OptionalInt.empty();
        };
    }

    private static OptionalInt shared(Sized<Integer> number) {
        Optional<Integer> value = number.isShared() ? number.get(0) : Optional.empty();
        return value.filter(count -> count <= Effort.MOST_LOOPS).map(OptionalInt::of).orElse(OptionalInt.empty());
    }

    private static int takes(List<Step> steps) {
        return steps.stream().mapToInt(Step::takes).sum();
    }

    /** Steps that are the same over any number of stitches; absent where one is not, or is more than any sock needs. */
    private static Optional<List<Step>> fixed(List<Instruction> instructions) {
        List<Step> steps = new ArrayList<>();
        for (Instruction instruction : instructions) {
            Optional<Step> step = switch (instruction) {
                case Instruction.Work(var stitch, var count) when OF_FABRIC.contains(stitch) ->
                    times(count, 0).map(times -> new Step.Work(stitch, times));
                case Instruction.Times(var body, var times) -> repeat(body, times(times, 0));
                case Instruction.RepeatMore(var body, var more) -> repeat(body, times(more, 1));
                default -> Optional.empty();
            };
            if (step.isEmpty()) {
                return Optional.empty();
            }
            steps.add(step.get());
            if (takes(steps) > Effort.MOST_LOOPS || steps.stream().mapToInt(Step::leaves).sum() > Effort.MOST_LOOPS) {
                return Optional.empty();
            }
        }
        return Optional.of(steps);
    }

    private static Optional<Integer> times(Sized<Integer> number, int more) {
        OptionalInt shared = shared(number);
        return shared.isPresent() && shared.getAsInt() + more > 0 ? Optional.of(shared.getAsInt() + more)
                : Optional.empty();
    }

    /** Bounded before it is counted, so that no number overflows. */
    private static Optional<Step> repeat(List<Instruction> body, Optional<Integer> times) {
        return fixed(body).flatMap(section -> times.filter(often -> {
            long most = Math.max(takes(section), section.stream().mapToInt(Step::leaves).sum());
            return !section.isEmpty() && most * often <= Effort.MOST_LOOPS;
        }).map(often -> new Step.Repeat(section, often)));
    }
}
