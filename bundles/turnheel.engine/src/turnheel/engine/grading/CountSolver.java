package turnheel.engine.grading;

import java.util.ArrayList;
import java.util.LinkedList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jdt.annotation.Nullable;

/**
 * Picks the stitches around the foot for all sizes at once: the vector that minimises the sum of squared relative
 * deviations from the ideals, each count in its window and on its lattice, growing with the foot (domain § 2). It is a
 * shortest path over (size, candidate), so the answer is the best there is, not a greedy one; equal costs, compared
 * exactly, go to the lexicographically smaller vector. Each candidate is visited once: those of a size are in rising
 * order, so the predecessors of a larger one are those of the smaller one and some more.
 */
final class CountSolver {

    private CountSolver() {
    }

    /** The cheapest way to a candidate, told backwards. Ways share their beginnings. */
    private record Path(@Nullable Path before, int count, Cost cost) implements Comparable<Path> {

        static final Path START = new Path(null, 0, Cost.NONE);

        Path then(int next, double ideal) {
            return new Path(this, next, cost.plus(next, ideal));
        }

        List<Integer> counts() {
            LinkedList<Integer> counts = new LinkedList<>();
            for (Path path = this; path != null && path != START; path = path.before()) {
                counts.addFirst(path.count());
            }
            return counts;
        }

        @Override
        public int compareTo(Path other) {
            int byCost = cost.compareTo(other.cost);
            return byCost != 0 ? byCost : firstDifference(this, other);
        }

        private static int firstDifference(Path one, Path other) {
            int difference = 0;
            Path here = one;
            Path there = other;
            // backwards, so the last difference seen is the first of the two vectors
            while (here != there && here != null && there != null) {
                int atThisSize = Integer.compare(here.count(), there.count());
                difference = atThisSize != 0 ? atThisSize : difference;
                here = here.before();
                there = there.before();
            }
            return difference;
        }
    }

    static CountAnswer solve(List<SizeWish> sizes) {
        Optional<List<Integer>> best = best(sizes);
        if (best.isPresent()) {
            return new CountAnswer.Counts(best.get());
        }
        List<Integer> counts = best(sizes.stream().map(SizeWish::workable).toList())
                .orElseGet(() -> sizes.stream().map(SizeWish::alone).toList());
        return new CountAnswer.Unsolvable(counts, CountConflicts.of(sizes));
    }

    /** The best counts, where there are any. */
    private static Optional<List<Integer>> best(List<SizeWish> sizes) {
        List<Path> paths = List.of(Path.START);
        for (int i = 0; i < sizes.size(); i++) {
            SizeWish size = sizes.get(i);
            int growth = i == 0 ? SizeWish.ANY_GROWTH : size.growthFrom(sizes.get(i - 1));
            paths = extended(paths, size, growth);
        }
        return paths.stream().min(Path::compareTo).map(Path::counts);
    }

    /** The cheapest way to every candidate of the next size; like {@code paths} in the order of their last counts. */
    private static List<Path> extended(List<Path> paths, SizeWish size, int growth) {
        List<Path> longer = new ArrayList<>();
        Path cheapest = null;
        int reached = 0;
        for (int candidate : size.candidates()) {
            while (reached < paths.size() && candidate - paths.get(reached).count() >= growth) {
                Path path = paths.get(reached);
                cheapest = cheapest == null || path.compareTo(cheapest) < 0 ? path : cheapest;
                reached++;
            }
            if (cheapest != null) {
                longer.add(cheapest.then(candidate, size.ideal()));
            }
        }
        return longer;
    }
}
