package turnheel.engine.checks;

import java.util.ArrayList;
import java.util.List;

import turnheel.engine.design.Parameter;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;
import turnheel.engine.term.Notation;

/** Collects the queries of one size. */
final class Findings {

    private final String size;
    private final List<Query> queries = new ArrayList<>();

    Findings(String size) {
        this.size = size;
    }

    void add(Check check, Parameter parameter, String expected, double found) {
        queries.add(new Query(check, parameter.key(), List.of(size), expected, Notation.number(found)));
    }

    List<Query> queries() {
        return List.copyOf(queries);
    }

    /** A usual range, as it is written in a query. */
    static String range(double least, double most) {
        return Notation.number(least) + "–" + Notation.number(most);
    }

    /** One decimal is what a person weighs a share by. */
    static double oneDecimal(double value) {
        return Math.rint(value * 10) / 10;
    }
}
