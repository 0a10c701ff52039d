package turnheel.engine.shaping;

import static turnheel.engine.shaping.Needle.steps;
import static turnheel.engine.shaping.Needle.work;
import static turnheel.engine.stitch.Stitch.KNIT;
import static turnheel.engine.stitch.Stitch.KNIT_TWO_TOGETHER;
import static turnheel.engine.stitch.Stitch.MAKE_ONE_LEFT;
import static turnheel.engine.stitch.Stitch.MAKE_ONE_RIGHT;
import static turnheel.engine.stitch.Stitch.SLIP_SLIP_KNIT;

import java.util.List;

import turnheel.engine.design.CalfLeg;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Leg;
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

    /** Pairs spread evenly: the wider gaps next to the ankle, by counting. */
    private void calf(Needle needle, int rounds) {
        int pairs = whole.count(Catalogue.LEG_INCREASES);
        int over = whole.count(Catalogue.LEG_INCREASE_OVER);
        if (pairs == 0) {
            needle.plain(rounds);
            return;
        }
        if (pairs > over || over > rounds) {
            throw new Whole.NotKnittable();
        }
        if (!toeUp) {
            needle.plain(rounds - over);
        }
        int gap = over / pairs;
        int wider = over % pairs;
        for (int pair = 0; pair < pairs; pair++) {
            if (toeUp) {
                needle.plain(gap - 1 + (pair < wider ? 1 : 0));
                needle.round(RoundKind.INCREASE, steps(work(KNIT), work(MAKE_ONE_RIGHT),
                        work(KNIT, needle.stitches() - 2), work(MAKE_ONE_LEFT), work(KNIT)));
            } else {
                needle.round(RoundKind.DECREASE, steps(work(KNIT), work(SLIP_SLIP_KNIT),
                        work(KNIT, needle.stitches() - 6), work(KNIT_TWO_TOGETHER), work(KNIT)));
                needle.plain(gap - 1 + (pair >= pairs - wider ? 1 : 0));
            }
        }
        if (toeUp) {
            needle.plain(rounds - over);
        }
    }
}
