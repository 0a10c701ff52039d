package turnheel.engine.knitting;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import turnheel.engine.instruction.Instruction;
import turnheel.engine.instruction.Line;
import turnheel.engine.instruction.Sized;

/** Counts that a needle may hold where a text does not tell: those that following lines speak of. */
final class Guesses {

    /** Lines that are asked. */
    private static final int LINES = 20;

    /** Counts that are tried. */
    private static final int MOST = 12;

    private Guesses() {
    }

    static Set<Integer> of(List<Task> tasks, int after, int size) {
        Set<Integer> counts = new LinkedHashSet<>();
        for (int place = after + 1; place < Math.min(tasks.size(), after + LINES) && counts.size() < MOST; place++) {
            Line line = tasks.get(place).line();
            line.stated().flatMap(sized -> sized.get(size)).ifPresent(counts::add);
            if (line instanceof Line.Worked worked) {
                for (Instruction instruction : worked.instructions()) {
                    if (instruction instanceof Instruction.WorkOnlyOn(var stitches, var others)) {
                        add(stitches, others, size, counts);
                    }
                }
            }
        }
        counts.removeIf(count -> count < 1 || count > Effort.MOST_LOOPS);
        return counts;
    }

    private static void add(Sized<Integer> stitches, Optional<Sized<Integer>> others, int size, Set<Integer> counts) {
        Optional<Integer> part = stitches.get(size);
        Optional<Integer> rest = others.flatMap(sized -> sized.get(size)).or(() -> part);
        if (part.isPresent() && rest.isPresent() && part.get() < Effort.MOST_LOOPS && rest.get() < Effort.MOST_LOOPS) {
            counts.add(part.get() + rest.get());
        }
    }
}
