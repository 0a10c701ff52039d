package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.GAUGE_ROUNDS;
import static turnheel.engine.design.Catalogue.TOE_ALTERNATE;
import static turnheel.engine.design.Catalogue.TOE_ALTERNATE_FROM;
import static turnheel.engine.design.Catalogue.TOE_EVERY_ROUND;
import static turnheel.engine.design.Catalogue.TOE_ROUNDS;
import static turnheel.engine.design.Catalogue.TOE_SECOND_LINE_AFTER;
import static turnheel.engine.design.Catalogue.TOE_TIP;
import static turnheel.engine.design.Catalogue.WANTED_LENGTH;
import static turnheel.engine.term.Terms.atLeast;
import static turnheel.engine.term.Terms.choose;
import static turnheel.engine.term.Terms.dividedBy;
import static turnheel.engine.term.Terms.floor;
import static turnheel.engine.term.Terms.minus;
import static turnheel.engine.term.Terms.nearest;
import static turnheel.engine.term.Terms.number;
import static turnheel.engine.term.Terms.plus;
import static turnheel.engine.term.Terms.times;

import turnheel.engine.design.Direction;
import turnheel.engine.term.Term;

/**
 * An asymmetric wedge: next to the foot only the little toe's line shapes, two stitches a round; then both, four a round.
 * Shaping rounds at or above the turning point have a plain round beside them. Domain § 3.
 */
final class AsymmetricToeRules {

    private AsymmetricToeRules() {
    }

    static void contribute(RuleBook book, Direction direction) {
        Term foot = FOOT_STITCHES.term();
        Term two = number(2);
        Term alone = TOE_SECOND_LINE_AFTER.term();
        WedgeTaper.tipAndTurn(book, TOE_TIP, TOE_ALTERNATE_FROM, foot);
        Term share = dividedBy(times(times(number(0.08), WANTED_LENGTH.term()), GAUGE_ROUNDS.term()), number(200));
        book.rule(TOE_SECOND_LINE_AFTER, nearest(share, number(0), two));
        Term shaped = dividedBy(plus(minus(foot, TOE_TIP.term()), times(two, alone)), number(4));
        // how many shaping rounds leave the turning point or more: by twos while the line is alone, then by fours
        Term atJoin = minus(foot, times(two, alone));
        Term afterJoin = plus(alone, floor(dividedBy(minus(atJoin, TOE_ALTERNATE_FROM.term()), number(4))));
        Term beforeJoin = floor(dividedBy(minus(foot, TOE_ALTERNATE_FROM.term()), two));
        book.rule(TOE_ALTERNATE, choose(atLeast(atJoin, TOE_ALTERNATE_FROM.term()), afterJoin, beforeJoin));
        book.rule(TOE_EVERY_ROUND, minus(shaped, TOE_ALTERNATE.term()));
        book.rule(TOE_ROUNDS,
                RoundTaper.taperRounds(direction, TOE_EVERY_ROUND.term(), times(TOE_ALTERNATE.term(), two)));
    }
}
