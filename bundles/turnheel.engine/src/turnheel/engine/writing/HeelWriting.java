package turnheel.engine.writing;

import static turnheel.engine.stitch.Stitch.KNIT;
import static turnheel.engine.stitch.Stitch.KNIT_DOUBLE;
import static turnheel.engine.stitch.Stitch.KNIT_TWO_TOGETHER;
import static turnheel.engine.stitch.Stitch.SLIP_SLIP_KNIT;
import static turnheel.engine.writing.Doing.counted;
import static turnheel.engine.writing.Doing.toLast;
import static turnheel.engine.writing.Doing.work;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Increase;
import turnheel.engine.design.TurnMethod;
import turnheel.engine.instruction.Instruction;

/** Short-row and afterthought heels, in both directions: domain § 5. Flaps are in {@link FlapWriting}. */
final class HeelWriting {

    private final Counts counts;
    private final Names names;
    private final EachSize heel;

    HeelWriting(Counts counts, Names names) {
        this.counts = counts;
        this.names = names;
        this.heel = counts.of(Catalogue.HEEL_STITCHES);
    }

    /** Toe-up, stitches from the start of the round, which lies at the side, to a heel in the middle of the sole. */
    EachSize fromSide() {
        EachSize around = counts.of(Catalogue.FOOT_STITCHES);
        EachSize instep = counts.of(Catalogue.FOOT_INSTEP);
        EachSize before = instep.plus(around.minus(instep).minus(heel).half());
        return before.with(around.minus(heel), (centred, rest) -> Math.max(0, Math.min(centred, rest)));
    }

    /** Works on to where the heel begins, cuff-down from the centre back; there the round begins from now on. */
    void toHeelFromBack(Passage passage) {
        passage.between(toLast(KNIT, heel.half()), Doing.startHere());
    }

    /** Goes over to rows on the next stitches. */
    static void workFlat(Passage passage, EachSize before, EachSize on) {
        EachSize others = passage.stitches().minus(on);
        Doing flat = sizes -> on.told(sizes).map(count -> new Instruction.WorkOnlyOn(count,
                others.ifAny().told(sizes)));
        passage.between(work(KNIT, before), flat);
        passage.count(others.times(-1));
    }

    /** A cup; afterwards the round begins behind the heel, with what was held. */
    Passage shortRow(Passage passage, EachSize before, TurnMethod turn) {
        EachSize held = passage.stitches().minus(heel);
        EachSize corner = counts.of(Catalogue.HEEL_CORNER);
        EachSize gained = held.plus(corner.times(2));
        workFlat(passage, before, heel);
        new ShortRowWriting(turn, counts.of(Catalogue.HEEL_EACH_SIDE)).rows(passage);
        Doing pickUp = counted(corner, count -> new Instruction.PickUp(count, Instruction.Edge.CORNER));
        Doing join = Doing.of(new Instruction.JoinInRound());
        switch (turn) {
            case WRAPPED, TWIN -> passage.between(gained, pickUp, work(KNIT, heel), pickUp, join);
            case YARN_OVER -> passage.between(gained.minus(1), pickUp, work(KNIT, heel.minus(1)),
                    work(KNIT_TWO_TOGETHER), pickUp, join);
            case GERMAN -> {
                passage.between(held, join);
                passage.named(names.next(), corner.times(2), work(KNIT, held), pickUp, work(KNIT_DOUBLE),
                        work(KNIT, heel.minus(1)), pickUp);
            }
        }
        passage.only(corner.atLeast(1)).named(names.next(), corner.times(-2), work(KNIT, held),
                work(SLIP_SLIP_KNIT, corner), work(KNIT, heel.minus(corner.times(2))), work(KNIT_TWO_TOGETHER, corner));
        return passage;
    }

    /** The round that leaves an opening for a heel to come. */
    void opening(Passage passage, EachSize before) {
        passage.named(names.opening(), 0, work(KNIT, before), counted(heel, Instruction.WasteYarn::new),
                Doing.toEnd(KNIT));
    }

    /** The heel that is knitted into the opening. */
    Passage afterthought(AfterthoughtHeel kind) {
        Passage passage = new Passage(heel.times(0));
        EachSize around = counts.of(Catalogue.HEEL_PICK_UP);
        EachSize sections = switch (kind.cap()) {
            case WEDGE -> counts.all(2);
            case ROUND -> counts.of(Catalogue.HEEL_POINTS);
        };
        passage.begin(around, Doing.of(new Instruction.TakeOut(Instruction.Thread.WASTE_YARN)),
                counted(around, count -> new Instruction.PickUp(count, Instruction.Edge.OPENING)),
                Doing.of(new Instruction.JoinInRound()), ToeWriting.markers(around, sections));
        EachSize everyRound = counts.of(Catalogue.HEEL_EVERY_ROUND);
        EachSize alternate = counts.of(Catalogue.HEEL_ALTERNATE);
        switch (kind.cap()) {
            case WEDGE -> {
                new WedgeWriting(Increase.MAKE_ONE, everyRound, alternate, names).narrow(passage);
                WedgeWriting.closeTip(passage);
            }
            case ROUND -> {
                new RoundTaperWriting(new SectionsWriting(Increase.MAKE_ONE, kind.lean(), sections), everyRound,
                        alternate,
                        counts.of(Catalogue.HEEL_PLAIN_BETWEEN), names).narrow(passage);
                RoundTaperWriting.close(passage);
            }
        }
        return passage;
    }
}
