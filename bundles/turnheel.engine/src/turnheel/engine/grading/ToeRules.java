package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.GAUGE_ROUNDS;
import static turnheel.engine.design.Catalogue.TOE_DEPTH;
import static turnheel.engine.design.Catalogue.TOE_ROUNDS;
import static turnheel.engine.term.Terms.dividedBy;
import static turnheel.engine.term.Terms.number;
import static turnheel.engine.term.Terms.plus;
import static turnheel.engine.term.Terms.times;

import java.util.List;
import java.util.function.ToIntFunction;

import turnheel.engine.design.AsymmetricToe;
import turnheel.engine.design.CastOn;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.ShortRowToe;
import turnheel.engine.design.StarToe;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.term.Term;

/** Toes, counted toe-up; cuff-down is the mirror: domain § 3. */
final class ToeRules {

    private static final int LEAST_WEDGE = 16;

    private static final RoundTaper ROUND = new RoundTaper(Catalogue.TOE_POINTS, Catalogue.TOE_CAST_ON,
            Catalogue.TOE_ALTERNATE_FROM, Catalogue.TOE_EVERY_ROUND, Catalogue.TOE_ALTERNATE, Catalogue.TOE_PLAIN_BETWEEN,
            TOE_ROUNDS);
    private static final WedgeTaper WEDGE = new WedgeTaper(Catalogue.TOE_TIP, Catalogue.TOE_ALTERNATE_FROM,
            Catalogue.TOE_EVERY_ROUND, Catalogue.TOE_ALTERNATE, TOE_ROUNDS);

    private ToeRules() {
    }

    static void contribute(RuleBook book, Design design) {
        Direction direction = design.direction();
        switch (design.toe()) {
            case RoundToe toe -> ROUND.contribute(book, FOOT_STITCHES.term(), toe.lines(), direction);
            case WedgeToe toe -> WEDGE.contribute(book, FOOT_STITCHES.term(), direction);
            case StarToe toe -> StarToeRules.contribute(book);
            case ShortRowToe toe -> {
                new ShortRowCup(Catalogue.TOE_STITCHES, Catalogue.TOE_CENTRE, Catalogue.TOE_EACH_SIDE, TOE_ROUNDS)
                        .contribute(book, toe.turn());
            }
            case AsymmetricToe toe -> AsymmetricToeRules.contribute(book, direction);
        }
        book.rule(TOE_DEPTH, dividedBy(times(roundsAlongFoot(design), number(100)), GAUGE_ROUNDS.term()));
    }

    private static Term roundsAlongFoot(Design design) {
        return switch (design.toe()) {
            case RoundToe toe -> withSetUp(design.direction(), toe.castOn());
            case WedgeToe toe -> withSetUp(design.direction(), toe.castOn());
            case AsymmetricToe toe -> withSetUp(design.direction(), toe.castOn());
            case StarToe toe -> plus(withSetUp(design.direction(), toe.castOn()), StarToeRules.adjustingRounds());
            // the cup folds, so of its rows half lie along the foot
            case ShortRowToe toe -> times(number(2), Catalogue.TOE_EACH_SIDE.term());
        };
    }

    /**
     * The round on which a closed cast-on's stitches are first worked counts along the foot but shapes nothing. Half a
     * set-up round completes the one that the cast-on began, so that it adds none: domain § 4.
     */
    private static Term withSetUp(Direction direction, CastOn castOn) {
        return switch (direction) {
            case TOE_UP -> switch (castOn) {
                case UNWORKED -> plus(TOE_ROUNDS.term(), number(1));
                case HALF_WORKED -> TOE_ROUNDS.term();
            };
            case CUFF_DOWN -> TOE_ROUNDS.term();
        };
    }

    /** What the toe needs of the foot's count; {@code valueOf} tells the size's own tip and lines. */
    static List<Need> needs(Design design, ToIntFunction<Parameter> valueOf) {
        return switch (design.toe()) {
            case RoundToe toe -> List.of(new Need(Need.Kind.TOE_LINES,
                    List.of(Congruence.multipleOf(valueOf.applyAsInt(Catalogue.TOE_POINTS))),
                    valueOf.applyAsInt(Catalogue.TOE_CAST_ON)));
            case WedgeToe toe -> List.of(new Need(Need.Kind.TOE_LINES, List.of(Congruence.multipleOf(2)), LEAST_WEDGE));
            case AsymmetricToe toe -> List.of(new Need(Need.Kind.TOE_LINES, List.of(Congruence.multipleOf(2)), LEAST_WEDGE));
            // a star adjusts the count in a round of its own; a cup takes any half
            case StarToe toe -> List.of();
            case ShortRowToe toe -> List.of();
        };
    }

    /** What {@link #needs} reads. */
    static List<Parameter> needsBasis(Design design) {
        return switch (design.toe()) {
            case RoundToe toe -> List.of(Catalogue.TOE_CAST_ON, Catalogue.TOE_POINTS);
            case WedgeToe toe -> List.of();
            case StarToe toe -> List.of();
            case ShortRowToe toe -> List.of();
            case AsymmetricToe toe -> List.of();
        };
    }
}
