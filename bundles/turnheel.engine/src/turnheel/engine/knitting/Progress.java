package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import turnheel.engine.instruction.Line;
import turnheel.engine.instruction.Line.Fabric;
import turnheel.engine.instruction.Line.Label;

/** How far one size has come: the needle, the rounds that can be referred to, and those worked last. */
final class Progress {

    /** A round as it can be worked again: the line that tells it, and where the line is. */
    record Unit(Line.Worked worked, int line) {
    }

    private record Number(Fabric fabric, int number) {
    }

    private final Effort effort;
    private final int size;
    private Needle needle;
    private Hands hands;
    private InstructionHands instructions;
    private boolean closesYarnOvers;
    private final Map<Number, Unit> numbered = new HashMap<>();
    private final Map<String, Unit> named = new HashMap<>();
    private final List<Unit> worked = new ArrayList<>();
    private final List<Traced> trace = new ArrayList<>();
    private Flaws flaws = new Flaws();

    Progress(Effort effort, int size) {
        this.effort = effort;
        this.size = size;
        this.needle = new Needle(effort);
        this.hands = new Hands(needle);
        this.instructions = new InstructionHands(needle, hands, size);
    }

    /** The same sock, tried out on its own; its trace begins anew. */
    Progress copy(Effort other) {
        Progress copy = new Progress(other, size);
        copy.use(needle.copy(other));
        copy.closeYarnOvers(closesYarnOvers);
        copy.numbered.putAll(numbered);
        copy.named.putAll(named);
        copy.worked.addAll(worked);
        copy.flaws = flaws.copy();
        return copy;
    }

    Effort effort() {
        return effort;
    }

    int size() {
        return size;
    }

    Needle needle() {
        return needle;
    }

    InstructionHands instructions() {
        return instructions;
    }

    void use(Needle other) {
        needle = other;
        hands = new Hands(needle);
        hands.closeYarnOvers(closesYarnOvers);
        instructions = new InstructionHands(needle, hands, size);
    }

    void closeYarnOvers(boolean close) {
        closesYarnOvers = close;
        hands.closeYarnOvers(close);
    }

    Flaws flaws() {
        return flaws;
    }

    void beginSection() {
        flaws.beginSection();
        numbered.clear();
        named.clear();
        worked.clear();
    }

    void define(Line.Worked line, Label label, int place) {
        Unit unit = new Unit(line, place);
        label.name().ifPresent(name -> named.put(name, unit));
        Optional<Integer> from = label.from().flatMap(number -> number.get(size));
        Optional<Integer> to = label.to().flatMap(number -> number.get(size));
        if (from.isPresent() && to.isPresent()) {
            for (int number = from.get(); number <= to.get() && number - from.get() < Effort.MOST_LOOPS; number++) {
                effort.spend(1);
                numbered.put(new Number(label.fabric(), number), unit);
            }
        }
    }

    Optional<Unit> named(String name) {
        return Optional.ofNullable(named.get(name));
    }

    Optional<Unit> numbered(Fabric fabric, int number) {
        return Optional.ofNullable(numbered.get(new Number(fabric, number)));
    }

    /** The rounds worked in this section, the last one last. */
    List<Unit> worked() {
        return worked;
    }

    List<Traced> trace() {
        return trace;
    }

    /** A round, row or lesser piece of work is done. */
    void trace(int line, int rounds) {
        Traced now = new Traced(line, rounds, needle.loops(), needle.open(), needle.held().loops());
        Traced last = trace.isEmpty() ? now : trace.getLast();
        boolean same = !trace.isEmpty() && rounds > 0 && last.rounds() > 0 && last.line() == line
                && last.stitches() == now.stitches() && last.openYarnOvers() == now.openYarnOvers()
                && last.onHold() == now.onHold();
        if (same) {
            trace.removeLast();
            now = new Traced(line, last.rounds() + rounds, now.stitches(), now.openYarnOvers(), now.onHold());
        }
        trace.add(now);
    }

    /** What a copy of this has worked since it was made counts as worked, whatever its needle holds. */
    void takeOver(Progress trial) {
        worked.addAll(trial.worked.subList(Math.min(worked.size(), trial.worked.size()), trial.worked.size()));
        trace.addAll(trial.trace);
    }

    /** Forgets what a line did that went wrong. */
    void undo(Needle before, int workedBefore, int tracedBefore) {
        use(before);
        worked.subList(workedBefore, worked.size()).clear();
        trace.subList(tracedBefore, trace.size()).clear();
    }
}
