package turnheel.engine.grading;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * What the count solver knows of one size.
 *
 * @param ideal the unrounded count, above 0, to a billionth: 7 1/2 in with 10 % of ease at 8 sts/in are 54 on paper and
 *     54.00000000000001 in binary, which would make a tie fall to the larger count
 * @param needs what the parts need; all must be met, unless {@code fixed}
 * @param lattice what the needs come to together
 * @param fixed the designer's own count, which is honoured whatever it breaks
 */
record SizeWish(String label, double ideal, List<Need> needs, Congruence lattice, OptionalInt fixed) {

    /** Counts further than this from the ideal are no candidates: 8 %, domain § 2. */
    private static final double DEVIATION = 0.08;
    private static final double PER_UNIT = 1e9;

    SizeWish {
        needs = List.copyOf(needs);
        ideal = Math.rint(ideal * PER_UNIT) / PER_UNIT;
    }

    /** Half the width of the window around the ideal. */
    double reach() {
        return Math.max(DEVIATION * ideal, lattice.step() / 2.0);
    }

    int fewest() {
        return needs.stream().mapToInt(Need::fewest).max().orElse(1);
    }

    /** The counts that may be picked, rising; never empty unless the ideal is below what a part can be worked on. */
    List<Integer> candidates() {
        if (fixed.isPresent()) {
            return List.of(fixed.getAsInt());
        }
        // An ideal exactly between two counts has both within half a step of it, however the division came out.
        double slack = reach() + 1e-9;
        int first = lattice.atMost(ideal - slack);
        return IntStream.iterate(first, count -> count <= ideal + slack, count -> count + lattice.step())
                .filter(count -> count >= ideal - slack && count >= fewest()).boxed().toList();
    }

    /** The count that this size would take alone, whatever its window. */
    int alone() {
        if (fixed.isPresent()) {
            return fixed.getAsInt();
        }
        int nearest = lattice.nearest(ideal);
        return nearest >= fewest() ? nearest : lattice.atMost(fewest() + lattice.step() - 1.0);
    }
}
