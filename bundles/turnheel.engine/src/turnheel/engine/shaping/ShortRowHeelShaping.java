package turnheel.engine.shaping;

import static turnheel.engine.shaping.Needle.steps;
import static turnheel.engine.shaping.Needle.work;

import java.util.List;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.stitch.Stitch;

/** A short-row heel, row by row: out to the centre, one stitch less a row, and back, one more a row: domain § 5. */
final class ShortRowHeelShaping {

    private final ShortRowHeel heel;
    private final int stitches;
    private final int centre;
    private final int eachSide;

    ShortRowHeelShaping(ShortRowHeel heel, GradedSize size) {
        Whole whole = new Whole(size);
        this.heel = heel;
        this.stitches = whole.count(Catalogue.HEEL_STITCHES);
        this.centre = whole.count(Catalogue.HEEL_CENTRE);
        this.eachSide = whole.count(Catalogue.HEEL_EACH_SIDE);
    }

    List<Round> rows() {
        return switch (heel.turn()) {
            case WRAPPED -> wrapped();
        };
    }

    private List<Round> wrapped() {
        Needle needle = new Needle(stitches);
        for (int row = 1; row <= 2 * eachSide; row++) {
            needle.row(steps(work(plain(row), stitches - row), work(Stitch.WRAP_AND_TURN)));
        }
        for (int row = 1; row <= 2 * eachSide; row++) {
            // beyond the outermost stitch there is none of the heel left to wrap
            Stitch turn = row <= 2 * eachSide - 2 ? Stitch.WRAP_AND_TURN : Stitch.TURN;
            needle.row(steps(work(plain(row), centre + row - 1), work(withWraps(row)), work(turn)));
        }
        return needle.rounds();
    }

    private static Stitch plain(int row) {
        return row % 2 == 1 ? Stitch.KNIT : Stitch.PURL;
    }

    private static Stitch withWraps(int row) {
        return row % 2 == 1 ? Stitch.KNIT_WITH_WRAPS : Stitch.PURL_WITH_WRAPS;
    }
}
