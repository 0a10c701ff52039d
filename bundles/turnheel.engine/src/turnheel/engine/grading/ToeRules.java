package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.GAUGE_ROUNDS;
import static turnheel.engine.design.Catalogue.TOE_ALTERNATE;
import static turnheel.engine.design.Catalogue.TOE_ALTERNATE_FROM;
import static turnheel.engine.design.Catalogue.TOE_CAST_ON;
import static turnheel.engine.design.Catalogue.TOE_DEPTH;
import static turnheel.engine.design.Catalogue.TOE_EVERY_ROUND;
import static turnheel.engine.design.Catalogue.TOE_PLAIN_BETWEEN;
import static turnheel.engine.design.Catalogue.TOE_POINTS;
import static turnheel.engine.design.Catalogue.TOE_ROUNDS;
import static turnheel.engine.design.Catalogue.TOE_TIP;
import static turnheel.engine.design.Catalogue.WANTED_LENGTH;
import static turnheel.engine.term.Terms.atLeast;
import static turnheel.engine.term.Terms.atMost;
import static turnheel.engine.term.Terms.choose;
import static turnheel.engine.term.Terms.dividedBy;
import static turnheel.engine.term.Terms.equal;
import static turnheel.engine.term.Terms.greatest;
import static turnheel.engine.term.Terms.minus;
import static turnheel.engine.term.Terms.nearest;
import static turnheel.engine.term.Terms.number;
import static turnheel.engine.term.Terms.plus;
import static turnheel.engine.term.Terms.remainder;
import static turnheel.engine.term.Terms.times;

import java.util.List;
import java.util.function.ToIntFunction;

import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.term.Term;

/** Toes, counted toe-up; cuff-down is the mirror: domain § 3. */
final class ToeRules {

    /** The round on which a closed cast-on's stitches are first worked; it counts along the foot but shapes nothing. */
    private static final Term SET_UP_ROUND = number(1);
    private static final int LEAST_WEDGE = 16;
    private static final int WEDGE_STITCHES_PER_ROUND = 4;

    private ToeRules() {
    }

    static void contribute(RuleBook book, Design design) {
        switch (design.toe()) {
            case RoundToe toe -> round(book, design, toe);
            case WedgeToe toe -> wedge(book, design);
        }
        Term setUp = design.direction() == Direction.TOE_UP ? SET_UP_ROUND : number(0);
        book.rule(TOE_DEPTH, dividedBy(times(plus(TOE_ROUNDS.term(), setUp), number(100)), GAUGE_ROUNDS.term()));
    }

    /** What the toe needs of the foot's count; {@code valueOf} tells the size's own tip and lines. */
    static List<Need> needs(Design design, ToIntFunction<Parameter> valueOf) {
        return switch (design.toe()) {
            case RoundToe toe -> List.of(new Need(Need.Kind.TOE_LINES,
                    Congruence.multipleOf(valueOf.applyAsInt(TOE_POINTS)),
                    valueOf.applyAsInt(TOE_CAST_ON)));
            case WedgeToe toe -> List.of(new Need(Need.Kind.TOE_LINES, Congruence.multipleOf(2), LEAST_WEDGE));
        };
    }

    /** What {@link #needs} reads. */
    static List<Parameter> needsBasis(Design design) {
        return switch (design.toe()) {
            case RoundToe toe -> List.of(TOE_CAST_ON, TOE_POINTS);
            case WedgeToe toe -> List.of();
        };
    }

    /**
     * The alternate-from count at a third of the foot is <em>common practice</em>; counts and rounds follow by counting.
     * Worked: 64 stitches from 8 on 4 lines turn at 20, shape 3 + 11 times and take 26 rounds toe-up.
     */
    private static void round(RuleBook book, Design design, RoundToe toe) {
        Term lines = TOE_POINTS.term();
        Term castOn = TOE_CAST_ON.term();
        book.rule(TOE_POINTS, number(toe.lines()));
        // a closed cast-on has two equal sides, and every line starts with the same number of stitches
        Term whole = choose(equal(remainder(lines, number(2)), number(0)), lines, times(number(2), lines));
        Term twoPerLine = choose(atMost(lines, number(4)), times(number(2), lines), number(0));
        book.rule(TOE_CAST_ON, greatest(whole, twoPerLine, nearest(number(8), number(0), whole)));
        book.rule(TOE_ALTERNATE_FROM,
                greatest(castOn, nearest(dividedBy(FOOT_STITCHES.term(), number(3)), number(0), lines)));
        book.rule(TOE_EVERY_ROUND, dividedBy(minus(TOE_ALTERNATE_FROM.term(), castOn), lines));
        book.rule(TOE_ALTERNATE, dividedBy(minus(FOOT_STITCHES.term(), TOE_ALTERNATE_FROM.term()), lines));
        book.rule(TOE_PLAIN_BETWEEN, choose(equal(lines, number(4)), number(1), choose(
                atLeast(TOE_ALTERNATE.term(), number(1)), greatest(number(1), nearest(plainBetween())), number(1))));
        Term wider = times(TOE_ALTERNATE.term(), plus(number(1), TOE_PLAIN_BETWEEN.term()));
        book.rule(TOE_ROUNDS, rounds(design, wider));
    }

    /** With more or fewer than four lines: as many plain rounds as bring the toe nearest to 0.23 of the sock. */
    private static Term plainBetween() {
        Term usual = dividedBy(times(times(number(0.23), WANTED_LENGTH.term()), GAUGE_ROUNDS.term()), number(100));
        Term left = minus(minus(usual, TOE_EVERY_ROUND.term()), number(1));
        return minus(dividedBy(left, TOE_ALTERNATE.term()), number(1));
    }

    /**
     * Four stitches a shaping round, every round next to the tip, every second round next to the foot. Worked: 64 stitches
     * have 16 at the tip, change at 32 and take 21 rounds toe-up, 20 cuff-down.
     */
    private static void wedge(RuleBook book, Design design) {
        Term foot = FOOT_STITCHES.term();
        Term four = number(WEDGE_STITCHES_PER_ROUND);
        Term residue = remainder(foot, four);
        // a side of at least 6 before a decrease round leaves at least 4, so 8 at the tip, or 10 to keep the remainder
        book.rule(TOE_TIP, greatest(plus(number(8), residue), nearest(dividedBy(foot, four), residue, four)));
        book.rule(TOE_ALTERNATE_FROM,
                greatest(TOE_TIP.term(), nearest(dividedBy(foot, number(2)), residue, four)));
        book.rule(TOE_EVERY_ROUND, dividedBy(minus(TOE_ALTERNATE_FROM.term(), TOE_TIP.term()), four));
        book.rule(TOE_ALTERNATE, dividedBy(minus(foot, TOE_ALTERNATE_FROM.term()), four));
        book.rule(TOE_ROUNDS, rounds(design, times(TOE_ALTERNATE.term(), number(2))));
    }

    /** Toe-up the every-round increases end with a plain round of their own; a toe without them has none. */
    private static Term rounds(Design design, Term wider) {
        Term everyRound = TOE_EVERY_ROUND.term();
        return switch (design.direction()) {
            case TOE_UP -> plus(plus(everyRound, choose(atLeast(everyRound, number(1)), number(1), number(0))), wider);
            case CUFF_DOWN -> plus(everyRound, wider);
        };
    }
}
