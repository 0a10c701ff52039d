package turnheel.engine.writing;

import static turnheel.engine.writing.Phrase.capitalized;
import static turnheel.engine.writing.Phrase.filled;
import static turnheel.engine.writing.Phrase.words;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import turnheel.engine.instruction.Line;
import turnheel.engine.instruction.Line.Fabric;
import turnheel.engine.instruction.Sized;
import turnheel.engine.wording.Vocabulary;

/** Lines of instructions in words. */
final class LineText {

    private final Vocabulary vocabulary;
    private final InstructionText instructions;
    private final Lengths lengths;
    private final List<String> labels;

    /** @param labels of the sizes, in the pattern's order */
    LineText(Vocabulary vocabulary, Lengths lengths, List<String> labels) {
        this.vocabulary = vocabulary;
        this.instructions = new InstructionText(vocabulary);
        this.lengths = lengths;
        this.labels = List.copyOf(labels);
    }

    /** The whole sentence, with the sizes that it is for and the stitches after it. */
    List<Piece> of(Line line) {
        List<Piece> sentence = filled(vocabulary.phrase("sentence"), switch (line) {
            case Line.Worked worked -> worked(worked);
            case Line.RepeatRounds repeat -> capitalized(repeat(repeat));
            case Line.Even even -> capitalized(even(even));
            case Line.Section(String title) -> words(title);
        });
        List<Piece> counted = line.stated()
                .map(stitches -> filled(vocabulary.phrase("stated"), sentence, List.of(Piece.Values.of(stitches))))
                .orElse(sentence);
        return line.onlySizes().isEmpty() ? counted : only(line.onlySizes(), counted);
    }

    private List<Piece> only(Set<Integer> sizes, List<Piece> sentence) {
        List<String> named = sizes.stream().sorted().map(labels::get).toList();
        return filled(sizes.size() == 1 ? vocabulary.phraseOfOne("only") : vocabulary.phrase("only"),
                words(list(named)), sentence);
    }

    private String list(List<String> texts) {
        return list(vocabulary, texts);
    }

    /** Texts in a row, as in {@code S, M and L}. */
    static String list(Vocabulary vocabulary, List<String> texts) {
        if (texts.size() == 1) {
            return texts.getFirst();
        }
        String first = String.join(vocabulary.phrase("list.separator"), texts.subList(0, texts.size() - 1));
        return vocabulary.phrase("list.last").replace("{0}", first).replace("{1}", texts.getLast());
    }

    private List<Piece> worked(Line.Worked worked) {
        List<Piece> done = capitalized(instructions.of(worked.instructions()));
        return worked.label().map(label -> filled(vocabulary.phrase("label.with"), label(label), done)).orElse(done);
    }

    private List<Piece> label(Line.Label label) {
        List<Piece> named = label.name().map(Phrase::words).orElseGet(() -> numbered(label));
        return label.side().map(side -> filled(vocabulary.phrase("label." + side), named)).orElse(named);
    }

    private List<Piece> numbered(Line.Label label) {
        String key = "label." + label.fabric();
        Sized<Integer> from = label.from().orElseThrow();
        Sized<Integer> to = label.to().orElse(from);
        return from.equals(to) ? filled(vocabulary.phrase(key), number(from))
                : filled(vocabulary.phrase(key + ".several"), number(from), number(to));
    }

    private static List<Piece> number(Sized<Integer> number) {
        return List.of(Piece.Values.of(number));
    }

    private List<Piece> repeat(Line.RepeatRounds repeat) {
        List<Piece> often = howOften(repeat);
        return repeat.ending().map(ending -> filled(vocabulary.phrase("repeat.ending"), often,
                target(ending))).orElse(often);
    }

    private List<Piece> howOften(Line.RepeatRounds repeat) {
        List<Piece> target = target(repeat.target());
        return switch (repeat.howOften()) {
            case Line.HowOften.More(Sized<Integer> times) ->
                filled(counted("repeat.more", times), target, number(times));
            case Line.HowOften.InAll(Sized<Integer> times) ->
                filled(counted("repeat.inAll", times), target, number(times));
            case Line.HowOften.Every(Sized<Integer> nth, Sized<Integer> times) ->
                filled(vocabulary.phrase("repeat.every"), target, number(times), number(nth));
            case Line.HowOften.UntilAllWorked all -> filled(vocabulary.phrase("repeat.allWorked"), target);
            case Line.HowOften.UntilRemain(Sized<Integer> stitches) ->
                filled(vocabulary.phrase("repeat.until"), target, number(stitches));
        };
    }

    private List<Piece> target(Line.Target target) {
        return switch (target) {
            case Line.Target.Numbered(Fabric fabric, Sized<Integer> from, Sized<Integer> to) -> from.equals(to)
                    ? filled(vocabulary.phraseOfOne("repeated." + fabric), number(from))
                    : filled(vocabulary.phrase("repeated." + fabric), number(from), number(to));
            case Line.Target.Named(List<String> names) ->
                words(list(names.stream().map(LineText::inSentence).toList()));
            case Line.Target.LastRounds(Fabric fabric, Sized<Integer> rounds) ->
                filled(counted("repeated.last." + fabric, rounds), number(rounds));
        };
    }

    private static String inSentence(String name) {
        int letter = name.codePointAt(0);
        return Character.toString(Character.toLowerCase(letter)) + name.substring(Character.charCount(letter));
    }

    private List<Piece> even(Line.Even even) {
        Optional<List<Piece>> rounds = even.rounds().map(number -> even.repeatable()
                .map(target -> filled(vocabulary.phrase("even.repeated"), number(number), target(target)))
                .orElseGet(() -> filled(counted(evenKey(even), number), number(number))));
        Optional<List<Piece>> goal = even.goal().map(this::goal);
        if (rounds.isPresent() && goal.isPresent()) {
            return filled(vocabulary.phrase("even.both"), rounds.get(), goal.get());
        }
        return rounds.orElseGet(() -> even.repeatable()
                .map(target -> filled(vocabulary.phrase("even.measure.repeated"), goal.orElseThrow(), target(target)))
                .orElseGet(() -> filled(vocabulary.phrase(even.asSet() ? "even.measure.asSet" : "even.measure"),
                        goal.orElseThrow())));
    }

    private static String evenKey(Line.Even even) {
        if (even.fabric() == Fabric.ROW) {
            return "even.flat";
        }
        return even.asSet() ? "even.asSet" : "even.plain";
    }

    private List<Piece> goal(Line.Goal goal) {
        return switch (goal) {
            case Line.Goal.Measures(Line.MeasuredPart part, Sized<Double> length) ->
                filled(vocabulary.phrase("goal." + part), lengths.of(length));
            case Line.Goal.LessThanFoot(Sized<Double> less) ->
                filled(vocabulary.phrase("goal.lessThanFoot"), lengths.ofAdvice(less));
        };
    }

    private String counted(String key, Sized<Integer> number) {
        return InstructionText.counted(vocabulary, key, number);
    }
}
