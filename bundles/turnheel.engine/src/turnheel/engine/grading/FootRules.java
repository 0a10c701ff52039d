package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.FINISHED_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.FINISHED_LENGTH;
import static turnheel.engine.design.Catalogue.FOOT_IDEAL;
import static turnheel.engine.design.Catalogue.FOOT_INSTEP;
import static turnheel.engine.design.Catalogue.FOOT_ROUNDS;
import static turnheel.engine.design.Catalogue.FOOT_SOLE;
import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.GAUGE_ROUNDS;
import static turnheel.engine.design.Catalogue.GAUGE_STITCHES;
import static turnheel.engine.design.Catalogue.HEEL_DEPTH;
import static turnheel.engine.design.Catalogue.LENGTH_REST;
import static turnheel.engine.design.Catalogue.TOE_DEPTH;
import static turnheel.engine.design.Catalogue.WANTED_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.WANTED_LENGTH;
import static turnheel.engine.term.Terms.dividedBy;
import static turnheel.engine.term.Terms.minus;
import static turnheel.engine.term.Terms.nearest;
import static turnheel.engine.term.Terms.number;
import static turnheel.engine.term.Terms.plus;
import static turnheel.engine.term.Terms.times;

import turnheel.engine.design.Design;
import turnheel.engine.term.Term;

/** Stitches around the foot and the rounds between toe and heel: domain §§ 2 and 4. */
final class FootRules {

    private FootRules() {
    }

    static void contribute(RuleBook book, Design design) {
        Term stitches = FOOT_STITCHES.term();
        Term rowGauge = GAUGE_ROUNDS.term();
        book.rule(FOOT_IDEAL, dividedBy(times(WANTED_CIRCUMFERENCE.term(), GAUGE_STITCHES.term()), number(100)));
        book.chosen(FOOT_STITCHES);
        book.rule(FOOT_INSTEP, dividedBy(stitches, number(2)));
        book.rule(FOOT_SOLE, minus(stitches, FOOT_INSTEP.term()));
        book.rule(FINISHED_CIRCUMFERENCE, dividedBy(times(stitches, number(100)), GAUGE_STITCHES.term()));
        Term left = minus(minus(WANTED_LENGTH.term(), TOE_DEPTH.term()), HEEL_DEPTH.term());
        book.rule(FOOT_ROUNDS, nearest(dividedBy(times(left, rowGauge), number(100))));
        Term footLength = dividedBy(times(FOOT_ROUNDS.term(), number(100)), rowGauge);
        book.rule(FINISHED_LENGTH, plus(plus(TOE_DEPTH.term(), footLength), HEEL_DEPTH.term()));
        book.rule(LENGTH_REST, minus(WANTED_LENGTH.term(), FINISHED_LENGTH.term()));
    }
}
