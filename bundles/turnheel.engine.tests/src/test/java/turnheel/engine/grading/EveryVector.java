package turnheel.engine.grading;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The count problem as domain § 2 puts it, solved by trying everything. Knows of a size only its ideal, how far it may
 * deviate, its needs and the designer's own count; shares no line with the solver.
 */
final class EveryVector {

    /** Far enough for all needs of the tests to repeat. */
    static final int FAR = 2 * SizeLists.LONGEST_PERIOD;

    private final List<SizeWish> sizes;
    private final List<List<Integer>> allowed;
    private final int[] gaps;
    private List<Integer> best = List.of();
    private BigDecimal[] bestCost = {};

    private EveryVector(List<SizeWish> sizes) {
        this.sizes = sizes;
        this.allowed = sizes.stream().map(EveryVector::allowed).toList();
        this.gaps = sizes.stream().mapToInt(EveryVector::widestGap).toArray();
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
        for (int count : allowed.get(counts.size())) {
            if (grows(counts, count)) {
                counts.add(count);
                extend(counts);
                counts.removeLast();
            }
        }
    }

    /** Whether every need has the count among those of one of its congruences; the fewest stitches left aside. */
    static boolean suits(List<Need> needs, int count) {
        return needs.stream().allMatch(need -> need.counts().stream()
                .anyMatch(congruence -> Math.floorMod(count - congruence.residue(), congruence.step()) == 0));
    }

    /** The widest gap between neighbouring counts that suit, seen by walking past them; 0 where none does. */
    static int widestGap(SizeWish size) {
        int widest = 0;
        int last = -1;
        for (int count = 0; count < FAR; count++) {
            if (suits(size.needs(), count)) {
                widest = last < 0 ? widest : Math.max(widest, count - last);
                last = count;
            }
        }
        return widest;
    }

    /** Every whole number that the size can have, found one by one. */
    static List<Integer> allowed(SizeWish size) {
        List<Integer> allowed = new ArrayList<>();
        double window = Math.max(size.deviation() * size.ideal(), widestGap(size) / 2.0) + 1e-9;
        for (int count = 1; count <= FAR; count++) {
            int candidate = count;
            boolean possible = suits(size.needs(), count)
                    && size.needs().stream().allMatch(need -> candidate >= need.fewest())
                    && Math.abs(count - size.ideal()) <= window;
            if (size.fixed().isPresent() ? count == size.fixed().getAsInt() : possible) {
                allowed.add(count);
            }
        }
        return allowed;
    }

    private boolean grows(List<Integer> counts, int count) {
        int index = counts.size();
        return index == 0 || mayFollow(sizes.get(index - 1), counts.getLast(), sizes.get(index), count,
                Math.max(gaps[index - 1], gaps[index]));
    }

    /** Strictly more where the sizes differ by a step or more, never fewer else; free where the designer says so. */
    static boolean mayFollow(SizeWish before, int countBefore, SizeWish size, int count, int step) {
        boolean designersOwn = before.fixed().isPresent() && size.fixed().isPresent();
        double growth = size.ideal() - before.ideal();
        if (designersOwn || growth < 0) {
            return true;
        }
        return growth + 1e-9 >= step ? count > countBefore : count >= countBefore;
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
            // the digits on paper, not those of the binary number behind them
            BigDecimal ideal = BigDecimal.valueOf(sizes.get(i).ideal());
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
