package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.FOOT_STITCHES;
import static turnheel.engine.design.Catalogue.GAUGE_ROUNDS;
import static turnheel.engine.design.Catalogue.TOE_PLAIN_MOST;
import static turnheel.engine.design.Catalogue.TOE_POINTS;
import static turnheel.engine.design.Catalogue.WANTED_LENGTH;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import turnheel.engine.term.Key;
import turnheel.engine.term.Terms;

/**
 * Picks sections and plain rounds of a star toe together: the pair whose rounds come nearest to 0.23 of the finished
 * length. All sizes have the same number of sections, so that one text serves them all, where one number divides every
 * foot and leaves every toe as deep as usual; of several such numbers the one whose toes together come nearest. Where
 * there is none, each size picks for itself: only sections that divide its foot are compared, or all where none does.
 * Sections have at least three stitches where the foot has enough, since two have no plain round between. Of equals the
 * sections nearest to eight win, then the fewer plain rounds. Domain § 3.
 */
final class StarToeChoice {

    private static final int USUAL_SECTIONS = 8;
    private static final int FEWEST_STITCHES = 3;
    private static final List<Key> BASIS = List.of(FOOT_STITCHES.key(), WANTED_LENGTH.key(), GAUGE_ROUNDS.key());


    private record Pair(int sections, int plainMost, double rounds) {
    }

    /** A toe that is to be shaped, with the rounds that would be ideal. */
    private record Toe(SizeSheet sheet, int foot, double ideal, int step) {

        /** Empty where the foot is not measured. */
        static Optional<Toe> of(SizeSheet sheet, int step) {
            OptionalDouble length = sheet.value(WANTED_LENGTH);
            OptionalDouble foot = sheet.value(FOOT_STITCHES);
            if (length.isEmpty() || foot.isEmpty()) {
                return Optional.empty();
            }
            double rounds = length.getAsDouble() * sheet.value(GAUGE_ROUNDS).orElseThrow() / 100;
            return Optional.of(new Toe(sheet, (int) Math.rint(foot.getAsDouble()), ToeDepth.AIM * rounds, step));
        }

        boolean hasOwnSections() {
            return sheet.override(TOE_POINTS).isPresent();
        }

        boolean hasRoomFor(int sections) {
            return foot / sections >= FEWEST_STITCHES;
        }

        boolean isDividedBy(int sections) {
            return foot % sections == 0 && hasRoomFor(sections);
        }

        /** What is compared where the size picks for itself. */
        IntStream ownSections() {
            IntPredicate suit = Stream.<IntPredicate>of(this::isDividedBy, this::hasRoomFor)
                    .filter(better -> sections(step, better).findAny().isPresent()).findFirst().orElse(sections -> true);
            return sections(step, suit);
        }

        /** The best pair of these sections; what the designer set stays. */
        Pair best(IntStream sections) {
            OptionalDouble own = sheet.override(TOE_PLAIN_MOST);
            int[] plain = own.isPresent() ? new int[] {(int) own.getAsDouble()}
                    : IntStream.rangeClosed(1, StarToeRules.MOST_PLAIN).toArray();
            return sections.boxed()
                    .flatMap(lines -> IntStream.of(plain)
                            .mapToObj(most -> new Pair(lines, most, rounds(foot / lines, most))))
                    .min(Comparator.comparingDouble((Pair pair) -> Math.abs(pair.rounds() - ideal))
                            .thenComparingInt(pair -> Math.abs(pair.sections() - USUAL_SECTIONS))
                            .thenComparingInt(Pair::plainMost))
                    .orElseThrow();
        }

        /** Whether the toe at its best is as deep as usual, in either direction: without the set-up round. */
        boolean isUsual(int sections) {
            double share = best(IntStream.of(sections)).rounds() / ideal * ToeDepth.AIM;
            return share >= ToeDepth.SHALLOWEST && share <= ToeDepth.DEEPEST;
        }

        double cost(int sections) {
            double off = (best(IntStream.of(sections)).rounds() - ideal) / ideal;
            return off * off;
        }

        void take(Pair pair) {
            Reason.Fitted reason = new Reason.Fitted(ideal, pair.rounds(), BASIS);
            sheet.choose(TOE_POINTS, pair.sections(), reason);
            sheet.choose(TOE_PLAIN_MOST, pair.plainMost(), reason);
        }
    }

    private StarToeChoice() {
    }

    /**
     * Sets both numbers of every size whose foot has its count; what the designer set stays.
     *
     * @param step what a number of sections is a multiple of
     */
    static void choose(List<SizeSheet> sheets, int step) {
        List<Toe> toes = sheets.stream().flatMap(sheet -> Toe.of(sheet, step).stream()).toList();
        List<Toe> free = toes.stream().filter(toe -> !toe.hasOwnSections()).toList();
        OptionalInt common = common(free, step);
        for (Toe toe : toes) {
            if (toe.hasOwnSections()) {
                toe.take(toe.best(IntStream.of((int) toe.sheet().override(TOE_POINTS).getAsDouble())));
            } else if (common.isPresent()) {
                toe.take(toe.best(IntStream.of(common.getAsInt())));
            } else {
                toe.take(toe.best(toe.ownSections()));
            }
        }
    }

    private static OptionalInt common(List<Toe> toes, int step) {
        IntPredicate suits = lines -> toes.stream().allMatch(toe -> toe.isDividedBy(lines) && toe.isUsual(lines));
        ToDoubleFunction<Integer> cost = lines -> toes.stream().mapToDouble(toe -> toe.cost(lines)).sum();
        return sections(step, suits).boxed()
                .min(Comparator.comparingDouble(cost).thenComparingInt(lines -> Math.abs(lines - USUAL_SECTIONS)))
                .map(OptionalInt::of).orElse(OptionalInt.empty());
    }

    private static IntStream sections(int step, IntPredicate suit) {
        return IntStream.rangeClosed(StarToeRules.FEWEST_SECTIONS, StarToeRules.MOST_SECTIONS)
                .filter(lines -> lines % step == 0).filter(suit);
    }

    private static double rounds(int section, int plainMost) {
        return StarToeRules.rounds(Terms.number(section), Terms.number(plainMost)).evaluate(key -> Double.NaN);
    }
}
