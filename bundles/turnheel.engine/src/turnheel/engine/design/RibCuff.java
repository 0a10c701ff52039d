package turnheel.engine.design;

/**
 * Ribbing of {@code knit} and {@code purl} stitches in turn.
 *
 * @throws IllegalArgumentException when either is not 1 to 12
 */
public record RibCuff(int knit, int purl, boolean mayAdjust) implements Cuff {

    private static final int WIDEST = 12;

    public RibCuff {
        if (knit < 1 || knit > WIDEST || purl < 1 || purl > WIDEST) {
            throw new IllegalArgumentException("a rib has 1 to %d knit and 1 to %d purl stitches, not %d×%d".formatted(
                    WIDEST, WIDEST, knit, purl));
        }
    }

    /** A rib that suits the leg as it is, without a round that changes the count. */
    public RibCuff(int knit, int purl) {
        this(knit, purl, false);
    }

    @Override
    public int repeat() {
        return knit + purl;
    }
}
