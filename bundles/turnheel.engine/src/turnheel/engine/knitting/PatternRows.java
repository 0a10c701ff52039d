package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import turnheel.engine.instruction.Instruction;
import turnheel.engine.instruction.Line;
import turnheel.engine.stitch.Step;

/**
 * The rows of a stitch pattern as a knitter reads them over its repeats and its edge, such as {@code *K1, yo, ssk, k3;
 * rep from * to last st, k1}. They are worked in the round, so every row is read from the right side.
 */
public final class PatternRows {

    /** What becomes of the rows over a number of stitches. */
    public sealed interface Answer {
    }

    /** Every row works all stitches, and the last one leaves as many as the first one found: stitch for stitch. */
    public record Worked(List<List<Step>> rows) implements Answer {
        public Worked {
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /**
     * A row that is no row of stitches, or cannot be read.
     *
     * @param row from 1
     */
    public record Unread(int row) implements Answer {
    }

    /**
     * A row that does not use up its stitches, or wants more.
     *
     * @param row from 1
     * @param stitches before the row
     * @param worked how many of them it works, with as many whole repeats as there is room for; more than there are
     *     where it wants more
     */
    public record Misfit(int row, int stitches, int worked) implements Answer {
    }

    /** Rows that cannot be worked again from the first one on: the last one leaves another count. */
    public record NotReturning(int before, int after) implements Answer {
    }

    private final List<Optional<List<Instruction>>> rows;

    private PatternRows(List<Optional<List<Instruction>>> rows) {
        this.rows = rows;
    }

    /** Reads rows, the first one first; a row that cannot be read is told by {@link #over}. */
    public static PatternRows read(List<String> texts) {
        return new PatternRows(texts.stream().map(PatternRows::row).toList());
    }

    /** Nothing but what is worked: a count or another label would get lost. */
    private static Optional<List<Instruction>> row(String text) {
        Manuscript read = Manuscript.read("Rnd 1: " + text);
        List<Line> told = read.instructions();
        boolean clean = read.lines().stream().allMatch(line -> line.kind() == ReadLine.Kind.INSTRUCTION);
        if (clean && told.size() == 1 && told.getFirst() instanceof Line.Worked worked && worked.label().isPresent()
                && worked.stated().isEmpty() && !worked.instructions().isEmpty()
                && StitchRow.isMadeOfStitches(worked.instructions())) {
            return Optional.of(worked.instructions());
        }
        return Optional.empty();
    }

    /** What every row tells to do; absent where it cannot be read. */
    public List<Optional<List<Instruction>>> instructions() {
        return rows;
    }

    /** Works the rows one after the other over so many stitches; the first thing that is wrong ends it. */
    public Answer over(int stitches) {
        List<List<Step>> worked = new ArrayList<>();
        int count = stitches;
        for (int row = 0; row < rows.size(); row++) {
            if (rows.get(row).isEmpty()) {
                return new Unread(row + 1);
            }
            StitchRow steps = StitchRow.over(rows.get(row).get(), count);
            if (steps.takes() != count) {
                return new Misfit(row + 1, count, steps.takes());
            }
            worked.add(steps.steps());
            count = steps.leaves();
        }
        return count == stitches ? new Worked(worked) : new NotReturning(stitches, count);
    }
}
