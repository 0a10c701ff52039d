package turnheel.engine.writing;

import static turnheel.engine.instruction.Line.Side.RIGHT;
import static turnheel.engine.instruction.Line.Side.WRONG;
import static turnheel.engine.stitch.Stitch.KNIT;
import static turnheel.engine.stitch.Stitch.KNIT_TWO_TOGETHER;
import static turnheel.engine.stitch.Stitch.KNIT_WITH_WRAPS;
import static turnheel.engine.stitch.Stitch.MAKE_ONE_LEFT;
import static turnheel.engine.stitch.Stitch.MAKE_ONE_RIGHT;
import static turnheel.engine.stitch.Stitch.PURL;
import static turnheel.engine.stitch.Stitch.PURL_TWO_TOGETHER;
import static turnheel.engine.stitch.Stitch.PURL_TWO_TOGETHER_WITH_WRAPS;
import static turnheel.engine.stitch.Stitch.PURL_WITH_WRAPS;
import static turnheel.engine.stitch.Stitch.SLIP;
import static turnheel.engine.stitch.Stitch.SLIP_SLIP_KNIT;
import static turnheel.engine.stitch.Stitch.SLIP_SLIP_KNIT_WITH_WRAPS;
import static turnheel.engine.stitch.Stitch.TURN;
import static turnheel.engine.stitch.Stitch.WRAP_AND_TURN;
import static turnheel.engine.writing.Doing.counted;
import static turnheel.engine.writing.Doing.slipMarker;
import static turnheel.engine.writing.Doing.toEnd;
import static turnheel.engine.writing.Doing.toGap;
import static turnheel.engine.writing.Doing.toMarker;
import static turnheel.engine.writing.Doing.toTurned;
import static turnheel.engine.writing.Doing.work;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.FlapEdge;
import turnheel.engine.design.FlapFabric;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.HeelTurn;
import turnheel.engine.instruction.Instruction;
import turnheel.engine.instruction.Line.Fabric;
import turnheel.engine.instruction.Until.Mark;

/** Flap, turn and gusset, in both directions: domain § 5. */
final class FlapWriting {

    private static final int PAIR = 2;

    private final Counts counts;
    private final Names names;
    private final EachSize heel;

    FlapWriting(Counts counts, Names names) {
        this.counts = counts;
        this.names = names;
        this.heel = counts.of(Catalogue.HEEL_STITCHES);
    }

    /** Cuff-down, from where the heel begins. */
    void flap(Passage passage, FlapHeel kind) {
        HeelWriting.workFlat(passage, heel.times(0), heel);
        new FlapRowsWriting(kind.fabric(), kind.edge(), heel).rows(passage, counts.of(Catalogue.HEEL_FLAP_ROWS));
    }

    /** Cuff-down, on the flap's stitches. */
    Passage turn(Passage passage, HeelTurn turn) {
        switch (turn) {
            case ROUND -> roundTurn(passage);
            case SQUARE -> squareTurn(passage);
        }
        return passage;
    }

    /** Where an odd stitch is left on each side, the last pair of rows ends with the join. */
    private void roundTurn(Passage passage) {
        EachSize offset = counts.of(Catalogue.HEEL_TURN_OFFSET);
        EachSize half = heel.half();
        EachSize odd = heel.map(stitches -> stitches % 2);
        EachSize beyond = half.minus(offset).minus(3);
        passage.row(RIGHT, -1, work(KNIT, half.plus(odd).plus(offset)), work(SLIP_SLIP_KNIT), work(KNIT), work(TURN));
        passage.row(WRONG, -1, work(SLIP), work(PURL, offset.times(2).plus(odd).plus(1)), work(PURL_TWO_TOGETHER),
                work(PURL), work(TURN));
        Passage more = passage.only(beyond.atLeast(2));
        int next = more.row(RIGHT, -1, work(SLIP), toGap(KNIT, 1), work(SLIP_SLIP_KNIT), work(KNIT), work(TURN));
        more.row(WRONG, -1, work(SLIP), toGap(PURL, 1), work(PURL_TWO_TOGETHER), work(PURL), work(TURN));
        more.again(Fabric.ROW, next, next + 1, beyond.half().minus(1), -PAIR);
        Passage last = passage.only(beyond.where(left -> left % 2 == 1));
        last.row(RIGHT, -1, work(SLIP), toGap(KNIT, 1), work(SLIP_SLIP_KNIT), work(TURN));
        last.row(WRONG, -1, work(SLIP), toGap(PURL, 1), work(PURL_TWO_TOGETHER), work(TURN));
    }

    private void squareTurn(Passage passage) {
        EachSize centre = counts.of(Catalogue.HEEL_CENTRE);
        EachSize side = heel.minus(centre).half();
        EachSize between = centre.minus(2);
        passage.row(RIGHT, -1, work(KNIT, side.plus(centre).minus(1)), work(SLIP_SLIP_KNIT), work(TURN));
        passage.row(WRONG, -1, work(SLIP), work(PURL, between), work(PURL_TWO_TOGETHER), work(TURN));
        Passage more = passage.only(side.atLeast(2));
        int next = more.row(RIGHT, -1, work(SLIP), work(KNIT, between), work(SLIP_SLIP_KNIT), work(TURN));
        more.row(WRONG, -1, work(SLIP), work(PURL, between), work(PURL_TWO_TOGETHER), work(TURN));
        more.again(Fabric.ROW, next, next + 1, side.minus(2), -PAIR);
    }

    /**
     * Cuff-down, from the turn on: picks up along the flap and narrows the gusset; the round begins at the centre
     * back.
     */
    Passage gusset(Passage passage) {
        EachSize left = counts.of(Catalogue.HEEL_AFTER_TURN);
        EachSize instep = counts.of(Catalogue.LEG_STITCHES).minus(heel);
        EachSize pickUp = counts.of(Catalogue.HEEL_PICK_UP);
        Doing along = counted(pickUp, count -> new Instruction.PickUp(count, Instruction.Edge.FLAP));
        Doing marker = Doing.of(new Instruction.Marker(Instruction.MarkerAction.PLACE));
        passage.named(names.pickUp(), pickUp.times(2).plus(instep), work(KNIT, left), along, marker,
                counted(instep, count -> new Instruction.WorkHeld(KNIT, count)), marker, along);
        passage.between(work(KNIT, left.half()), Doing.startHere());
        EachSize pairs = counts.of(Catalogue.HEEL_GUSSET_DECREASES);
        Passage some = passage.only(pairs.atLeast(1));
        int shaped = some.round(-PAIR, toMarker(KNIT, 3), work(KNIT_TWO_TOGETHER), work(KNIT), slipMarker(),
                toMarker(KNIT, 0), slipMarker(), work(KNIT), work(SLIP_SLIP_KNIT), toEnd(KNIT));
        int plain = some.round(0, toEnd(KNIT));
        some.again(Fabric.ROUND, shaped, plain, pairs.minus(1), -PAIR);
        return passage;
    }

    /** Rounds that the gusset takes of the foot. */
    EachSize gussetRounds(boolean toeUp) {
        return counts.of(toeUp ? Catalogue.HEEL_GUSSET_INCREASES : Catalogue.HEEL_GUSSET_DECREASES).times(2);
    }

    /** Toe-up, the last rounds of the foot, instep first. */
    Passage widen(Passage passage) {
        EachSize pairs = counts.of(Catalogue.HEEL_GUSSET_INCREASES);
        int shaped = passage.round(PAIR, work(KNIT, instep()), work(MAKE_ONE_RIGHT), toEnd(KNIT), work(MAKE_ONE_LEFT));
        int plain = passage.round(0, toEnd(KNIT));
        passage.again(Fabric.ROUND, shaped, plain, pairs.minus(1), PAIR);
        return passage;
    }

    /** Toe-up, the stitches that are not the heel's. */
    EachSize instep() {
        return counts.of(Catalogue.FOOT_STITCHES).minus(heel);
    }

    /** Toe-up: short rows out to the centre. */
    Passage shortRowTurn(Passage passage) {
        EachSize pairs = counts.of(Catalogue.HEEL_GUSSET_INCREASES);
        EachSize eachSide = counts.of(Catalogue.HEEL_EACH_SIDE);
        HeelWriting.workFlat(passage, instep(), heel.plus(pairs.times(2)));
        passage.row(RIGHT, 0, work(KNIT, pairs.plus(heel).minus(1)), work(WRAP_AND_TURN));
        passage.row(WRONG, 0, work(PURL, heel.minus(2)), work(WRAP_AND_TURN));
        Passage more = passage.only(eachSide.atLeast(2));
        int next = more.row(RIGHT, 0, toGap(KNIT, 1), work(WRAP_AND_TURN));
        more.row(WRONG, 0, toGap(PURL, 1), work(WRAP_AND_TURN));
        more.again(Fabric.ROW, next, next + 1, eachSide.minus(2), 0);
        return passage;
    }

    /**
     * Toe-up: the flap takes the gusset in, in its first two rows the wraps; afterwards the round begins behind the
     * heel.
     */
    Passage joiningFlap(Passage passage, FlapFabric fabric) {
        EachSize pairs = counts.of(Catalogue.HEEL_GUSSET_INCREASES);
        EachSize wraps = counts.of(Catalogue.HEEL_EACH_SIDE).minus(1);
        passage.row(RIGHT, -1, toTurned(KNIT, Mark.WRAPPED), work(KNIT_WITH_WRAPS, wraps),
                work(SLIP_SLIP_KNIT_WITH_WRAPS), work(TURN));
        passage.row(WRONG, -1, work(SLIP), toTurned(PURL, Mark.WRAPPED), work(PURL_WITH_WRAPS, wraps),
                work(PURL_TWO_TOGETHER_WITH_WRAPS), work(TURN));
        new FlapRowsWriting(fabric, FlapEdge.SLIPPED, heel).joiningRows(passage, pairs);
        passage.between(instep(), work(KNIT, heel), Doing.of(new Instruction.JoinInRound()));
        return passage;
    }
}
