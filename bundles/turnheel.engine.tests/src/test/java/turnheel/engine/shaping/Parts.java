package turnheel.engine.shaping;

import java.util.List;

import turnheel.engine.design.Part;
import turnheel.engine.fixture.Draft;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.writing.RoundText;

/** Short ways to the rounds of a part of a one-size design. */
final class Parts {

    private Parts() {
    }

    static List<Round> rounds(Draft draft, Part part) {
        Graded graded = draft.graded();
        return rounds(graded, graded.sizes().getFirst(), part);
    }

    static List<Round> rounds(Graded graded, GradedSize size, Part part) {
        return Rounds.of(graded, size).stream().filter(rounds -> rounds.part() == part).findFirst().orElseThrow().rounds();
    }

    /** The round with this number. */
    static Round round(Draft draft, Part part, int number) {
        return rounds(draft, part).stream().filter(round -> round.number() == number).findFirst().orElseThrow();
    }

    /** In words with the stitches after it, as in {@code k to end: 64}. */
    static List<String> inWords(List<Round> rounds) {
        return rounds.stream().map(round -> RoundText.of(round) + ": " + round.stitches()).toList();
    }
}
