package turnheel.engine.grading;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;

/** Random size lists for the count solver. */
final class SizeLists {

    private SizeLists() {
    }

    /** A size that can be worked on any count of the lattice from {@code fewest}. */
    static SizeWish size(String label, double ideal, Congruence lattice, int fewest) {
        return new SizeWish(label, ideal, List.of(new Need(Need.Kind.TOE_LINES, lattice, fewest)), lattice,
                OptionalInt.empty());
    }

    static SizeWish fixed(SizeWish size, int count) {
        return new SizeWish(size.label(), size.ideal(), size.needs(), size.lattice(), OptionalInt.of(count));
    }

    /**
     * Up to {@code most} sizes on one lattice, mostly growing, some with a count of their own. Ideals are halves often
     * enough for ties.
     */
    static Arbitrary<List<SizeWish>> onOneLattice(int most) {
        Arbitrary<Congruence> lattices = Combinators.combine(Arbitraries.integers().between(0, 11),
                Arbitraries.of(1, 2, 3, 4, 6, 8, 12)).as(Congruence::new);
        return lattices.flatMap(lattice -> onLattices(most, Arbitraries.just(lattice)));
    }

    /** The same with a lattice of its own for each size, which is how size lists become unsolvable. */
    static Arbitrary<List<SizeWish>> onManyLattices(int most) {
        return onLattices(most, Arbitraries.of(2, 4, 6, 8, 10, 12, 22, 24).map(Congruence::multipleOf));
    }

    private static Arbitrary<List<SizeWish>> onLattices(int most, Arbitrary<Congruence> lattices) {
        Arbitrary<Double> growth = Arbitraries.frequencyOf(
                Tuple.of(6, Arbitraries.integers().between(0, 30).map(halves -> halves / 2.0)),
                Tuple.of(3, Arbitraries.doubles().between(0, 12).ofScale(3)),
                Tuple.of(1, Arbitraries.doubles().between(-6, 0).ofScale(1)));
        Arbitrary<Integer> own = Arbitraries.frequencyOf(Tuple.of(7, Arbitraries.just(0)),
                Tuple.of(1, Arbitraries.integers().between(-6, 6)));
        Arbitrary<Growth> growths = Combinators.combine(growth, lattices, Arbitraries.of(1, 8, 16), own)
                .as(Growth::new);
        return Combinators.combine(Arbitraries.integers().between(24, 140).map(halves -> halves / 2.0),
                growths.list().ofMinSize(1).ofMaxSize(most)).as(SizeLists::sizes);
    }

    /** @param own 0 for none, else how far the designer's own count lies from the ideal */
    private record Growth(double more, Congruence lattice, int fewest, int own) {
    }

    private static List<SizeWish> sizes(double first, List<Growth> growths) {
        List<SizeWish> sizes = new ArrayList<>();
        double ideal = first;
        for (Growth growth : growths) {
            SizeWish size = size("size " + (sizes.size() + 1), ideal, growth.lattice(), growth.fewest());
            sizes.add(growth.own() == 0 ? size : fixed(size, (int) ideal + growth.own()));
            ideal = Math.max(4, ideal + growth.more());
        }
        return sizes;
    }
}
