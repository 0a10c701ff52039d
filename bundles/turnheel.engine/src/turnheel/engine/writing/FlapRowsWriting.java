package turnheel.engine.writing;

import static turnheel.engine.instruction.Line.Side.RIGHT;
import static turnheel.engine.instruction.Line.Side.WRONG;
import static turnheel.engine.stitch.Stitch.KNIT;
import static turnheel.engine.stitch.Stitch.PURL;
import static turnheel.engine.stitch.Stitch.PURL_TWO_TOGETHER;
import static turnheel.engine.stitch.Stitch.SLIP;
import static turnheel.engine.stitch.Stitch.SLIP_SLIP_KNIT;
import static turnheel.engine.stitch.Stitch.TURN;
import static turnheel.engine.writing.Doing.toEnd;
import static turnheel.engine.writing.Doing.toGap;
import static turnheel.engine.writing.Doing.toLast;
import static turnheel.engine.writing.Doing.work;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;

import turnheel.engine.design.FlapEdge;
import turnheel.engine.design.FlapFabric;
import turnheel.engine.instruction.Line.Fabric;
import turnheel.engine.instruction.Sized;
import turnheel.engine.instruction.Until;

/**
 * Rows of a heel flap in its stitch pattern, between its edges: domain § 5.
 *
 * @param heel stitches of the flap
 */
record FlapRowsWriting(FlapFabric fabric, FlapEdge edge, EachSize heel) {

    /** Stitches of a garter edge. */
    private static final int GARTER = 2;

    /** Cuff-down: even rows, the pattern over two of them, or over four where it is slipped in turn. */
    void rows(Passage passage, EachSize rows) {
        int first = passage.number();
        rightSide(passage, first, false);
        wrongSide(passage, passage.number());
        if (fabric == FlapFabric.SLIPPED_IN_TURN) {
            Passage more = passage.only(rows.atLeast(4));
            rightSide(more, more.number(), true);
            wrongSide(more, more.number());
            more.again(Fabric.ROW, first, first + 3, rows.map(all -> all / 4 - 1), 0);
            more.again(Fabric.ROW, first, first + 1, rows.map(all -> all % 4 / 2), 0);
        } else {
            passage.again(Fabric.ROW, first, first + 1, rows.half().minus(1), 0);
        }
    }

    private void rightSide(Passage passage, int number, boolean second) {
        switch (edge) {
            case SLIPPED -> {
                if (fabric == FlapFabric.PLAIN) {
                    passage.row(number, RIGHT, 0, work(SLIP), toEnd(KNIT), work(TURN));
                } else {
                    inPairs(passage, number, 0, second ? List.of(work(SLIP)) : List.of(), heel.minus(second ? 1 : 0),
                            FlapRowsWriting::last, 0, work(TURN));
                }
            }
            case GARTER -> {
                if (fabric == FlapFabric.PLAIN) {
                    passage.row(number, RIGHT, 0, toEnd(KNIT), work(TURN));
                } else {
                    int before = GARTER + (second ? 1 : 0);
                    inPairs(passage, number, 0, List.of(work(KNIT, before)), heel.minus(before + GARTER),
                            FlapRowsWriting::last, GARTER, work(TURN));
                }
            }
        }
    }

    private void wrongSide(Passage passage, int number) {
        switch (edge) {
            case SLIPPED -> passage.row(number, WRONG, 0, work(SLIP), toEnd(PURL), work(TURN));
            case GARTER -> passage.row(number, WRONG, 0, work(KNIT, GARTER), toLast(PURL, heel.map(all -> GARTER)),
                    work(KNIT, GARTER), work(TURN));
        }
    }

    /** Toe-up: each row takes in a stitch of the gusset, from the third row on; {@code pairs} of rows in all. */
    void joiningRows(Passage passage, EachSize pairs) {
        Passage more = passage.only(pairs.atLeast(2));
        int next = more.number();
        joiningRight(more, next, true);
        joiningWrong(more, more.number());
        if (fabric == FlapFabric.SLIPPED_IN_TURN) {
            Passage four = passage.only(pairs.atLeast(3));
            joiningRight(four, four.number(), false);
            joiningWrong(four, four.number());
            EachSize left = pairs.minus(3);
            four.again(Fabric.ROW, next, next + 3, left.half(), -4);
            four.again(Fabric.ROW, next, next + 1, left.map(count -> Math.floorMod(count, 2)), -2);
        } else {
            more.again(Fabric.ROW, next, next + 1, pairs.minus(2), -2);
        }
    }

    private void joiningRight(Passage passage, int number, boolean second) {
        if (fabric == FlapFabric.PLAIN) {
            passage.row(number, RIGHT, -1, work(SLIP), toGap(KNIT, 1), work(SLIP_SLIP_KNIT), work(TURN));
        } else {
            boolean moved = second && fabric == FlapFabric.SLIPPED_IN_TURN;
            inPairs(passage, number, -1, moved ? List.of(work(SLIP)) : List.of(), heel.minus(moved ? 2 : 1),
                    before -> new Until.Gap(Sized.all(before + 1)), 0, work(SLIP_SLIP_KNIT), work(TURN));
        }
    }

    private static void joiningWrong(Passage passage, int number) {
        passage.row(number, WRONG, -1, work(SLIP), toGap(PURL, 1), work(PURL_TWO_TOGETHER), work(TURN));
    }

    private static Until last(int stitches) {
        return stitches == 0 ? new Until.End() : new Until.Last(Sized.all(stitches));
    }

    /**
     * A row of pairs of a slipped and a knitted stitch; where their count is odd, the last one is knitted.
     *
     * @param stitches of the pairs
     * @param place so many stitches before the end of what is worked on
     * @param after knitted after them
     */
    private static void inPairs(Passage passage, int number, int change, List<Doing> before, EachSize stitches,
            IntFunction<Until> place, int after, Doing... end) {
        for (int odd = 0; odd <= 1; odd++) {
            int left = odd;
            List<Doing> row = new ArrayList<>(before);
            row.add(Doing.repeated(place.apply(after + odd), work(SLIP), work(KNIT)));
            if (after + odd > 0) {
                row.add(work(KNIT, after + odd));
            }
            row.addAll(Arrays.asList(end));
            passage.only(stitches.where(all -> all >= 2 && all % 2 == left))
                    .row(number, RIGHT, change, row.toArray(Doing[]::new));
        }
        List<Doing> narrow = new ArrayList<>(before);
        narrow.add(work(KNIT, stitches.plus(after)));
        narrow.addAll(Arrays.asList(end));
        passage.only(stitches.where(all -> all < 2)).row(number, RIGHT, change, narrow.toArray(Doing[]::new));
    }
}
