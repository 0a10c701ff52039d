package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.EASE_LENGTH;
import static turnheel.engine.design.Catalogue.FOOT_EVEN_ROUNDS;
import static turnheel.engine.design.Catalogue.FOOT_MEASURE;
import static turnheel.engine.design.Catalogue.FOOT_ROUNDS;
import static turnheel.engine.design.Catalogue.FOOT_TO_FIT_LESS;
import static turnheel.engine.design.Catalogue.GAUGE_ROUNDS;
import static turnheel.engine.design.Catalogue.HEEL_DEPTH;
import static turnheel.engine.design.Catalogue.LEG_MEASURE;
import static turnheel.engine.design.Catalogue.LEG_ROUNDS;
import static turnheel.engine.design.Catalogue.TOE_DEPTH;
import static turnheel.engine.term.Terms.dividedBy;
import static turnheel.engine.term.Terms.minus;
import static turnheel.engine.term.Terms.number;
import static turnheel.engine.term.Terms.plus;
import static turnheel.engine.term.Terms.times;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.Design;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.LengthMode;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.term.Term;

/** What is measured instead of counted: domain § 4. */
final class LengthRules {

    private LengthRules() {
    }

    static void contribute(RuleBook book, Design design) {
        if (design.heel() instanceof FlapHeel) {
            book.rule(FOOT_EVEN_ROUNDS, minus(FOOT_ROUNDS.term(), FlapHeelRules.gussetRounds(design.direction())));
        }
        book.rule(FOOT_MEASURE, millimetres(FOOT_ROUNDS.term()));
        if (design.lengths().foot() == LengthMode.TO_FIT) {
            book.rule(FOOT_TO_FIT_LESS, minus(stillToCome(design), EASE_LENGTH.term()));
        }
        book.rule(LEG_MEASURE, millimetres(LEG_ROUNDS.term()));
    }

    /** What so many rounds of the main fabric measure. */
    static Term millimetres(Term rounds) {
        return dividedBy(times(rounds, number(100)), GAUGE_ROUNDS.term());
    }

    /**
     * What the sock grows along the foot after the even rounds. Worked toe-up at 44 rounds over 10 cm: a gusset of 10
     * pairs and a turn of 20 rows are 20 + 20 rounds, 90.9 mm; with an ease of −10.8 mm the foot measures 101.7 mm less
     * than the wearer's.
     */
    private static Term stillToCome(Design design) {
        return switch (design.direction()) {
            case TOE_UP -> switch (design.heel()) {
                case ShortRowHeel heel -> HEEL_DEPTH.term();
                case AfterthoughtHeel heel -> HEEL_DEPTH.term();
                case FlapHeel heel -> plus(HEEL_DEPTH.term(),
                        millimetres(FlapHeelRules.gussetRounds(design.direction())));
            };
            case CUFF_DOWN -> switch (design.heel()) {
                case ShortRowHeel heel -> TOE_DEPTH.term();
                case FlapHeel heel -> TOE_DEPTH.term();
                // its opening is all that can be measured from: the heel itself comes last
                case AfterthoughtHeel heel -> plus(TOE_DEPTH.term(), HEEL_DEPTH.term());
            };
        };
    }
}
