package turnheel.engine.design;

import java.util.List;
import java.util.Optional;

/**
 * A stitch pattern on a part of the sock: its size, and its rows where they are known.
 *
 * @param repeat stitches of one repeat, 1 to 200
 * @param edge stitches beside the repeats that balance them, 0 to 199
 * @param rows rows of one repeat, 1 to 400
 * @param fewestFiller plain stitches on each side of a panel, at least; 0 to 50
 * @param stranding how its second colour runs; empty for a pattern of one colour
 * @param instructions its rows as a knitter reads them over all repeats and the edge, the first one first, such as
 *     {@code *K1, yo, ssk, k3; rep from * to last st, k1}; none where its size alone is known, otherwise one for each row
 * @throws IllegalArgumentException when a number is out of range, or the instructions are not one line for each row
 */
public record StitchPattern(Zone zone, int repeat, int edge, int rows, Fit fit, int fewestFiller,
        Optional<Stranding> stranding, List<String> instructions) {

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
    /** Characters; a row of 200 stitches that all differ is shorter. */
    private static final int LONGEST_LINE = 2000;

    public StitchPattern {
        require("repeat", repeat, 1, WIDEST);
        require("edge", edge, 0, WIDEST - 1);
        require("rows", rows, 1, LONGEST);
        require("filler", fewestFiller, 0, MOST_FILLER);
        instructions = List.copyOf(instructions);
        if (!instructions.isEmpty() && instructions.size() != rows) {
            throw new IllegalArgumentException("a stitch pattern of %d rows has as many lines of instructions, not %d"
                    .formatted(rows, instructions.size()));
        }
        for (int row = 0; row < instructions.size(); row++) {
            requireLine(row + 1, instructions.get(row));
        }
    }

    /** A pattern of one colour, by its size alone. */
    public StitchPattern(Zone zone, int repeat, int edge, int rows, Fit fit, int fewestFiller) {
        this(zone, repeat, edge, rows, fit, fewestFiller, Optional.empty(), List.of());
    }

    /** The same pattern worked in two colours. */
    public StitchPattern with(Stranding strands) {
        return new StitchPattern(zone, repeat, edge, rows, fit, fewestFiller, Optional.of(strands), instructions);
    }

    /** The same pattern with these rows; with none, by its size alone. */
    public StitchPattern withInstructions(List<String> lines) {
        return new StitchPattern(zone, repeat, edge, rows, fit, fewestFiller, stranding, lines);
    }

    private static void requireLine(int row, String line) {
        if (line.isBlank() || line.length() > LONGEST_LINE || line.chars().anyMatch(Character::isISOControl)) {
            String quoted = line.length() > LONGEST_LINE ? line.substring(0, LONGEST_LINE) : line;
            throw new IllegalArgumentException(
                    "row %d of a stitch pattern is one line of 1 to %d characters, not \"%s\"".formatted(row, LONGEST_LINE,
                            quoted));
        }
    }

    private static void require(String what, int value, int least, int most) {
        if (value < least || value > most) {
            throw new IllegalArgumentException("the %s of a stitch pattern is %d to %d, not %d".formatted(what, least, most,
                    value));
        }
    }
}
