package turnheel.engine.checks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;

import turnheel.engine.design.Parameter;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.query.Query;
import turnheel.engine.term.Key;

/** All checks of a graded pattern. */
public final class Checks {

    private Checks() {
    }

    /**
     * Every query of the pattern, in the order of its rows. Findings that differ in nothing but the size are one query with
     * several sizes.
     */
    public static List<Query> of(Graded graded) {
        List<Query> found = new ArrayList<>(graded.queries());
        found.addAll(SizeOrder.check(graded));
        found.addAll(PatternRowChecks.check(graded));
        for (GradedSize size : graded.sizes()) {
            found.addAll(new NumberChecks(size, graded.queries()).check());
            found.addAll(new PartChecks(graded.design(), size).check());
            found.addAll(new LengthChecks(graded.design(), size).check());
            found.addAll(new FitChecks(graded.design(), size).check());
            found.addAll(new PatternChecks(graded.design(), size).check());
            found.addAll(new SwatchChecks(graded.design().materials(), size).check());
            found.addAll(new YarnChecks(graded.design().materials(), size).check());
        }
        List<Key> rows = graded.parameters().stream().map(Parameter::key).toList();
        return merged(found).stream().sorted(Comparator.comparingInt(query -> rows.indexOf(query.key()))).toList();
    }

    private static List<Query> merged(List<Query> queries) {
        return queries.stream()
                .collect(Collectors.groupingBy(
                        query -> List.of(query.check(), query.key(), query.expected(), query.found()),
                        LinkedHashMap::new, Collectors.toList()))
                .values().stream().map(Checks::inAllSizes).toList();
    }

    private static Query inAllSizes(List<Query> alike) {
        Query first = alike.getFirst();
        List<String> sizes = alike.stream().flatMap(query -> query.sizes().stream()).distinct().toList();
        return new Query(first.check(), first.key(), sizes, first.expected(), first.found());
    }
}
