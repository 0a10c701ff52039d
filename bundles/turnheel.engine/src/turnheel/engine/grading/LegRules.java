package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.CUFF_HEIGHT;
import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.GAUGE_ROUNDS;
import static turnheel.engine.design.Catalogue.HEEL_DEPTH;
import static turnheel.engine.design.Catalogue.LEG_HEIGHT;
import static turnheel.engine.design.Catalogue.LEG_ROUNDS;
import static turnheel.engine.design.Catalogue.LEG_STITCHES;
import static turnheel.engine.term.Terms.dividedBy;
import static turnheel.engine.term.Terms.minus;
import static turnheel.engine.term.Terms.nearest;
import static turnheel.engine.term.Terms.number;
import static turnheel.engine.term.Terms.times;

import turnheel.engine.design.Design;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.term.Term;

/** Legs: domain §§ 4 and 6. */
final class LegRules {

    private LegRules() {
    }

    static void contribute(RuleBook book, Design design) {
        switch (design.leg()) {
            case StraightLeg leg -> book.rule(LEG_STITCHES, FOOT_STITCHES.term());
        }
        // a short-row heel is as high as it is deep; a kind of heel with a height of its own will bring its own key
        Term left = minus(minus(LEG_HEIGHT.term(), HEEL_DEPTH.term()), CUFF_HEIGHT.term());
        book.rule(LEG_ROUNDS, nearest(dividedBy(times(left, GAUGE_ROUNDS.term()), number(100))));
    }
}
