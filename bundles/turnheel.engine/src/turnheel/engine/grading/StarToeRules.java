package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.TOE_PLAIN_MOST;
import static turnheel.engine.design.Catalogue.TOE_POINTS;
import static turnheel.engine.design.Catalogue.TOE_ROUNDS;
import static turnheel.engine.design.Catalogue.TOE_SECTIONS_FROM;
import static turnheel.engine.term.Terms.atMost;
import static turnheel.engine.term.Terms.choose;
import static turnheel.engine.term.Terms.dividedBy;
import static turnheel.engine.term.Terms.equal;
import static turnheel.engine.term.Terms.floor;
import static turnheel.engine.term.Terms.minus;
import static turnheel.engine.term.Terms.number;
import static turnheel.engine.term.Terms.plus;
import static turnheel.engine.term.Terms.times;

import turnheel.engine.term.Term;

/** A star toe: domain § 3. Sections and plain rounds are chosen together, once the foot's count is known. */
final class StarToeRules {

    static final int FEWEST_SECTIONS = 4;
    static final int MOST_SECTIONS = 9;
    static final int MOST_PLAIN = 12;

    private StarToeRules() {
    }

    static void contribute(RuleBook book) {
        book.chosen(TOE_POINTS);
        book.chosen(TOE_PLAIN_MOST);
        book.rule(TOE_SECTIONS_FROM,
                times(TOE_POINTS.term(), floor(dividedBy(FOOT_STITCHES.term(), TOE_POINTS.term()))));
        Term section = dividedBy(TOE_SECTIONS_FROM.term(), TOE_POINTS.term());
        book.rule(TOE_ROUNDS, rounds(section, TOE_PLAIN_MOST.term()));
    }

    /**
     * {@code Σ (1 + least(p, s − 2))} over sections of 2 to {@code section} stitches, in closed form. Worked: sections of 8
     * with at most 6 plain rounds take 28 rounds.
     */
    static Term rounds(Term section, Term plainMost) {
        Term shaped = minus(section, number(1));
        Term longest = minus(section, number(2));
        Term allRising = dividedBy(times(longest, shaped), number(2));
        Term rising = dividedBy(times(plainMost, plus(plainMost, number(1))), number(2));
        Term level = times(minus(longest, plainMost), plainMost);
        return plus(shaped, choose(atMost(longest, plainMost), allRising, plus(rising, level)));
    }

    /** One round beside the toe where its sections do not divide the foot's count. */
    static Term adjustingRounds() {
        return choose(equal(TOE_SECTIONS_FROM.term(), FOOT_STITCHES.term()), number(0), number(1));
    }
}
