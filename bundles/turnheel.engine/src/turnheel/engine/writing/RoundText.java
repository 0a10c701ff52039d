package turnheel.engine.writing;

import java.util.List;
import java.util.stream.Collectors;

import turnheel.engine.shaping.Round;
import turnheel.engine.shaping.RoundKind;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;

/** One round in words. */
public final class RoundText {

    private RoundText() {
    }

    /** What is worked on this round, as in {@code *yo, k2; rep from * to end}. */
    public static String of(Round round) {
        if (round.steps().size() == 1 && round.kind() != RoundKind.ROW) {
            return switch (round.steps().getFirst()) {
                case Step.Work(Stitch stitch, int count) when stitch == Stitch.KNIT -> Vocabulary.phrase("knit.all");
                case Step.Work(Stitch stitch, int count) when stitch == Stitch.PURL -> Vocabulary.phrase("purl.all");
                case Step.Work work -> text(work);
                case Step.Repeat(List<Step> steps, int times) -> Vocabulary.phrase("repeat.toEnd", text(steps));
            };
        }
        return text(round.steps());
    }

    private static String text(List<Step> steps) {
        return steps.stream().map(RoundText::text).collect(Collectors.joining(Vocabulary.phrase("separator")));
    }

    private static String text(Step step) {
        return switch (step) {
            case Step.Work(Stitch stitch, int count) -> Vocabulary.worked(stitch, count);
            case Step.Repeat(List<Step> steps, int times) -> times == 1 ? text(steps)
                    : Vocabulary.phrase("repeat.times", text(steps), Integer.toString(times));
        };
    }
}
