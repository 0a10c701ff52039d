package turnheel.engine.grading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Picks the stitches around the foot for all sizes at once: the vector that minimises the sum of squared relative
 * deviations from the ideals, each count in its window and on its lattice, growing with the foot (domain § 2). It is a
 * shortest path over (size, candidate), so the answer is the best there is, not a greedy one; equal costs, compared
 * exactly, go to the lexicographically smaller vector.
 */
final class CountSolver {

    private static final int NO_GROWTH = -1;

    private CountSolver() {
    }

    /** The cheapest way to a candidate: all counts up to it and what they cost together. */
    private record Path(List<Integer> counts, Cost cost) implements Comparable<Path> {
        Path then(int count, double ideal) {
            List<Integer> longer = new ArrayList<>(counts);
            longer.add(count);
            return new Path(longer, cost.plus(Cost.of(count, ideal)));
        }

        @Override
        public int compareTo(Path other) {
            int byCost = cost.compareTo(other.cost);
            for (int i = 0; byCost == 0 && i < counts.size(); i++) {
                byCost = counts.get(i).compareTo(other.counts.get(i));
            }
            return byCost;
        }
    }

    static CountAnswer solve(List<SizeWish> sizes) {
        Optional<Path> best = best(sizes);
        return best.isPresent() ? new CountAnswer.Counts(best.get().counts())
                : new CountAnswer.Unsolvable(sizes.stream().map(SizeWish::alone).toList(), clashing(sizes));
    }

    /** The cheapest way through all sizes, when there is one. */
    private static Optional<Path> best(List<SizeWish> sizes) {
        List<Path> paths = List.of(new Path(List.of(), Cost.NONE));
        for (int i = 0; i < sizes.size(); i++) {
            SizeWish size = sizes.get(i);
            int growth = i == 0 ? NO_GROWTH : growth(sizes.get(i - 1), size);
            List<Path> longer = new ArrayList<>();
            for (int candidate : size.candidates()) {
                paths.stream().filter(path -> growth == NO_GROWTH || candidate - path.counts().getLast() >= growth)
                        .min(Path::compareTo).ifPresent(path -> longer.add(path.then(candidate, size.ideal())));
            }
            paths = longer;
        }
        return paths.stream().min(Path::compareTo);
    }

    /**
     * How many stitches the next size must have more: 1 where the feet differ by a whole step of the lattice, 0 where they
     * differ by less, nothing where the designer's order or own counts say otherwise.
     */
    private static int growth(SizeWish smaller, SizeWish larger) {
        if (smaller.fixed().isPresent() && larger.fixed().isPresent() || larger.ideal() < smaller.ideal()) {
            return NO_GROWTH;
        }
        int step = Math.max(smaller.lattice().step(), larger.lattice().step());
        return larger.ideal() - smaller.ideal() >= step - 1e-9 ? 1 : 0;
    }

    private static List<String> clashing(List<SizeWish> sizes) {
        for (int length = 1; length <= sizes.size(); length++) {
            for (int first = 0; first + length <= sizes.size(); first++) {
                List<SizeWish> run = sizes.subList(first, first + length);
                if (best(run).isEmpty()) {
                    return run.stream().map(SizeWish::label).toList();
                }
            }
        }
        throw new IllegalStateException("every run of sizes has counts, but all sizes together have none");
    }
}
