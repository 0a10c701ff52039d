package turnheel.engine.formula;

import turnheel.engine.term.Condition.Comparison;

/** The comparisons of the notation; a term has no "unequal", so that it is "equal" the other way round. */
enum Comparator {
    EQUAL(Comparison.EQUAL, false),
    UNEQUAL(Comparison.EQUAL, true),
    LESS_THAN(Comparison.LESS, false),
    AT_MOST(Comparison.AT_MOST, false),
    AT_LEAST(Comparison.AT_LEAST, false),
    MORE_THAN(Comparison.MORE, false);

    private final Comparison comparison;
    private final boolean otherWayRound;

    Comparator(Comparison comparison, boolean otherWayRound) {
        this.comparison = comparison;
        this.otherWayRound = otherWayRound;
    }

    Comparison comparison() {
        return comparison;
    }

    boolean otherWayRound() {
        return otherWayRound;
    }
}
