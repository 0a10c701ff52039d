package turnheel.engine.yarn;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Materials;
import turnheel.engine.design.Part;
import turnheel.engine.design.YarnRows;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.grading.YarnPlan;
import turnheel.engine.shaping.PartRounds;
import turnheel.engine.shaping.Round;
import turnheel.engine.shaping.Rounds;
import turnheel.engine.term.Key;

/** How high a leg can be until the yarn ends. */
public final class LegFromYarn {

    private static final double MOST_GRAMS = 10_000;

    private LegFromYarn() {
    }

    /**
     * Rounds of the leg that {@code gramsLeft} of its yarn are enough for when its first one is about to be worked, and
     * what is worked in that yarn after the leg still has to be. A leg higher than planned goes on plain on its last
     * count. Nothing is added for safety.
     *
     * @param graded with its yarn rows
     * @param gramsLeft for this sock, 0 to 10 000
     * @return empty when the pattern has no yarn weight, or the size's rounds do not work out; 0 when the yarn does not
     *     even reach for the parts after the leg
     * @throws IllegalArgumentException when the weight is out of range or there is no such size
     */
    public static OptionalInt rounds(Graded graded, String sizeLabel, double gramsLeft) {
        if (!(gramsLeft >= 0 && gramsLeft <= MOST_GRAMS)) {
            throw new IllegalArgumentException("the grams left must lie between 0 and %.0f, not %s"
                    .formatted(MOST_GRAMS, gramsLeft));
        }
        GradedSize size = graded.size(sizeLabel);
        if (size.cell(Catalogue.YARN_TEX).isEmpty() || size.cell(Catalogue.YARN_SOCK_GRAMS).isEmpty()) {
            return OptionalInt.empty();
        }
        List<PartRounds> parts = Rounds.of(graded, size);
        YarnPlan plan = YarnPlan.of(graded.design());
        int yarn = plan.yarn(Part.LEG);
        int leg = parts.stream().map(PartRounds::part).toList().indexOf(Part.LEG);
        ToDoubleFunction<Key> numbers = numbers(parts, size);
        double metresPerLoop = size.value(Catalogue.YARN_LOOP_LENGTH) / 1000;
        double metresOfEnds = plan.endsFrom(Part.LEG, yarn) * Materials.YARN_END_MM / 1000;
        double loopsLeft = (gramsLeft * 1000 / tex(graded, size, yarn) - metresOfEnds) / metresPerLoop
                - parts.subList(leg + 1, parts.size()).stream()
                        .mapToDouble(part -> plan.loops(part.part(), yarn).evaluate(numbers)).sum();
        // of a stranded leg's loops each yarn takes the same share in every round; none is taken as left over
        Key loopsOfLeg = YarnPlan.loopsOf(Part.LEG).key();
        double share = plan.loops(Part.LEG, yarn).evaluate(key -> key.equals(loopsOfLeg) ? 1 : 0);
        return OptionalInt.of(rounds(parts.get(leg).rounds(), size, loopsLeft / share));
    }

    /** What the plan reads: the loops of the parts, and numbers of the size. */
    private static ToDoubleFunction<Key> numbers(List<PartRounds> parts, GradedSize size) {
        Map<Key, Double> loops = parts.stream()
                .collect(Collectors.toMap(part -> YarnPlan.loopsOf(part.part()).key(), Loops::plainLoops));
        return key -> loops.containsKey(key) ? loops.get(key) : size.cell(key).orElseThrow().value();
    }

    private static double tex(Graded graded, GradedSize size, int yarn) {
        if (graded.design().materials().yarns().size() < 2) {
            return size.value(Catalogue.YARN_TEX);
        }
        YarnRows rows = Catalogue.YARN_COLOURS.get(yarn - 1);
        return 1000 * size.value(rows.sockGrams()) / size.value(rows.sockMetres());
    }

    private static int rounds(List<Round> planned, GradedSize size, double loops) {
        double left = loops;
        int reached = 0;
        for (Round round : planned) {
            left -= Loops.plainLoops(round);
            if (left < 0) {
                return reached;
            }
            reached++;
        }
        double onTop = planned.isEmpty() ? size.value(Catalogue.LEG_STITCHES) : planned.getLast().stitches();
        return left <= 0 || onTop <= 0 ? reached : reached + (int) Math.floor(left / onTop);
    }
}
