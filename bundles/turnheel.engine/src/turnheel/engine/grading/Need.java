package turnheel.engine.grading;

import java.util.List;

/**
 * What one part needs of the stitches around the foot.
 *
 * @param kind who needs it
 * @param counts the counts that meet it: those of any one of these congruences
 * @param fewest the smallest count that it can be worked on
 */
public record Need(Kind kind, List<Congruence> counts, int fewest) {

    /** Instep and sole are halves of the round, or near it by whole stitches. */
    static final Need HALVES = new Need(Kind.HALVES, List.of(Congruence.multipleOf(2)), 2);

    /** Who needs it. */
    public enum Kind {
        /** Instep and sole are halves of the round. */
        HALVES,
        /** Every shaping line of the toe gains the same number of stitches. */
        TOE_LINES,
        /** The instep is whole repeats of its stitch pattern and the edge. */
        INSTEP_REPEATS,
        /** The leg is whole repeats of its stitch pattern. */
        LEG_REPEATS,
        /** The leg is whole rib repeats, so that the cuff needs no adjusting round. */
        RIB
    }

    public Need {
        counts = List.copyOf(counts);
        if (counts.isEmpty()) {
            throw new IllegalArgumentException("the %s need at least one congruence".formatted(kind));
        }
    }

    boolean isMetBy(int count) {
        return count >= fewest && counts.stream().anyMatch(congruence -> congruence.contains(count));
    }
}
