package turnheel.engine.yarn;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Materials;
import turnheel.engine.design.Part;
import turnheel.engine.grading.Cell;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.shaping.PartRounds;
import turnheel.engine.shaping.Round;
import turnheel.engine.shaping.Rounds;

/** How high a leg can be until the yarn ends. */
public final class LegFromYarn {

    private static final double MOST_GRAMS = 10_000;

    private LegFromYarn() {
    }

    /**
     * Rounds of the leg that {@code gramsLeft} are enough for when its first one is about to be worked, and the parts
     * after the leg still have to be. A leg higher than planned goes on plain on its last count. Nothing is added for
     * safety.
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
        Optional<Cell> tex = size.cell(Catalogue.YARN_TEX);
        if (tex.isEmpty() || size.cell(Catalogue.YARN_SOCK_GRAMS).isEmpty()) {
            return OptionalInt.empty();
        }
        List<PartRounds> parts = Rounds.of(graded, size);
        int leg = parts.stream().map(PartRounds::part).toList().indexOf(Part.LEG);
        double metresPerLoop = size.value(Catalogue.YARN_LOOP_LENGTH) / 1000;
        double loopsLeft = (gramsLeft * 1000 / tex.get().value() - metresOfEnds(size)) / metresPerLoop
                - parts.subList(leg + 1, parts.size()).stream().flatMap(part -> part.rounds().stream())
                        .mapToDouble(Loops::plainLoops).sum();
        return OptionalInt.of(rounds(parts.get(leg).rounds(), size, loopsLeft));
    }

    /** All ends of the sock are still to come but the one at its beginning. */
    private static double metresOfEnds(GradedSize size) {
        double ends = size.value(Catalogue.YARN_SOCK_METRES)
                - size.value(Catalogue.YARN_PLAIN_LOOPS) * size.value(Catalogue.YARN_LOOP_LENGTH) / 1000;
        return Math.max(0, ends - Materials.YARN_END_MM / 1000);
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
