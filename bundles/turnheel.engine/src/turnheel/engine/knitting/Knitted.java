package turnheel.engine.knitting;

import java.util.List;

import turnheel.engine.query.Query;

/**
 * A pattern as it was knitted.
 *
 * @param traces for each size, in the pattern's order, what lay on the needle after every round
 * @param queries what a person must look at, in the order of the text
 */
public record Knitted(List<List<Traced>> traces, List<Query> queries) {

    public Knitted {
        traces = traces.stream().map(List::copyOf).toList();
        queries = List.copyOf(queries);
    }
}
