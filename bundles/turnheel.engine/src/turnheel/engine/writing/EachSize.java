package turnheel.engine.writing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.IntBinaryOperator;
import java.util.function.IntPredicate;
import java.util.function.IntUnaryOperator;

import turnheel.engine.instruction.Sized;

/** A count for each size of a pattern; absent where a size has none. Arithmetic on an absent count is absent. */
record EachSize(List<Optional<Integer>> counts) {

    EachSize {
        counts = List.copyOf(counts);
    }

    /** The same in all sizes. */
    static EachSize all(int sizes, int count) {
        List<Optional<Integer>> counts = new ArrayList<>();
        for (int size = 0; size < sizes; size++) {
            counts.add(Optional.of(count));
        }
        return new EachSize(counts);
    }

    Optional<Integer> of(int size) {
        return counts.get(size);
    }

    EachSize plus(EachSize other) {
        return with(other, Integer::sum);
    }

    EachSize minus(EachSize other) {
        return with(other, (one, less) -> one - less);
    }

    EachSize times(EachSize other) {
        return with(other, (one, factor) -> one * factor);
    }

    EachSize least(EachSize other) {
        return with(other, Math::min);
    }

    EachSize plus(int more) {
        return map(count -> count + more);
    }

    EachSize minus(int fewer) {
        return map(count -> count - fewer);
    }

    EachSize times(int factor) {
        return map(count -> count * factor);
    }

    /** The same, with another count where it is absent. */
    EachSize orElse(EachSize other) {
        List<Optional<Integer>> result = new ArrayList<>();
        for (int size = 0; size < counts.size(); size++) {
            int its = size;
            result.add(of(size).or(() -> other.of(its)));
        }
        return new EachSize(result);
    }

    /** So many fewer in some sizes. */
    EachSize without(Set<Integer> sizes, int fewer) {
        List<Optional<Integer>> result = new ArrayList<>();
        for (int size = 0; size < counts.size(); size++) {
            int less = sizes.contains(size) ? fewer : 0;
            result.add(of(size).map(count -> count - less));
        }
        return new EachSize(result);
    }

    /** Half of it; of an odd count the smaller half. */
    EachSize half() {
        return map(count -> Math.floorDiv(count, 2));
    }

    EachSize map(IntUnaryOperator change) {
        return new EachSize(counts.stream().map(count -> count.map(change::applyAsInt)).toList());
    }

    EachSize with(EachSize other, IntBinaryOperator both) {
        List<Optional<Integer>> result = new ArrayList<>();
        for (int size = 0; size < counts.size(); size++) {
            Optional<Integer> second = other.of(size);
            result.add(of(size).flatMap(one -> second.map(two -> both.applyAsInt(one, two))));
        }
        return new EachSize(result);
    }

    /** The sizes whose count is there and meets the condition. */
    SortedSet<Integer> where(IntPredicate condition) {
        SortedSet<Integer> sizes = new TreeSet<>();
        for (int size = 0; size < counts.size(); size++) {
            if (of(size).filter(condition::test).isPresent()) {
                sizes.add(size);
            }
        }
        return sizes;
    }

    /** The sizes whose count is at least this. */
    SortedSet<Integer> atLeast(int least) {
        return where(count -> count >= least);
    }

    /** The greatest count of any size; 0 where there is none. */
    int greatest() {
        return counts.stream().flatMap(Optional::stream).mapToInt(Integer::intValue).max().orElse(0);
    }

    /**
     * As it is told to some sizes: one value where they agree, else a list in which the other sizes have none.
     *
     * @return empty where none of them has one
     */
    Optional<Sized<Integer>> told(SortedSet<Integer> sizes) {
        return told(counts, sizes);
    }

    /** The same of any values, one for each size. */
    static <T> Optional<Sized<T>> told(List<Optional<T>> values, SortedSet<Integer> sizes) {
        List<Optional<T>> theirs = sizes.stream().map(values::get).distinct().toList();
        if (theirs.stream().noneMatch(Optional::isPresent)) {
            return Optional.empty();
        }
        if (theirs.size() == 1) {
            return Optional.of(Sized.all(theirs.getFirst().orElseThrow()));
        }
        List<Optional<T>> listed = new ArrayList<>();
        for (int size = 0; size < values.size(); size++) {
            listed.add(sizes.contains(size) ? values.get(size) : Optional.empty());
        }
        return Optional.of(Sized.ofOptionals(listed));
    }

    /** The same, absent where it is 0 or less. */
    EachSize ifAny() {
        return new EachSize(counts.stream().map(count -> count.filter(value -> value > 0)).toList());
    }
}
