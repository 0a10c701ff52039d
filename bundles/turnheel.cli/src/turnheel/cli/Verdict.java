package turnheel.cli;

import java.util.List;

import turnheel.engine.query.Query;
import turnheel.engine.query.Severity;

/** What the queries of a pattern mean for a command that did its work. */
final class Verdict {

    private Verdict() {
    }

    /** The exit code. */
    static int of(List<Query> queries) {
        return errors(queries) == 0 ? Main.DONE : Main.QUERIES;
    }

    /** The exit code, and a note where to find the queries that made it. */
    static int noted(List<Query> queries, Output output, String file) {
        long errors = errors(queries);
        if (errors > 0) {
            output.note(Words.QUERIES_LEFT.with(file, errors));
        }
        return of(queries);
    }

    static long errors(List<Query> queries) {
        return queries.stream().filter(query -> query.severity() == Severity.ERROR).count();
    }
}
