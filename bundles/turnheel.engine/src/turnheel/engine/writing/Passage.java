package turnheel.engine.writing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

import turnheel.engine.instruction.Instruction;
import turnheel.engine.instruction.Line;
import turnheel.engine.instruction.Line.Fabric;
import turnheel.engine.instruction.Line.Side;
import turnheel.engine.instruction.Sized;

/**
 * The lines under one heading in the making: counts rounds and carries the stitches of each size from line to line. A
 * line that only some sizes have names them.
 */
final class Passage {

    private static final Optional<Sized<Integer>> NOT_TOLD = Optional.empty();

    private final Shared shared;
    private final SortedSet<Integer> sizes;

    /** What all views of one passage share. */
    private static final class Shared {
        private final List<Line> lines = new ArrayList<>();
        private final SortedSet<Integer> all;
        private EachSize stitches;
        private int number;

        Shared(EachSize stitches) {
            this.all = stitches.where(count -> true);
            this.stitches = stitches;
        }
    }

    private Passage(Shared shared, SortedSet<Integer> sizes) {
        this.shared = shared;
        this.sizes = sizes;
    }

    /** @param stitches what each size has on the needle; sizes without are not written for */
    Passage(EachSize stitches) {
        this.shared = new Shared(stitches);
        this.sizes = shared.all;
    }

    /** The same passage for only those of its sizes. */
    Passage only(Set<Integer> some) {
        SortedSet<Integer> both = new TreeSet<>(sizes);
        both.retainAll(some);
        return new Passage(shared, both);
    }

    boolean isForNone() {
        return sizes.isEmpty();
    }

    EachSize stitches() {
        return shared.stitches;
    }

    List<Line> lines() {
        return List.copyOf(shared.lines);
    }

    /** Something between two rounds. */
    void between(EachSize change, Doing... doings) {
        worked(Optional.empty(), change, doings);
    }

    void between(Doing... doings) {
        between(shared.stitches.map(count -> 0), doings);
    }

    /** The beginning: how many stitches there are afterwards is told by what is done. */
    void begin(EachSize change, Doing... doings) {
        List<Instruction> instructions = told(doings);
        if (!instructions.isEmpty()) {
            after(change);
            shared.lines.add(new Line.Worked(Optional.empty(), instructions, NOT_TOLD, onlySizes()));
        }
    }

    /** The end: afterwards no stitch is left, which goes without saying. */
    void gone(Doing... doings) {
        begin(shared.stitches.times(-1), doings);
    }

    /** A round of the next number, which is returned. */
    int round(int change, Doing... doings) {
        return round(shared.stitches.map(count -> change), doings);
    }

    int round(EachSize change, Doing... doings) {
        int number = number();
        worked(Optional.of(numbered(Fabric.ROUND, number, Optional.empty())), change, doings);
        return number;
    }

    /** A flat row of the next number, which is returned. */
    int row(Side side, int change, Doing... doings) {
        int number = number();
        row(number, side, change, doings);
        return number;
    }

    /** A flat row of a number that was taken for it; other sizes may work other things in the row of this number. */
    void row(int number, Side side, int change, Doing... doings) {
        worked(Optional.of(numbered(Fabric.ROW, number, Optional.of(side))), shared.stitches.map(count -> change),
                doings);
    }

    /** Takes the next number. */
    int number() {
        if (!sizes.isEmpty()) {
            shared.number++;
        }
        return shared.number;
    }

    private static Line.Label numbered(Fabric fabric, int number, Optional<Side> side) {
        Optional<Sized<Integer>> its = Optional.of(Sized.all(number));
        return new Line.Label(fabric, its, its, Optional.empty(), side);
    }

    /** A round that is called by name. */
    void named(String name, int change, Doing... doings) {
        named(name, shared.stitches.map(count -> change), doings);
    }

    void named(String name, EachSize change, Doing... doings) {
        worked(Optional.of(new Line.Label(Fabric.ROUND, Optional.empty(), Optional.empty(), Optional.of(name),
                Optional.empty())), change, doings);
    }

    private void worked(Optional<Line.Label> label, EachSize change, Doing... doings) {
        List<Instruction> instructions = told(doings);
        if (!instructions.isEmpty()) {
            shared.lines.add(new Line.Worked(label, instructions, after(change), onlySizes()));
        }
    }

    /** Nothing for no size: even what has no count, such as to the end, is then told to nobody. */
    private List<Instruction> told(Doing... doings) {
        return sizes.isEmpty() ? List.of() : Doing.told(sizes, doings);
    }

    /** Takes stitches to the needle, or from it, about which the next line tells; nothing is written. */
    void count(EachSize change) {
        after(change);
    }

    /** Works numbered rounds again; a size in which {@code more} is 0 does not. */
    void again(Fabric fabric, int from, int to, EachSize more, int changeEach) {
        again(fabric, from, to, more, more.map(count -> changeEach));
    }

    /** The same where what each time changes differs by size. */
    void again(Fabric fabric, int from, int to, EachSize more, EachSize changeEach) {
        again(new Line.Target.Numbered(fabric, Sized.all(from), Sized.all(to)), more, more.times(changeEach));
    }

    /** Works a named round again. */
    void again(List<String> names, EachSize more, EachSize change) {
        again(new Line.Target.Named(names), more, change);
    }

    /** Works the last rounds again. */
    void againLast(EachSize rounds, EachSize more, EachSize changeEach) {
        Passage some = only(more.atLeast(1));
        rounds.told(some.sizes).ifPresent(last ->
                some.again(new Line.Target.LastRounds(Fabric.ROUND, last), more, more.times(changeEach)));
    }

    private void again(Line.Target target, EachSize more, EachSize change) {
        Passage some = only(more.atLeast(1));
        more.told(some.sizes).ifPresent(times -> shared.lines.add(new Line.RepeatRounds(target,
                new Line.HowOften.More(times), some.after(change), some.onlySizes())));
    }

    /** Rounds without shaping; a size that has none of them is left out. */
    void even(EachSize rounds, boolean asSet) {
        Passage some = only(rounds.atLeast(1));
        rounds.told(some.sizes).ifPresent(number -> some.even(Optional.of(number), Optional.empty(), Optional.empty(),
                asSet));
    }

    /** Rounds without shaping, counted or measured. */
    void even(Stretch stretch, boolean asSet) {
        even(stretch, Optional.empty(), asSet);
    }

    /** Rounds that work a numbered one again, counted or measured. */
    void again(Stretch stretch, int round) {
        even(stretch, Optional.of(new Line.Target.Numbered(Fabric.ROUND, Sized.all(round), Sized.all(round))), false);
    }

    private void even(Stretch stretch, Optional<Line.Target> repeatable, boolean asSet) {
        Passage some = only(stretch.rounds().atLeast(1));
        if (!some.isForNone()) {
            some.even(stretch.roundsTold(some.sizes), stretch.goalTold(some.sizes), repeatable, asSet);
        }
    }

    private void even(Optional<Sized<Integer>> rounds, Optional<Line.Goal> goal, Optional<Line.Target> repeatable,
            boolean asSet) {
        shared.lines.add(new Line.Even(rounds, goal, repeatable, asSet, NOT_TOLD, onlySizes()));
    }

    /** The stitches after a change, as they are stated; nothing where no size changes. */
    private Optional<Sized<Integer>> after(EachSize change) {
        EachSize before = shared.stitches;
        EachSize changed = before.plus(change);
        List<Optional<Integer>> counts = new ArrayList<>();
        for (int size = 0; size < before.counts().size(); size++) {
            counts.add(sizes.contains(size) ? changed.of(size) : before.of(size));
        }
        shared.stitches = new EachSize(counts);
        boolean changes = sizes.stream().anyMatch(size -> change.of(size).filter(by -> by != 0).isPresent());
        return changes ? shared.stitches.told(sizes) : NOT_TOLD;
    }

    private Set<Integer> onlySizes() {
        return sizes.equals(shared.all) ? Set.of() : sizes;
    }
}
