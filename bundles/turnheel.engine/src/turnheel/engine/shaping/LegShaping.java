package turnheel.engine.shaping;

import static turnheel.engine.shaping.Needle.steps;
import static turnheel.engine.shaping.Needle.work;
import static turnheel.engine.stitch.Stitch.KNIT;
import static turnheel.engine.stitch.Stitch.KNIT_TWO_TOGETHER;
import static turnheel.engine.stitch.Stitch.MAKE_ONE_LEFT;
import static turnheel.engine.stitch.Stitch.MAKE_ONE_RIGHT;
import static turnheel.engine.stitch.Stitch.SLIP_SLIP_KNIT;

import java.util.List;
import java.util.stream.IntStream;

import turnheel.engine.design.CalfLeg;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Leg;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.grading.GradedSize;

/** Legs, round by round, from the centre back: domain § 6. */
final class LegShaping {

    private final Whole whole;
    private final boolean toeUp;

    LegShaping(GradedSize size, boolean toeUp) {
        this.whole = new Whole(size);
        this.toeUp = toeUp;
    }

    /** @param below stitches where the leg meets what lies below it: heel or foot */
    List<Round> rounds(Leg leg, int below) {
        int ankle = whole.count(Catalogue.LEG_STITCHES);
        int rounds = whole.count(Catalogue.LEG_ROUNDS);
        int top = switch (leg) {
            case StraightLeg straight -> ankle;
            case CalfLeg calf -> whole.count(Catalogue.LEG_TOP);
        };
        Needle needle = new Needle(toeUp ? below : top);
        if (toeUp) {
            EvenSpread.adjust(needle, ankle);
        }
        switch (leg) {
            case StraightLeg straight -> needle.plain(rounds);
            case CalfLeg calf -> calf(needle, rounds);
        }
        if (!toeUp) {
            EvenSpread.adjust(needle, below);
        }
        return needle.rounds();
    }

    /** From ankle to calf and from calf to cuff, even rounds between them; cuff-down it is knitted backwards. */
    private void calf(Needle needle, int rounds) {
        int increases = whole.count(Catalogue.LEG_INCREASES);
        int decreases = whole.count(Catalogue.LEG_DECREASES);
        List<Integer> below = gaps(increases, Catalogue.LEG_INCREASE_OVER);
        List<Integer> above = gaps(decreases, Catalogue.LEG_DECREASE_OVER);
        int even = rounds - sum(below) - sum(above);
        if (even < 0) {
            throw new Whole.NotKnittable();
        }
        if (toeUp) {
            below.forEach(gap -> shaped(needle, gap, true));
            needle.plain(even);
            above.forEach(gap -> shaped(needle, gap, false));
        } else {
            above.reversed().forEach(gap -> shaped(needle, gap, true));
            needle.plain(even);
            below.reversed().forEach(gap -> shaped(needle, gap, false));
        }
    }

    /** Rounds from one pair to the next, spread evenly: by counting, the wider gaps come first on the way up. */
    private List<Integer> gaps(int pairs, Parameter over) {
        if (pairs == 0) {
            return List.of();
        }
        int rounds = whole.count(over);
        if (pairs > rounds) {
            throw new Whole.NotKnittable();
        }
        int wider = rounds % pairs;
        return IntStream.range(0, pairs).mapToObj(pair -> rounds / pairs + (pair < wider ? 1 : 0)).toList();
    }

    private static int sum(List<Integer> gaps) {
        return gaps.stream().mapToInt(Integer::intValue).sum();
    }

    /** A pair at the centre back, above its even rounds; what is knitted first lies below only toe-up. */
    private void shaped(Needle needle, int gap, boolean widen) {
        if (toeUp) {
            needle.plain(gap - 1);
        }
        if (widen) {
            needle.round(RoundKind.INCREASE, steps(work(KNIT), work(MAKE_ONE_RIGHT), work(KNIT, needle.stitches() - 2),
                    work(MAKE_ONE_LEFT), work(KNIT)));
        } else {
            needle.round(RoundKind.DECREASE, steps(work(KNIT), work(SLIP_SLIP_KNIT), work(KNIT, needle.stitches() - 6),
                    work(KNIT_TWO_TOGETHER), work(KNIT)));
        }
        if (!toeUp) {
            needle.plain(gap - 1);
        }
    }
}
