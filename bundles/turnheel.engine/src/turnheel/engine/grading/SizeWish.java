package turnheel.engine.grading;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

import turnheel.engine.design.Catalogue;

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
    /** What lies beyond the range of the parameter is no sock, however far needs push a count. */
    private static final int MOST = (int) Catalogue.FOOT_STITCHES.most();
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

    /** Whether no count at all suits, in this size or any other. */
    boolean isExcluded() {
        return fixed.isEmpty() && lattice.isEmpty();
    }

    /** Half the width of the window around the ideal: from anywhere it reaches a count, domain § 2. */
    private double reach() {
        double share = deviation * ideal;
        return lattice.isEmpty() ? share : Math.max(share, lattice.widestGap() / 2.0);
    }

    /** Lower end of the window. */
    double least() {
        return Math.max(1, ideal - reach());
    }

    /** Upper end of the window. */
    double most() {
        return Math.min(MOST, ideal + reach());
    }

    boolean isInWindow(int count) {
        return count >= least() - SLACK && count <= most() + SLACK;
    }

    int fewest() {
        return needs.stream().mapToInt(Need::fewest).max().orElse(1);
    }

    /** The counts that may be picked, rising; none where the needs leave none in the window. */
    List<Integer> candidates() {
        return fixed.isPresent() ? List.of(fixed.getAsInt())
                : lattice.between(Math.max(fewest(), least() - SLACK), most() + SLACK);
    }

    /** The count that this size would take alone; where it has no candidates, one that meets what can be met. */
    int alone() {
        if (fixed.isPresent()) {
            return fixed.getAsInt();
        }
        SizeWish met = workable();
        int nearest = met.lattice.nearest(ideal);
        return nearest >= met.fewest() ? nearest : met.lattice.atLeast(met.fewest());
    }

    /**
     * The same where it has candidates. Else the same with as many of its needs as leave a count for a sock of up to
     * twice the ideal, the first before the others: repeats of 97 and of 89 stitches meet at 8 633 only.
     */
    SizeWish workable() {
        if (!free().candidates().isEmpty()) {
            return this;
        }
        List<Need> met = new ArrayList<>();
        for (Need need : needs) {
            met.add(need);
            SizeWish more = of(label, ideal, met);
            if (more.lattice.isEmpty() || more.lattice.atLeast(more.fewest()) > 2 * ideal) {
                met.removeLast();
            }
        }
        return new SizeWish(label, ideal, deviation, met, Lattice.ofAll(met), fixed);
    }

    /**
     * How many stitches this size must have more than the one before: 1 where the ideals differ by the widest gap of
     * either lattice or more, so that each could have its nearest count; 0 where they differ by less; any number where
     * the designer's order or own counts say otherwise.
     */
    int growthFrom(SizeWish before) {
        if (before.fixed.isPresent() && fixed.isPresent() || ideal < before.ideal) {
            return ANY_GROWTH;
        }
        return ideal - before.ideal >= Math.max(before.gap(), gap()) - SLACK ? 1 : 0;
    }

    private int gap() {
        return lattice.isEmpty() ? 0 : lattice.widestGap();
    }
}
