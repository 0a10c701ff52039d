package turnheel.engine.shaping;

import static turnheel.engine.design.Catalogue.CUFF_ROUNDS;
import static turnheel.engine.design.Catalogue.CUFF_STITCHES;
import static turnheel.engine.design.Catalogue.FOOT_ROUNDS;
import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.LEG_ROUNDS;
import static turnheel.engine.design.Catalogue.LEG_STITCHES;

import java.util.List;
import java.util.function.Supplier;

import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Part;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;

/** Every round of one size, part by part in the order of knitting. */
public final class Rounds {

    private final Design design;
    private final GradedSize size;
    private final Whole whole;
    private final boolean toeUp;

    private Rounds(Design design, GradedSize size) {
        this.design = design;
        this.size = size;
        this.whole = new Whole(size);
        this.toeUp = design.direction() == Direction.TOE_UP;
    }

    /** The parts of {@code size}; a part whose numbers do not work out has no rounds. */
    public static List<PartRounds> of(Graded graded, GradedSize size) {
        Rounds rounds = new Rounds(graded.design(), size);
        List<PartRounds> toeFirst = List.of(part(Part.TOE, rounds::toe), part(Part.FOOT, rounds::foot),
                part(Part.HEEL, rounds::heel), part(Part.LEG, rounds::leg), part(Part.CUFF, rounds::cuff));
        return rounds.toeUp ? toeFirst : toeFirst.reversed();
    }

    private static PartRounds part(Part part, Supplier<List<Round>> rounds) {
        try {
            return new PartRounds(part, rounds.get());
        } catch (Whole.NotKnittable reportedByChecks) {
            return new PartRounds(part, List.of());
        }
    }

    private List<Round> toe() {
        int foot = whole.count(FOOT_STITCHES);
        return switch (design.toe()) {
            case RoundToe toe -> {
                RoundToeShaping shaping = new RoundToeShaping(toe, size);
                yield toeUp ? shaping.toeUp() : shaping.cuffDown(foot);
            }
            case WedgeToe toe -> {
                WedgeToeShaping shaping = new WedgeToeShaping(toe, size);
                yield toeUp ? shaping.toeUp() : shaping.cuffDown(foot);
            }
        };
    }

    private List<Round> foot() {
        Needle needle = new Needle(whole.count(FOOT_STITCHES));
        needle.plain(whole.count(FOOT_ROUNDS));
        return needle.rounds();
    }

    private List<Round> heel() {
        return switch (design.heel()) {
            case ShortRowHeel heel -> new ShortRowHeelShaping(heel, size).rows();
        };
    }

    private List<Round> leg() {
        int foot = whole.count(FOOT_STITCHES);
        return switch (design.leg()) {
            case StraightLeg leg -> {
                int stitches = whole.count(LEG_STITCHES);
                Needle needle = new Needle(toeUp ? foot : stitches);
                if (toeUp) {
                    adjust(needle, stitches);
                }
                needle.plain(whole.count(LEG_ROUNDS));
                if (!toeUp) {
                    adjust(needle, foot);
                }
                yield needle.rounds();
            }
        };
    }

    private List<Round> cuff() {
        int leg = whole.count(LEG_STITCHES);
        int stitches = whole.count(CUFF_STITCHES);
        Needle needle = new Needle(toeUp ? leg : 0);
        if (toeUp) {
            adjust(needle, stitches);
        } else {
            needle.unnumbered(RoundKind.CAST_ON, Needle.steps(Needle.work(Stitch.CAST_ON, stitches)));
        }
        rib(needle);
        if (toeUp) {
            needle.unnumbered(RoundKind.BIND_OFF, Needle.steps(Needle.work(Stitch.BIND_OFF, stitches)));
        } else {
            adjust(needle, leg);
        }
        return needle.rounds();
    }

    private void rib(Needle needle) {
        switch (design.cuff()) {
            case RibCuff rib -> {
                int repeats = Whole.share(needle.stitches(), rib.repeat());
                if (repeats == 0) {
                    throw new Whole.NotKnittable();
                }
                List<Step> repeat = Needle.steps(Needle.work(Stitch.KNIT, rib.knit()), Needle.work(Stitch.PURL, rib.purl()));
                for (int i = 0; i < whole.count(CUFF_ROUNDS); i++) {
                    needle.round(RoundKind.RIB, new Step.Repeat(repeat, repeats));
                }
            }
        }
    }

    private static void adjust(Needle needle, int to) {
        if (needle.stitches() != to) {
            EvenSpread.adjust(needle, to);
        }
    }
}
