package turnheel.engine.shaping;

import java.util.ArrayList;
import java.util.List;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.grading.GradedSize;

/** The stitches after every round of a toe as domain § 3 words them, from the graded counts alone. */
final class ExpectedCounts {

    private final List<Integer> counts = new ArrayList<>();
    private int stitches;

    private ExpectedCounts(int stitches) {
        this.stitches = stitches;
    }

    static List<Integer> ofToe(Design design, GradedSize size) {
        int turn = count(size, Catalogue.TOE_ALTERNATE_FROM);
        int foot = count(size, Catalogue.FOOT_STITCHES);
        return switch (design.toe()) {
            case RoundToe toe -> of(design.direction(), count(size, Catalogue.TOE_CAST_ON), turn, foot,
                    count(size, Catalogue.TOE_POINTS), count(size, Catalogue.TOE_PLAIN_BETWEEN));
            case WedgeToe toe -> of(design.direction(), count(size, Catalogue.TOE_TIP), turn, foot, 4, 1);
        };
    }

    private static List<Integer> of(Direction direction, int tip, int turn, int foot, int aRound, int plain) {
        return switch (direction) {
            case TOE_UP -> toeUp(tip, turn, foot, aRound, plain);
            case CUFF_DOWN -> cuffDown(tip, turn, foot, aRound, plain);
        };
    }

    private static List<Integer> toeUp(int tip, int turn, int foot, int aRound, int plain) {
        ExpectedCounts expected = new ExpectedCounts(tip);
        expected.plain(2); // the cast-on itself, and the round on which its stitches are first worked
        while (expected.stitches < turn) {
            expected.shape(aRound);
        }
        expected.plain(turn > tip ? 1 : 0);
        while (expected.stitches < foot) {
            expected.shape(aRound);
            expected.plain(plain);
        }
        return expected.counts;
    }

    private static List<Integer> cuffDown(int tip, int turn, int foot, int aRound, int plain) {
        ExpectedCounts expected = new ExpectedCounts(foot);
        while (expected.stitches > turn) {
            expected.shape(-aRound);
            expected.plain(plain);
        }
        while (expected.stitches > tip) {
            expected.shape(-aRound);
        }
        expected.shape(-tip);
        return expected.counts;
    }

    private void shape(int more) {
        stitches += more;
        counts.add(stitches);
    }

    private void plain(int rounds) {
        for (int i = 0; i < rounds; i++) {
            counts.add(stitches);
        }
    }

    static int count(GradedSize size, Parameter parameter) {
        double value = size.value(parameter);
        if (value != Math.rint(value)) {
            throw new AssertionError("%s is %s".formatted(parameter.key(), value));
        }
        return (int) value;
    }
}
