package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

import turnheel.engine.instruction.Instruction;
import turnheel.engine.instruction.Line;
import turnheel.engine.instruction.Line.Fabric;
import turnheel.engine.instruction.Line.HowOften;
import turnheel.engine.instruction.Line.Label;
import turnheel.engine.instruction.Line.Side;
import turnheel.engine.instruction.Line.Target;
import turnheel.engine.instruction.Sized;
import turnheel.engine.instruction.Until;
import turnheel.engine.knitting.Progress.Unit;
import turnheel.engine.query.Check;
import turnheel.engine.stitch.Stitch;

/** Does the lines of a written pattern, for one size. */
final class LineHands {

    static final List<Instruction> PLAIN = List.of(new Instruction.WorkTo(Stitch.KNIT, new Until.End()));

    private static final Line.Worked PLAIN_ROUND = plain(Fabric.ROUND);
    private static final Line.Worked PLAIN_ROW = plain(Fabric.ROW);

    private final Progress progress;

    LineHands(Progress progress) {
        this.progress = progress;
    }

    private static Line.Worked plain(Fabric fabric) {
        Label label = new Label(fabric, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
        return new Line.Worked(Optional.of(label), PLAIN, Optional.empty(), Set.of());
    }

    /**
     * Does what the line tells.
     *
     * @param place where it is among the lines
     */
    void work(Line line, int place) {
        switch (line) {
            case Line.Section section -> progress.beginSection();
            case Line.Worked worked -> work(worked, place);
            case Line.RepeatRounds repeat -> repeat(repeat, place);
            case Line.Even even -> even(even, place);
        }
    }

    private void work(Line.Worked worked, int place) {
        if (worked.label().isEmpty()) {
            between(worked, place);
            return;
        }
        Label label = worked.label().get();
        progress.define(worked, label, place);
        OptionalInt rounds = Line.rounds(label, progress.size());
        for (int round = 0; round < rounds.orElse(0); round++) {
            unit(new Unit(worked, place), place);
        }
    }

    /** What stands without a label: casting on, part of a round, or all of it. */
    private void between(Line.Worked worked, int place) {
        Needle needle = progress.needle();
        progress.flaws().work(place);
        if (freesCastOn(worked.instructions())) {
            needle.goOnAround();
        } else if (needle.isPiece()) {
            needle.beginFlatRow();
        }
        progress.instructions().work(worked.instructions());
        boolean whole = needle.isRoundDone();
        if (whole) {
            needle.endRound();
        } else if (needle.isPiece()) {
            needle.endFlatRow(progress.instructions().places().toEnd());
        } else if (needle.isFlat() && needle.left().loops() == 0 && !needle.justTurned()) {
            needle.endFlatRow(0);
        }
        progress.trace(place, 0);
    }

    /** Whether the first thing done is to free the loops of the cast-on, which lie beside the last stitch worked. */
    private static boolean freesCastOn(List<Instruction> instructions) {
        return !instructions.isEmpty()
                && instructions.getFirst().equals(new Instruction.TakeOut(Instruction.Thread.PROVISIONAL_CAST_ON));
    }

    private void unit(Unit unit, int place) {
        Label label = unit.worked().label().orElseThrow();
        progress.flaws().work(unit.line());
        switch (label.fabric()) {
            case ROUND -> round(unit.worked());
            case ROW -> row(unit.worked(), label);
        }
        progress.worked().add(unit);
        progress.trace(place, 1);
    }

    private void round(Line.Worked worked) {
        Needle needle = progress.needle();
        needle.beginRound(worked.instructions().stream().anyMatch(LineHands::takesHeld));
        progress.instructions().work(worked.instructions());
        if (needle.isRoundDone()) {
            needle.endRound();
        } else if (!needle.isFlat()) {
            int all = needle.loops() + needle.held().loops();
            needle.misfit(Check.TEXT_ROUND, all, needle.right().loops());
            needle.finishRound();
        } else if (!needle.justTurned()) {
            needle.endFlatRow(progress.instructions().places().toEnd());
        }
    }

    private static boolean takesHeld(Instruction instruction) {
        return instruction instanceof Instruction.WorkHeld || instruction instanceof Instruction.JoinInRound
                || instruction instanceof Instruction.WorkTo work && work.until() instanceof Until.Held
                || instruction instanceof Instruction.CloseTo close && close.until() instanceof Until.Held
                || instruction.body().stream().anyMatch(LineHands::takesHeld);
    }

    private void row(Line.Worked worked, Label label) {
        Needle needle = progress.needle();
        needle.beginFlatRow();
        label.side().ifPresent(side -> needle.face(side == Side.WRONG));
        progress.instructions().work(worked.instructions());
        needle.endFlatRow(needle.justTurned() ? 0 : progress.instructions().places().toEnd());
    }

    private void repeat(Line.RepeatRounds repeat, int place) {
        List<Unit> units = units(repeat.target());
        List<Unit> last = repeat.ending().isEmpty() ? units : upTo(units, repeat.ending().get(), repeat.howOften());
        switch (repeat.howOften()) {
            case HowOften.More(var times) -> count(times).ifPresent(more -> again(units, last, more, place));
            case HowOften.InAll(var times) -> count(times).ifPresent(all -> again(units, last, all - 1, place));
            case HowOften.Every(var nth, var times) -> {
                List<Unit> withPlain = new ArrayList<>();
                for (int i = 1; i < count(nth).orElse(1); i++) {
                    withPlain.add(new Unit(PLAIN_ROUND, place));
                }
                withPlain.addAll(units);
                count(times).ifPresent(more -> again(withPlain, withPlain, more, place));
            }
            case HowOften.UntilRemain(var stitches) -> count(stitches).ifPresent(left -> untilRemain(units, left, place));
            case HowOften.UntilAllWorked() -> {
                while (progress.needle().hasGaps()) {
                    again(units, units, 1, place);
                }
            }
        }
    }

    private void again(List<Unit> units, List<Unit> lastTime, int times, int place) {
        for (int i = 0; i < times; i++) {
            (i == times - 1 ? lastTime : units).forEach(unit -> unit(unit, place));
        }
    }

    private void untilRemain(List<Unit> units, int stitches, int place) {
        Needle needle = progress.needle();
        boolean fewer = needle.loops() > stitches;
        int before;
        do {
            before = needle.loops();
            for (Unit unit : units) {
                if (needle.loops() == stitches) {
                    return;
                }
                unit(unit, place);
            }
            boolean passed = fewer ? needle.loops() < stitches : needle.loops() > stitches;
            if (passed || needle.loops() == before) {
                needle.misfit(Check.TEXT_COUNT, needle.loops(), stitches);
                return;
            }
        } while (needle.loops() != stitches);
    }

    private List<Unit> units(Target target) {
        return switch (target) {
            case Target.Named(var names) -> names.stream()
                    .map(name -> progress.named(name).orElseThrow(() -> missing(name))).toList();
            case Target.LastRounds(var fabric, var rounds) -> {
                int wanted = count(rounds).orElse(0);
                if (progress.worked().size() < wanted) {
                    throw missing(Integer.toString(wanted));
                }
                yield lastWorked(wanted);
            }
            case Target.Numbered(var fabric, var from, var to) -> {
                List<Unit> units = new ArrayList<>();
                int first = count(from).orElse(1);
                int last = count(to).orElse(0);
                for (int number = first; number <= last; number++) {
                    Optional<Unit> unit = progress.numbered(fabric, number);
                    if (unit.isEmpty()) {
                        progress.needle().misfit(Check.TEXT_ROUNDS_MISSING, "", number);
                        yield lastWorked(last - first + 1);
                    }
                    units.add(unit.get());
                }
                yield units;
            }
        };
    }

    private List<Unit> lastWorked(int wanted) {
        List<Unit> worked = progress.worked();
        return List.copyOf(worked.subList(Math.max(0, worked.size() - wanted), worked.size()));
    }

    private static Misfit missing(String rounds) {
        return new Misfit(Check.TEXT_ROUNDS_MISSING, "", rounds);
    }

    /** Where the times are told the last round is told too: then the ending can only say which one that is. */
    private List<Unit> upTo(List<Unit> units, Target ending, HowOften howOften) {
        List<Unit> ends = units(ending);
        int end = units.lastIndexOf(ends.getLast());
        if (end < 0 || howOften instanceof HowOften.More && end < units.size() - 1) {
            progress.needle().misfit(Check.TEXT_ENDING, "", words(ending));
            return units;
        }
        return units.subList(0, end + 1);
    }

    private String words(Target target) {
        return switch (target) {
            case Target.Named(var names) -> String.join(", ", names);
            case Target.Numbered(var fabric, var from, var to) -> count(to).map(Object::toString).orElse("");
            case Target.LastRounds(var fabric, var rounds) -> "";
        };
    }

    /** A length is knitted to one's own gauge; one time through tells what it does to the count. */
    private void even(Line.Even even, int place) {
        List<Unit> units = even.repeatable().map(this::units)
                .orElse(List.of(new Unit(even.fabric() == Fabric.ROUND ? PLAIN_ROUND : PLAIN_ROW, place)));
        int rounds = even.rounds().isPresent() ? even.rounds().flatMap(this::count).orElse(0) : units.size();
        for (int round = 0; round < rounds; round++) {
            unit(units.get(round % units.size()), place);
        }
    }

    private Optional<Integer> count(Sized<Integer> sized) {
        Optional<Integer> count = sized.get(progress.size());
        if (count.isPresent() && count.get() > Effort.MOST_LOOPS) {
            throw new Misfit(Check.TEXT_TOO_LARGE, Effort.MOST_LOOPS, count.get());
        }
        return count;
    }
}
