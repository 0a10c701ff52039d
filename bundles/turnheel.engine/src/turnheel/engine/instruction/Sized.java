package turnheel.engine.instruction;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.jdt.annotation.Nullable;

/**
 * A value for each size of a pattern, as in {@code 56 (64, 72, 80)}.
 *
 * @param values one that all sizes share, or one for each size in the pattern's order; empty where a size does not
 *     have it, which print shows by a dash
 * @throws IllegalArgumentException when there is no value
 */
public record Sized<T>(List<Optional<T>> values) {

    public Sized {
        values = List.copyOf(values);
        if (values.isEmpty()) {
            throw new IllegalArgumentException("a sized value needs at least one value");
        }
    }

    /** The same for every size. */
    public static <T> Sized<T> all(T value) {
        return new Sized<>(List.of(Optional.of(value)));
    }

    /** One for each size; a single one where they agree. */
    public static <T> Sized<T> of(List<T> each) {
        return ofOptionals(each.stream().map(Optional::of).toList());
    }

    /** One for each size, where some may have none; a single one where they agree. */
    public static <T> Sized<T> ofOptionals(List<Optional<T>> each) {
        boolean agree = each.stream().distinct().count() == 1;
        return new Sized<>(agree ? Collections.singletonList(each.getFirst()) : each);
    }

    /** Whether it was given once for all sizes. */
    public boolean isShared() {
        return values.size() == 1;
    }

    /** Whether it can be the list of a pattern with that many sizes. */
    public boolean fits(int sizes) {
        return isShared() || values.size() == sizes;
    }

    /**
     * The value of a size; empty where that size does not have it.
     *
     * @param size its place in the pattern's order, from 0
     * @throws IndexOutOfBoundsException when the list is too short for it, see {@link #fits}
     */
    public Optional<T> get(int size) {
        return isShared() ? values.getFirst() : values.get(size);
    }

    /** The same list of other values. */
    public <R> Sized<R> map(Function<? super T, ? extends R> function) {
        return new Sized<R>(values.stream().map(value -> value.<R>map(function)).toList());
    }

    // written out since the compiler's null analysis refuses the generated one, depending on what else it has read
    // before
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Sized<?> sized && values.equals(sized.values());
    }

    @Override
    public int hashCode() {
        return values.hashCode();
    }
}
