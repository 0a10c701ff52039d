package turnheel.engine.grading;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The count problem as domain § 2 puts it, solved by trying everything. Knows of a size only its ideal, its lattice,
 * the fewest stitches that it can be worked on and the designer's own count; shares no line with the solver.
 */
final class EveryVector {

    private final List<SizeWish> sizes;
    private List<Integer> best = List.of();
    private BigDecimal[] bestCost = {};

    private EveryVector(List<SizeWish> sizes) {
        this.sizes = sizes;
    }

    /** The best counts; of several equally good ones the lexicographically smallest. Empty when there are none. */
    static Optional<List<Integer>> best(List<SizeWish> sizes) {
        EveryVector search = new EveryVector(sizes);
        search.extend(new ArrayList<>());
        return sizes.isEmpty() || !search.best.isEmpty() ? Optional.of(search.best) : Optional.empty();
    }

    /** Labels of the first of the shortest runs of neighbours that have no counts. */
    static List<String> shortestRunWithout(List<SizeWish> sizes) {
        for (int length = 1; length <= sizes.size(); length++) {
            for (int from = 0; from + length <= sizes.size(); from++) {
                List<SizeWish> run = sizes.subList(from, from + length);
                if (best(run).isEmpty()) {
                    return run.stream().map(SizeWish::label).toList();
                }
            }
        }
        return List.of();
    }

    private void extend(List<Integer> counts) {
        if (counts.size() == sizes.size()) {
            keepIfBetter(counts);
            return;
        }
        for (int count : allowed(sizes.get(counts.size()))) {
            if (grows(counts, count)) {
                counts.add(count);
                extend(counts);
                counts.removeLast();
            }
        }
    }

    /** Every whole number that suits the size, found one by one. */
    static List<Integer> allowed(SizeWish size) {
        List<Integer> allowed = new ArrayList<>();
        for (int count = 1; count <= 400; count++) {
            double window = Math.max(0.08 * size.ideal(), size.lattice().step() / 2.0) + 1e-9;
            boolean suits = Math.floorMod(count - size.lattice().residue(), size.lattice().step()) == 0
                    && count >= size.needs().getFirst().fewest() && Math.abs(count - size.ideal()) <= window;
            if (size.fixed().isPresent() ? count == size.fixed().getAsInt() : suits) {
                allowed.add(count);
            }
        }
        return allowed;
    }

    private boolean grows(List<Integer> counts, int count) {
        int next = counts.size();
        return next == 0 || mayFollow(sizes.get(next - 1), counts.getLast(), sizes.get(next), count);
    }

    /** Strictly more where the sizes differ by a step or more, never fewer else; free where the designer says so. */
    static boolean mayFollow(SizeWish before, int countBefore, SizeWish size, int count) {
        boolean designersOwn = before.fixed().isPresent() && size.fixed().isPresent();
        double growth = size.ideal() - before.ideal();
        if (designersOwn || growth < 0) {
            return true;
        }
        boolean byAStep = growth + 1e-9 >= Math.max(before.lattice().step(), size.lattice().step());
        return byAStep ? count > countBefore : count >= countBefore;
    }

    private void keepIfBetter(List<Integer> counts) {
        BigDecimal[] cost = cost(sizes, counts);
        if (best.isEmpty() || compare(cost, bestCost) < 0) {
            best = List.copyOf(counts);
            bestCost = cost;
        }
    }

    /** The sum of squared relative deviations as an exact fraction: above and below the line. */
    static BigDecimal[] cost(List<SizeWish> sizes, List<Integer> counts) {
        BigDecimal above = BigDecimal.ZERO;
        BigDecimal below = BigDecimal.ONE;
        for (int i = 0; i < counts.size(); i++) {
            BigDecimal ideal = new BigDecimal(sizes.get(i).ideal());
            BigDecimal off = BigDecimal.valueOf(counts.get(i)).subtract(ideal);
            above = above.multiply(ideal).multiply(ideal).add(off.multiply(off).multiply(below));
            below = below.multiply(ideal).multiply(ideal);
        }
        return new BigDecimal[] {above, below};
    }

    static int compare(BigDecimal[] one, BigDecimal[] other) {
        return one[0].multiply(other[1]).compareTo(other[0].multiply(one[1]));
    }
}
