package turnheel.exchange.edits;

import java.util.List;

import turnheel.engine.query.Severity;

/**
 * What an edited workbook came to.
 *
 * @param edits in the order of the pattern's rows; nothing that the pattern says already
 * @param problems in the order of the workbook
 */
public record Edits(List<Edit> edits, List<EditProblem> problems) {

    public Edits {
        edits = List.copyOf(edits);
        problems = List.copyOf(problems);
    }

    /** Nothing could be read. */
    public static Edits unreadable(EditProblem problem) {
        return new Edits(List.of(), List.of(problem));
    }

    /**
     * What must be put right before any of the edits may be made.
     *
     * @param forced whether a person insists that the workbook belongs to this state of the pattern
     */
    public List<EditProblem> errors(boolean forced) {
        return problems.stream().filter(problem -> problem.kind().severity() == Severity.ERROR)
                .filter(problem -> !(forced && problem.kind().canBeForced())).toList();
    }

    /** What a person should know though the edits can be made. */
    public List<EditProblem> warnings() {
        return problems.stream().filter(problem -> problem.kind().severity() == Severity.WARNING).toList();
    }
}
