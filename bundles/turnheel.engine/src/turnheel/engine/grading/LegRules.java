package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.ANKLE_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.CALF_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.CALF_HEIGHT;
import static turnheel.engine.design.Catalogue.CUFF_HEIGHT;
import static turnheel.engine.design.Catalogue.EASE_AROUND;
import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.GAUGE_LEG;
import static turnheel.engine.design.Catalogue.GAUGE_ROUNDS;
import static turnheel.engine.design.Catalogue.HEEL_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.HEEL_HEIGHT;
import static turnheel.engine.design.Catalogue.KNEE_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.LEG_CALF;
import static turnheel.engine.design.Catalogue.LEG_DECREASES;
import static turnheel.engine.design.Catalogue.LEG_DECREASE_OVER;
import static turnheel.engine.design.Catalogue.LEG_EVEN_ROUNDS;
import static turnheel.engine.design.Catalogue.LEG_HEIGHT;
import static turnheel.engine.design.Catalogue.LEG_INCREASES;
import static turnheel.engine.design.Catalogue.LEG_INCREASE_OVER;
import static turnheel.engine.design.Catalogue.LEG_REPEATS;
import static turnheel.engine.design.Catalogue.LEG_ROUNDS;
import static turnheel.engine.design.Catalogue.LEG_STITCHES;
import static turnheel.engine.design.Catalogue.LEG_TOP;
import static turnheel.engine.term.Terms.atLeast;
import static turnheel.engine.term.Terms.ceiling;
import static turnheel.engine.term.Terms.choose;
import static turnheel.engine.term.Terms.dividedBy;
import static turnheel.engine.term.Terms.equal;
import static turnheel.engine.term.Terms.greatest;
import static turnheel.engine.term.Terms.least;
import static turnheel.engine.term.Terms.minus;
import static turnheel.engine.term.Terms.nearest;
import static turnheel.engine.term.Terms.number;
import static turnheel.engine.term.Terms.plus;
import static turnheel.engine.term.Terms.times;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import turnheel.engine.design.CalfLeg;
import turnheel.engine.design.Design;
import turnheel.engine.design.LegCount;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.term.Term;

/** Legs: domain §§ 4 and 6. */
final class LegRules {

    /** A leg that may stretch to 1.6 of its width passes over the heel: <em>common practice</em>. */
    private static final Term WIDEST_STRETCH_PERCENT = number(160);

    private LegRules() {
    }

    static void contribute(RuleBook book, Design design) {
        book.rule(LEG_STITCHES, switch (design.leg().count()) {
            case AS_FOOT -> FOOT_STITCHES.term();
            case FROM_ANKLE -> fromAnkle(number(lattice(design).step()));
        });
        Term left = minus(minus(LEG_HEIGHT.term(), HEEL_HEIGHT.term()), CUFF_HEIGHT.term());
        book.rule(LEG_ROUNDS, nearest(rounds(left)));
        pattern(design).ifPresent(pattern ->
            book.rule(LEG_REPEATS, dividedBy(LEG_STITCHES.term(), number(pattern.repeat()))));
        switch (design.leg()) {
            case StraightLeg leg -> { }
            case CalfLeg leg -> calf(book, number(lattice(design).step()));
        }
    }

    private static Term rounds(Term mm) {
        return dividedBy(times(mm, GAUGE_ROUNDS.term()), number(100));
    }

    private static Term around(Parameter circumference) {
        Term eased = times(circumference.term(), plus(number(1), dividedBy(EASE_AROUND.term(), number(100))));
        return dividedBy(times(eased, GAUGE_LEG.term()), number(100));
    }

    private static Term fromAnkle(Term step) {
        Term fewest = ceiling(dividedBy(times(HEEL_CIRCUMFERENCE.term(), GAUGE_LEG.term()), WIDEST_STRETCH_PERCENT));
        return greatest(nearest(around(ANKLE_CIRCUMFERENCE), number(0), step),
                times(step, ceiling(dividedBy(fewest, step))));
    }

    /**
     * Pairs of increases from the ankle to the widest part of the calf, or to the cuff where that comes first; above it
     * pairs of decreases to the knee's own width, over all rounds that are left. Worked: 64 stitches, a calf of 80 and a
     * knee of 72 have 8 pairs of increases and 4 of decreases.
     */
    private static void calf(RuleBook book, Term step) {
        book.rule(LEG_CALF, greatest(LEG_STITCHES.term(), nearest(around(CALF_CIRCUMFERENCE), number(0), step)));
        book.rule(LEG_INCREASES, pairs(LEG_STITCHES, LEG_CALF));
        Term toCalf = nearest(rounds(minus(CALF_HEIGHT.term(), HEEL_HEIGHT.term())));
        book.rule(LEG_INCREASE_OVER, greatest(number(1), least(LEG_ROUNDS.term(), toCalf)));
        Term knee = nearest(around(KNEE_CIRCUMFERENCE), number(0), step);
        book.rule(LEG_TOP, choose(atLeast(KNEE_CIRCUMFERENCE.term(), CALF_CIRCUMFERENCE.term()), LEG_CALF.term(),
                greatest(LEG_STITCHES.term(), least(LEG_CALF.term(), knee))));
        book.rule(LEG_DECREASES, pairs(LEG_TOP, LEG_CALF));
        Term above = minus(LEG_ROUNDS.term(), LEG_INCREASE_OVER.term());
        book.rule(LEG_DECREASE_OVER, greatest(number(1), above));
        // rounds over which nothing is spread are even
        Term increasing = choose(equal(LEG_INCREASES.term(), number(0)), number(0), LEG_INCREASE_OVER.term());
        Term decreasing = choose(equal(LEG_DECREASES.term(), number(0)), number(0), LEG_DECREASE_OVER.term());
        book.rule(LEG_EVEN_ROUNDS, minus(minus(LEG_ROUNDS.term(), increasing), decreasing));
    }

    private static Term pairs(Parameter narrow, Parameter wide) {
        return dividedBy(minus(wide.term(), narrow.term()), number(2));
    }

    /** Whether the leg is counted at a gauge of its own. */
    static boolean hasOwnCount(Design design) {
        return design.leg().count() == LegCount.FROM_ANKLE || design.leg() instanceof CalfLeg;
    }

    /** Stitches at the top of the leg, where the cuff joins. */
    static Parameter top(Design design) {
        return switch (design.leg()) {
            case StraightLeg leg -> LEG_STITCHES;
            case CalfLeg leg -> LEG_TOP;
        };
    }

    private static Optional<StitchPattern> pattern(Design design) {
        return design.stitchPattern(Zone.LEG).filter(pattern -> pattern.fit() == StitchPattern.Fit.WHOLE_REPEATS);
    }

    /** The counts that suit the leg wherever it is counted on its own: halves, whole pattern repeats, whole ribs. */
    private static Congruence lattice(Design design) {
        return Stream.of(List.of(Need.HALVES), patternNeeds(design), CuffRules.needs(design)).flatMap(List::stream)
                .flatMap(need -> need.counts().stream())
                .reduce(Congruence.multipleOf(1), (one, other) -> one.and(other).orElseThrow());
    }

    /** What the leg needs of the foot's count, where it takes that over. */
    static List<Need> needs(Design design) {
        return design.leg().count() == LegCount.AS_FOOT ? patternNeeds(design) : List.of();
    }

    private static List<Need> patternNeeds(Design design) {
        return pattern(design).map(pattern -> List.of(new Need(Need.Kind.LEG_REPEATS,
                List.of(Congruence.multipleOf(pattern.repeat())), pattern.repeat()))).orElse(List.of());
    }
}
