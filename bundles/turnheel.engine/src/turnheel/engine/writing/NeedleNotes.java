package turnheel.engine.writing;

import static turnheel.engine.writing.Phrase.filled;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;

import turnheel.engine.wording.HouseStyle.Needles;
import turnheel.engine.wording.Vocabulary;

/** On which needles the stitches of a round lie, for house styles that say so. */
final class NeedleNotes {

    /** A needle that holds fewer falls out; there the text leaves the division to the knitter. Common practice. */
    private static final int FEWEST_ON_A_NEEDLE = 2;

    private final Vocabulary vocabulary;
    private final Needles needles;
    private final SortedSet<Integer> sizes;

    NeedleNotes(Counts counts, Vocabulary vocabulary, Needles needles) {
        this.vocabulary = vocabulary;
        this.needles = needles;
        this.sizes = counts.all(1).atLeast(1);
    }

    /** The two halves of a round, where an odd stitch lies in the first. */
    List<List<Piece>> halves(String place, EachSize around) {
        EachSize second = around.half();
        return of(place, around.minus(second), second);
    }

    /**
     * A round in two parts, each on one needle or on two.
     *
     * @param place where the round is, as the keys of the vocabulary call it
     */
    List<List<Piece>> of(String place, EachSize first, EachSize second) {
        List<EachSize> parts = switch (needles) {
            case NEUTRAL -> List.of();
            case TWO -> List.of(first, second);
            case FOUR -> List.of(first.minus(first.half()), first.half(), second.minus(second.half()), second.half());
        };
        boolean divided = !parts.isEmpty() && parts.stream()
                .allMatch(part -> part.atLeast(FEWEST_ON_A_NEEDLE).containsAll(sizes));
        return divided ? List.of(note(place, first.plus(second), parts)) : List.of();
    }

    private List<Piece> note(String place, EachSize around, List<EachSize> parts) {
        List<EachSize> counts = new ArrayList<>(List.of(around));
        counts.addAll(parts);
        List<List<Piece>> told = counts.stream().map(count -> count.told(sizes).stream()
                .<Piece>map(Piece.Values::of).toList()).toList();
        return filled(vocabulary.phrase("needles." + needles + "." + place), told);
    }
}
