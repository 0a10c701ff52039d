package turnheel.engine.grading;

import java.util.List;

import turnheel.engine.design.Count;
import turnheel.engine.design.Design;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.StitchPattern.Zone;

/**
 * A way to make counts fit, tried out.
 *
 * @param changes what is given up; more than one only where no single change is enough
 * @param graded the changed design, graded again
 * @param sizes what the sizes get, in their order; sizes that are not measured are absent
 * @param deviationPercent how far the counts lie from their ideals: the square root of the mean squared relative
 *     deviation, which is what the solver minimises
 */
public record Relaxation(List<Change> changes, Graded graded, List<SizeFit> sizes, double deviationPercent) {

    public Relaxation {
        changes = List.copyOf(changes);
        sizes = List.copyOf(sizes);
    }

    /** The changed design, to be taken over. */
    public Design design() {
        return graded.design();
    }

    /** What is given up, a sentence a change, for a person. */
    public List<String> sentences() {
        return changes.stream().map(RelaxationWords::of).toList();
    }

    /** One thing to give up. */
    public sealed interface Change {

        /** A round below the cuff may change the count, so that the leg need not be whole rib repeats. */
        record CuffAdjusts() implements Change {
        }

        /** A stitch pattern gets other edge stitches. */
        record Edge(Zone zone, int was, int becomes) implements Change {
        }

        /** A stitch pattern lies between plain stitches in place of whole repeats from side to side. */
        record Panel(Zone zone) implements Change {
        }

        /** The leg is counted from the ankle and not from the foot. */
        record LegFromAnkle() implements Change {
        }

        /** A round toe gets another number of shaping lines, and its tip with them. */
        record ToeLines(int was, int becomes) implements Change {
        }

        /** Sizes take the rule's number in place of the designer's own. */
        record OwnNumber(Parameter parameter, List<String> sizes) implements Change {
            public OwnNumber {
                sizes = List.copyOf(sizes);
            }
        }

        /**
         * Counts may lie further from their ideals.
         *
         * @param percent how far, of the ideal
         * @param counts the counts beyond the usual window, which become the designer's own
         */
        record Window(double percent, List<OwnCount> counts) implements Change {
            public Window {
                counts = List.copyOf(counts);
            }
        }
    }

    /** A count that one size takes over as the designer's own. */
    public record OwnCount(String size, Count count) {
    }
}
