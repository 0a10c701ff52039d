package turnheel.engine.grading;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;

/** Random size lists for the count solver. */
final class SizeLists {

    /** Needs repeat after this many stitches at most, so that walking over them sees all that there is to see. */
    static final int LONGEST_PERIOD = 480;

    private SizeLists() {
    }

    /** A size that can be worked on any count of the lattice from {@code fewest}. */
    static SizeWish size(String label, double ideal, Congruence lattice, int fewest) {
        return SizeWish.of(label, ideal, List.of(new Need(Need.Kind.TOE_LINES, List.of(lattice), fewest)));
    }

    /** Whole repeats on the instep: half of the count is repeats and edge, give or take a stitch. */
    static Need wholeRepeats(int repeat, int edge) {
        return new Need(Need.Kind.INSTEP_REPEATS, IntStream.rangeClosed(-1, 1)
                .mapToObj(offset -> new Congruence(2 * (edge - offset), 2 * repeat)).toList(), 2 * (edge + 1));
    }

    static Need multiples(Need.Kind kind, int step) {
        return new Need(kind, List.of(Congruence.multipleOf(step)), step);
    }

    /**
     * Up to {@code most} sizes on one lattice, mostly growing, some with a count of their own. Ideals are halves often
     * enough for ties.
     */
    static Arbitrary<List<SizeWish>> onOneLattice(int most) {
        Arbitrary<Congruence> lattices = Combinators.combine(Arbitraries.integers().between(0, 11),
                Arbitraries.of(1, 2, 3, 4, 6, 8, 12)).as(Congruence::new);
        return lattices.flatMap(lattice -> sizes(most, Arbitraries.just(List.of(needed(lattice)))));
    }

    /** The same with a lattice of its own for each size, which is how size lists become unsolvable. */
    static Arbitrary<List<SizeWish>> onManyLattices(int most) {
        return sizes(most, Arbitraries.of(2, 4, 6, 8, 10, 12, 22, 24)
                .map(step -> List.of(needed(Congruence.multipleOf(step)))));
    }

    /** Sizes of one sock with stitch pattern, toe, leg pattern and rib, whose needs may exclude each other. */
    static Arbitrary<List<SizeWish>> withStitchPatterns(int most) {
        return needs().flatMap(needs -> sizes(most, Arbitraries.just(needs)));
    }

    /** The needs of one sock, halves first. */
    static Arbitrary<List<Need>> needs() {
        Arbitrary<Need> instep = Combinators.combine(Arbitraries.integers().between(1, 16),
                Arbitraries.integers().between(0, 5)).as(SizeLists::wholeRepeats);
        Arbitrary<Need> others = Arbitraries.oneOf(
                Arbitraries.of(2, 3, 4, 5, 6, 8).map(lines -> multiples(Need.Kind.TOE_LINES, lines)),
                Arbitraries.integers().between(1, 12).map(repeat -> multiples(Need.Kind.LEG_REPEATS, repeat)),
                Arbitraries.of(2, 3, 4, 5).map(repeat -> multiples(Need.Kind.RIB, repeat)),
                // no part of today needs a remainder, but a part of tomorrow may
                Combinators.combine(Arbitraries.integers().between(0, 11), Arbitraries.of(2, 3, 4, 6))
                        .as((residue, step) -> needed(new Congruence(residue, step))));
        return Combinators.combine(instep.list().ofMaxSize(2), others.list().ofMaxSize(3)).as((patterns, rest) -> {
            List<Need> needs = new ArrayList<>(List.of(Need.HALVES));
            needs.addAll(patterns);
            needs.addAll(rest);
            return List.copyOf(needs);
        }).filter(needs -> period(needs) <= LONGEST_PERIOD);
    }

    /** After how many stitches the counts that meet the needs repeat. */
    private static long period(List<Need> needs) {
        return needs.stream().flatMap(need -> need.counts().stream()).mapToLong(Congruence::step).reduce(1,
                (one, other) -> BigInteger.valueOf(one).multiply(BigInteger.valueOf(other))
                    .divide(BigInteger.valueOf(one).gcd(BigInteger.valueOf(other))).longValueExact());
    }

    private static Need needed(Congruence counts) {
        return new Need(Need.Kind.TOE_LINES, List.of(counts), 1);
    }

    private static Arbitrary<List<SizeWish>> sizes(int most, Arbitrary<List<Need>> needs) {
        Arbitrary<Double> growth = Arbitraries.frequencyOf(
                Tuple.of(6, Arbitraries.integers().between(0, 30).map(halves -> halves / 2.0)),
                Tuple.of(3, Arbitraries.doubles().between(0, 12).ofScale(3)),
                Tuple.of(1, Arbitraries.doubles().between(-6, 0).ofScale(1)));
        Arbitrary<Integer> own = Arbitraries.frequencyOf(Tuple.of(7, Arbitraries.just(0)),
                Tuple.of(1, Arbitraries.integers().between(-6, 6)));
        Arbitrary<Growth> growths = Combinators.combine(growth, needs, Arbitraries.of(1, 8, 16), own).as(Growth::new);
        return Combinators.combine(Arbitraries.integers().between(24, 140).map(halves -> halves / 2.0),
                growths.list().ofMinSize(1).ofMaxSize(most)).as(SizeLists::sizes);
    }

    /** @param own 0 for none, else how far the designer's own count lies from the ideal */
    private record Growth(double more, List<Need> needs, int fewest, int own) {
    }

    private static List<SizeWish> sizes(double first, List<Growth> growths) {
        List<SizeWish> sizes = new ArrayList<>();
        double ideal = first;
        for (Growth growth : growths) {
            List<Need> needs = new ArrayList<>(growth.needs());
            needs.add(new Need(Need.Kind.RIB, List.of(Congruence.multipleOf(1)), growth.fewest()));
            SizeWish size = SizeWish.of("size " + (sizes.size() + 1), ideal, needs);
            sizes.add(growth.own() == 0 ? size : size.fixedAt((int) ideal + growth.own()));
            ideal = Math.max(4, ideal + growth.more());
        }
        return sizes;
    }
}
