package turnheel.engine.writing;

import static turnheel.engine.stitch.Stitch.KNIT;
import static turnheel.engine.stitch.Stitch.KNIT_TWO_TOGETHER;
import static turnheel.engine.stitch.Stitch.MAKE_ONE_LEFT;
import static turnheel.engine.stitch.Stitch.MAKE_ONE_RIGHT;
import static turnheel.engine.stitch.Stitch.SLIP_SLIP_KNIT;
import static turnheel.engine.writing.Doing.toLast;
import static turnheel.engine.writing.Doing.work;

import turnheel.engine.design.CalfLeg;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Leg;
import turnheel.engine.design.LengthMode;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Part;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.instruction.Line;

/** Legs in both directions: domain § 6. */
final class LegWriting {

    private static final int PAIR = 2;

    private final Counts counts;
    private final Names names;
    private final boolean toeUp;
    private final LengthMode mode;
    private final boolean patterned;

    /** @param patterned whether the leg is worked in a stitch pattern */
    LegWriting(Counts counts, Names names, boolean toeUp, LengthMode mode, boolean patterned) {
        this.counts = counts;
        this.names = names;
        this.toeUp = toeUp;
        this.mode = mode;
        this.patterned = patterned;
    }

    /** @param toBack toe-up, from the start of the round to the centre back */
    Passage leg(Passage passage, Leg leg, EachSize toBack) {
        EachSize spread = toeUp ? counts.spread(passage, Part.LEG, names) : counts.all(0);
        EachSize rounds = counts.of(Catalogue.LEG_ROUNDS);
        switch (leg) {
            case StraightLeg straight -> straight(passage, rounds, spread);
            case CalfLeg calf -> calf(passage, rounds, toBack);
        }
        if (!toeUp) {
            counts.spread(passage, Part.LEG, names);
        }
        return passage;
    }

    /** @param before rounds of the leg that are worked by now: they are measured too */
    private void straight(Passage passage, EachSize rounds, EachSize before) {
        passage.even(new Stretch(mode, rounds, toeUp ? Line.MeasuredPart.LEG : Line.MeasuredPart.LEG_FROM_CUFF,
                counts.less(counts.millimetres(Catalogue.LEG_MEASURE), before.times(-1))), patterned);
    }

    /**
     * From ankle to calf and from calf to cuff, even rounds between; cuff-down it is knitted backwards. Always by
     * rounds:
     * no pair may depend on how many of them a knitter's measure takes.
     */
    private void calf(Passage passage, EachSize rounds, EachSize toBack) {
        EachSize increases = counts.of(Catalogue.LEG_INCREASES);
        EachSize decreases = counts.of(Catalogue.LEG_DECREASES);
        EachSize below = over(increases, Catalogue.LEG_INCREASE_OVER);
        EachSize above = over(decreases, Catalogue.LEG_DECREASE_OVER);
        EachSize even = rounds.minus(below).minus(above);
        if (toeUp) {
            passage.only(increases.plus(decreases).atLeast(1)).between(work(KNIT, toBack), Doing.startHere());
            spread(passage, increases, below, true);
            passage.even(even, patterned);
            spread(passage, decreases, above, false);
        } else {
            spread(passage, decreases, above, true);
            passage.even(even, patterned);
            spread(passage, increases, below, false);
        }
    }

    /** Rounds that pairs are spread over; none where there are no pairs. */
    private EachSize over(EachSize pairs, Parameter rounds) {
        EachSize none = pairs.map(count -> 0);
        return counts.of(rounds).orElse(none).with(pairs, (all, count) -> count == 0 ? 0 : all);
    }

    /** Pairs spread evenly: on the way up the wider gaps come first, and each pair after its even rounds. */
    private void spread(Passage passage, EachSize pairs, EachSize over, boolean widen) {
        EachSize gap = over.with(pairs, (all, count) -> count == 0 ? 0 : all / count);
        EachSize wider = over.with(pairs, (all, count) -> count == 0 ? 0 : all % count);
        if (toeUp) {
            pairs(passage, wider, gap.plus(1), widen);
            pairs(passage, pairs.minus(wider), gap, widen);
        } else {
            pairs(passage, pairs.minus(wider), gap, widen);
            pairs(passage, wider, gap.plus(1), widen);
        }
    }

    private void pairs(Passage passage, EachSize times, EachSize gap, boolean widen) {
        Passage some = passage.only(times.atLeast(1));
        if (toeUp) {
            some.even(gap.minus(1), patterned);
        }
        if (widen) {
            some.named(names.increase(), PAIR, work(KNIT), work(MAKE_ONE_RIGHT), toLast(KNIT, counts.all(1)),
                    work(MAKE_ONE_LEFT), work(KNIT));
        } else {
            some.named(names.decrease(), -PAIR, work(KNIT), work(SLIP_SLIP_KNIT), toLast(KNIT, counts.all(3)),
                    work(KNIT_TWO_TOGETHER), work(KNIT));
        }
        if (!toeUp) {
            some.even(gap.minus(1), patterned);
        }
        some.againLast(gap, times.minus(1), counts.all(widen ? PAIR : -PAIR));
    }
}
