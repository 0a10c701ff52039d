package turnheel.engine.grading;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The counts that meet one need or several at once: {@code v ≡ residue (mod step)} for any one of the residues. A need
 * that leaves a choice, as whole repeats on the instep do, makes it more than one congruence; needs that exclude each
 * other make it empty.
 *
 * @param residues rising, without repetition
 */
record Lattice(int step, List<Integer> residues) {

    /** Every count. */
    static final Lattice ALL = new Lattice(1, List.of(0));

    Lattice {
        residues = List.copyOf(residues);
    }

    /** The counts of any one of these congruences. */
    static Lattice anyOf(Collection<Congruence> congruences) {
        int step = congruences.stream().mapToInt(Congruence::step).reduce(1,
                (one, other) -> Math.multiplyExact(one / Congruence.greatestCommonDivisor(one, other), other));
        return of(step, congruences.stream().flatMapToInt(congruence -> IntStream.iterate(congruence.residue(),
                residue -> residue < step, residue -> residue + congruence.step())));
    }

    /** The counts that meet all these needs, their fewest stitches left aside. */
    static Lattice ofAll(Collection<Need> needs) {
        Lattice joint = ALL;
        for (Need need : needs) {
            joint = joint.and(anyOf(need.counts()));
        }
        return joint;
    }

    /** Residues that lie evenly are one congruence of a smaller step: 0 and 2 mod 4 are the multiples of 2. */
    private static Lattice of(int step, IntStream residues) {
        List<Integer> rising = residues.sorted().distinct().boxed().toList();
        if (rising.size() > 1 && step % rising.size() == 0) {
            int gap = step / rising.size();
            int first = rising.getFirst();
            if (IntStream.range(0, rising.size()).allMatch(i -> rising.get(i) == first + i * gap)) {
                return new Lattice(gap, List.of(first));
            }
        }
        return new Lattice(step, rising);
    }

    /** What both reach. */
    Lattice and(Lattice other) {
        int joint = Math.multiplyExact(step / Congruence.greatestCommonDivisor(step, other.step), other.step);
        List<Integer> both = new ArrayList<>();
        for (int one : residues) {
            for (int two : other.residues) {
                new Congruence(one, step).and(new Congruence(two, other.step))
                        .ifPresent(congruence -> both.add(congruence.residue()));
            }
        }
        return of(joint, both.stream().mapToInt(Integer::intValue));
    }

    boolean isEmpty() {
        return residues.isEmpty();
    }

    boolean contains(int count) {
        return residues.contains(Math.floorMod(count, step));
    }

    /**
     * How far apart two neighbouring counts can lie: the step of one congruence, the widest of the gaps of several. Half
     * of it reaches a count from wherever an ideal lies, and two ideals that far apart never have the same nearest count.
     *
     * @throws IllegalStateException when it is empty
     */
    int widestGap() {
        requireCounts();
        int widest = residues.getFirst() + step - residues.getLast();
        for (int i = 1; i < residues.size(); i++) {
            widest = Math.max(widest, residues.get(i) - residues.get(i - 1));
        }
        return widest;
    }

    /** The largest count not above {@code limit}. */
    int atMost(double limit) {
        requireCounts();
        return residues.stream().mapToInt(residue -> new Congruence(residue, step).atMost(limit)).max().orElseThrow();
    }

    /** The smallest count not below {@code limit}. */
    int atLeast(double limit) {
        requireCounts();
        return residues.stream().mapToInt(residue -> -new Congruence(-residue, step).atMost(-limit)).min()
                .orElseThrow();
    }

    /** The count closest to {@code ideal}; a tie goes to the smaller, snugger one. */
    int nearest(double ideal) {
        int below = atMost(ideal);
        int above = atLeast(ideal);
        return ideal - below <= above - ideal ? below : above;
    }

    /** The counts from {@code least} to {@code most}, rising. */
    List<Integer> between(double least, double most) {
        List<Integer> counts = new ArrayList<>();
        if (!isEmpty()) {
            for (int count = atLeast(least); count <= most; count = atLeast(count + 1.0)) {
                counts.add(count);
            }
        }
        return counts;
    }

    private void requireCounts() {
        if (isEmpty()) {
            throw new IllegalStateException("needs that exclude each other have no count");
        }
    }
}
