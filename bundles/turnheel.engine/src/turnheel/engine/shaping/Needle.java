package turnheel.engine.shaping;

import java.util.ArrayList;
import java.util.List;

import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;

/** Collects rounds and carries the number of loops from one to the next. */
final class Needle {

    private final List<Round> rounds = new ArrayList<>();
    private int stitches;
    private int number;
    private int openYarnOvers;

    /** A needle with {@code stitches} loops on it, left by the part before. */
    Needle(int stitches) {
        this.stitches = stitches;
    }

    int stitches() {
        return stitches;
    }

    List<Round> rounds() {
        return List.copyOf(rounds);
    }

    /** A round that patterns number. */
    void round(RoundKind kind, Step... steps) {
        add(++number, kind, List.of(steps));
    }

    /** A numbered round of several steps. */
    void round(RoundKind kind, List<Step> steps) {
        add(++number, kind, steps);
    }

    /** A round that patterns describe without a number. */
    void unnumbered(RoundKind kind, List<Step> steps) {
        add(0, kind, steps);
    }

    void plain(int times) {
        for (int i = 0; i < times; i++) {
            round(RoundKind.PLAIN, new Step.Work(Stitch.KNIT, stitches));
        }
    }

    /** A flat row; it may leave stitches of the part unworked. */
    void row(List<Step> steps) {
        add(++number, RoundKind.ROW, steps);
    }

    /** A flat row of a heel turn. */
    void turn(List<Step> steps) {
        add(++number, RoundKind.TURN, steps);
    }

    /** Takes held stitches back to the needle. */
    void join(int held) {
        stitches += held;
    }

    private void add(int ownNumber, RoundKind kind, List<Step> steps) {
        stitches += steps.stream().mapToInt(step -> step.leaves() - step.takes()).sum();
        // a flat row leaves the yarn-overs of its turns where they are; a round works every loop
        int left = kind == RoundKind.ROW ? Math.max(0, openYarnOvers - closedBy(steps)) : 0;
        openYarnOvers = left + steps.stream().mapToInt(Step::openYarnOvers).sum();
        rounds.add(new Round(ownNumber, kind, steps, stitches, openYarnOvers));
    }

    /** In a row that has yarn-overs on its needle, working stitches together closes them. */
    private static int closedBy(List<Step> steps) {
        return steps.stream().mapToInt(step -> step.takes() - step.leaves()).filter(fewer -> fewer > 0).sum();
    }

    /**
     * The steps that are worked at least once: a section can be just too short for the plain stitches of its rule.
     *
     * @throws Whole.NotKnittable when it is shorter still
     */
    static List<Step> steps(Worked... worked) {
        List<Step> steps = new ArrayList<>();
        for (Worked work : worked) {
            if (work.count() < 0) {
                throw new Whole.NotKnittable();
            }
            if (work.count() > 0) {
                steps.add(new Step.Work(work.stitch(), work.count()));
            }
        }
        return steps;
    }

    /** A stitch and how often it is worked, which may be never. */
    record Worked(Stitch stitch, int count) {
    }

    static Worked work(Stitch stitch, int count) {
        return new Worked(stitch, count);
    }

    static Worked work(Stitch stitch) {
        return new Worked(stitch, 1);
    }
}
