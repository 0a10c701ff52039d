package turnheel.engine.knitting;

import turnheel.engine.query.Check;

/** Carries what went wrong out of the depth of a round; {@link Knitter} turns it into a finding. */
final class Misfit extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final Check check;
    private final String expected;
    private final String found;

    Misfit(Check check, String expected, String found) {
        super(check.id(), null, false, false);
        this.check = check;
        this.expected = expected;
        this.found = found;
    }

    Misfit(Check check, int expected, int found) {
        this(check, Integer.toString(expected), Integer.toString(found));
    }

    Check check() {
        return check;
    }

    String expected() {
        return expected;
    }

    String found() {
        return found;
    }
}
