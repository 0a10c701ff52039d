package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import org.eclipse.jdt.annotation.Nullable;
import turnheel.engine.instruction.Instruction;
import turnheel.engine.instruction.Line;
import turnheel.engine.instruction.Line.Fabric;
import turnheel.engine.instruction.Line.HowOften;
import turnheel.engine.instruction.Line.Label;
import turnheel.engine.instruction.Line.Target;
import turnheel.engine.instruction.Sized;

/** Puts together what sentences say to the lines of a pattern. Made for one text. */
final class Assembly {

    /** Rounds of one label that others can be worked like. */
    private static final int MOST_ALIKE = 200;

    private final List<Told> told = new ArrayList<>();
    private Optional<Label> label = Optional.empty();
    private final List<Instruction> instructions = new ArrayList<>();
    private Set<Integer> onlySizes = Set.of();
    private @Nullable Span span;
    private boolean known = true;
    /** Whether a line was begun and not yet ended. */
    private boolean open;
    private final Alternates alternates = new Alternates();
    /** The rounds of this section by what they are called, for others that are worked like them. */
    private final Map<String, List<Instruction>> rounds = new HashMap<>();
    private final Map<String, Map<String, List<Instruction>>> patterns = new HashMap<>();
    private boolean inPattern;
    private String pattern = "";

    /** Whether a label stands alone so far. */
    boolean awaitsInstructions() {
        return label.isPresent() && instructions.isEmpty() && known;
    }

    /** In the order in which they are told. */
    List<Told> told() {
        return told;
    }

    void section(String title, Span place) {
        endLine();
        alternates.clear();
        rounds.clear();
        inPattern = false;
        told.add(new Told(new Line.Section(title), true, place, Optional.empty()));
    }

    /** What follows is not worked here, but where a line refers to it. */
    void stitchPattern(String name) {
        endLine();
        alternates.clear();
        rounds.clear();
        inPattern = true;
        patterns.put(name, new HashMap<>());
        pattern = name;
    }

    /** A round of a stitch pattern; plain, where the text does not give its rounds. */
    Instruction over(Said.Over over) {
        Map<String, List<Instruction>> rounds = patterns.getOrDefault(over.pattern(), Map.of());
        List<Instruction> body = over.number()
                .flatMap(number -> List.of(Fabric.ROUND, Fabric.ROW).stream().map(fabric -> rounds.get(key(fabric, number)))
                        .filter(Objects::nonNull).findFirst())
                .orElse(LineHands.PLAIN);
        return new Instruction.Over(body, over.stitches());
    }

    private static String key(Fabric fabric, int number) {
        return fabric + " " + number;
    }

    private static Optional<String> key(Target target) {
        return switch (target) {
            case Target.Named(var names) -> Optional.of(names.getLast());
            case Target.Numbered(var fabric, var from, var to) -> to.get(0).map(number -> key(fabric, number));
            case Target.LastRounds last -> Optional.empty();
        };
    }

    private List<Instruction> like(Target target) {
        return key(target).map(rounds::get).orElseThrow(() -> new Unreadable("no such round to work like"));
    }

    void label(Labels.Read read, Set<Integer> sizes, Span place) {
        endLine();
        alternates.missingBefore(read.label()).ifPresent(line -> told.add(new Told(line, true, place, Optional.empty())));
        begin(sizes, place);
        label = Optional.of(read.label());
        alternates.label(read);
    }

    void say(Said said, Set<Integer> sizes, Span place) {
        switch (said) {
            case Said.Do(var instruction) -> {
                begin(sizes, place);
                instructions.add(instruction);
            }
            case Said.As(var target) -> {
                begin(sizes, place);
                instructions.addAll(like(target));
            }
            case Said.Over over -> {
                begin(sizes, place);
                instructions.add(over(over));
            }
            case Said.Again(var target, var howOften, var ending) -> add(
                    new Line.RepeatRounds(target, howOften, ending, Optional.empty(), sizes), place);
            case Said.Plain(var rounds, var goal, var asSet, var fabric) -> add(
                    new Line.Even(rounds, goal, Optional.empty(), asSet, Optional.empty(), sizes, fabric), place);
            case Said.AgainFor(var target, var rounds, var goal) -> add(
                    new Line.Even(rounds, goal, Optional.of(target), false, Optional.empty(), sizes), place);
        }
    }

    private void add(Line line, Span place) {
        if (label.isPresent() && instructions.isEmpty() && line instanceof Line.Even even && even.repeatable().isEmpty()) {
            // a label that covers rounds, and says that they are plain
            instructions.add(LineHands.PLAIN.getFirst());
            return;
        }
        if (label.isPresent() && instructions.isEmpty() && line instanceof Line.RepeatRounds repeat
                && repeat.howOften().equals(new HowOften.More(Sized.all(1)))) {
            instructions.addAll(like(repeat.target()));
            return;
        }
        endLine();
        if (line instanceof Line.RepeatRounds) {
            alternates.missing().ifPresent(missing -> told.add(new Told(missing, true, place, Optional.empty())));
        }
        told.add(new Told(line, true, place, Optional.empty()));
    }

    private void remember(Line.Worked line) {
        Map<String, List<Instruction>> called = inPattern ? patterns.get(pattern) : rounds;
        line.label().ifPresent(label -> {
            label.name().ifPresent(name -> called.put(name, line.instructions()));
            int from = label.from().flatMap(number -> number.get(0)).orElse(1);
            int to = label.to().flatMap(number -> number.get(0)).orElse(0);
            for (int number = from; number <= to && number - from < MOST_ALIKE; number++) {
                called.put(key(label.fabric(), number), line.instructions());
            }
        });
    }

    private void begin(Set<Integer> sizes, Span place) {
        if (!open) {
            open = true;
            onlySizes = sizes;
            span = place;
        } else if (label.isPresent() && instructions.isEmpty()) {
            span = place;
        }
    }

    /** Something of the line cannot be read; it cannot be worked then. */
    void unknown(Set<Integer> sizes, Span place) {
        begin(sizes, place);
        known = false;
    }

    /** The count after the line, or after the one before when nothing stands before it. */
    void state(Sized<Integer> stated, Set<Integer> sizes, Span place) {
        if (!open && !told.isEmpty() && told.getLast().stated().isEmpty() && told.getLast().line().onlySizes().equals(sizes)
                && !(told.getLast().line() instanceof Line.Section)) {
            Told last = told.removeLast();
            told.add(new Told(with(stated, last.line()), last.known(), last.work(), Optional.of(place)));
            return;
        }
        begin(sizes, place);
        end(Optional.of(stated), Optional.of(place));
    }

    private static Line with(Sized<Integer> stated, Line line) {
        Optional<Sized<Integer>> count = Optional.of(stated);
        return switch (line) {
            case Line.Worked worked -> new Line.Worked(worked.label(), worked.instructions(), count, worked.onlySizes());
            case Line.RepeatRounds repeat -> new Line.RepeatRounds(repeat.target(), repeat.howOften(), repeat.ending(),
                    count, repeat.onlySizes());
            case Line.Even even -> new Line.Even(even.rounds(), even.goal(), even.repeatable(), even.asSet(), count,
                    even.onlySizes(), even.fabric());
            case Line.Section section -> section;
        };
    }

    void endLine() {
        if (open) {
            end(Optional.empty(), Optional.empty());
        }
    }

    private void end(Optional<Sized<Integer>> stated, Optional<Span> at) {
        Line.Worked line = new Line.Worked(label, instructions, stated, onlySizes);
        Span place = span;
        if (place != null && (!instructions.isEmpty() || label.isPresent() || stated.isPresent() || !known)) {
            remember(line);
            if (!inPattern) {
                told.add(new Told(line, known, place, at));
            }
            alternates.worked(line);
        }
        label = Optional.empty();
        instructions.clear();
        open = false;
        known = true;
        span = null;
    }
}
