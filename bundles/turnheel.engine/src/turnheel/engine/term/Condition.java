package turnheel.engine.term;

/** A comparison of two terms, as it stands in {@link Term.If}. */
public record Condition(Term left, Comparison comparison, Term right) {

    /** How two numbers are compared; the comparison is exact. */
    public enum Comparison {
        LESS, AT_MOST, EQUAL, AT_LEAST, MORE;

        public boolean holds(double left, double right) {
            return switch (this) {
                case LESS -> left < right;
                case AT_MOST -> left <= right;
                case EQUAL -> left == right;
                case AT_LEAST -> left >= right;
                case MORE -> left > right;
            };
        }
    }
}
