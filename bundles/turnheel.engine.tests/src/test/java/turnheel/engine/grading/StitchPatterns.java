package turnheel.engine.grading;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Fit;
import turnheel.engine.design.StitchPattern.Zone;

/** Stitch patterns of eight rows. */
final class StitchPatterns {

    private StitchPatterns() {
    }

    static StitchPattern instep(int repeat, int edge) {
        return new StitchPattern(Zone.INSTEP, repeat, edge, 8, Fit.WHOLE_REPEATS, 1);
    }

    static StitchPattern leg(int repeat) {
        return new StitchPattern(Zone.LEG, repeat, 0, 8, Fit.WHOLE_REPEATS, 1);
    }

    static Arbitrary<StitchPattern> insteps() {
        return Combinators.combine(Arbitraries.of(Zone.INSTEP, Zone.ALL), Arbitraries.integers().between(1, 24),
                Arbitraries.integers().between(0, 9), Arbitraries.of(Fit.class))
                .as((zone, repeat, edge, fit) -> new StitchPattern(zone, repeat, edge, 8, fit, 1));
    }

    static Arbitrary<StitchPattern> legs() {
        return Arbitraries.integers().between(1, 24).map(StitchPatterns::leg);
    }
}
