package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.GAUGE_ROUNDS;
import static turnheel.engine.design.Catalogue.TOE_PLAIN_MOST;
import static turnheel.engine.design.Catalogue.TOE_POINTS;
import static turnheel.engine.design.Catalogue.WANTED_LENGTH;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

import turnheel.engine.design.Direction;
import turnheel.engine.design.StarToe;
import turnheel.engine.term.Key;
import turnheel.engine.term.Terms;

/**
 * Picks sections and plain rounds of a star toe together: the pair whose rounds come nearest to 0.23 of the finished
 * length. Only sections that divide the foot are compared, or all where none does; of equal pairs the one with sections
 * nearest to eight, then the fewer plain rounds. Domain § 3.
 */
final class StarToeChoice {

    private static final int USUAL_SECTIONS = 8;
    private static final List<Key> BASIS = List.of(FOOT_STITCHES.key(), WANTED_LENGTH.key(), GAUGE_ROUNDS.key());

    private record Pair(int sections, int plainMost, double rounds) {
    }

    private StarToeChoice() {
    }

    /** Sets both numbers of a size whose foot has its count; what the designer set stays. */
    static void choose(SizeSheet sheet, StarToe toe, Direction direction) {
        OptionalDouble length = sheet.value(WANTED_LENGTH);
        OptionalDouble foot = sheet.value(FOOT_STITCHES);
        if (length.isEmpty() || foot.isEmpty()) {
            return;
        }
        double ideal = StarToeRules.USUAL_SHARE * length.getAsDouble() * sheet.value(GAUGE_ROUNDS).orElseThrow() / 100;
        int around = (int) Math.rint(foot.getAsDouble());
        int[] sections = sheet.override(TOE_POINTS).stream().mapToInt(own -> (int) own).toArray();
        Pair best = best(around, ideal, sections.length > 0 ? sections : sections(around, toe, direction),
                sheet.override(TOE_PLAIN_MOST));
        Reason.Fitted reason = new Reason.Fitted(ideal, best.rounds(), BASIS);
        sheet.choose(TOE_POINTS, best.sections(), reason);
        sheet.choose(TOE_PLAIN_MOST, best.plainMost(), reason);
    }

    private static Pair best(int foot, double ideal, int[] sections, OptionalDouble ownPlain) {
        int[] plain = ownPlain.isPresent() ? new int[] {(int) ownPlain.getAsDouble()}
                : IntStream.rangeClosed(1, StarToeRules.MOST_PLAIN).toArray();
        return IntStream.of(sections).boxed()
                .flatMap(lines -> IntStream.of(plain).mapToObj(most -> new Pair(lines, most, rounds(foot / lines, most))))
                .min(Comparator.comparingDouble((Pair pair) -> Math.abs(pair.rounds() - ideal))
                        .thenComparingInt(pair -> Math.abs(pair.sections() - USUAL_SECTIONS))
                        .thenComparingInt(Pair::plainMost))
                .orElseThrow();
    }

    private static int[] sections(int foot, StarToe toe, Direction direction) {
        int[] all = IntStream.rangeClosed(StarToeRules.FEWEST_SECTIONS, StarToeRules.MOST_SECTIONS)
                .filter(lines -> lines % toe.sectionStep(direction) == 0).toArray();
        // on a foot too small for any, the checks ask
        int[] roomy = firstUnlessEmpty(IntStream.of(all)
                .filter(lines -> foot / lines >= toe.fewestInSection(direction)).toArray(), all);
        return firstUnlessEmpty(IntStream.of(roomy).filter(lines -> foot % lines == 0).toArray(), roomy);
    }

    private static int[] firstUnlessEmpty(int[] first, int[] second) {
        return first.length > 0 ? first : second;
    }

    private static double rounds(int section, int plainMost) {
        return StarToeRules.rounds(Terms.number(section), Terms.number(plainMost)).evaluate(key -> Double.NaN);
    }
}
