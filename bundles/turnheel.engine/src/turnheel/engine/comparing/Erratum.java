package turnheel.engine.comparing;

import java.util.Optional;

/** Something that reads otherwise in print. */
public sealed interface Erratum {

    /** Where it stands in the version before. */
    Place place();

    /**
     * A printed place.
     *
     * @param chapter the heading that it stands under; empty before the first
     * @param line the whole line as it is printed for all sizes
     */
    record Place(String chapter, String line) {
    }

    /**
     * A number, or another value, of one size.
     *
     * @param size its label in the version before
     * @param lead the word before it in the line as that size reads it, with the blank between; empty at its start
     * @param reads as printed, be it a dash
     * @param shouldRead as printed in the version after
     * @param trail the word after it, with the blank between; empty at its end
     */
    record Value(Place place, String size, String lead, String reads, String shouldRead, String trail)
            implements Erratum {
    }

    /**
     * Whole lines, for all sizes, since more than a value differs.
     *
     * @param place of what it reads; where it reads nothing, of the line before
     * @param reads empty where the line is missing
     * @param shouldRead empty where the line must go
     */
    record Passage(Place place, Optional<String> reads, Optional<String> shouldRead) implements Erratum {
    }
}
