package turnheel.workbench.document;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import turnheel.engine.checks.Checks;
import turnheel.engine.design.Design;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.Why;
import turnheel.engine.query.Query;
import turnheel.engine.query.Severity;
import turnheel.engine.term.Key;
import turnheel.engine.yarn.Patterns;

/**
 * One state of a document, graded and checked: what every page, tooltip and marker shows of it. Immutable.
 */
public final class Snapshot {

    private record Place(Key key, String size) {
    }

    private final Graded graded;
    private final List<Query> queries;
    private final Map<Place, List<Query>> byPlace = new HashMap<>();

    private Snapshot(Graded graded, List<Query> queries) {
        this.graded = graded;
        this.queries = List.copyOf(queries);
        for (Query query : this.queries) {
            for (String size : query.sizes()) {
                byPlace.merge(new Place(query.key(), size), List.of(query),
                        (one, other) -> Stream.concat(one.stream(), other.stream()).toList());
            }
        }
    }

    /** Grades all sizes of the design and asks every check. */
    public static Snapshot of(Design design) {
        Graded graded = Patterns.grade(design);
        return new Snapshot(graded, Checks.of(graded));
    }

    public Graded graded() {
        return graded;
    }

    /** Everything that a person must look at, in the order of the checks. */
    public List<Query> queries() {
        return queries;
    }

    /** What is asked about one number of one size; empty for most. */
    public List<Query> queries(Key key, String size) {
        return byPlace.getOrDefault(new Place(key, size), List.of());
    }

    /** The worst of what is asked about one number of one size. */
    public Optional<Severity> severity(Key key, String size) {
        return queries(key, size).stream().map(Query::severity).min(Comparator.naturalOrder());
    }

    /** Why a number is what it is; empty where there is none. */
    public Optional<Why> why(CellPlace place) {
        return graded.sizes().stream().filter(size -> size.label().equals(place.size()))
                .flatMap(size -> size.cell(place.key()).stream()).findFirst()
                .map(cell -> Why.of(graded, cell.key(), place.size()));
    }

    /** How many queries are of this severity. */
    public long count(Severity severity) {
        return queries.stream().filter(query -> query.severity() == severity).count();
    }
}
