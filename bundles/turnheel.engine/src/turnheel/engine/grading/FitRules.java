package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.ANKLE_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.CALF_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.CALF_HEIGHT;
import static turnheel.engine.design.Catalogue.CUFF_HEIGHT;
import static turnheel.engine.design.Catalogue.CUFF_STITCHES;
import static turnheel.engine.design.Catalogue.EASE_AROUND;
import static turnheel.engine.design.Catalogue.EASE_LENGTH;
import static turnheel.engine.design.Catalogue.EASE_REACHED;
import static turnheel.engine.design.Catalogue.FINISHED_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.FOOT_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.FOOT_LENGTH;
import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.GAUGE_CUFF;
import static turnheel.engine.design.Catalogue.GAUGE_FLAP;
import static turnheel.engine.design.Catalogue.GAUGE_INSTEP;
import static turnheel.engine.design.Catalogue.GAUGE_LEG;
import static turnheel.engine.design.Catalogue.GAUGE_ROUNDS;
import static turnheel.engine.design.Catalogue.GAUGE_STITCHES;
import static turnheel.engine.design.Catalogue.HEEL_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.HEEL_HEIGHT;
import static turnheel.engine.design.Catalogue.KNEE_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.LEG_HEIGHT;
import static turnheel.engine.design.Catalogue.LEG_STITCHES;
import static turnheel.engine.design.Catalogue.NEEDLE;
import static turnheel.engine.design.Catalogue.STRETCH;
import static turnheel.engine.design.Catalogue.WANTED_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.WANTED_LENGTH;
import static turnheel.engine.term.Terms.atLeast;
import static turnheel.engine.term.Terms.atMost;
import static turnheel.engine.term.Terms.choose;
import static turnheel.engine.term.Terms.dividedBy;
import static turnheel.engine.term.Terms.greatest;
import static turnheel.engine.term.Terms.least;
import static turnheel.engine.term.Terms.minus;
import static turnheel.engine.term.Terms.number;
import static turnheel.engine.term.Terms.plus;
import static turnheel.engine.term.Terms.times;

import turnheel.engine.design.CalfLeg;
import turnheel.engine.design.Design;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.SockLength;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.term.Term;

/** Body, ease and finished measurements: domain § 1. */
final class FitRules {

    /** Feet shorter than any in the survey are predicted by proportion: its straight lines do not start at zero. */
    private static final Term SHORTEST_SURVEYED = number(210);

    private FitRules() {
    }

    static void contribute(RuleBook book, Design design) {
        book.input(GAUGE_STITCHES, design.stitchGauge());
        book.input(GAUGE_ROUNDS, design.roundGauge());
        zoneGauges(book, design);
        design.materials().needle().ifPresentOrElse(needle -> book.input(NEEDLE, needle), () -> book.input(NEEDLE));
        book.input(FOOT_LENGTH);
        predictions(book, design);
        book.input(LEG_HEIGHT, legHeight(design.leg().length()));

        book.input(EASE_AROUND, easeAround());
        book.input(EASE_LENGTH, easeLength());
        book.rule(WANTED_CIRCUMFERENCE, times(FOOT_CIRCUMFERENCE.term(),
                plus(number(1), dividedBy(EASE_AROUND.term(), number(100)))));
        book.rule(WANTED_LENGTH, plus(FOOT_LENGTH.term(), EASE_LENGTH.term()));
        book.rule(EASE_REACHED, times(
                minus(dividedBy(FINISHED_CIRCUMFERENCE.term(), FOOT_CIRCUMFERENCE.term()), number(1)), number(100)));
        Term narrowest = least(FOOT_STITCHES.term(), LEG_STITCHES.term(), CUFF_STITCHES.term());
        book.rule(STRETCH, dividedBy(times(HEEL_CIRCUMFERENCE.term(), GAUGE_STITCHES.term()),
                times(number(100), narrowest)));
    }

    private static Term legHeight(SockLength length) {
        Term named = times(number(length.shareOfFootLength()), FOOT_LENGTH.term());
        return length.mayEndAboveHeel() ? greatest(named, plus(HEEL_HEIGHT.term(), CUFF_HEIGHT.term())) : named;
    }

    /**
     * Regressions on foot length over 6 068 adults (2012 survey of US Army personnel, men and women together); below its
     * shortest class proportions: foot 0.95 of its length and heel 1.35 of the foot (a magazine editor's survey of feet),
     * ankle as the foot (same), calf 1.6 of the foot (the adult survey's ratio, mean of women and men).
     */
    private static void predictions(RuleBook book, Design design) {
        Term foot = FOOT_CIRCUMFERENCE.term();
        book.predicted(FOOT_CIRCUMFERENCE, byLength(0.7541, 45.83, times(number(0.95), FOOT_LENGTH.term())));
        book.predicted(ANKLE_CIRCUMFERENCE, byLength(0.5411, 82.57, foot));
        book.predicted(HEEL_CIRCUMFERENCE, byLength(1.1504, 30.04, times(number(1.35), foot)));
        if (design.leg() instanceof CalfLeg) {
            book.predicted(CALF_CIRCUMFERENCE, byLength(0.8263, 168.69, times(number(1.6), foot)));
            // from memory: the calf is widest about five quarters of a foot length above the floor
            book.predicted(CALF_HEIGHT, times(number(1.25), FOOT_LENGTH.term()));
            // nobody said that the leg narrows again
            book.input(KNEE_CIRCUMFERENCE, CALF_CIRCUMFERENCE.term());
        }
    }

    private static Term byLength(double slope, double intercept, Term ofSmallFoot) {
        return choose(atLeast(FOOT_LENGTH.term(), SHORTEST_SURVEYED),
                plus(times(number(slope), FOOT_LENGTH.term()), number(intercept)), ofSmallFoot);
    }

    /** Gauges that a zone may have of its own; each is there only where its zone is. */
    private static void zoneGauges(RuleBook book, Design design) {
        if (design.stitchPattern(Zone.INSTEP).isPresent()) {
            book.input(GAUGE_INSTEP, GAUGE_STITCHES.term());
        }
        if (LegRules.hasOwnCount(design)) {
            book.input(GAUGE_LEG, GAUGE_STITCHES.term());
        }
        if (design.heel() instanceof FlapHeel) {
            book.input(GAUGE_FLAP, GAUGE_ROUNDS.term());
        }
        book.input(GAUGE_CUFF, GAUGE_ROUNDS.term());
    }

    /**
     * Per cent of foot circumference: thick fabric takes room inside, so it needs less; feet up to 130 mm almost none. All
     * <em>common practice</em>; ten per cent is what most tutorials say.
     */
    private static Term easeAround() {
        Term byGauge = choose(atLeast(GAUGE_STITCHES.term(), number(30)), number(-10),
                choose(atLeast(GAUGE_STITCHES.term(), number(25)), number(-7.5), number(-5)));
        return choose(atMost(FOOT_LENGTH.term(), number(130)), number(-3), byGauge);
    }

    /** Millimetres: none up to 130 mm, 5 mm up to 200 mm, then 4.5 % within 5 and 12 mm. <em>Common practice.</em> */
    private static Term easeLength() {
        Term share = times(number(0.045), FOOT_LENGTH.term());
        Term adult = minus(number(0), greatest(number(5), least(number(12), share)));
        return choose(atMost(FOOT_LENGTH.term(), number(130)), number(0),
                choose(atMost(FOOT_LENGTH.term(), number(200)), number(-5), adult));
    }
}
