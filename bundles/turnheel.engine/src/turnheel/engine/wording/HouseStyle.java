package turnheel.engine.wording;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * How a publisher prints patterns: marks, words and units. It changes no number.
 *
 * @param name how it is asked for
 * @param marks how several values are listed
 * @param longestList the most characters of such a list in a line of text; a longer one is printed as a small table, which
 *     is no wider either. 0: any length
 * @param dash in place of what a size does not have
 * @param oneForAll whether a value on which all sizes agree is printed once
 * @param abbreviations whether stitches and other words of the trade are abbreviated
 * @param lengths which units lengths are printed in
 * @param decimal the mark before decimals
 * @param inchDenominator the finest fraction of an inch: 1, 2, 4 or 8
 * @param percentDecimals decimals of percentages, 0 to 2
 * @param needles for which needles the stitches of a round are divided
 * @param words phrases of {@code vocabulary.properties} that it replaces, by their keys
 */
public record HouseStyle(String name, ListMarks marks, int longestList, String dash, boolean oneForAll,
        boolean abbreviations, English english, Lengths lengths, String decimal, int inchDenominator,
        int percentDecimals, Needles needles, Map<String, String> words) {

    /** The fewest characters that {@link #longestList} can ask for: a size and a number must fit side by side. */
    public static final int NARROWEST = 16;
    /** The most. */
    public static final int WIDEST = 400;

    /** Whose usage and spelling. */
    public enum English {
        US, UK
    }

    /** Units of printed lengths; where both are printed, centimetres come first. */
    public enum Lengths {
        CENTIMETRES, INCHES, BOTH
    }

    /** Needles that a round lies on; neutral texts have markers alone, which they keep for any needles. */
    public enum Needles {
        NEUTRAL, TWO, FOUR
    }

    public HouseStyle {
        if (longestList != 0 && (longestList < NARROWEST || longestList > WIDEST)) {
            throw new IllegalArgumentException("longest list (%d) must be 0, or from %d to %d characters".formatted(
                    longestList, NARROWEST, WIDEST));
        }
        words = Collections.unmodifiableMap(new TreeMap<>(words));
    }

    /**
     * The same style for a column in a line of which so many characters find room.
     *
     * @param characters from {@link #NARROWEST} to {@link #WIDEST}
     */
    public HouseStyle inColumn(int characters) {
        return new HouseStyle(name, marks, characters, dash, oneForAll, abbreviations, english, lengths, decimal,
                inchDenominator, percentDecimals, needles, words);
    }

    /** A value for each size as it is printed, as in {@code 56 (64, 72, 80)}; empty where a size does not have it. */
    public String sized(List<Optional<String>> values) {
        return marks.list(shown(values));
    }

    /** The same for a layout: lines end nowhere but after a separator and between brackets. */
    public String unbroken(List<Optional<String>> values) {
        return marks.unbroken(shown(values));
    }

    private List<String> shown(List<Optional<String>> values) {
        List<String> shown = values.stream().map(value -> value.orElse(dash)).toList();
        return oneForAll && shown.stream().distinct().count() == 1 ? shown.subList(0, 1) : shown;
    }
}
