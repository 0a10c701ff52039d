package turnheel.engine.grading;

import java.util.List;
import java.util.OptionalInt;

/**
 * What the count solver knows of one size.
 *
 * @param ideal the unrounded count, above 0, to a billionth: 7 1/2 in with 10 % of ease at 8 sts/in are 54 on paper and
 *     54.00000000000001 in binary, which would make a tie fall to the larger count
 * @param deviation how far from the ideal a count may lie, as a share of it
 * @param needs what the parts need; all must be met, unless {@code fixed}
 * @param lattice what the needs come to together; empty when they exclude each other
 * @param fixed the designer's own count, which is honoured whatever it breaks
 */
record SizeWish(String label, double ideal, double deviation, List<Need> needs, Lattice lattice, OptionalInt fixed) {

    /** Growth between two sizes of which the second may also be smaller. */
    static final int ANY_GROWTH = Integer.MIN_VALUE;
    /** Counts further than this from the ideal are no candidates: 8 %, domain § 2. */
    static final double USUAL_DEVIATION = 0.08;
    private static final double PER_UNIT = 1e9;
    /** An ideal exactly between two counts has both within half a gap of it, however the division came out. */
    private static final double SLACK = 1e-9;

    SizeWish {
        needs = List.copyOf(needs);
        ideal = Math.rint(ideal * PER_UNIT) / PER_UNIT;
        if (!(ideal > 0)) {
            throw new IllegalArgumentException("the ideal of size %s (%s) must be above 0".formatted(label, ideal));
        }
    }

    static SizeWish of(String label, double ideal, List<Need> needs) {
        return new SizeWish(label, ideal, USUAL_DEVIATION, needs, Lattice.ofAll(needs), OptionalInt.empty());
    }

    SizeWish fixedAt(int count) {
        return new SizeWish(label, ideal, deviation, needs, lattice, OptionalInt.of(count));
    }

    SizeWish free() {
        return new SizeWish(label, ideal, deviation, needs, lattice, OptionalInt.empty());
    }

    SizeWish within(double otherDeviation) {
        return new SizeWish(label, ideal, otherDeviation, needs, lattice, fixed);
    }

    /** The same, without those needs that exclude what the needs before them ask for. */
    SizeWish withWhatCanBeMet() {
        Lattice met = Lattice.ALL;
        for (Need need : needs) {
            Lattice narrower = met.and(Lattice.anyOf(need.counts()));
            met = narrower.isEmpty() ? met : narrower;
        }
        return new SizeWish(label, ideal, deviation, needs, met, fixed);
    }

    /** Whether no count at all suits, in this size or any other. */
    boolean isExcluded() {
        return fixed.isEmpty() && lattice.isEmpty();
    }

    /** Half the width of the window around the ideal: from anywhere it reaches a count, domain § 2. */
    double reach() {
        double share = deviation * ideal;
        return lattice.isEmpty() ? share : Math.max(share, lattice.widestGap() / 2.0);
    }

    boolean isInWindow(int count) {
        return Math.abs(count - ideal) <= reach() + SLACK;
    }

    int fewest() {
        return needs.stream().mapToInt(Need::fewest).max().orElse(1);
    }

    /** The counts that may be picked, rising; none where needs exclude each other or ask for more than the window holds. */
    List<Integer> candidates() {
        return fixed.isPresent() ? List.of(fixed.getAsInt())
                : lattice.between(Math.max(fewest(), ideal - reach() - SLACK), ideal + reach() + SLACK);
    }

    /** The count that this size would take alone, whatever its window; of needs that exclude each other it meets the first. */
    int alone() {
        if (fixed.isPresent()) {
            return fixed.getAsInt();
        }
        Lattice met = lattice.isEmpty() ? withWhatCanBeMet().lattice() : lattice;
        int nearest = met.nearest(ideal);
        return nearest >= fewest() ? nearest : met.atLeast(fewest());
    }

    /**
     * How many stitches this size must have more than the one before: 1 where the ideals differ by the widest gap of either
     * lattice or more, so that each could have its nearest count; 0 where they differ by less; any number where the
     * designer's order or own counts say otherwise.
     */
    int growthFrom(SizeWish before) {
        if (before.fixed.isPresent() && fixed.isPresent() || ideal < before.ideal) {
            return ANY_GROWTH;
        }
        return ideal - before.ideal >= Math.max(before.gap(), gap()) - SLACK ? 1 : 0;
    }

    private int gap() {
        return lattice.isEmpty() ? withWhatCanBeMet().lattice().widestGap() : lattice.widestGap();
    }
}
