package turnheel.engine.shaping;

import static turnheel.engine.design.Catalogue.FOOT_ROUNDS;
import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.LEG_STITCHES;
import static turnheel.engine.design.Catalogue.LEG_TOP;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.CalfLeg;
import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.Part;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;

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
        return new Rounds(graded.design(), size).inOrder();
    }

    private List<PartRounds> inOrder() {
        List<PartRounds> parts = new ArrayList<>();
        parts.add(part(Part.TOE, this::toe));
        parts.add(part(Part.FOOT, this::foot));
        PartRounds heel = part(Part.HEEL, () -> new HeelShaping(size, toeUp).rows(design.heel()));
        if (!workedLast()) {
            parts.add(heel);
        }
        parts.add(part(Part.LEG, () -> new LegShaping(size, toeUp).rounds(design.leg(), belowLeg())));
        parts.add(part(Part.CUFF, () -> new CuffShaping(size, toeUp).rounds(design.cuff(), legTop())));
        List<PartRounds> inOrder = new ArrayList<>(toeUp ? parts : parts.reversed());
        if (workedLast()) {
            inOrder.add(heel);
        }
        return inOrder;
    }

    private boolean workedLast() {
        return switch (design.heel()) {
            case AfterthoughtHeel heel -> true;
            case ShortRowHeel heel -> false;
            case FlapHeel heel -> false;
        };
    }

    private static PartRounds part(Part part, Supplier<List<Round>> rounds) {
        try {
            return new PartRounds(part, rounds.get());
        } catch (Whole.NotKnittable reportedByChecks) {
            return new PartRounds(part, List.of());
        }
    }

    private List<Round> toe() {
        ToeShaping shaping = new ToeShaping(size);
        return toeUp ? shaping.toeUp(design.toe()) : shaping.cuffDown(design.toe());
    }

    /** The foot, and the gusset of a flap heel, which lies within it. */
    private List<Round> foot() {
        int rounds = whole.count(FOOT_ROUNDS);
        int stitches = whole.count(FOOT_STITCHES);
        if (!(design.heel() instanceof FlapHeel)) {
            Needle needle = new Needle(stitches);
            needle.plain(rounds);
            return needle.rounds();
        }
        FlapHeelShaping gusset = new FlapHeelShaping(whole);
        int gussetRounds = 2 * (toeUp ? gusset.increases() : gusset.decreases());
        if (gussetRounds > rounds) {
            throw new Whole.NotKnittable();
        }
        Needle needle = new Needle(toeUp ? stitches : gusset.afterPickUp());
        if (toeUp) {
            needle.plain(rounds - gussetRounds);
            gusset.widenGusset(needle);
        } else {
            gusset.narrowGusset(needle);
            needle.plain(rounds - gussetRounds);
        }
        return needle.rounds();
    }

    /** A flap cuff-down is worked on the leg's own stitches; its gusset leads to those of the foot. */
    private int belowLeg() {
        return whole.count(design.heel() instanceof FlapHeel && !toeUp ? LEG_STITCHES : FOOT_STITCHES);
    }

    private int legTop() {
        return switch (design.leg()) {
            case StraightLeg leg -> whole.count(LEG_STITCHES);
            case CalfLeg leg -> whole.count(LEG_TOP);
        };
    }
}
