package turnheel.engine.grading;

import java.math.BigDecimal;
import java.math.BigInteger;

/**
 * A sum of squared relative deviations, exact: two ways to the same optimum must compare equal, and a double would
 * sometimes prefer one of them by its last bit.
 */
record Cost(BigInteger numerator, BigInteger denominator) implements Comparable<Cost> {

    static final Cost NONE = new Cost(BigInteger.ZERO, BigInteger.ONE);

    /** {@code ((count − ideal) / ideal)²}. */
    static Cost of(int count, double ideal) {
        BigDecimal exact = new BigDecimal(ideal);
        BigDecimal deviation = BigDecimal.valueOf(count).subtract(exact);
        int scale = Math.max(deviation.scale(), exact.scale());
        BigInteger top = deviation.setScale(scale).unscaledValue();
        BigInteger bottom = exact.setScale(scale).unscaledValue();
        return new Cost(top.multiply(top), bottom.multiply(bottom)).reduced();
    }

    Cost plus(Cost other) {
        return new Cost(numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
                denominator.multiply(other.denominator)).reduced();
    }

    private Cost reduced() {
        BigInteger common = numerator.gcd(denominator);
        return new Cost(numerator.divide(common), denominator.divide(common));
    }

    @Override
    public int compareTo(Cost other) {
        return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
    }
}
