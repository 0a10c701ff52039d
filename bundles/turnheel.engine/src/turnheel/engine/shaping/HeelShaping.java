package turnheel.engine.shaping;

import static turnheel.engine.shaping.Needle.steps;
import static turnheel.engine.shaping.Needle.work;

import java.util.List;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.Heel;
import turnheel.engine.design.Increase;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.stitch.Stitch;

/** Heels, row by row: domain § 5. */
final class HeelShaping {

    private final Whole whole;
    private final boolean toeUp;

    HeelShaping(GradedSize size, boolean toeUp) {
        this.whole = new Whole(size);
        this.toeUp = toeUp;
    }

    List<Round> rows(Heel heel) {
        return switch (heel) {
            case ShortRowHeel shortRow -> shortRow(shortRow);
            case FlapHeel flap -> {
                FlapHeelShaping shaping = new FlapHeelShaping(whole);
                yield toeUp ? shaping.turnAndFlap(flap.fabric()) : shaping.flapAndTurn(flap);
            }
            case AfterthoughtHeel afterthought -> afterthought(afterthought);
        };
    }

    private List<Round> shortRow(ShortRowHeel heel) {
        int stitches = whole.count(Catalogue.HEEL_STITCHES);
        Needle needle = new Needle(stitches);
        new ShortRows(heel.turn(), stitches, whole.count(Catalogue.HEEL_CENTRE), whole.count(Catalogue.HEEL_EACH_SIDE))
                .workOn(needle);
        corners(needle, whole.count(Catalogue.HEEL_CORNER));
        return needle.rounds();
    }

    /** Stitches picked up at the corners against a hole, worked away in the next round. */
    private static void corners(Needle needle, int corner) {
        if (corner > 0) {
            int stitches = needle.stitches();
            if (stitches < 2 * corner) {
                throw new Whole.NotKnittable();
            }
            needle.unnumbered(RoundKind.PICK_UP, steps(work(Stitch.PICK_UP_AND_KNIT, corner),
                    work(Stitch.KNIT, stitches), work(Stitch.PICK_UP_AND_KNIT, corner)));
            needle.unnumbered(RoundKind.DECREASE, steps(work(Stitch.SLIP_SLIP_KNIT, corner),
                    work(Stitch.KNIT, stitches - 2 * corner), work(Stitch.KNIT_TWO_TOGETHER, corner)));
        }
    }

    private List<Round> afterthought(AfterthoughtHeel heel) {
        Needle needle = new Needle(0);
        needle.unnumbered(RoundKind.PICK_UP, steps(work(Stitch.PICK_UP_AND_KNIT, whole.count(Catalogue.HEEL_PICK_UP))));
        int tip = whole.count(Catalogue.HEEL_TIP);
        int everyRound = whole.count(Catalogue.HEEL_EVERY_ROUND);
        int alternate = whole.count(Catalogue.HEEL_ALTERNATE);
        switch (heel.cap()) {
            case WEDGE -> new WedgeTaperShaping(Increase.MAKE_ONE, tip, everyRound, alternate).narrow(needle);
            case ROUND -> new RoundTaperShaping(
                    new Sections(Increase.MAKE_ONE, heel.lean(), whole.count(Catalogue.HEEL_POINTS)), tip, everyRound,
                    alternate, whole.count(Catalogue.HEEL_PLAIN_BETWEEN)).narrow(needle);
        }
        return needle.rounds();
    }
}
