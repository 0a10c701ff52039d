package turnheel.engine.knitting;

import turnheel.engine.query.Check;

/**
 * How much work one size may take: what a person could knit in a year is more than any sock, and a text that asks for more
 * is refused rather than waited for.
 */
final class Effort {

    /** Runs of loops that one size may work or look at. */
    static final int MOST_STEPS = 3_000_000;

    /** Loops that may lie on the needle, and times that anything may be repeated. */
    static final int MOST_LOOPS = 10_000;

    private int left = MOST_STEPS;

    void spend(int steps) {
        left -= steps;
        if (left < 0) {
            throw new Misfit(Check.TEXT_TOO_LARGE, "", "");
        }
    }

    boolean isSpent() {
        return left < 0;
    }
}
