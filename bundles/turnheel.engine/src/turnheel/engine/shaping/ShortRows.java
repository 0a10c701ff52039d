package turnheel.engine.shaping;

import static turnheel.engine.shaping.Needle.steps;
import static turnheel.engine.shaping.Needle.work;

import java.util.List;

import turnheel.engine.design.TurnMethod;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;

/**
 * A cup of short rows: out to the centre, one stitch less a row, and back, one more a row (domain § 5). Odd rows are worked
 * on the right side.
 */
final class ShortRows {

    private final TurnMethod turn;
    private final int stitches;
    private final int centre;
    private final int turned;

    /** @param eachSide stitches turned on each side of the centre */
    ShortRows(TurnMethod turn, int stitches, int centre, int eachSide) {
        this.turn = turn;
        this.stitches = stitches;
        this.centre = centre;
        this.turned = 2 * eachSide;
    }

    /** Works the cup over the loops on the needle. */
    void workOn(Needle needle) {
        switch (turn) {
            case WRAPPED -> marked(needle, Stitch.WRAP_AND_TURN, Stitch.KNIT_WITH_WRAPS, Stitch.PURL_WITH_WRAPS);
            case TWIN -> marked(needle, Stitch.TWIN_AND_TURN, Stitch.KNIT_TWIN, Stitch.PURL_TWIN);
            case GERMAN -> doubled(needle);
            case YARN_OVER -> yarnOver(needle);
        }
    }

    /** The stitch beyond each turn is marked with a second loop, worked with it on the way back. */
    private void marked(Needle needle, Stitch markAndTurn, Stitch knitMarked, Stitch purlMarked) {
        out(needle, markAndTurn);
        for (int row = 1; row <= turned; row++) {
            // beyond the outermost stitch there is none of the cup left to mark
            Stitch end = row <= turned - 2 ? markAndTurn : Stitch.TURN;
            needle.row(steps(work(plain(row), centre + row - 1), work(either(row, knitMarked, purlMarked)), work(end)));
        }
    }

    private void out(Needle needle, Stitch markAndTurn) {
        for (int row = 1; row <= turned; row++) {
            needle.row(steps(work(plain(row), stitches - row), work(markAndTurn)));
        }
    }

    /** The first stitch after each turn becomes double; the first row runs to the end, so there is one row more. */
    private void doubled(Needle needle) {
        needle.row(steps(work(Stitch.KNIT, stitches), work(Stitch.TURN)));
        for (int row = 2; row <= turned + 1; row++) {
            needle.row(steps(work(Stitch.DOUBLE_STITCH), work(plain(row), stitches - row + 1), work(Stitch.TURN)));
        }
        for (int back = 1; back <= turned; back++) {
            int row = turned + 1 + back;
            Stitch asOne = either(row, Stitch.KNIT_DOUBLE, Stitch.PURL_DOUBLE);
            // from the second row back on, the double stitch of the turn before the last lies in the way too
            int doubles = back == 1 ? 1 : 2;
            int plain = centre + back - 1 - doubles;
            // the last row ends on the right side, where the round goes on
            needle.row(steps(work(Stitch.DOUBLE_STITCH), work(plain(row), plain), work(asOne, doubles),
                    work(Stitch.TURN, back < turned ? 1 : 0)));
        }
        // the double stitch of the last turn is the first that the next round meets
        needle.unnumbered(RoundKind.PLAIN, steps(work(Stitch.KNIT_DOUBLE), work(Stitch.KNIT, stitches - 1)));
    }

    /** Each row after a turn begins with a yarn-over, later worked together with the stitch beyond the gap. */
    private void yarnOver(Needle needle) {
        for (int row = 1; row <= turned; row++) {
            needle.row(steps(work(Stitch.YARN_OVER, row == 1 ? 0 : 1), work(plain(row), stitches - row), work(Stitch.TURN)));
        }
        for (int row = 1; row <= turned; row++) {
            // the first gap on each side holds one yarn-over; beyond it lie that of the way out and that of the way back
            Stitch join = row <= 2 ? either(row, Stitch.KNIT_TWO_TOGETHER, Stitch.PURL_TWO_TOGETHER)
                    : either(row, Stitch.KNIT_THREE_TOGETHER, Stitch.PURL_THREE_TOGETHER);
            needle.row(steps(work(Stitch.YARN_OVER), work(plain(row), centre + row - 1), work(join), work(Stitch.TURN)));
        }
        List<Step> closing = steps(work(Stitch.KNIT, stitches - 1), work(Stitch.KNIT_TWO_TOGETHER));
        needle.unnumbered(RoundKind.PLAIN, closing);
    }

    private static Stitch plain(int row) {
        return either(row, Stitch.KNIT, Stitch.PURL);
    }

    private static Stitch either(int row, Stitch onRightSide, Stitch onWrongSide) {
        return row % 2 == 1 ? onRightSide : onWrongSide;
    }

}
