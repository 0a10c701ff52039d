package turnheel.engine.writing;

import java.util.ArrayList;
import java.util.List;

import turnheel.engine.instruction.Instruction;
import turnheel.engine.instruction.Sized;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;

/** The steps of one size's round as instructions, stitch for stitch. */
final class StepInstructions {

    private StepInstructions() {
    }

    static List<Instruction> of(List<Step> steps) {
        return steps.stream().map(StepInstructions::of).toList();
    }

    private static Instruction of(Step step) {
        return switch (step) {
            case Step.Work(Stitch stitch, int count) -> new Instruction.Work(stitch, Sized.all(count));
            case Step.Repeat(List<Step> steps, int times) -> new Instruction.Times(of(steps), Sized.all(times));
        };
    }

    /** The same with pairs that follow each other unchanged written once, as in {@code [k6, k2tog] 3 times, k5}. */
    static List<Instruction> folded(List<Step> steps) {
        List<Instruction> all = of(steps);
        List<Instruction> folded = new ArrayList<>();
        int next = 0;
        while (next < all.size()) {
            List<Instruction> pair = all.subList(next, Math.min(next + 2, all.size()));
            int times = 1;
            while (next + (times + 1) * 2 <= all.size()
                    && all.subList(next + times * 2, next + (times + 1) * 2).equals(pair)) {
                times++;
            }
            if (times > 1) {
                folded.add(new Instruction.Times(pair, Sized.all(times)));
                next += 2 * times;
            } else {
                folded.add(all.get(next));
                next++;
            }
        }
        return List.copyOf(folded);
    }
}
