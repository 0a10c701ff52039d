package turnheel.engine.grading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import turnheel.engine.grading.CountAnswer.Conflict;

/** Says why sizes have no counts, as briefly as the truth allows. */
final class CountConflicts {

    private CountConflicts() {
    }

    /**
     * What stands in the way of counts: needs that exclude each other where there are such, else the sizes without any
     * count in their window, else the shortest run of neighbours without counts that grow, of several the first.
     *
     * @throws IllegalStateException when the sizes have counts
     */
    static List<Conflict> of(List<SizeWish> sizes) {
        List<Conflict> excluding = excluding(sizes);
        List<Conflict> alone = excluding.isEmpty() ? outOfReach(sizes) : excluding;
        return alone.isEmpty() ? List.of(new Conflict.Crowded(shortestRun(sizes))) : alone;
    }

    private static List<Conflict> excluding(List<SizeWish> sizes) {
        Map<List<Need>, List<String>> sizesOf = new LinkedHashMap<>();
        sizes.stream().filter(SizeWish::isExcluded).forEach(size ->
            sizesOf.computeIfAbsent(smallestExcluding(size.needs()), needs -> new ArrayList<>()).add(size.label()));
        List<Conflict> conflicts = new ArrayList<>();
        sizesOf.forEach((needs, labels) -> conflicts.add(new Conflict.Excluding(labels, needs)));
        return conflicts;
    }

    /** Of the sets of needs that no count meets one of the smallest; of several the first in the order of the needs. */
    private static List<Need> smallestExcluding(List<Need> needs) {
        for (int size = 1; size <= needs.size(); size++) {
            Optional<List<Need>> found = excluding(needs, size, Lattice.ALL);
            if (found.isPresent()) {
                return found.get();
            }
        }
        throw new IllegalStateException("all needs together have counts");
    }

    private static Optional<List<Need>> excluding(List<Need> needs, int size, Lattice metSoFar) {
        if (size == 0) {
            return metSoFar.isEmpty() ? Optional.of(List.of()) : Optional.empty();
        }
        for (int i = 0; i + size <= needs.size(); i++) {
            Need need = needs.get(i);
            Optional<List<Need>> others = excluding(needs.subList(i + 1, needs.size()), size - 1,
                    metSoFar.and(Lattice.anyOf(need.counts())));
            if (others.isPresent()) {
                List<Need> found = new ArrayList<>(List.of(need));
                found.addAll(others.get());
                return Optional.of(found);
            }
        }
        return Optional.empty();
    }

    private static List<Conflict> outOfReach(List<SizeWish> sizes) {
        List<Conflict> conflicts = new ArrayList<>();
        for (SizeWish size : sizes) {
            if (size.candidates().isEmpty()) {
                conflicts.add(new Conflict.OutOfReach(size.label(), size.least(), size.most(), nearest(size)));
            }
        }
        return conflicts;
    }

    private static int nearest(SizeWish size) {
        int nearest = size.lattice().nearest(size.ideal());
        return nearest >= size.fewest() ? nearest : size.lattice().atLeast(size.fewest());
    }

    private static List<String> shortestRun(List<SizeWish> sizes) {
        List<List<Integer>> candidates = sizes.stream().map(SizeWish::candidates).toList();
        List<SizeWish> shortest = List.of();
        for (int first = 0; first < sizes.size(); first++) {
            int end = endOfCounts(sizes, candidates, first);
            if (end < sizes.size() && (shortest.isEmpty() || end + 1 - first < shortest.size())) {
                shortest = sizes.subList(first, end + 1);
            }
        }
        if (shortest.isEmpty()) {
            throw new IllegalStateException("the sizes have counts");
        }
        return shortest.stream().map(SizeWish::label).toList();
    }

    /**
     * The first size from {@code first} on at which a run of neighbours is without counts. The smallest count that each
     * size can have leaves the most room to the next, so nothing else need be tried.
     */
    private static int endOfCounts(List<SizeWish> sizes, List<List<Integer>> candidates, int first) {
        int count = 0;
        for (int i = first; i < sizes.size(); i++) {
            int growth = i == first ? SizeWish.ANY_GROWTH : sizes.get(i).growthFrom(sizes.get(i - 1));
            int before = count;
            Optional<Integer> smallest = candidates.get(i).stream().filter(candidate -> candidate - before >= growth)
                    .findFirst();
            if (smallest.isEmpty()) {
                return i;
            }
            count = smallest.get();
        }
        return sizes.size();
    }
}
