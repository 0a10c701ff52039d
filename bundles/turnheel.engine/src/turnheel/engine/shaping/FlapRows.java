package turnheel.engine.shaping;

import static turnheel.engine.shaping.Needle.steps;
import static turnheel.engine.shaping.Needle.work;
import static turnheel.engine.stitch.Stitch.KNIT;
import static turnheel.engine.stitch.Stitch.PURL;
import static turnheel.engine.stitch.Stitch.SLIP;

import java.util.ArrayList;
import java.util.List;

import turnheel.engine.design.FlapEdge;
import turnheel.engine.design.FlapFabric;
import turnheel.engine.stitch.Step;

/** What is worked on a row of a heel flap, between its sides: domain § 5. Odd rows are worked on the right side. */
record FlapRows(FlapFabric fabric) {

    /** Stitches of a garter edge: <em>common practice</em> is 1 to 3. */
    private static final int GARTER = 2;

    /** @throws Whole.NotKnittable when the row has no room for its edge */
    List<Step> between(FlapEdge edge, int row, int stitches) {
        return switch (edge) {
            case SLIPPED -> fromSlipped(row, stitches);
            case GARTER -> betweenGarter(row, stitches);
        };
    }

    /** A row that slips its first stitch. */
    List<Step> fromSlipped(int row, int stitches) {
        if (isWrongSide(row)) {
            return steps(work(SLIP), work(PURL, stitches - 1));
        }
        return switch (fabric) {
            case PLAIN -> steps(work(SLIP), work(KNIT, stitches - 1));
            case SLIPPED -> inPairs(List.of(), stitches, 0);
            case SLIPPED_IN_TURN -> isSecond(row) ? inPairs(steps(work(SLIP)), stitches - 1, 0)
                    : inPairs(List.of(), stitches, 0);
        };
    }

    private List<Step> betweenGarter(int row, int stitches) {
        int between = stitches - 2 * GARTER;
        if (isWrongSide(row)) {
            return steps(work(KNIT, GARTER), work(PURL, between), work(KNIT, GARTER));
        }
        return switch (fabric) {
            case PLAIN -> steps(work(KNIT, stitches));
            case SLIPPED -> inPairs(steps(work(KNIT, GARTER)), between, GARTER);
            case SLIPPED_IN_TURN -> {
                int moved = isSecond(row) && between > 0 ? 1 : 0;
                yield inPairs(steps(work(KNIT, GARTER + moved)), between - moved, GARTER);
            }
        };
    }

    /** Pairs of a slipped and a knitted stitch; where the count is odd, the last one is knitted. */
    private static List<Step> inPairs(List<Step> before, int stitches, int knitAfter) {
        List<Step> steps = new ArrayList<>(before);
        if (stitches >= 2) {
            steps.add(new Step.Repeat(steps(work(SLIP), work(KNIT)), stitches / 2));
        }
        steps.addAll(steps(work(KNIT, stitches % 2 + knitAfter)));
        return steps;
    }

    private static boolean isWrongSide(int row) {
        return row % 2 == 0;
    }

    /** Whether it is the second, fourth, … row on the right side. */
    private static boolean isSecond(int row) {
        return row % 4 == 3;
    }
}
