package turnheel.engine.writing;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import turnheel.engine.instruction.Instruction;
import turnheel.engine.instruction.Line;
import turnheel.engine.instruction.Sized;
import turnheel.engine.instruction.Until;
import turnheel.engine.stitch.Stitch;

/** Lines for many sizes as they read for one: its values alone, without what it does not have. */
final class OneSize {

    private final int size;

    private OneSize(int size) {
        this.size = size;
    }

    /** Empty where the size does not have the line. */
    static Optional<Line> of(Line line, int size) {
        if (!line.onlySizes().isEmpty() && !line.onlySizes().contains(size)) {
            return Optional.empty();
        }
        return new OneSize(size).of(line);
    }

    private Optional<Line> of(Line line) {
        return switch (line) {
            case Line.Worked worked -> {
                List<Instruction> its = of(worked.instructions());
                boolean isLabelled = worked.label().flatMap(Line.Label::from).map(from -> from.get(size).isPresent())
                        .orElse(true);
                yield its.isEmpty() || !isLabelled ? Optional.empty() : Optional.of(new Line.Worked(worked.label().map(this::of), its,
                        worked.stated().flatMap(this::its), Set.of()));
            }
            case Line.RepeatRounds repeat -> howOften(repeat.howOften()).flatMap(often -> target(repeat.target())
                    .map(target -> new Line.RepeatRounds(target, often, repeat.ending().flatMap(this::target),
                            repeat.stated().flatMap(this::its), Set.of())));
            case Line.Even even -> {
                Optional<Sized<Integer>> rounds = even.rounds().flatMap(this::its);
                Optional<Line.Goal> goal = even.goal().flatMap(this::goal);
                yield rounds.isEmpty() && goal.isEmpty() ? Optional.empty() : Optional.of(new Line.Even(rounds, goal,
                        even.repeatable().flatMap(this::target), even.asSet(), even.stated().flatMap(this::its),
                        Set.of(), even.fabric()));
            }
            case Line.Section section -> Optional.of(section);
        };
    }

    private <T> Optional<Sized<T>> its(Sized<T> sized) {
        return sized.get(size).map(Sized::all);
    }

    private Line.Label of(Line.Label label) {
        return new Line.Label(label.fabric(), label.from().flatMap(this::its), label.to().flatMap(this::its),
                label.name(),
                label.side());
    }

    private Optional<Line.HowOften> howOften(Line.HowOften often) {
        return switch (often) {
            case Line.HowOften.More(Sized<Integer> times) -> its(times).map(Line.HowOften.More::new);
            case Line.HowOften.InAll(Sized<Integer> times) -> its(times).map(Line.HowOften.InAll::new);
            case Line.HowOften.Every(Sized<Integer> nth, Sized<Integer> times) -> its(nth)
                    .flatMap(each -> its(times).map(number -> new Line.HowOften.Every(each, number)));
            case Line.HowOften.UntilAllWorked all -> Optional.of(all);
            case Line.HowOften.UntilRemain(Sized<Integer> stitches) ->
                its(stitches).map(Line.HowOften.UntilRemain::new);
        };
    }

    private Optional<Line.Target> target(Line.Target target) {
        return switch (target) {
            case Line.Target.Numbered(Line.Fabric fabric, Sized<Integer> from, Sized<Integer> to) -> its(from)
                    .flatMap(first -> its(to).map(last -> new Line.Target.Numbered(fabric, first, last)));
            case Line.Target.Named named -> Optional.of(named);
            case Line.Target.LastRounds(Line.Fabric fabric, Sized<Integer> rounds) ->
                its(rounds).map(its -> new Line.Target.LastRounds(fabric, its));
        };
    }

    private Optional<Line.Goal> goal(Line.Goal goal) {
        return switch (goal) {
            case Line.Goal.Measures(Line.MeasuredPart part, Sized<Double> length) ->
                its(length).map(its -> new Line.Goal.Measures(part, its));
            case Line.Goal.LessThanFoot(Sized<Double> less) -> its(less).map(Line.Goal.LessThanFoot::new);
        };
    }

    private List<Instruction> of(List<Instruction> instructions) {
        return instructions.stream().flatMap(instruction -> of(instruction).stream()).toList();
    }

    private Optional<Instruction> of(Instruction instruction) {
        return switch (instruction) {
            case Instruction.Work(Stitch stitch, Sized<Integer> count) ->
                its(count).map(its -> new Instruction.Work(stitch, its));
            case Instruction.WorkTo(Stitch stitch, Until until) ->
                until(until).map(its -> new Instruction.WorkTo(stitch, its));
            case Instruction.CloseTo(Stitch stitch, Until until) ->
                until(until).map(its -> new Instruction.CloseTo(stitch, its));
            case Instruction.Times(List<Instruction> body, Sized<Integer> times) ->
                its(times).map(its -> new Instruction.Times(of(body), its));
            case Instruction.RepeatTo(List<Instruction> body, Until until) ->
                until(until).map(its -> new Instruction.RepeatTo(of(body), its));
            case Instruction.RepeatMore(List<Instruction> body, Sized<Integer> more) ->
                its(more).map(its -> new Instruction.RepeatMore(of(body), its));
            case Instruction.Marker marker -> Optional.of(marker);
            case Instruction.MarkersAfterEvery(Sized<Integer> stitches) ->
                its(stitches).map(Instruction.MarkersAfterEvery::new);
            case Instruction.CastOn(Instruction.CastOnManner manner, Sized<Integer> stitches) ->
                its(stitches).map(its -> new Instruction.CastOn(manner, its));
            case Instruction.JoinInRound join -> Optional.of(join);
            case Instruction.PickUp(Sized<Integer> stitches, Instruction.Edge edge) ->
                its(stitches).map(its -> new Instruction.PickUp(its, edge));
            case Instruction.TakeOut takeOut -> Optional.of(takeOut);
            case Instruction.Hold(Sized<Integer> stitches) -> its(stitches).map(Instruction.Hold::new);
            case Instruction.HoldPart(Instruction.HoldWhich which, Sized<Integer> stitches) ->
                its(stitches).map(its -> new Instruction.HoldPart(which, its));
            case Instruction.Over(List<Instruction> body, Until stitches) ->
                until(stitches).map(its -> new Instruction.Over(of(body), its));
            case Instruction.WorkOnlyOn(Sized<Integer> stitches, Optional<Sized<Integer>> others) ->
                its(stitches).map(its -> new Instruction.WorkOnlyOn(its, others.flatMap(this::its)));
            case Instruction.WorkHeld(Stitch stitch, Sized<Integer> stitches) ->
                its(stitches).map(its -> new Instruction.WorkHeld(stitch, its));
            case Instruction.StartHere start -> Optional.of(start);
            case Instruction.WasteYarn(Sized<Integer> stitches) -> its(stitches).map(Instruction.WasteYarn::new);
        };
    }

    private Optional<Until> until(Until until) {
        return switch (until) {
            case Until.End end -> Optional.of(end);
            case Until.Next(Sized<Integer> stitches) -> its(stitches).map(Until.Next::new);
            case Until.Held held -> Optional.of(held);
            case Until.Last(Sized<Integer> stitches) -> its(stitches).map(Until.Last::new);
            case Until.Marker(Sized<Integer> stitches) -> its(stitches).map(Until.Marker::new);
            case Until.Gap(Sized<Integer> stitches) -> its(stitches).map(Until.Gap::new);
            case Until.TurnedStitch(Until.Mark mark, Sized<Integer> stitches) ->
                its(stitches).map(its -> new Until.TurnedStitch(mark, its));
        };
    }
}
