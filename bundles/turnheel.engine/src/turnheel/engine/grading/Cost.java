package turnheel.engine.grading;

import java.math.BigInteger;

import org.eclipse.jdt.annotation.Nullable;

/**
 * A sum of squared relative deviations. Two ways to the same optimum must compare equal, and a double would sometimes
 * prefer one of them by its last bit: costs that doubles cannot tell apart for sure are compared as fractions.
 */
final class Cost implements Comparable<Cost> {

    static final Cost NONE = new Cost();
    private static final long PER_STITCH = 1_000_000_000;

    private final @Nullable Cost before;
    /** Deviation and ideal of the last summand, in billionths of a stitch: ideals have no more digits. */
    private final long deviation;
    private final long ideal;
    private final double rounded;
    private final int summands;
    private @Nullable Fraction exact;

    private record Fraction(BigInteger numerator, BigInteger denominator) implements Comparable<Fraction> {

        static final Fraction ZERO = new Fraction(BigInteger.ZERO, BigInteger.ONE);

        static Fraction square(long top, long bottom) {
            return new Fraction(BigInteger.valueOf(top).pow(2), BigInteger.valueOf(bottom).pow(2));
        }

        Fraction plus(Fraction other) {
            return denominator.equals(other.denominator) ? new Fraction(numerator.add(other.numerator), denominator)
                    : new Fraction(numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
                            denominator.multiply(other.denominator));
        }

        @Override
        public int compareTo(Fraction other) {
            return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
        }
    }

    private Cost() {
        this.before = null;
        this.deviation = 0;
        this.ideal = PER_STITCH;
        this.rounded = 0;
        this.summands = 0;
        this.exact = Fraction.ZERO;
    }

    private Cost(Cost before, int count, double ideal) {
        this.before = before;
        this.ideal = Math.round(ideal * PER_STITCH);
        this.deviation = count * PER_STITCH - this.ideal;
        double relative = (double) deviation / this.ideal;
        this.rounded = before.rounded + relative * relative;
        this.summands = before.summands + 1;
    }

    /** This and {@code ((count − ideal) / ideal)²}. */
    Cost plus(int count, double ideal) {
        return new Cost(this, count, ideal);
    }

    /** The sum, to the last digits of a double. */
    double rounded() {
        return rounded;
    }

    @Override
    public int compareTo(Cost other) {
        // No summand is below zero, so what was rounded off comes to a few units in the last place for each.
        double doubt = 4 * (Math.max(summands, other.summands) + 8) * Math.ulp(Math.max(rounded, other.rounded));
        return Math.abs(rounded - other.rounded) > doubt ? Double.compare(rounded, other.rounded)
                : exact().compareTo(other.exact());
    }

    private Fraction exact() {
        Fraction known = exact;
        if (known == null) {
            Fraction last = Fraction.square(deviation, ideal);
            Cost rest = before;
            known = rest == null ? last : rest.exact().plus(last);
            exact = known;
        }
        return known;
    }
}
