package turnheel.engine.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

import turnheel.engine.design.Parameter;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;
import turnheel.engine.term.Notation;

/** Collects the queries of one size. */
final class Findings {

    private static final int MOST_DECIMALS = 9;

    private final String size;
    private final List<Query> queries = new ArrayList<>();

    Findings(String size) {
        this.size = size;
    }

    void add(Check check, Parameter parameter, String expected, double found) {
        add(check, parameter, expected, Notation.number(found));
    }

    void add(Check check, Parameter parameter, String expected, String found) {
        queries.add(new Query(check, parameter.key(), List.of(size), expected, found));
    }

    List<Query> queries() {
        return List.copyOf(queries);
    }

    /** A usual range, as it is written in a query. */
    static String range(double least, double most) {
        return Notation.number(least) + "–" + Notation.number(most);
    }

    /**
     * A value beyond a limit, to as many decimals as tell it from every limit: 1.6004 is not said to be 1.6 where 1.6 is
     * the limit.
     *
     * @param decimals at least
     */
    static double beyond(double value, int decimals, double... limits) {
        double rounded = rounded(value, decimals);
        for (int more = decimals + 1; more <= MOST_DECIMALS && isOneOf(rounded, limits); more++) {
            rounded = rounded(value, more);
        }
        return isOneOf(rounded, limits) ? value : rounded;
    }

    private static boolean isOneOf(double value, double... limits) {
        return DoubleStream.of(limits).anyMatch(limit -> limit == value);
    }

    private static double rounded(double value, int decimals) {
        double scale = Math.pow(10, decimals);
        return Math.rint(value * scale) / scale;
    }

    /** One decimal is what a person weighs a share by. */
    static double oneDecimal(double value) {
        return rounded(value, 1);
    }
}
