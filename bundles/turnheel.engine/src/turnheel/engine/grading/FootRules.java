package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.FINISHED_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.FINISHED_LENGTH;
import static turnheel.engine.design.Catalogue.FOOT_FILLER;
import static turnheel.engine.design.Catalogue.FOOT_IDEAL;
import static turnheel.engine.design.Catalogue.FOOT_INSTEP;
import static turnheel.engine.design.Catalogue.FOOT_PANEL;
import static turnheel.engine.design.Catalogue.FOOT_REPEATS;
import static turnheel.engine.design.Catalogue.FOOT_ROUNDS;
import static turnheel.engine.design.Catalogue.FOOT_SOLE;
import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.GAUGE_INSTEP;
import static turnheel.engine.design.Catalogue.GAUGE_ROUNDS;
import static turnheel.engine.design.Catalogue.GAUGE_STITCHES;
import static turnheel.engine.design.Catalogue.HEEL_DEPTH;
import static turnheel.engine.design.Catalogue.LENGTH_REST;
import static turnheel.engine.design.Catalogue.TOE_DEPTH;
import static turnheel.engine.design.Catalogue.WANTED_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.WANTED_LENGTH;
import static turnheel.engine.term.Terms.dividedBy;
import static turnheel.engine.term.Terms.floor;
import static turnheel.engine.term.Terms.greatest;
import static turnheel.engine.term.Terms.minus;
import static turnheel.engine.term.Terms.nearest;
import static turnheel.engine.term.Terms.number;
import static turnheel.engine.term.Terms.plus;
import static turnheel.engine.term.Terms.remainder;
import static turnheel.engine.term.Terms.times;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import turnheel.engine.design.Design;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.term.Term;

/** Stitches around the foot, their split and the rounds between toe and heel: domain §§ 2, 4 and 7. */
final class FootRules {

    private static final Term TWO = number(2);
    private static final Term HUNDRED = number(100);
    /** How far the markers between instep and sole may move from half of the round, domain § 2. */
    private static final int FURTHEST_SPLIT = 1;

    private FootRules() {
    }

    static void contribute(RuleBook book, Design design) {
        Term stitches = FOOT_STITCHES.term();
        Term rowGauge = GAUGE_ROUNDS.term();
        Optional<StitchPattern> pattern = design.stitchPattern(Zone.INSTEP);
        Term sole = GAUGE_STITCHES.term();
        Term instep = pattern.isPresent() ? GAUGE_INSTEP.term() : sole;
        Term mean = pattern.isPresent() ? dividedBy(plus(instep, sole), TWO) : sole;
        book.rule(FOOT_IDEAL, dividedBy(times(WANTED_CIRCUMFERENCE.term(), mean), HUNDRED));
        book.chosen(FOOT_STITCHES);
        pattern.ifPresentOrElse(p -> instep(book, p), () -> book.rule(FOOT_INSTEP, dividedBy(stitches, TWO)));
        book.rule(FOOT_SOLE, minus(stitches, FOOT_INSTEP.term()));
        book.rule(FINISHED_CIRCUMFERENCE, pattern.isPresent()
                ? plus(dividedBy(times(FOOT_INSTEP.term(), HUNDRED), instep),
                        dividedBy(times(FOOT_SOLE.term(), HUNDRED), sole))
                : dividedBy(times(stitches, HUNDRED), sole));
        Term left = minus(minus(WANTED_LENGTH.term(), TOE_DEPTH.term()), HEEL_DEPTH.term());
        book.rule(FOOT_ROUNDS, nearest(dividedBy(times(left, rowGauge), HUNDRED)));
        Term footLength = dividedBy(times(FOOT_ROUNDS.term(), HUNDRED), rowGauge);
        book.rule(FINISHED_LENGTH, plus(plus(TOE_DEPTH.term(), footLength), HEEL_DEPTH.term()));
        book.rule(LENGTH_REST, minus(WANTED_LENGTH.term(), FINISHED_LENGTH.term()));
    }

    private static void instep(RuleBook book, StitchPattern pattern) {
        Term half = dividedBy(FOOT_STITCHES.term(), TWO);
        Term repeat = number(pattern.repeat());
        Term edge = number(pattern.edge());
        switch (pattern.fit()) {
            case WHOLE_REPEATS -> {
                // nearest to half of the round; mirrored, so that of two equally near the larger instep is taken
                book.rule(FOOT_INSTEP, minus(number(0), nearest(minus(number(0), half), minus(number(0), edge), repeat)));
                book.rule(FOOT_REPEATS, dividedBy(minus(FOOT_INSTEP.term(), edge), repeat));
                book.rule(FOOT_PANEL, plus(times(FOOT_REPEATS.term(), repeat), edge));
            }
            case CENTRED_PANEL -> {
                Term room = minus(minus(half, edge), number(2 * pattern.fewestFiller()));
                book.rule(FOOT_REPEATS, greatest(number(0), floor(dividedBy(room, repeat))));
                book.rule(FOOT_PANEL, plus(times(FOOT_REPEATS.term(), repeat), edge));
                // equal plain stitches left and right: one more instep stitch where the panel is odd and the half even
                book.rule(FOOT_INSTEP, plus(half, remainder(minus(FOOT_PANEL.term(), half), TWO)));
            }
        }
        book.rule(FOOT_FILLER, dividedBy(minus(FOOT_INSTEP.term(), FOOT_PANEL.term()), TWO));
    }

    /** Instep and sole are near halves; whole repeats on the instep may move the markers by a stitch. */
    static List<Need> needs(Design design) {
        return design.stitchPattern(Zone.INSTEP).filter(pattern -> pattern.fit() == StitchPattern.Fit.WHOLE_REPEATS)
                .map(pattern -> List.of(Need.HALVES, wholeRepeats(pattern))).orElse(List.of(Need.HALVES));
    }

    private static Need wholeRepeats(StitchPattern pattern) {
        List<Congruence> counts = new ArrayList<>();
        for (int offset = -FURTHEST_SPLIT; offset <= FURTHEST_SPLIT; offset++) {
            counts.add(new Congruence(2 * (pattern.edge() - offset), 2 * pattern.repeat()));
        }
        return new Need(Need.Kind.INSTEP_REPEATS, counts, 2 * (pattern.edge() + 1));
    }
}
