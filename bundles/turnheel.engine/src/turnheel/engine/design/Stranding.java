package turnheel.engine.design;

import java.util.OptionalInt;

/**
 * Two colours in one round: where one is knitted, the other lies behind the fabric as a float.
 *
 * @param longestFloat stitches that the longest float passes behind, 1 to 200; empty while the designer has not said
 * @throws IllegalArgumentException outside this range
 */
public record Stranding(OptionalInt longestFloat) {

    private static final int MOST = 200;

    public Stranding {
        if (longestFloat.isPresent() && (longestFloat.getAsInt() < 1 || longestFloat.getAsInt() > MOST)) {
            throw new IllegalArgumentException("a float passes behind 1 to %d stitches, not %d".formatted(MOST,
                    longestFloat.getAsInt()));
        }
    }

    /** Floats of at most so many stitches. */
    public static Stranding withFloatsTo(int stitches) {
        return new Stranding(OptionalInt.of(stitches));
    }
}
