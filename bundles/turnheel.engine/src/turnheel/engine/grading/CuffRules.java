package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.CUFF_HEIGHT;
import static turnheel.engine.design.Catalogue.CUFF_ROUNDS;
import static turnheel.engine.design.Catalogue.CUFF_STITCHES;
import static turnheel.engine.design.Catalogue.GAUGE_CUFF;
import static turnheel.engine.design.Catalogue.WANTED_LENGTH;
import static turnheel.engine.term.Terms.dividedBy;
import static turnheel.engine.term.Terms.greatest;
import static turnheel.engine.term.Terms.least;
import static turnheel.engine.term.Terms.nearest;
import static turnheel.engine.term.Terms.number;
import static turnheel.engine.term.Terms.times;

import java.util.List;

import turnheel.engine.design.Design;
import turnheel.engine.design.HemCuff;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.RolledCuff;
import turnheel.engine.design.SockLength;
import turnheel.engine.term.Term;

/** Cuffs: domain § 8. */
final class CuffRules {

    private CuffRules() {
    }

    static void contribute(RuleBook book, Design design) {
        Term top = LegRules.top(design).term();
        switch (design.cuff()) {
            case RibCuff rib -> {
                book.rule(CUFF_HEIGHT, ribHeight(design.leg().length()));
                book.rule(CUFF_STITCHES, nearest(top, number(0), number(rib.repeat())));
            }
            case HemCuff hem -> {
                // a hem holds by its double fabric; from memory a finger's width is enough
                book.rule(CUFF_HEIGHT, number(20));
                book.rule(CUFF_STITCHES, top);
            }
            case RolledCuff rolled -> {
                // what rolls up is lost; from memory about 15 mm make one full roll in sock yarn
                book.rule(CUFF_HEIGHT, number(15));
                book.rule(CUFF_STITCHES, top);
            }
        }
        book.rule(CUFF_ROUNDS, nearest(dividedBy(times(CUFF_HEIGHT.term(), GAUGE_CUFF.term()), number(100))));
    }

    /**
     * Depth 0.17 of the finished length within 18 and 50 mm; a no-show, which ends below the ankle, has the shallowest of
     * these. <em>Common practice.</em>
     */
    private static Term ribHeight(SockLength length) {
        Term shallowest = number(18);
        return switch (length) {
            case NO_SHOW -> shallowest;
            case ANKLE, QUARTER, CREW, MID_CALF, KNEE ->
                least(number(50), greatest(shallowest, times(number(0.17), WANTED_LENGTH.term())));
        };
    }

    /** A leg of whole repeats needs no adjusting round below its cuff. */
    static List<Need> needs(Design design) {
        int repeat = design.cuff().repeat();
        return repeat == 1 || design.cuff().mayAdjust() ? List.of()
                : List.of(new Need(Need.Kind.RIB, List.of(Congruence.multipleOf(repeat)), repeat));
    }
}
