package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.CUFF_HEIGHT;
import static turnheel.engine.design.Catalogue.CUFF_ROUNDS;
import static turnheel.engine.design.Catalogue.CUFF_STITCHES;
import static turnheel.engine.design.Catalogue.GAUGE_ROUNDS;
import static turnheel.engine.design.Catalogue.LEG_STITCHES;
import static turnheel.engine.design.Catalogue.WANTED_LENGTH;
import static turnheel.engine.term.Terms.dividedBy;
import static turnheel.engine.term.Terms.greatest;
import static turnheel.engine.term.Terms.least;
import static turnheel.engine.term.Terms.nearest;
import static turnheel.engine.term.Terms.number;
import static turnheel.engine.term.Terms.times;

import java.util.List;

import turnheel.engine.design.Design;
import turnheel.engine.design.RibCuff;

/** Cuffs: domain § 8. */
final class CuffRules {

    private CuffRules() {
    }

    /** Depth 0.17 of the finished length within 18 and 50 mm: <em>common practice</em>. */
    static void contribute(RuleBook book, Design design) {
        book.rule(CUFF_HEIGHT, least(number(50), greatest(number(18), times(number(0.17), WANTED_LENGTH.term()))));
        switch (design.cuff()) {
            case RibCuff rib -> book.rule(CUFF_STITCHES, nearest(LEG_STITCHES.term(), number(0), number(rib.repeat())));
        }
        book.rule(CUFF_ROUNDS, nearest(dividedBy(times(CUFF_HEIGHT.term(), GAUGE_ROUNDS.term()), number(100))));
    }

    /** A straight leg of whole rib repeats needs no adjusting round. */
    static List<Need> needs(Design design) {
        return switch (design.cuff()) {
            case RibCuff rib -> List.of(new Need(Need.Kind.RIB, Congruence.multipleOf(rib.repeat()), rib.repeat()));
        };
    }
}
