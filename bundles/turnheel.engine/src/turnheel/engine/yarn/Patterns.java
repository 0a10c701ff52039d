package turnheel.engine.yarn;

import java.util.Map;

import turnheel.engine.design.Design;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.grading.Grader;
import turnheel.engine.grading.LoopGrader;
import turnheel.engine.grading.YarnPlan;
import turnheel.engine.term.Key;

/** From a design to all its numbers: counts and lengths, then rounds, then the yarn that they take. */
public final class Patterns {

    private Patterns() {
    }

    /** The graded pattern with its yarn. The same design gives the same result; what does not work out is a query. */
    public static Graded grade(Design design) {
        Graded counts = Grader.grade(design);
        YarnPlan plan = YarnPlan.of(design);
        return LoopGrader.grade(counts,
                size -> Loops.of(counts, size).map(loops -> loops.rows(plan)).orElse(Map.of()));
    }

    /**
     * The yarn in each part of one sock, in plain loops, under the keys that {@link YarnPlan#metres} reads; empty
     * when the rounds of the size do not work out. A pattern of one yarn has no rows for them.
     */
    public static Map<Key, Double> loopsOfParts(Graded graded, GradedSize size) {
        return Loops.of(graded, size).map(Loops::ofParts).orElse(Map.of());
    }
}
