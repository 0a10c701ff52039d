package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.GAUGE_FLAP;
import static turnheel.engine.design.Catalogue.GAUGE_ROUNDS;
import static turnheel.engine.design.Catalogue.GAUGE_STITCHES;
import static turnheel.engine.design.Catalogue.HEEL_AFTER_PICK_UP;
import static turnheel.engine.design.Catalogue.HEEL_AFTER_TURN;
import static turnheel.engine.design.Catalogue.HEEL_CENTRE;
import static turnheel.engine.design.Catalogue.HEEL_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.HEEL_CORNER;
import static turnheel.engine.design.Catalogue.HEEL_EACH_SIDE;
import static turnheel.engine.design.Catalogue.HEEL_FLAP_ROWS;
import static turnheel.engine.design.Catalogue.HEEL_GUSSET_DECREASES;
import static turnheel.engine.design.Catalogue.HEEL_GUSSET_INCREASES;
import static turnheel.engine.design.Catalogue.HEEL_HEIGHT;
import static turnheel.engine.design.Catalogue.HEEL_PICK_UP;
import static turnheel.engine.design.Catalogue.HEEL_STITCHES;
import static turnheel.engine.design.Catalogue.HEEL_TURN_OFFSET;
import static turnheel.engine.design.Catalogue.HEEL_TURN_ROWS;
import static turnheel.engine.design.Catalogue.HEEL_WIDEST;
import static turnheel.engine.design.Catalogue.LEG_STITCHES;
import static turnheel.engine.design.Catalogue.WANTED_LENGTH;
import static turnheel.engine.term.Terms.ceiling;
import static turnheel.engine.term.Terms.dividedBy;
import static turnheel.engine.term.Terms.floor;
import static turnheel.engine.term.Terms.greatest;
import static turnheel.engine.term.Terms.least;
import static turnheel.engine.term.Terms.minus;
import static turnheel.engine.term.Terms.nearest;
import static turnheel.engine.term.Terms.number;
import static turnheel.engine.term.Terms.plus;
import static turnheel.engine.term.Terms.times;

import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.FlapLength;
import turnheel.engine.design.HeelTurn;
import turnheel.engine.design.PickUp;
import turnheel.engine.term.Term;

/** Flap and gusset, and its mirror gusset and flap: domain § 5. Counts follow by counting. */
final class FlapHeelRules {

    /** How far the sock is stretched over heel and instep when it is comfortable: <em>common practice</em>. */
    private static final Term COMFORTABLE_STRETCH = number(1.2);
    private static final Term TWO = number(2);

    private FlapHeelRules() {
    }

    /** Worked: 64 stitches, flap of 32 rows, round turn: 14 turn rows, 18 left, 17 picked up, 84 around, 10 decreases. */
    static void cuffDown(RuleBook book, FlapHeel heel) {
        Term stitches = HEEL_STITCHES.term();
        Term leg = LEG_STITCHES.term();
        book.rule(HEEL_STITCHES, nearest(dividedBy(leg, TWO)));
        turn(book, heel.turn());
        book.rule(HEEL_FLAP_ROWS, flapRows(heel.length(), heel.pickUp()));
        pickUp(book, heel.pickUp());
        book.rule(HEEL_AFTER_PICK_UP, plus(plus(HEEL_AFTER_TURN.term(), times(TWO, HEEL_PICK_UP.term())),
                minus(leg, stitches)));
        book.rule(HEEL_GUSSET_DECREASES, dividedBy(minus(HEEL_AFTER_PICK_UP.term(), FOOT_STITCHES.term()), TWO));
        HeelRules.reach(book, HEEL_TURN_ROWS.term(), gussetRounds(Direction.CUFF_DOWN));
        height(book);
    }

    /** Rounds of the foot that the gusset takes: every second one shapes it. */
    static Term gussetRounds(Direction direction) {
        return times(TWO, switch (direction) {
            case TOE_UP -> HEEL_GUSSET_INCREASES.term();
            case CUFF_DOWN -> HEEL_GUSSET_DECREASES.term();
        });
    }

    private static void pickUp(RuleBook book, PickUp pickUp) {
        switch (pickUp) {
            case PickUp.HalfTheRows half -> {
                book.rule(HEEL_CORNER, number(1));
                book.rule(HEEL_PICK_UP, plus(dividedBy(HEEL_FLAP_ROWS.term(), TWO), HEEL_CORNER.term()));
            }
            case PickUp.StitchesPerRow(double ratio) ->
                book.rule(HEEL_PICK_UP, nearest(times(number(ratio), HEEL_FLAP_ROWS.term())));
        }
    }

    private static void turn(RuleBook book, HeelTurn turn) {
        Term stitches = HEEL_STITCHES.term();
        switch (turn) {
            case ROUND -> {
                book.rule(HEEL_TURN_OFFSET, number(1));
                Term half = floor(dividedBy(stitches, TWO));
                Term beyond = minus(minus(half, HEEL_TURN_OFFSET.term()), number(3));
                book.rule(HEEL_TURN_ROWS, plus(TWO, times(TWO, ceiling(dividedBy(beyond, TWO)))));
                book.rule(HEEL_AFTER_TURN, minus(stitches, HEEL_TURN_ROWS.term()));
            }
            case SQUARE -> {
                ShortRowCup.centre(book, stitches, HEEL_CENTRE, dividedBy(stitches, number(3)));
                book.rule(HEEL_TURN_ROWS, minus(stitches, HEEL_CENTRE.term()));
                book.rule(HEEL_AFTER_TURN, HEEL_CENTRE.term());
            }
        }
    }

    private static Term flapRows(FlapLength length, PickUp pickUp) {
        return switch (length) {
            case FlapLength.FromBody fromBody -> within(rowsFor(pickUp, wantedGusset()));
            case FlapLength.RowsPerStitch(double ratio) ->
                nearest(times(number(ratio), HEEL_STITCHES.term()), number(0), TWO);
            case FlapLength.Height(var height) ->
                nearest(dividedBy(times(number(height.mm()), GAUGE_FLAP.term()), number(100)), number(0), TWO);
        };
    }

    /** Even rows along which so much is picked up that a gusset of {@code pairs} is left, or one nearest to it. */
    private static Term rowsFor(PickUp pickUp, Term pairs) {
        Term halfTurn = dividedBy(HEEL_TURN_ROWS.term(), TWO);
        Term legAbove = dividedBy(minus(LEG_STITCHES.term(), FOOT_STITCHES.term()), TWO);
        return switch (pickUp) {
            case PickUp.HalfTheRows half ->
                times(TWO, minus(plus(minus(pairs, HEEL_CORNER.term()), halfTurn), legAbove));
            case PickUp.StitchesPerRow(double ratio) ->
                nearest(dividedBy(minus(plus(pairs, halfTurn), legAbove), number(ratio)), number(0), TWO);
        };
    }

    /** Even rows within 0.24 and 0.32 of the finished length: <em>common practice</em>. */
    private static Term within(Term rows) {
        Term perShare = dividedBy(times(WANTED_LENGTH.term(), GAUGE_FLAP.term()), number(100));
        Term fewest = times(TWO, ceiling(dividedBy(times(number(0.24), perShare), TWO)));
        Term most = times(TWO, floor(dividedBy(times(number(0.32), perShare), TWO)));
        return greatest(fewest, least(most, rows));
    }

    /** Pairs of gusset stitches that let the sock pass over heel and instep with a comfortable stretch. */
    private static Term wantedGusset() {
        Term around = dividedBy(times(HEEL_CIRCUMFERENCE.term(), GAUGE_STITCHES.term()),
                times(number(100), COMFORTABLE_STRETCH));
        return ceiling(dividedBy(minus(around, FOOT_STITCHES.term()), TWO));
    }

    /**
     * The turn does not narrow the sole, so gusset and turn together may take at most 0.42 of the finished length. Worked:
     * 64 stitches at 32 over 10 cm and a heel of 310 mm: 10 increases, widest 84.
     */
    static void toeUp(RuleBook book, FlapHeel heel) {
        Term stitches = HEEL_STITCHES.term();
        book.rule(HEEL_STITCHES, nearest(dividedBy(FOOT_STITCHES.term(), TWO)));
        ShortRowCup.centre(book, stitches, HEEL_CENTRE, times(number(0.4), stitches));
        book.rule(HEEL_EACH_SIDE, dividedBy(minus(stitches, HEEL_CENTRE.term()), TWO));
        book.rule(HEEL_TURN_ROWS, times(TWO, HEEL_EACH_SIDE.term()));
        Term reachable = dividedBy(times(times(number(0.42), WANTED_LENGTH.term()), GAUGE_ROUNDS.term()), number(100));
        Term most = floor(dividedBy(minus(reachable, HEEL_TURN_ROWS.term()), TWO));
        book.rule(HEEL_GUSSET_INCREASES, greatest(number(0), least(most, increases(heel.length()))));
        book.rule(HEEL_WIDEST, plus(FOOT_STITCHES.term(), times(TWO, HEEL_GUSSET_INCREASES.term())));
        book.rule(HEEL_FLAP_ROWS, times(TWO, HEEL_GUSSET_INCREASES.term()));
        HeelRules.reach(book, HEEL_TURN_ROWS.term(), gussetRounds(Direction.TOE_UP));
        height(book);
    }

    private static Term increases(FlapLength length) {
        return switch (length) {
            case FlapLength.FromBody fromBody -> wantedGusset();
            case FlapLength.RowsPerStitch(double ratio) -> nearest(dividedBy(times(number(ratio), HEEL_STITCHES.term()), TWO));
            case FlapLength.Height(var height) ->
                nearest(dividedBy(times(number(height.mm()), GAUGE_FLAP.term()), number(200)));
        };
    }

    private static void height(RuleBook book) {
        book.rule(HEEL_HEIGHT, dividedBy(times(HEEL_FLAP_ROWS.term(), number(100)), GAUGE_FLAP.term()));
    }
}
