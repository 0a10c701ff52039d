package turnheel.engine.shaping;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.AsymmetricToe;
import turnheel.engine.design.CalfLeg;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.HemCuff;
import turnheel.engine.design.Leg;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Part;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.RolledCuff;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.ShortRowToe;
import turnheel.engine.design.StarToe;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.design.TurnMethod;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.grading.GradedSize;

/** The stitches after every round of a part as domain §§ 3–8 word them, from the graded counts alone. */
final class ExpectedCounts {

    private final Design design;
    private final GradedSize size;
    private final boolean toeUp;
    private final List<Integer> counts = new ArrayList<>();
    private int stitches;

    private ExpectedCounts(Design design, GradedSize size) {
        this.design = design;
        this.size = size;
        this.toeUp = design.direction() == Direction.TOE_UP;
    }

    static List<Integer> of(Part part, Design design, GradedSize size) {
        ExpectedCounts expected = new ExpectedCounts(design, size);
        switch (part) {
            case TOE -> expected.toe();
            case FOOT -> expected.foot();
            case HEEL -> expected.heel();
            case LEG -> expected.leg();
            case CUFF -> expected.cuff();
            case GAUGE, BODY, FIT, YARN, OWN -> throw new AssertionError(part + " has rounds");
        }
        return expected.counts;
    }

    private void toe() {
        int foot = count(Catalogue.FOOT_STITCHES);
        switch (design.toe()) {
            case RoundToe toe -> taper(count(Catalogue.TOE_CAST_ON), count(Catalogue.TOE_ALTERNATE_FROM), foot,
                    count(Catalogue.TOE_POINTS), count(Catalogue.TOE_PLAIN_BETWEEN));
            case WedgeToe toe -> taper(count(Catalogue.TOE_TIP), count(Catalogue.TOE_ALTERNATE_FROM), foot, 4, 1);
            case StarToe toe -> star(foot, count(Catalogue.TOE_SECTIONS_FROM), count(Catalogue.TOE_POINTS),
                    count(Catalogue.TOE_PLAIN_MOST));
            case AsymmetricToe toe -> asymmetric(foot);
            case ShortRowToe toe -> {
                stitches = count(Catalogue.TOE_STITCHES);
                plain(toeUp ? 1 : 0); // the cast-on
                cup(toe.turn(), count(Catalogue.TOE_EACH_SIDE));
                to(toeUp ? foot : 0);
            }
        }
    }

    private void taper(int tip, int turn, int widest, int aRound, int plain) {
        if (toeUp) {
            growing(tip, turn, widest, aRound, plain);
        } else {
            narrowing(tip, turn, widest, aRound, plain);
        }
    }

    private void growing(int tip, int turn, int widest, int aRound, int plain) {
        stitches = tip;
        plain(2); // the cast-on itself, and the round on which its stitches are first worked
        while (stitches < turn) {
            shape(aRound);
        }
        plain(turn > tip ? 1 : 0);
        while (stitches < widest) {
            shape(aRound);
            plain(plain);
        }
    }

    private void narrowing(int tip, int turn, int widest, int aRound, int plain) {
        stitches = widest;
        while (stitches > turn) {
            shape(-aRound);
            plain(plain);
        }
        while (stitches > tip) {
            shape(-aRound);
        }
        to(0);
    }

    private void star(int foot, int widest, int sections, int plainMost) {
        if (toeUp) {
            stitches = sections;
            plain(2);
            for (int section = 2; section * sections <= widest; section++) {
                shape(sections);
                plain(Math.min(plainMost, section - 2));
            }
            adjust(foot);
        } else {
            stitches = foot;
            adjust(widest);
            for (int section = widest / sections; section >= 2; section--) {
                shape(-sections);
                plain(Math.min(plainMost, section - 2));
            }
            to(0);
        }
    }

    /**
     * From the foot: by twos while the little toe's line is alone, by fours after; plain beside counts of the turn or more.
     */
    private void asymmetric(int foot) {
        int turn = count(Catalogue.TOE_ALTERNATE_FROM);
        int tip = count(Catalogue.TOE_TIP);
        List<Integer> shaped = new ArrayList<>(List.of(foot));
        while (shaped.getLast() > tip) {
            shaped.add(shaped.getLast() - (shaped.size() <= count(Catalogue.TOE_SECOND_LINE_AFTER) ? 2 : 4));
        }
        if (toeUp) {
            stitches = shaped.removeLast();
            plain(2);
            shaped = shaped.reversed();
        } else {
            shaped.removeFirst();
        }
        for (int after : shaped) {
            to(after);
            plain(after >= turn ? 1 : 0);
        }
        if (!toeUp) {
            to(0);
        }
    }

    /** Rows out and back over all stitches; a yarn-over a turn lies on the needle until the way back takes it up. */
    private void cup(TurnMethod turn, int eachSide) {
        int turns = 2 * eachSide;
        switch (turn) {
            case WRAPPED, TWIN -> plain(2 * turns);
            // the way out begins with a whole row; the last double stitch is closed after
            case GERMAN -> plain(2 * turns + 1 + 1);
            case YARN_OVER -> {
                int without = stitches;
                for (int row = 1; row <= turns; row++) {
                    to(without + row - 1);
                }
                for (int row = 1; row <= turns; row++) {
                    to(without + turns - 1 - Math.max(0, row - 2));
                }
                to(without);
            }
        }
    }

    private void foot() {
        int rounds = count(Catalogue.FOOT_ROUNDS);
        int foot = count(Catalogue.FOOT_STITCHES);
        stitches = foot;
        if (!(design.heel() instanceof FlapHeel)) {
            plain(rounds);
        } else if (toeUp) {
            int pairs = count(Catalogue.HEEL_GUSSET_INCREASES);
            plain(rounds - 2 * pairs);
            for (int pair = 0; pair < pairs; pair++) {
                shape(2);
                plain(1);
            }
        } else {
            stitches = count(Catalogue.HEEL_AFTER_PICK_UP);
            while (stitches > foot) {
                shape(-2);
                plain(1);
            }
            plain(rounds - counts.size());
        }
    }

    private void heel() {
        stitches = count(Catalogue.HEEL_STITCHES);
        switch (design.heel()) {
            case ShortRowHeel heel -> {
                cup(heel.turn(), count(Catalogue.HEEL_EACH_SIDE));
                int corner = count(Catalogue.HEEL_CORNER);
                if (corner > 0) {
                    shape(2 * corner);
                    shape(-2 * corner);
                }
            }
            case FlapHeel heel -> flap();
            case AfterthoughtHeel heel -> {
                int picked = count(Catalogue.HEEL_PICK_UP);
                to(picked);
                int tip = count(Catalogue.HEEL_TIP);
                int turn = count(Catalogue.HEEL_ALTERNATE_FROM);
                switch (heel.cap()) {
                    case WEDGE -> narrowing(tip, turn, picked, 4, 1);
                    case ROUND -> narrowing(tip, turn, picked, count(Catalogue.HEEL_POINTS),
                            count(Catalogue.HEEL_PLAIN_BETWEEN));
                }
            }
        }
    }

    private void flap() {
        if (toeUp) {
            stitches += 2 * count(Catalogue.HEEL_GUSSET_INCREASES);
            plain(count(Catalogue.HEEL_TURN_ROWS));
        } else {
            plain(count(Catalogue.HEEL_FLAP_ROWS));
        }
        for (int row = 0; row < count(toeUp ? Catalogue.HEEL_FLAP_ROWS : Catalogue.HEEL_TURN_ROWS); row++) {
            shape(-1);
        }
        if (!toeUp) {
            to(count(Catalogue.HEEL_AFTER_PICK_UP));
        }
    }

    private void leg() {
        int ankle = count(Catalogue.LEG_STITCHES);
        int rounds = count(Catalogue.LEG_ROUNDS);
        int below = belowLeg(design, size);
        stitches = toeUp ? below : legTop(design.leg());
        if (toeUp) {
            adjust(ankle);
        }
        switch (design.leg()) {
            case StraightLeg leg -> plain(rounds);
            case CalfLeg leg -> calf(rounds);
        }
        if (!toeUp) {
            adjust(below);
        }
    }

    /** Up to the calf and, above it, down to the knee; cuff-down the same rounds are met from the top. */
    private void calf(int rounds) {
        int ankle = count(Catalogue.LEG_STITCHES);
        List<Integer> upwards = new ArrayList<>();
        for (int gap : gaps(count(Catalogue.LEG_INCREASES), Catalogue.LEG_INCREASE_OVER)) {
            int now = upwards.isEmpty() ? ankle : upwards.getLast();
            upwards.addAll(Collections.nCopies(gap - 1, now));
            upwards.add(now + 2);
        }
        List<Integer> above = new ArrayList<>();
        int calf = upwards.isEmpty() ? ankle : upwards.getLast();
        for (int gap : gaps(count(Catalogue.LEG_DECREASES), Catalogue.LEG_DECREASE_OVER)) {
            int now = above.isEmpty() ? calf : above.getLast();
            above.addAll(Collections.nCopies(gap - 1, now));
            above.add(now - 2);
        }
        upwards.addAll(Collections.nCopies(rounds - upwards.size() - above.size(), calf));
        upwards.addAll(above);
        if (toeUp) {
            upwards.forEach(this::to);
        } else {
            // after a round cuff-down there are as many stitches as there were before it toe-up
            for (int round = rounds - 1; round >= 0; round--) {
                to(round == 0 ? ankle : upwards.get(round - 1));
            }
        }
    }

    /** Every (q + 1)th round r times, then every q-th round; the wider gaps are the lower ones. */
    private List<Integer> gaps(int pairs, Parameter over) {
        List<Integer> gaps = new ArrayList<>();
        for (int pair = 0; pair < pairs; pair++) {
            gaps.add(count(over) / pairs + (pair < count(over) % pairs ? 1 : 0));
        }
        return gaps;
    }

    /** Stitches where leg and heel meet: a flap cuff-down is worked on the leg's own count. */
    static int belowLeg(Design design, GradedSize size) {
        boolean flapFirst = design.heel() instanceof FlapHeel && design.direction() == Direction.CUFF_DOWN;
        return count(size, flapFirst ? Catalogue.LEG_STITCHES : Catalogue.FOOT_STITCHES);
    }

    private int legTop(Leg leg) {
        return switch (leg) {
            case StraightLeg straight -> count(Catalogue.LEG_STITCHES);
            case CalfLeg calf -> count(Catalogue.LEG_TOP);
        };
    }

    private void cuff() {
        int top = legTop(design.leg());
        int cuff = count(Catalogue.CUFF_STITCHES);
        if (toeUp) {
            stitches = top;
            adjust(cuff);
        } else {
            to(cuff);
        }
        plain(numberedRoundsOfCuff(design, size));
        if (toeUp) {
            to(0);
        } else {
            adjust(top);
        }
    }

    /** A hem is its height twice and the round of its fold; cuff-down one more joins it, toe-up it is sewn down. */
    static int numberedRoundsOfCuff(Design design, GradedSize size) {
        int height = count(size, Catalogue.CUFF_ROUNDS);
        return switch (design.cuff()) {
            case RibCuff rib -> height;
            case RolledCuff rolled -> height;
            case HemCuff hem -> 2 * height + 1 + (design.direction() == Direction.TOE_UP ? 0 : 1);
        };
    }

    private void shape(int more) {
        to(stitches + more);
    }

    /** A round that is there only where the count changes. */
    private void adjust(int after) {
        if (after != stitches) {
            to(after);
        }
    }

    private void to(int after) {
        stitches = after;
        counts.add(stitches);
    }

    private void plain(int rounds) {
        for (int i = 0; i < rounds; i++) {
            counts.add(stitches);
        }
    }

    private int count(Parameter parameter) {
        return count(size, parameter);
    }

    static int count(GradedSize size, Parameter parameter) {
        double value = size.value(parameter);
        if (value != Math.rint(value)) {
            throw new AssertionError("%s is %s".formatted(parameter.key(), value));
        }
        return (int) value;
    }
}
