package turnheel.engine.shaping;

import java.util.Optional;

import turnheel.engine.design.Part;

/**
 * Where a knitter may be: after a round, or somewhere in a stretch of rounds that look alike.
 *
 * @param first the round just worked, or the first that it may be
 * @param last the last that it may be; the same as {@code first} where there is no doubt
 * @param rounds how many rounds it may be, at least 1
 * @param next what is worked after {@code last}; empty at the end of the sock
 */
public record Place(Part part, Round first, Round last, int rounds, Optional<Next> next) {

    /** The round after a place, which may be the first of the next part. */
    public record Next(Part part, Round round) {
    }

    /** What the knitter sees there. */
    public Sign sign() {
        return Sign.after(first);
    }

    /** Stitches on the needle, open yarn-overs included; in flat rows all loops of the part. */
    public int stitches() {
        return first.stitches();
    }

    /** How many of them are open yarn-overs. */
    public int openYarnOvers() {
        return first.openYarnOvers();
    }

    /** Stitches that the round adds where positive, takes where negative. */
    public int change() {
        return first.steps().stream().mapToInt(step -> step.leaves() - step.takes()).sum();
    }
}
