package turnheel.engine.writing;

import java.util.List;

import turnheel.engine.instruction.Instruction;
import turnheel.engine.instruction.Until;
import turnheel.engine.shaping.Round;
import turnheel.engine.shaping.RoundKind;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;
import turnheel.engine.wording.HouseStyle;
import turnheel.engine.wording.HouseStyles;
import turnheel.engine.wording.Vocabulary;

/** One round in words. */
public final class RoundText {

    private static final HouseStyle STYLE = HouseStyles.usual();
    private static final InstructionText WORDS = new InstructionText(Vocabulary.of(STYLE));

    private RoundText() {
    }

    /** What is worked on this round, as in {@code *yo, k2; rep from * to end}, in the usual house style. */
    public static String of(Round round) {
        return PlainText.of(WORDS.of(instructions(round)), STYLE);
    }

    /** A row of steps, as in {@code [k1, yo, ssk] 6 times, k1}: what a chart shows, written out. */
    public static String of(List<Step> row) {
        return PlainText.of(WORDS.of(StepInstructions.of(row)), STYLE);
    }

    private static List<Instruction> instructions(Round round) {
        if (round.steps().size() == 1 && round.kind() != RoundKind.ROW) {
            return switch (round.steps().getFirst()) {
                case Step.Work(Stitch stitch, int count) when stitch == Stitch.KNIT || stitch == Stitch.PURL ->
                    List.of(new Instruction.WorkTo(stitch, new Until.End()));
                case Step.Work work -> StepInstructions.of(List.of(work));
                case Step.Repeat(List<Step> steps, int times) ->
                    List.of(new Instruction.RepeatTo(StepInstructions.of(steps), new Until.End()));
            };
        }
        return StepInstructions.of(round.steps());
    }
}
