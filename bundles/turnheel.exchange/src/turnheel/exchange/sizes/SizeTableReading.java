package turnheel.exchange.sizes;

import java.util.List;

import turnheel.engine.design.Size;
import turnheel.engine.query.Severity;

/**
 * What a table of sizes came to: all that could be read, and all that was wrong with it, so that a person can see both
 * before anything is made of them.
 *
 * @param sizes in the table's order, without what could not be read; their ids are {@code s1}, {@code s2} and so on
 * @param problems in the order of the table
 */
public record SizeTableReading(List<Size> sizes, List<SizeTableProblem> problems) {

    public SizeTableReading {
        sizes = List.copyOf(sizes);
        problems = List.copyOf(problems);
    }

    /**
     * Nothing could be read.
     *
     * @param why as a clause without a full stop
     */
    public static SizeTableReading unreadable(String why) {
        return new SizeTableReading(List.of(),
                List.of(new SizeTableProblem(SizeTableProblem.Kind.UNREADABLE, 0, 0, "", "", why)));
    }

    /** What must be put right in the table first; without these the sizes are what the table says. */
    public List<SizeTableProblem> errors() {
        return problems.stream().filter(problem -> problem.kind().severity() == Severity.ERROR).toList();
    }
}
