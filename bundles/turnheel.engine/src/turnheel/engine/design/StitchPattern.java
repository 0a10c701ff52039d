package turnheel.engine.design;

import java.util.Optional;

/**
 * A stitch pattern on a part of the sock, by its size alone.
 *
 * @param repeat stitches of one repeat, 1 to 200
 * @param edge stitches beside the repeats that balance them, 0 to 199
 * @param rows rows of one repeat, 1 to 400
 * @param fewestFiller plain stitches on each side of a panel, at least; 0 to 50
 * @param stranding how its second colour runs; empty for a pattern of one colour
 * @throws IllegalArgumentException when a number is out of range
 */
public record StitchPattern(Zone zone, int repeat, int edge, int rows, Fit fit, int fewestFiller,
        Optional<Stranding> stranding) {

    /** Where the pattern is worked. */
    public enum Zone {
        INSTEP, LEG, ALL
    }

    /** How it fits a count. */
    public enum Fit {
        /** The count is whole repeats and the edge: the pattern rules the count. */
        WHOLE_REPEATS,
        /** As many repeats as fit, in the centre, with plain stitches left and right: the count is free. */
        CENTRED_PANEL
    }

    private static final int WIDEST = 200;
    private static final int LONGEST = 400;
    private static final int MOST_FILLER = 50;

    public StitchPattern {
        require("repeat", repeat, 1, WIDEST);
        require("edge", edge, 0, WIDEST - 1);
        require("rows", rows, 1, LONGEST);
        require("filler", fewestFiller, 0, MOST_FILLER);
    }

    /** A pattern of one colour. */
    public StitchPattern(Zone zone, int repeat, int edge, int rows, Fit fit, int fewestFiller) {
        this(zone, repeat, edge, rows, fit, fewestFiller, Optional.empty());
    }

    /** The same pattern worked in two colours. */
    public StitchPattern with(Stranding strands) {
        return new StitchPattern(zone, repeat, edge, rows, fit, fewestFiller, Optional.of(strands));
    }

    private static void require(String what, int value, int least, int most) {
        if (value < least || value > most) {
            throw new IllegalArgumentException("the %s of a stitch pattern is %d to %d, not %d".formatted(what, least, most,
                    value));
        }
    }
}
