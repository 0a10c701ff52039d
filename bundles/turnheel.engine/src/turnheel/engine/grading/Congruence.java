package turnheel.engine.grading;

import java.util.Optional;

/**
 * The counts that something can reach: every {@code v ≡ residue (mod step)}.
 *
 * @throws IllegalArgumentException when step is below 1
 */
public record Congruence(int residue, int step) {

    public Congruence {
        if (step < 1) {
            throw new IllegalArgumentException("step (%d) must be at least 1".formatted(step));
        }
        residue = Math.floorMod(residue, step);
    }

    /** Every multiple of {@code step}. */
    public static Congruence multipleOf(int step) {
        return new Congruence(0, step);
    }

    public boolean contains(int count) {
        return Math.floorMod(count, step) == residue;
    }

    /** The largest reachable count not above {@code limit}. */
    public int atMost(double limit) {
        return residue + step * (int) Math.floor((limit - residue) / step);
    }

    /** The reachable count closest to {@code ideal}; a tie goes to the smaller, snugger one. */
    public int nearest(double ideal) {
        int below = atMost(ideal);
        return ideal - below <= below + step - ideal ? below : below + step;
    }

    /**
     * What both can reach: one congruence by the Chinese remainder theorem, or nothing when they exclude each other.
     *
     * @throws ArithmeticException when the common step does not fit an {@code int}
     */
    public Optional<Congruence> and(Congruence other) {
        int common = greatestCommonDivisor(step, other.step);
        if (Math.floorMod(residue - other.residue, common) != 0) {
            return Optional.empty();
        }
        int joint = Math.multiplyExact(step / common, other.step);
        // walk in the larger of the two steps: it meets the other's residue within the smaller one's number of strides
        Congruence coarse = step >= other.step ? this : other;
        Congruence fine = coarse == this ? other : this;
        long count = coarse.residue;
        while (Math.floorMod(count, fine.step) != fine.residue) {
            count += coarse.step;
        }
        return Optional.of(new Congruence((int) (count % joint), joint));
    }

    static int greatestCommonDivisor(int one, int other) {
        return other == 0 ? one : greatestCommonDivisor(other, one % other);
    }
}
