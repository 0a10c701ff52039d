package turnheel.engine.comparing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;

import turnheel.engine.design.Size;

/**
 * Which sizes of two versions are the same: those of one label, and of the others those that kept their inner name when their
 * label changed.
 *
 * @param pairs in the order of the version before
 * @param added labels that only the version after has, in its order
 * @param dropped labels that only the version before had, in its order
 */
public record SizePairs(List<Pair> pairs, List<String> added, List<String> dropped) {

    /**
     * A size in both.
     *
     * @param before its place in the version before, from 0
     * @param after its place in the version after, from 0
     * @param label in the version before
     * @param newLabel in the version after
     */
    public record Pair(int before, int after, String label, String newLabel) {
    }

    public SizePairs {
        pairs = List.copyOf(pairs);
        added = List.copyOf(added);
        dropped = List.copyOf(dropped);
    }

    static SizePairs of(List<Size> before, List<Size> after) {
        List<Pair> pairs = new ArrayList<>();
        pair(before, after, (one, other) -> one.label().equals(other.label()), pairs);
        pair(before, after, (one, other) -> one.id().equals(other.id()), pairs);
        pairs.sort((one, other) -> Integer.compare(one.before(), other.before()));
        List<String> added = new ArrayList<>();
        List<String> dropped = new ArrayList<>();
        for (int size = 0; size < before.size(); size++) {
            if (!isPaired(pairs, size, true)) {
                dropped.add(before.get(size).label());
            }
        }
        for (int size = 0; size < after.size(); size++) {
            if (!isPaired(pairs, size, false)) {
                added.add(after.get(size).label());
            }
        }
        return new SizePairs(pairs, added, dropped);
    }

    private static void pair(List<Size> before, List<Size> after, BiPredicate<Size, Size> same, List<Pair> pairs) {
        for (int one = 0; one < before.size(); one++) {
            for (int other = 0; other < after.size(); other++) {
                if (!isPaired(pairs, one, true) && !isPaired(pairs, other, false)
                        && same.test(before.get(one), after.get(other))) {
                    pairs.add(new Pair(one, other, before.get(one).label(), after.get(other).label()));
                }
            }
        }
    }

    private static boolean isPaired(List<Pair> pairs, int place, boolean inBefore) {
        return pairs.stream().anyMatch(pair -> (inBefore ? pair.before() : pair.after()) == place);
    }

    /** Whether those in both stand in another order, so that every list of values has another. */
    public boolean areReordered() {
        for (int next = 1; next < pairs.size(); next++) {
            if (pairs.get(next).after() < pairs.get(next - 1).after()) {
                return true;
            }
        }
        return false;
    }

    /** Whether none was added, dropped or moved. */
    public boolean areTheSame() {
        return added.isEmpty() && dropped.isEmpty() && !areReordered();
    }
}
