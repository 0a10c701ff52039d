package turnheel.engine.shaping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.LengthMode;
import turnheel.engine.design.Lengths;
import turnheel.engine.design.Part;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.ShortRowToe;
import turnheel.engine.design.Snap;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.Numbers;
import turnheel.engine.fixture.RandomDesigns;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;

/** A stretch that is measured may take more rounds or fewer, and the sock is still the same. */
class MeasuredStretchTest {

    private static final Lengths TO_FIT = new Lengths(LengthMode.TO_FIT, LengthMode.MEASURE, LengthMode.ROUNDS, Snap.NONE);
    private static final double MORE_OR_FEWER = 0.1;

    /** 10 pairs and 20 rows of the turn at 44 rounds over 10 cm, an ease of −10.8 mm; a wedge toe of 20 rounds. */
    @Test
    void isWorkedUntilSoMuchLessThanTheFoot() {
        Draft flap = Designs.toeUp64().with(Designs.FLAP_HEEL).with(TO_FIT)
                .with("foot.stitches = 64; body.heelCircumference = 310 mm; heel.gussetIncreases = 10");
        assertEquals(40 / 0.44 + 10.8, Numbers.of(flap, "foot.toFitLess"), 1e-9);
        assertEquals(20 / 0.44 + 10.8, Numbers.of(Designs.cuffDown64().with(TO_FIT), "foot.toFitLess"), 1e-9);
    }

    /** The rounds that are still to come are counted where they are knitted. */
    @Repeatable
    void worksOutAtTheFinishedLength(@ForAll("usual") Draft usual) {
        Draft draft = usual.with(TO_FIT);
        Graded graded = draft.graded();
        for (GradedSize size : graded.sizes()) {
            List<PartRounds> parts = Rounds.of(graded, size);
            if (parts.stream().filter(part -> part.part() != Part.LEG).anyMatch(part -> part.rounds().isEmpty())) {
                continue;
            }
            double round = 100 / Numbers.of(size, "gauge.rounds");
            double reached = Numbers.of(size, "body.footLength") - Numbers.of(size, "foot.toFitLess");
            double finished = reached + stillToCome(draft, parts) * round;
            assertEquals(Numbers.of(size, "body.footLength") + Numbers.of(size, "fit.easeLength"), finished, 1e-9);
            // where the rounds are counted, they end within half a round of it
            double counted = Numbers.of(size, "foot.length") - stillToCome(draft, parts) * round;
            assertTrue(Math.abs(reached - counted) <= round / 2 + 1e-6, size::toString);
        }
    }

    private static long stillToCome(Draft draft, List<PartRounds> parts) {
        if (draft.direction() == Direction.TOE_UP) {
            List<Round> foot = rounds(parts, Part.FOOT);
            int even = (int) foot.stream().takeWhile(round -> round.kind() == RoundKind.PLAIN).count();
            return foot.size() - even + heel(draft, rounds(parts, Part.HEEL));
        }
        long toe = alongFoot(rounds(parts, Part.TOE), draft.toe() instanceof ShortRowToe);
        return draft.heel() instanceof AfterthoughtHeel ? toe + heel(draft, rounds(parts, Part.HEEL)) : toe;
    }

    private static long heel(Draft draft, List<Round> rounds) {
        return switch (draft.heel()) {
            case AfterthoughtHeel heel -> alongFoot(rounds, false);
            case ShortRowHeel heel -> alongFoot(rounds, true);
            case FlapHeel heel -> rounds.stream()
                    .filter(round -> round.kind() == RoundKind.TURN).count();
        };
    }

    /** A cup folds: of its rows half lie along the foot. To close a tip takes no round. */
    private static long alongFoot(List<Round> rounds, boolean folds) {
        return folds ? rounds.stream().filter(round -> round.kind() == RoundKind.ROW).count() / 2
                : rounds.stream().filter(round -> round.kind() != RoundKind.GRAFT).count();
    }

    private static List<Round> rounds(List<PartRounds> parts, Part wanted) {
        return parts.stream().filter(part -> part.part() == wanted).findFirst().orElseThrow().rounds();
    }

    @Repeatable
    void mayTakeATenthMoreOrFewerRounds(@ForAll("usual") Draft draft) {
        Graded planned = draft.graded();
        boolean legIsEven = draft.leg() instanceof StraightLeg;
        for (double share : new double[] {1 - MORE_OR_FEWER, 1 + MORE_OR_FEWER}) {
            Graded worked = draft.withEachSize(size -> {
                GradedSize numbers = planned.size(size.label());
                double shaped = draft.heel() instanceof FlapHeel
                        ? Numbers.of(numbers, "foot.rounds") - Numbers.of(numbers, "foot.evenRounds") : 0;
                String foot = "foot.rounds = " + rounds(Numbers.of(numbers, "foot.rounds"), shaped, share);
                return legIsEven ? foot + "; leg.rounds = " + rounds(Numbers.of(numbers, "leg.rounds"), 0, share) : foot;
            }).graded();
            for (int i = 0; i < planned.sizes().size(); i++) {
                sameShaping(planned, planned.sizes().get(i), worked, worked.sizes().get(i));
            }
        }
    }

    private static long rounds(double planned, double shaped, double share) {
        return Math.max(0, Math.round(shaped + (planned - shaped) * share));
    }

    private static void sameShaping(Graded planned, GradedSize before, Graded worked, GradedSize after) {
        List<PartRounds> one = Rounds.of(planned, before);
        List<PartRounds> other = Rounds.of(worked, after);
        if (rounds(one, Part.FOOT).isEmpty() || rounds(other, Part.FOOT).isEmpty()) {
            return; // too short for its gusset
        }
        for (int i = 0; i < one.size(); i++) {
            Part part = one.get(i).part();
            boolean stretched = Set.of(Part.FOOT, Part.LEG).contains(part);
            assertEquals(stretched ? shaped(one.get(i)) : one.get(i).rounds(),
                    stretched ? shaped(other.get(i)) : other.get(i).rounds(), () -> part + " of " + before);
        }
    }

    private static List<List<?>> shaped(PartRounds part) {
        return part.rounds().stream().filter(round -> round.kind() != RoundKind.PLAIN)
                .<List<?>>map(round -> List.of(round.kind(), round.steps(), round.stitches())).toList();
    }

    @Provide
    Arbitrary<Draft> usual() {
        return RandomDesigns.usual();
    }
}
