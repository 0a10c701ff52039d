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
import turnheel.engine.design.Part;
import turnheel.engine.design.StraightLeg;

/** Legs in both directions: domain § 6. */
final class LegWriting {

    private static final int PAIR = 2;

    private final Counts counts;
    private final Names names;
    private final boolean toeUp;
    private final boolean patterned;

    /** @param patterned whether the leg is worked in a stitch pattern */
    LegWriting(Counts counts, Names names, boolean toeUp, boolean patterned) {
        this.counts = counts;
        this.names = names;
        this.toeUp = toeUp;
        this.patterned = patterned;
    }

    /** @param toBack toe-up, from the start of the round to the centre back */
    Passage leg(Passage passage, Leg leg, EachSize toBack) {
        if (toeUp) {
            counts.spread(passage, Part.LEG, names);
        }
        EachSize rounds = counts.of(Catalogue.LEG_ROUNDS);
        switch (leg) {
            case StraightLeg straight -> passage.even(rounds, patterned);
            case CalfLeg calf -> calf(passage, rounds, toBack);
        }
        if (!toeUp) {
            counts.spread(passage, Part.LEG, names);
        }
        return passage;
    }

    /** Pairs spread evenly, the wider gaps next to the ankle, beside the centre back. */
    private void calf(Passage passage, EachSize rounds, EachSize toBack) {
        EachSize pairs = counts.of(Catalogue.LEG_INCREASES);
        EachSize over = counts.of(Catalogue.LEG_INCREASE_OVER);
        passage.only(pairs.where(count -> count == 0)).even(rounds, patterned);
        Passage shaped = passage.only(pairs.atLeast(1));
        EachSize rest = rounds.minus(over);
        EachSize gap = over.with(pairs, (all, count) -> count == 0 ? 0 : all / count);
        EachSize wider = over.with(pairs, (all, count) -> count == 0 ? 0 : all % count);
        if (toeUp) {
            shaped.between(work(KNIT, toBack), Doing.startHere());
            widen(shaped, gap.plus(1), wider);
            widen(shaped, gap, pairs.minus(wider));
            shaped.even(rest, patterned);
        } else {
            shaped.even(rest, patterned);
            narrow(shaped, gap, pairs.minus(wider));
            narrow(shaped, gap.plus(1), wider);
        }
    }

    private void widen(Passage passage, EachSize gap, EachSize times) {
        Passage some = passage.only(times.atLeast(1));
        some.even(gap.minus(1), patterned);
        some.named(names.increase(), PAIR, work(KNIT), work(MAKE_ONE_RIGHT), toLast(KNIT, counts.all(1)),
                work(MAKE_ONE_LEFT), work(KNIT));
        some.againLast(gap, times.minus(1), counts.all(PAIR));
    }

    private void narrow(Passage passage, EachSize gap, EachSize times) {
        Passage some = passage.only(times.atLeast(1));
        some.named(names.decrease(), -PAIR, work(KNIT), work(SLIP_SLIP_KNIT), toLast(KNIT, counts.all(3)),
                work(KNIT_TWO_TOGETHER), work(KNIT));
        some.even(gap.minus(1), patterned);
        some.againLast(gap, times.minus(1), counts.all(-PAIR));
    }
}
