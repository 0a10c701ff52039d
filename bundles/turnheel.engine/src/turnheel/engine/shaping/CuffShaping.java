package turnheel.engine.shaping;

import static turnheel.engine.shaping.Needle.steps;
import static turnheel.engine.shaping.Needle.work;

import java.util.List;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Cuff;
import turnheel.engine.design.HemCuff;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.RolledCuff;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;

/** Cuffs, round by round: domain § 8. */
final class CuffShaping {

    private final Whole whole;
    private final boolean toeUp;

    CuffShaping(GradedSize size, boolean toeUp) {
        this.whole = new Whole(size);
        this.toeUp = toeUp;
    }

    /** @param leg stitches where the cuff joins the leg */
    List<Round> rounds(Cuff cuff, int leg) {
        int stitches = whole.count(Catalogue.CUFF_STITCHES);
        Needle needle = new Needle(toeUp ? leg : 0);
        if (toeUp) {
            EvenSpread.adjust(needle, stitches);
        } else {
            needle.unnumbered(RoundKind.CAST_ON, steps(work(castOn(cuff), stitches)));
        }
        fabric(cuff, needle);
        if (toeUp) {
            needle.unnumbered(RoundKind.BIND_OFF, steps(work(bindOff(cuff), stitches)));
        } else {
            EvenSpread.adjust(needle, leg);
        }
        return needle.rounds();
    }

    private void fabric(Cuff cuff, Needle needle) {
        int rounds = whole.count(Catalogue.CUFF_ROUNDS);
        switch (cuff) {
            case RibCuff rib -> rib(rib, needle, rounds);
            case RolledCuff rolled -> needle.plain(rounds);
            case HemCuff hem -> {
                needle.plain(rounds);
                needle.round(RoundKind.PLAIN, new Step.Work(Stitch.PURL, needle.stitches()));
                needle.plain(rounds);
                if (!toeUp) {
                    needle.round(RoundKind.PLAIN, new Step.Work(Stitch.KNIT_WITH_EDGE, needle.stitches()));
                }
            }
        }
    }

    private static void rib(RibCuff rib, Needle needle, int rounds) {
        int repeats = Whole.share(needle.stitches(), rib.repeat());
        if (repeats == 0) {
            throw new Whole.NotKnittable();
        }
        List<Step> repeat = steps(work(Stitch.KNIT, rib.knit()), work(Stitch.PURL, rib.purl()));
        for (int i = 0; i < rounds; i++) {
            needle.round(RoundKind.RIB, new Step.Repeat(repeat, repeats));
        }
    }

    private static Stitch castOn(Cuff cuff) {
        return switch (cuff) {
            case RibCuff rib -> Stitch.CAST_ON;
            case RolledCuff rolled -> Stitch.CAST_ON;
            case HemCuff hem -> Stitch.PROVISIONAL_CAST_ON;
        };
    }

    private static Stitch bindOff(Cuff cuff) {
        return switch (cuff) {
            case RibCuff rib -> Stitch.BIND_OFF;
            case RolledCuff rolled -> Stitch.BIND_OFF;
            case HemCuff hem -> Stitch.SEW_DOWN;
        };
    }
}
