package turnheel.engine.writing;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

import turnheel.engine.instruction.Instruction;
import turnheel.engine.instruction.Line;
import turnheel.engine.instruction.Sized;
import turnheel.engine.instruction.Until;
import turnheel.engine.stitch.Stitch;

/** Follows the lines of one size loop by loop, with no other knowledge than theirs. */
final class KnittedLines {

    /**
     * What lies on the needles after rounds that patterns number, one after the other.
     *
     * @param rounds how many of them leave the same
     * @param measured whether there are more, which a knitter measures
     */
    record After(int rounds, boolean measured, int stitches, int openYarnOvers) {

        /** One more, which is put together with the last one where both leave the same. */
        static void add(List<After> all, After next) {
            if (!all.isEmpty() && all.getLast().stitches == next.stitches
                    && all.getLast().openYarnOvers == next.openYarnOvers) {
                After last = all.removeLast();
                all.add(new After(last.rounds + next.rounds, last.measured || next.measured, next.stitches,
                        next.openYarnOvers));
            } else {
                all.add(next);
            }
        }

        /** Whether counting agrees with this, as far as it is counted. */
        boolean agrees(After counted) {
            return stitches == counted.stitches && openYarnOvers == counted.openYarnOvers
                    && (measured ? rounds <= counted.rounds : rounds == counted.rounds);
        }
    }

    /** What lies on a needle. */
    private sealed interface Thing {
        record Loop(boolean openYarnOver, Optional<Until.Mark> mark) implements Thing {
        }

        record Marker() implements Thing {
        }

        /** Where a row turned before the end. */
        record Gap() implements Thing {
        }
    }

    private static final Thing.Loop PLAIN = new Thing.Loop(false, Optional.empty());
    private static final List<Stitch> TURNS = List.of(Stitch.TURN, Stitch.WRAP_AND_TURN, Stitch.TWIN_AND_TURN);

    private final int size;
    private final List<String> unnumbered;
    private final List<After> rounds = new ArrayList<>();
    private Deque<Thing> left = new ArrayDeque<>();
    private Deque<Thing> right = new ArrayDeque<>();
    private final Deque<Thing> held = new ArrayDeque<>();
    private final Map<String, List<Instruction>> labelled = new HashMap<>();
    private final List<List<Instruction>> history = new ArrayList<>();
    private String current = "";

    /** @param unnumbered names of rounds that patterns do not number */
    KnittedLines(int size, List<String> unnumbered) {
        this.size = size;
        this.unnumbered = unnumbered;
    }

    List<After> rounds() {
        return rounds;
    }

    /** The lines under one heading. */
    void knit(List<Line> lines) {
        labelled.clear();
        history.clear();
        lines.stream().filter(line -> line.onlySizes().isEmpty() || line.onlySizes().contains(size)).forEach(
                this::knit);
    }

    private void knit(Line line) {
        current = line.toString();
        switch (line) {
            case Line.Worked worked -> worked(worked);
            case Line.RepeatRounds repeat -> repeat(repeat);
            case Line.Even even -> even(even);
            case Line.Section section -> throw new AssertionError("a heading within a chapter");
        }
        line.stated().ifPresent(stated -> require(its(stated) == loops(left) + loops(right),
                "states %d stitches".formatted(its(stated))));
    }

    private void even(Line.Even even) {
        if (even.rounds().isEmpty()) {
            After.add(rounds, new After(0, true, loops(left), (int) open(left)));
        }
        int number = even.rounds().map(this::its).orElse(0);
        for (int i = 0; i < number; i++) {
            round(List.of(new Instruction.WorkTo(Stitch.KNIT, new Until.End())), true);
        }
    }

    private void worked(Line.Worked line) {
        if (line.label().isEmpty()) {
            line.instructions().forEach(this::follow);
            return;
        }
        Line.Label label = line.label().get();
        String name = label.name().orElseGet(() -> label.fabric() + " " + its(label.from().orElseThrow()));
        labelled.put(name, line.instructions());
        boolean numbered = label.name().isEmpty() || !unnumbered.contains(name);
        if (label.fabric() == Line.Fabric.ROW) {
            row(line.instructions());
        } else {
            round(line.instructions(), numbered);
        }
    }

    private void repeat(Line.RepeatRounds repeat) {
        List<List<Instruction>> again = switch (repeat.target()) {
            case Line.Target.Numbered(Line.Fabric fabric, Sized<Integer> from, Sized<Integer> to) ->
                IntStream.rangeClosed(its(from), its(to)).mapToObj(number -> found(fabric + " " + number)).toList();
            case Line.Target.Named(List<String> names) -> names.stream().map(this::found).toList();
            case Line.Target.LastRounds(Line.Fabric fabric, Sized<Integer> number) ->
                List.copyOf(history.subList(history.size() - its(number), history.size()));
        };
        int times = switch (repeat.howOften()) {
            case Line.HowOften.More(Sized<Integer> more) -> its(more);
            case Line.HowOften other -> throw new AssertionError("not written so far");
        };
        require(times > 0, "repeats nothing");
        for (int time = 0; time < times; time++) {
            for (List<Instruction> instructions : again) {
                boolean isRow = repeat.target() instanceof Line.Target.Numbered(var fabric, var from, var to)
                        && fabric == Line.Fabric.ROW;
                if (isRow) {
                    row(instructions);
                } else {
                    round(instructions, true);
                }
            }
        }
    }

    private List<Instruction> found(String label) {
        List<Instruction> instructions = labelled.get(label);
        require(instructions != null, "there is no " + label);
        return instructions;
    }

    private void round(List<Instruction> instructions, boolean numbered) {
        instructions.forEach(this::follow);
        require(loops(left) == 0, "%d loops left over".formatted(loops(left)));
        right.addAll(left);
        left = right;
        right = new ArrayDeque<>();
        after(instructions, numbered);
    }

    private void row(List<Instruction> instructions) {
        instructions.forEach(this::follow);
        after(instructions, true);
    }

    private void after(List<Instruction> instructions, boolean numbered) {
        history.add(instructions);
        if (numbered) {
            int open = (int) (open(left) + open(right));
            After.add(rounds, new After(1, false, loops(left) + loops(right), open));
        }
    }

    private static long open(Deque<Thing> needle) {
        return needle.stream().filter(thing -> thing instanceof Thing.Loop(boolean open, var mark) && open).count();
    }

    private void follow(Instruction instruction) {
        switch (instruction) {
            case Instruction.Work(Stitch stitch, Sized<Integer> count) -> {
                if (count.get(size).isPresent()) {
                    work(stitch, its(count));
                }
            }
            case Instruction.WorkTo(Stitch stitch, Until until) -> work(stitch, upTo(until));
            case Instruction.HoldPart hold -> throw new AssertionError("not written so far");
            case Instruction.Over over -> throw new AssertionError("not written so far");
            case Instruction.CloseTo closeTo -> throw new AssertionError("not written so far");
            case Instruction.Times(List<Instruction> body, Sized<Integer> times) -> {
                for (int i = 0; i < its(times); i++) {
                    body.forEach(this::follow);
                }
            }
            case Instruction.RepeatTo(List<Instruction> body, Until until) -> {
                do {
                    int before = loops(left);
                    body.forEach(this::follow);
                    require(loops(left) < before, "gets no further");
                } while (upTo(until) > 0);
                require(upTo(until) == 0, "repeats too far");
            }
            case Instruction.RepeatMore more -> throw new AssertionError("not written so far");
            case Instruction.Marker(Instruction.MarkerAction action) -> marker(action);
            case Instruction.MarkersAfterEvery(Sized<Integer> stitches) -> markersAfterEvery(its(stitches));
            case Instruction.CastOn(Instruction.CastOnManner manner, Sized<Integer> stitches) ->
                left.addAll(Collections.nCopies(its(stitches), PLAIN));
            case Instruction.JoinInRound join -> {
                require(right.isEmpty() || loops(left) == 0, "joins in the middle of a row");
                left.addAll(held);
                held.clear();
                startHere();
            }
            case Instruction.PickUp(Sized<Integer> stitches, Instruction.Edge edge) -> {
                if (stitches.get(size).isPresent()) {
                    right.addAll(Collections.nCopies(its(stitches), PLAIN));
                }
            }
            case Instruction.TakeOut takeOut -> { }
            case Instruction.Hold hold -> throw new AssertionError("not written so far");
            case Instruction.WorkOnlyOn(Sized<Integer> stitches, Optional<Sized<Integer>> others) ->
                workOnlyOn(its(stitches), others.flatMap(number -> number.get(size)).orElse(0));
            case Instruction.WorkHeld(Stitch stitch, Sized<Integer> stitches) -> {
                for (int i = 0; i < its(stitches); i++) {
                    require(held.poll() != null, "nothing is held");
                    right.add(PLAIN);
                }
            }
            case Instruction.StartHere start -> startHere();
            case Instruction.WasteYarn(Sized<Integer> stitches) -> work(Stitch.KNIT, its(stitches));
        }
    }

    private void startHere() {
        left.addAll(right);
        right = new ArrayDeque<>();
    }

    private int upTo(Until until) {
        return switch (until) {
            case Until.End end -> loops(left);
            case Until.Next next -> throw new AssertionError("not written so far");
            case Until.Held all -> throw new AssertionError("not written so far");
            case Until.Last(Sized<Integer> stitches) -> loops(left) - its(stitches);
            case Until.Marker(Sized<Integer> stitches) -> before(Thing.Marker.class) - its(stitches);
            case Until.Gap(Sized<Integer> stitches) -> before(Thing.Gap.class) - its(stitches);
            case Until.TurnedStitch(Until.Mark mark, Sized<Integer> stitches) -> beforeMarked(mark) - its(stitches);
        };
    }

    /** Loops before the next thing of a kind; the yarn-overs of a turn belong to its gap. */
    private int before(Class<? extends Thing> kind) {
        int loops = 0;
        int yarnOvers = 0;
        for (Thing thing : left) {
            if (kind.isInstance(thing)) {
                return kind == Thing.Gap.class ? loops - yarnOvers : loops;
            }
            if (thing instanceof Thing.Loop loop) {
                loops++;
                yarnOvers = loop.openYarnOver() ? yarnOvers + 1 : 0;
            }
        }
        throw new AssertionError("no %s ahead: %s".formatted(kind.getSimpleName(), current));
    }

    private int beforeMarked(Until.Mark mark) {
        int loops = 0;
        for (Thing thing : left) {
            if (thing instanceof Thing.Loop loop) {
                if (loop.mark().equals(Optional.of(mark))) {
                    return loops;
                }
                loops++;
            }
        }
        throw new AssertionError("no stitch is marked: " + current);
    }

    private void marker(Instruction.MarkerAction action) {
        switch (action) {
            case PLACE -> right.add(new Thing.Marker());
            case SLIP -> {
                require(left.peek() instanceof Thing.Marker, "no marker here");
                right.add(left.remove());
            }
            case REMOVE_ALL -> {
                left.removeIf(Thing.Marker.class::isInstance);
                right.removeIf(Thing.Marker.class::isInstance);
            }
            case REMOVE -> {
                require(left.poll() instanceof Thing.Marker, "no marker here");
            }
        }
    }

    private void markersAfterEvery(int stitches) {
        require(loops(right) == 0, "markers are placed at the start of the round");
        Deque<Thing> marked = new ArrayDeque<>();
        int since = 0;
        for (Thing thing : left) {
            if (thing instanceof Thing.Loop) {
                marked.add(thing);
                since++;
                if (since == stitches) {
                    marked.add(new Thing.Marker());
                    since = 0;
                }
            }
        }
        require(since == 0, "the last marker is not at the start");
        left = marked;
    }

    private void workOnlyOn(int stitches, int others) {
        Deque<Thing> on = new ArrayDeque<>();
        while (loops(on) < stitches) {
            require(!left.isEmpty(), "too few stitches for the flat part");
            Thing next = left.remove();
            if (next instanceof Thing.Loop) {
                on.add(next);
            }
        }
        left.stream().filter(Thing.Loop.class::isInstance).forEach(held::add);
        right.stream().filter(Thing.Loop.class::isInstance).forEach(held::add);
        require(held.size() == others, "holds %d others".formatted(held.size()));
        left = on;
        right = new ArrayDeque<>();
    }

    private void work(Stitch stitch, int count) {
        require(count >= 0, "works %d times".formatted(count));
        if (stitch == Stitch.GRAFT || stitch == Stitch.DRAW_CLOSED) {
            require(stitch.takes() * count == loops(left) + loops(right) + loops(held), "does not close all loops");
            left.clear();
            right.clear();
            held.clear();
            return;
        }
        for (int i = 0; i < count; i++) {
            work(stitch);
        }
    }

    private void work(Stitch stitch) {
        if (TURNS.contains(stitch)) {
            turn(switch (stitch) {
                case WRAP_AND_TURN -> Optional.of(Until.Mark.WRAPPED);
                case TWIN_AND_TURN -> Optional.of(Until.Mark.TWIN);
                default -> Optional.empty();
            });
            return;
        }
        Optional<Until.Mark> wanted = switch (stitch) {
            case KNIT_WITH_WRAPS, PURL_WITH_WRAPS -> Optional.of(Until.Mark.WRAPPED);
            case KNIT_TWIN, PURL_TWIN -> Optional.of(Until.Mark.TWIN);
            case KNIT_DOUBLE, PURL_DOUBLE -> Optional.of(Until.Mark.DOUBLE);
            default -> Optional.empty();
        };
        for (int i = 0; i < stitch.takes(); i++) {
            Thing.Loop taken = nextLoop();
            require(wanted.isEmpty() || taken.mark().equals(wanted), "not marked for " + stitch);
        }
        Thing.Loop left = new Thing.Loop(stitch == Stitch.YARN_OVER,
                stitch == Stitch.DOUBLE_STITCH ? Optional.of(Until.Mark.DOUBLE) : Optional.empty());
        right.addAll(Collections.nCopies(stitch.leaves(), left));
    }

    /** Takes the next loop; a marker on the way is slipped, a gap is closed. */
    private Thing.Loop nextLoop() {
        while (!left.isEmpty()) {
            switch (left.remove()) {
                case Thing.Loop loop -> {
                    return loop;
                }
                case Thing.Marker marker -> right.add(marker);
                case Thing.Gap gap -> { }
            }
        }
        throw new AssertionError("no loop left: " + current);
    }

    private void turn(Optional<Until.Mark> mark) {
        Deque<Thing> unworked = new ArrayDeque<>();
        if (mark.isPresent()) {
            unworked.add(new Thing.Loop(false, mark));
            nextLoop();
        }
        left.forEach(unworked::addLast);
        Deque<Thing> far = reversed(unworked);
        if (loops(far) > 0) {
            far.add(new Thing.Gap());
        }
        left = reversed(right);
        right = far;
    }

    private static Deque<Thing> reversed(Deque<Thing> needle) {
        Deque<Thing> reversed = new ArrayDeque<>();
        needle.forEach(reversed::addFirst);
        return reversed;
    }

    private static int loops(Deque<Thing> needle) {
        return (int) needle.stream().filter(Thing.Loop.class::isInstance).count();
    }

    private int its(Sized<Integer> sized) {
        return sized.get(size).orElseThrow(() -> new AssertionError("no value for the size: " + current));
    }

    private void require(boolean met, String problem) {
        if (!met) {
            throw new AssertionError("%s, with %d + %d loops (%d held): %s".formatted(problem, loops(right),
                    loops(left),
                    loops(held), current));
        }
    }
}
