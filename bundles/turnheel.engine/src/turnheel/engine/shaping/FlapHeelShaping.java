package turnheel.engine.shaping;

import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.HEEL_AFTER_PICK_UP;
import static turnheel.engine.design.Catalogue.HEEL_AFTER_TURN;
import static turnheel.engine.design.Catalogue.HEEL_CENTRE;
import static turnheel.engine.design.Catalogue.HEEL_EACH_SIDE;
import static turnheel.engine.design.Catalogue.HEEL_FLAP_ROWS;
import static turnheel.engine.design.Catalogue.HEEL_GUSSET_DECREASES;
import static turnheel.engine.design.Catalogue.HEEL_GUSSET_INCREASES;
import static turnheel.engine.design.Catalogue.HEEL_PICK_UP;
import static turnheel.engine.design.Catalogue.HEEL_STITCHES;
import static turnheel.engine.design.Catalogue.HEEL_TURN_OFFSET;
import static turnheel.engine.design.Catalogue.HEEL_TURN_ROWS;
import static turnheel.engine.design.Catalogue.LEG_STITCHES;
import static turnheel.engine.shaping.Needle.steps;
import static turnheel.engine.shaping.Needle.work;
import static turnheel.engine.stitch.Stitch.KNIT;
import static turnheel.engine.stitch.Stitch.KNIT_TWO_TOGETHER;
import static turnheel.engine.stitch.Stitch.KNIT_WITH_WRAPS;
import static turnheel.engine.stitch.Stitch.MAKE_ONE_LEFT;
import static turnheel.engine.stitch.Stitch.MAKE_ONE_RIGHT;
import static turnheel.engine.stitch.Stitch.PICK_UP_AND_KNIT;
import static turnheel.engine.stitch.Stitch.PURL;
import static turnheel.engine.stitch.Stitch.PURL_TWO_TOGETHER;
import static turnheel.engine.stitch.Stitch.PURL_TWO_TOGETHER_WITH_WRAPS;
import static turnheel.engine.stitch.Stitch.PURL_WITH_WRAPS;
import static turnheel.engine.stitch.Stitch.SLIP;
import static turnheel.engine.stitch.Stitch.SLIP_SLIP_KNIT;
import static turnheel.engine.stitch.Stitch.SLIP_SLIP_KNIT_WITH_WRAPS;
import static turnheel.engine.stitch.Stitch.TURN;
import static turnheel.engine.stitch.Stitch.WRAP_AND_TURN;

import java.util.List;
import java.util.stream.Stream;

import turnheel.engine.design.FlapFabric;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;

/** Flap, turn and gusset, row by row, in both directions: domain § 5. Odd rows are worked on the right side. */
final class FlapHeelShaping {

    private final Whole whole;

    FlapHeelShaping(Whole whole) {
        this.whole = whole;
    }

    /** Cuff-down: the flap, the turn, and the round that picks up along the flap and takes the instep back. */
    List<Round> flapAndTurn(FlapHeel heel) {
        int stitches = whole.count(HEEL_STITCHES);
        Needle needle = new Needle(stitches);
        for (int row = 1; row <= whole.count(HEEL_FLAP_ROWS); row++) {
            needle.row(turned(new FlapRows(heel.fabric()).between(heel.edge(), row, stitches)));
        }
        switch (heel.turn()) {
            case ROUND -> roundTurn(needle, stitches);
            case SQUARE -> squareTurn(needle, stitches);
        }
        int left = whole.count(HEEL_AFTER_TURN);
        if (needle.stitches() != left) {
            throw new IllegalStateException("the turn of %d stitches leaves %d, not %d".formatted(stitches,
                    needle.stitches(), left));
        }
        int instep = instep();
        int pickUp = whole.count(HEEL_PICK_UP);
        needle.join(instep);
        needle.unnumbered(RoundKind.PICK_UP, steps(work(KNIT, left), work(PICK_UP_AND_KNIT, pickUp),
                work(KNIT, instep), work(PICK_UP_AND_KNIT, pickUp)));
        return needle.rounds();
    }

    private int instep() {
        int instep = whole.count(LEG_STITCHES) - whole.count(HEEL_STITCHES);
        if (instep < 0) {
            throw new Whole.NotKnittable();
        }
        return instep;
    }

    /**
     * Each row joins across the gap and takes one stitch more, from {@code offset} past the middle; where an odd stitch is
     * left on each side, the last pair of rows ends with the join.
     */
    private void roundTurn(Needle needle, int stitches) {
        int offset = whole.count(HEEL_TURN_OFFSET);
        int half = stitches / 2;
        int odd = stitches % 2;
        int beyond = half - offset - 3;
        if (beyond < 0) {
            throw new Whole.NotKnittable();
        }
        int rows = whole.count(HEEL_TURN_ROWS);
        needle.turn(steps(work(KNIT, half + odd + offset), work(SLIP_SLIP_KNIT), work(KNIT), work(TURN)));
        for (int row = 2; row <= rows; row++) {
            int oneMore = beyond % 2 == 1 && row > rows - 2 ? 0 : 1;
            // the last row follows one that took no stitch more, so it has one less to cross
            int across = 2 * offset + odd + row - (row == rows && oneMore == 0 ? 2 : 1);
            needle.turn(steps(work(SLIP), work(plain(row), across), work(join(row)),
                    work(plain(row), oneMore), work(TURN)));
        }
    }

    private void squareTurn(Needle needle, int stitches) {
        int centre = whole.count(HEEL_CENTRE);
        int side = Whole.share(stitches - centre, 2);
        if (side < 1) {
            throw new Whole.NotKnittable();
        }
        needle.turn(steps(work(KNIT, side + centre - 1), work(SLIP_SLIP_KNIT), work(TURN)));
        for (int row = 2; row <= 2 * side; row++) {
            needle.turn(steps(work(SLIP), work(plain(row), centre - 2), work(join(row)), work(TURN)));
        }
    }

    /** Cuff-down: the first rounds of the foot, from the centre back; every second one narrows the gusset by a pair. */
    void narrowGusset(Needle needle) {
        int instep = instep();
        for (int i = 0; i < decreases(); i++) {
            int sole = needle.stitches() - instep;
            int left = sole / 2;
            needle.round(RoundKind.DECREASE, steps(work(KNIT, left - 3), work(KNIT_TWO_TOGETHER), work(KNIT, instep + 2),
                    work(SLIP_SLIP_KNIT), work(KNIT, sole - left - 3)));
            needle.plain(1);
        }
    }

    /** Pairs that the gusset narrows by, cuff-down. */
    int decreases() {
        return whole.count(HEEL_GUSSET_DECREASES);
    }

    /** Pairs that the gusset widens by, toe-up. */
    int increases() {
        return whole.count(HEEL_GUSSET_INCREASES);
    }

    /** Stitches around when the gusset's are picked up, cuff-down. */
    int afterPickUp() {
        return whole.count(HEEL_AFTER_PICK_UP);
    }

    /** Toe-up: the last rounds of the foot, instep first; every second one widens the gusset by a pair. */
    void widenGusset(Needle needle) {
        int instep = whole.count(FOOT_STITCHES) - whole.count(HEEL_STITCHES);
        for (int i = 0; i < increases(); i++) {
            needle.round(RoundKind.INCREASE, steps(work(KNIT, instep), work(MAKE_ONE_RIGHT),
                    work(KNIT, needle.stitches() - instep), work(MAKE_ONE_LEFT)));
            needle.plain(1);
        }
    }

    /** Toe-up: short rows out to the centre, then a flap that joins one gusset stitch a row, in its first two the wraps. */
    List<Round> turnAndFlap(FlapFabric fabric) {
        int stitches = whole.count(HEEL_STITCHES);
        int gusset = whole.count(HEEL_GUSSET_INCREASES);
        int eachSide = whole.count(HEEL_EACH_SIDE);
        int centre = whole.count(HEEL_CENTRE);
        int flapRows = whole.count(HEEL_FLAP_ROWS);
        if (flapRows != 2 * gusset || gusset == 0 || eachSide == 0) {
            throw new Whole.NotKnittable();
        }
        Needle needle = new Needle(stitches + 2 * gusset);
        for (int row = 1; row <= 2 * eachSide; row++) {
            int fromEdge = row == 1 ? gusset : 0;
            needle.turn(steps(work(plain(row), fromEdge + stitches - row), work(WRAP_AND_TURN)));
        }
        needle.row(steps(work(KNIT, centre), work(KNIT_WITH_WRAPS, eachSide - 1),
                work(SLIP_SLIP_KNIT_WITH_WRAPS), work(TURN)));
        needle.row(steps(work(SLIP), work(PURL, centre + eachSide - 1), work(PURL_WITH_WRAPS, eachSide - 1),
                work(PURL_TWO_TOGETHER_WITH_WRAPS), work(TURN)));
        for (int row = 3; row <= flapRows; row++) {
            needle.row(turned(new FlapRows(fabric).fromSlipped(row, stitches - 1), join(row)));
        }
        return needle.rounds();
    }

    private static List<Step> turned(List<Step> worked, Stitch... atEnd) {
        return Stream.of(worked.stream(), Stream.of(atEnd).map(stitch -> new Step.Work(stitch, 1)),
                Stream.of(new Step.Work(TURN, 1))).<Step>flatMap(steps -> steps).toList();
    }

    private static Stitch plain(int row) {
        return row % 2 == 1 ? KNIT : PURL;
    }

    private static Stitch join(int row) {
        return row % 2 == 1 ? SLIP_SLIP_KNIT : PURL_TWO_TOGETHER;
    }
}
