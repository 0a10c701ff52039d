package turnheel.engine.writing;

import static turnheel.engine.instruction.Line.Side.RIGHT;
import static turnheel.engine.instruction.Line.Side.WRONG;
import static turnheel.engine.stitch.Stitch.DOUBLE_STITCH;
import static turnheel.engine.stitch.Stitch.KNIT;
import static turnheel.engine.stitch.Stitch.KNIT_DOUBLE;
import static turnheel.engine.stitch.Stitch.KNIT_THREE_TOGETHER;
import static turnheel.engine.stitch.Stitch.KNIT_TWIN;
import static turnheel.engine.stitch.Stitch.KNIT_TWO_TOGETHER;
import static turnheel.engine.stitch.Stitch.KNIT_WITH_WRAPS;
import static turnheel.engine.stitch.Stitch.PURL;
import static turnheel.engine.stitch.Stitch.PURL_DOUBLE;
import static turnheel.engine.stitch.Stitch.PURL_THREE_TOGETHER;
import static turnheel.engine.stitch.Stitch.PURL_TWIN;
import static turnheel.engine.stitch.Stitch.PURL_TWO_TOGETHER;
import static turnheel.engine.stitch.Stitch.PURL_WITH_WRAPS;
import static turnheel.engine.stitch.Stitch.TURN;
import static turnheel.engine.stitch.Stitch.TWIN_AND_TURN;
import static turnheel.engine.stitch.Stitch.WRAP_AND_TURN;
import static turnheel.engine.stitch.Stitch.YARN_OVER;
import static turnheel.engine.writing.Doing.toEnd;
import static turnheel.engine.writing.Doing.toGap;
import static turnheel.engine.writing.Doing.toLast;
import static turnheel.engine.writing.Doing.toTurned;
import static turnheel.engine.writing.Doing.work;

import turnheel.engine.design.TurnMethod;
import turnheel.engine.instruction.Line.Fabric;
import turnheel.engine.instruction.Until.Mark;
import turnheel.engine.stitch.Stitch;

/** A cup of short rows on what is worked flat: out to the centre and back. */
final class ShortRowWriting {

    private final TurnMethod turn;
    private final EachSize eachSide;
    private final EachSize one;

    /** @param eachSide stitches turned on each side of the centre */
    ShortRowWriting(TurnMethod turn, EachSize eachSide) {
        this.turn = turn;
        this.eachSide = eachSide;
        this.one = eachSide.map(turned -> 1);
    }

    void rows(Passage passage) {
        switch (turn) {
            case WRAPPED -> marked(passage, Mark.WRAPPED, WRAP_AND_TURN, KNIT_WITH_WRAPS, PURL_WITH_WRAPS);
            case TWIN -> marked(passage, Mark.TWIN, TWIN_AND_TURN, KNIT_TWIN, PURL_TWIN);
            case GERMAN -> doubled(passage);
            case YARN_OVER -> yarnOver(passage);
        }
    }

    private void marked(Passage passage, Mark mark, Stitch markAndTurn, Stitch knitMarked, Stitch purlMarked) {
        Passage some = passage.only(eachSide.atLeast(1));
        Passage more = passage.only(eachSide.atLeast(2));
        some.row(RIGHT, 0, toLast(KNIT, one), work(markAndTurn));
        some.row(WRONG, 0, toLast(PURL, one), work(markAndTurn));
        int out = more.row(RIGHT, 0, toGap(KNIT, 1), work(markAndTurn));
        more.row(WRONG, 0, toGap(PURL, 1), work(markAndTurn));
        more.again(Fabric.ROW, out, out + 1, eachSide.minus(2), 0);
        int back = more.row(RIGHT, 0, toTurned(KNIT, mark), work(knitMarked), work(markAndTurn));
        more.row(WRONG, 0, toTurned(PURL, mark), work(purlMarked), work(markAndTurn));
        more.again(Fabric.ROW, back, back + 1, eachSide.minus(2), 0);
        some.row(RIGHT, 0, toTurned(KNIT, mark), work(knitMarked), work(TURN));
        some.row(WRONG, 0, toTurned(PURL, mark), work(purlMarked), work(TURN));
    }

    /**
     * Out, the first row runs to the end, so there is one row more; the last row back ends on the right side,
     * unturned.
     */
    private void doubled(Passage passage) {
        Passage some = passage.only(eachSide.atLeast(1));
        Passage more = passage.only(eachSide.atLeast(2));
        passage.row(RIGHT, 0, toEnd(KNIT), work(TURN));
        some.row(WRONG, 0, work(DOUBLE_STITCH), toEnd(PURL), work(TURN));
        int out = some.row(RIGHT, 0, work(DOUBLE_STITCH), toTurned(KNIT, Mark.DOUBLE), work(TURN));
        more.row(WRONG, 0, work(DOUBLE_STITCH), toTurned(PURL, Mark.DOUBLE), work(TURN));
        more.again(Fabric.ROW, out, out + 1, eachSide.minus(2), 0);
        more.again(Fabric.ROW, out, out, one, 0);
        some.row(WRONG, 0, work(DOUBLE_STITCH), toTurned(PURL, Mark.DOUBLE), work(PURL_DOUBLE), work(TURN));
        int back = more.row(RIGHT, 0, work(DOUBLE_STITCH), toTurned(KNIT, Mark.DOUBLE), work(KNIT_DOUBLE, 2),
                work(TURN));
        more.row(WRONG, 0, work(DOUBLE_STITCH), toTurned(PURL, Mark.DOUBLE), work(PURL_DOUBLE, 2), work(TURN));
        more.again(Fabric.ROW, back, back + 1, eachSide.minus(2), 0);
        some.row(RIGHT, 0, work(DOUBLE_STITCH), toTurned(KNIT, Mark.DOUBLE), work(KNIT_DOUBLE, 2));
    }

    private void yarnOver(Passage passage) {
        Passage some = passage.only(eachSide.atLeast(1));
        Passage more = passage.only(eachSide.atLeast(2));
        some.row(RIGHT, 0, toLast(KNIT, one), work(TURN));
        some.row(WRONG, 0, work(YARN_OVER), toLast(PURL, one), work(TURN));
        int out = more.row(RIGHT, 0, work(YARN_OVER), toGap(KNIT, 1), work(TURN));
        more.row(WRONG, 0, work(YARN_OVER), toGap(PURL, 1), work(TURN));
        more.again(Fabric.ROW, out, out + 1, eachSide.minus(2), 0);
        some.row(RIGHT, 0, work(YARN_OVER), toGap(KNIT, 0), work(KNIT_TWO_TOGETHER), work(TURN));
        some.row(WRONG, 0, work(YARN_OVER), toGap(PURL, 0), work(PURL_TWO_TOGETHER), work(TURN));
        int back = more.row(RIGHT, 0, work(YARN_OVER), toGap(KNIT, 0), work(KNIT_THREE_TOGETHER), work(TURN));
        more.row(WRONG, 0, work(YARN_OVER), toGap(PURL, 0), work(PURL_THREE_TOGETHER), work(TURN));
        more.again(Fabric.ROW, back, back + 1, eachSide.minus(2), 0);
        // one yarn-over is left for the round that follows; nobody counts those on the way
        some.count(one);
    }
}
