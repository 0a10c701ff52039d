package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.AsymmetricToe;
import turnheel.engine.design.CastOn;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.ShortRowToe;
import turnheel.engine.design.StarToe;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.Numbers;
import turnheel.engine.fixture.RandomDesigns;
import turnheel.engine.fixture.Repeatable;

/** Rounds laid end to end: what a ruler would say, computed from the round counts alone. */
class LengthsAddUpTest {

    @Repeatable
    void toeFootHeelAndRestAreTheWantedLength(@ForAll("usual") Draft draft) {
        for (GradedSize size : draft.graded().sizes()) {
            double round = 100 / Numbers.of(size, "gauge.rounds");
            double finished = (toeAlongFoot(draft, size) + Numbers.of(size, "foot.rounds") + heelAlongFoot(draft, size))
                    * round;
            double wanted = Numbers.of(size, "body.footLength") + Numbers.of(size, "fit.easeLength");
            assertEquals(finished, Numbers.of(size, "foot.length"), 1e-9);
            assertEquals(wanted - finished, Numbers.of(size, "foot.lengthRest"), 1e-9);
            assertTrue(Math.abs(wanted - finished) <= round / 2 + 1e-6,
                    () -> "off by more than half a round in " + size);
        }
    }

    @Repeatable
    void heelLegAndCuffAreTheLegHeight(@ForAll("usual") Draft draft) {
        for (GradedSize size : draft.graded().sizes()) {
            double round = 100 / Numbers.of(size, "gauge.rounds");
            double heel = draft.heel() instanceof FlapHeel
                    ? Numbers.of(size, "heel.flapRows") * 100 / Numbers.of(size, "gauge.flapRows")
                    : heelAlongFoot(draft, size) * round;
            double rest = Numbers.of(size, "body.legHeight") - heel
                    - Numbers.of(size, "leg.rounds") * round - Numbers.of(size, "cuff.height");
            assertTrue(Math.abs(rest) <= round / 2 + 1e-6, () -> "off by more than half a round in " + size);
            double cuffRest = Numbers.of(size, "cuff.height") - Numbers.of(size, "cuff.rounds") * round;
            assertTrue(Math.abs(cuffRest) <= round / 2 + 1e-6, () -> "off by more than half a round in " + size);
        }
    }

    /** Instep and sole are the foot, and the foot is its circumference. */
    @Repeatable
    void stitchesAddUp(@ForAll("usual") Draft draft) {
        for (GradedSize size : draft.graded().sizes()) {
            double foot = Numbers.of(size, "foot.stitches");
            assertEquals(foot, Numbers.of(size, "foot.instep") + Numbers.of(size, "foot.sole"));
            assertEquals(foot, Numbers.of(size, "foot.circumference") / 100 * Numbers.of(size, "gauge.stitches"), 1e-9);
            if (draft.heel() instanceof ShortRowHeel) {
                assertEquals(Numbers.of(size, "heel.stitches"),
                        Numbers.of(size, "heel.centre") + 2 * Numbers.of(size, "heel.eachSide"));
            }
        }
    }

    /** Rounds that lie along the foot: a cup folds; toe-up a cast-on may first be worked in a round of its own. */
    private static double toeAlongFoot(Draft draft, GradedSize size) {
        return switch (draft.toe()) {
            case RoundToe toe -> Numbers.of(size, "toe.rounds") + setUp(draft, toe.castOn());
            case WedgeToe toe -> Numbers.of(size, "toe.rounds") + setUp(draft, toe.castOn());
            case AsymmetricToe toe -> Numbers.of(size, "toe.rounds") + setUp(draft, toe.castOn());
            case StarToe toe -> Numbers.of(size, "toe.rounds") + setUp(draft, toe.castOn())
                    + (Numbers.of(size, "foot.stitches") % Numbers.of(size, "toe.points") == 0 ? 0 : 1);
            case ShortRowToe toe -> 2 * Numbers.of(size, "toe.eachSide");
        };
    }

    private static int setUp(Draft draft, CastOn castOn) {
        return draft.direction() == Direction.TOE_UP && castOn == CastOn.UNWORKED ? 1 : 0;
    }

    private static double heelAlongFoot(Draft draft, GradedSize size) {
        return switch (draft.heel()) {
            case ShortRowHeel heel -> 2 * Numbers.of(size, "heel.eachSide");
            case FlapHeel heel -> Numbers.of(size, "heel.turnRows");
            case AfterthoughtHeel heel -> Numbers.of(size, "heel.rows") + 1;
        };
    }

    @Provide
    Arbitrary<Draft> usual() {
        return RandomDesigns.usual();
    }
}
