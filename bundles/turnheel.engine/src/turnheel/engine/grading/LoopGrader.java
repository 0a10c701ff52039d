package turnheel.engine.grading;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

import turnheel.engine.design.OwnRow;
import turnheel.engine.design.Parameter;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;

/**
 * Grades on where {@link Grader} must stop: rounds are made from its numbers, and these rows from what was counted in
 * the rounds.
 */
public final class LoopGrader {

    private LoopGrader() {
    }

    /**
     * The same pattern with the rows of its yarn and the designer's own, which may read all others.
     *
     * @param counted what was counted in the rounds of a size; empty when they do not work out, and then so are the
     *     rows
     */
    public static Graded grade(Graded graded, Function<GradedSize, Map<Parameter, Reason.Counted>> counted) {
        RuleBook rules = graded.rules().withYarn(graded.design());
        OwnRules own = OwnRules.contribute(rules, graded.design());
        List<Query> queries = new ArrayList<>(graded.queries());
        queries.addAll(own.queries());
        List<GradedSize> sizes = new ArrayList<>();
        for (GradedSize size : graded.sizes()) {
            SizeSheet sheet = new SizeSheet(rules, size.size());
            size.cells().values().forEach(sheet::hold);
            Map<Parameter, Reason.Counted> ofSize = counted.apply(size);
            ofSize.forEach((parameter, reason) -> sheet.hold(new Cell(parameter, reason.sum(), Source.CHOSEN, reason)));
            // only what this pass adds: the first one has reported its own
            sizes.add(sheet.graded());
            sheet.undefined().stream()
                    .map(parameter -> OwnRow.isOwn(parameter.key()) ? own.withoutNumber(parameter, sheet)
                            : new Query(Check.UNDEFINED, parameter.key(), List.of(size.label()), "", ""))
                    .filter(query -> !queries.contains(query)).forEach(queries::add);
        }
        return new Graded(graded.design(), rules, sizes, queries);
    }
}
