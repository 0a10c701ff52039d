package turnheel.engine.design;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a pair is made of, as far as somebody has decided it.
 *
 * @param yarn empty while it is not chosen; the metres are estimated all the same
 * @param balls how many the pattern states for a pair; empty when it states none, else at least 1
 * @param swatch a weighed one replaces the estimate by geometry
 * @param margin what is added to the need of a pair, 0 to 100 %
 * @throws IllegalArgumentException outside these ranges
 */
public record Materials(Optional<Yarn> yarn, OptionalInt balls, Optional<Swatch> swatch, Share margin) {

    /** Enough for swatch, repairs and a knitter looser than the sample: <em>common practice</em>. */
    public static final Share USUAL_MARGIN = new Share(10);

    /** What is woven in at each end of the yarn, in mm: <em>common practice</em>. */
    public static final double YARN_END_MM = 150;

    /** Nothing decided. */
    public static final Materials UNDECIDED = new Materials(Optional.empty(), OptionalInt.empty(), Optional.empty(),
            USUAL_MARGIN);

    /** Metres or grams beyond this are a slip of the pen. */
    static final double MOST = 10_000;

    public Materials {
        if (balls.isPresent() && balls.getAsInt() < 1) {
            throw new IllegalArgumentException("a pair takes at least 1 ball, not %d".formatted(balls.getAsInt()));
        }
        if (!(margin.percent() >= 0 && margin.percent() <= 100)) {
            throw new IllegalArgumentException("the yarn's margin must lie between 0 and 100 %%, not %s"
                    .formatted(margin));
        }
    }

    /** This yarn and the usual margin. */
    public static Materials of(Yarn yarn) {
        return UNDECIDED.with(yarn);
    }

    public Materials with(Yarn other) {
        return new Materials(Optional.of(other), balls, swatch, margin);
    }

    public Materials with(Swatch other) {
        return new Materials(yarn, balls, Optional.of(other), margin);
    }

    public Materials with(Share other) {
        return new Materials(yarn, balls, swatch, other);
    }

    public Materials withBalls(int stated) {
        return new Materials(yarn, OptionalInt.of(stated), swatch, margin);
    }
}
