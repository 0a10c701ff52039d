package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.FOOT_PATTERN_FIRST_ROW;
import static turnheel.engine.design.Catalogue.FOOT_PATTERN_LAST_ROW;
import static turnheel.engine.design.Catalogue.FOOT_PATTERN_REMAINDER;
import static turnheel.engine.design.Catalogue.FOOT_PATTERN_REMAINDER_LENGTH;
import static turnheel.engine.design.Catalogue.FOOT_ROUNDS;
import static turnheel.engine.design.Catalogue.LEG_PATTERN_FIRST_ROW;
import static turnheel.engine.design.Catalogue.LEG_PATTERN_LAST_ROW;
import static turnheel.engine.design.Catalogue.LEG_PATTERN_REMAINDER;
import static turnheel.engine.design.Catalogue.LEG_PATTERN_REMAINDER_LENGTH;
import static turnheel.engine.design.Catalogue.LEG_ROUNDS;
import static turnheel.engine.term.Terms.least;
import static turnheel.engine.term.Terms.minus;
import static turnheel.engine.term.Terms.number;
import static turnheel.engine.term.Terms.plus;
import static turnheel.engine.term.Terms.remainder;

import java.util.Optional;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.term.Term;

/**
 * Rows of the stitch patterns, domain §§ 4 and 7. A pattern begins with row 1 in the first round of its part; one that
 * lies on the whole sock goes on where the part before left it. While a heel is worked the instep rests, except in the round
 * that picks up along a flap. Rounds that only change the count, and a hem's or a rib's, are no rows of the pattern.
 *
 * <p>Worked: 8 rows over a leg of 50 rounds cuff-down end with row 2; over a short-row heel the instep rests, the foot
 * begins with row 3; after a flap the pick-up round is row 3 and the foot begins with row 4.
 */
final class PatternRowRules {

    private static final Term ONE = number(1);

    /** The rows of one part. */
    private record Stretch(Parameter rounds, Parameter first, Parameter last, Parameter left,
            Parameter leftLength) {

        void contribute(RuleBook book, StitchPattern pattern, boolean snapped, Term firstRow) {
            Term rows = number(pattern.rows());
            book.rule(first, firstRow);
            Term before = minus(first.term(), ONE);
            Term worked = rounds.term();
            if (snapped) {
                // where not even the repeat that was begun has room, all rounds are left over
                book.rule(left, least(rounds.term(), remainder(plus(before, rounds.term()), rows)));
                book.rule(leftLength, LengthRules.millimetres(left.term()));
                worked = minus(worked, left.term());
            }
            book.rule(last, plus(ONE, remainder(minus(plus(before, worked), ONE), rows)));
        }
    }

    private static final Stretch FOOT = new Stretch(FOOT_ROUNDS, FOOT_PATTERN_FIRST_ROW, FOOT_PATTERN_LAST_ROW,
            FOOT_PATTERN_REMAINDER, FOOT_PATTERN_REMAINDER_LENGTH);
    private static final Stretch LEG = new Stretch(LEG_ROUNDS, LEG_PATTERN_FIRST_ROW, LEG_PATTERN_LAST_ROW,
            LEG_PATTERN_REMAINDER, LEG_PATTERN_REMAINDER_LENGTH);

    private PatternRowRules() {
    }

    static void contribute(RuleBook book, Design design) {
        boolean toeUp = design.direction() == Direction.TOE_UP;
        rows(design, Zone.INSTEP).ifPresent(pattern -> FOOT.contribute(book, pattern, design.lengths().snap().foot(),
                !toeUp && goesOn(design) ? after(LEG, pattern, betweenLegAndFoot(design)) : ONE));
        rows(design, Zone.LEG).ifPresent(pattern -> LEG.contribute(book, pattern, design.lengths().snap().leg(),
                toeUp && goesOn(design) ? after(FOOT, pattern, number(0)) : ONE));
    }

    /** A pattern of one row has nothing to count. */
    private static Optional<StitchPattern> rows(Design design, Zone zone) {
        return design.stitchPattern(zone).filter(pattern -> pattern.rows() > 1);
    }

    /** Whether one stitch pattern lies on foot and leg. */
    private static boolean goesOn(Design design) {
        return design.stitchPattern(Zone.INSTEP).equals(design.stitchPattern(Zone.LEG));
    }

    private static Term after(Stretch before, StitchPattern pattern, Term between) {
        return plus(ONE, remainder(plus(before.last().term(), between), number(pattern.rows())));
    }

    /** Rounds over the instep that belong to the heel, cuff-down. */
    private static Term betweenLegAndFoot(Design design) {
        return switch (design.heel()) {
            case FlapHeel heel -> ONE;
            case ShortRowHeel heel -> number(0);
            case AfterthoughtHeel heel -> number(0);
        };
    }
}
