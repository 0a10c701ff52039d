package turnheel.engine.shaping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import turnheel.engine.checks.Checks;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Part;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.RandomDesigns;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.hands.Hands;
import turnheel.engine.hands.Loop;
import turnheel.engine.hands.Loop.Origin;
import turnheel.engine.query.Severity;

/** What shaping looks like on the needle. */
class ShapingLinesTest {

    /** Every section between two lines changes by one stitch at the same place, every round. */
    @Repeatable
    void everyLineOfARoundToeIsWhole(@ForAll("toes") Draft draft) {
        Graded graded = draft.graded();
        Assume.that(isSound(graded) && !(draft.toe() instanceof WedgeToe));
        GradedSize size = graded.sizes().getFirst();
        for (List<Origin> needle : needleAfterShaping(graded, size)) {
            List<List<Origin>> sections = cut(needle, (int) size.value(Catalogue.TOE_POINTS));
            assertEquals(1, new LinkedHashSet<>(sections).size(), () -> "sections differ: " + sections);
            assertEquals(1, changes(sections.getFirst()), sections.getFirst()::toString);
        }
    }

    /** Both sides change by two stitches, and each side is its own mirror image: ssk answers k2tog. */
    @Repeatable
    void theLinesOfAWedgeToeLeanTowardsEachOther(@ForAll("toes") Draft draft) {
        Graded graded = draft.graded();
        Assume.that(isSound(graded) && draft.toe() instanceof WedgeToe);
        for (List<Origin> needle : needleAfterShaping(graded, graded.sizes().getFirst())) {
            List<List<Origin>> sides = cut(needle, 2);
            assertEquals(sides.getFirst(), sides.getLast());
            assertEquals(2, changes(sides.getFirst()), sides.getFirst()::toString);
            assertEquals(sides.getFirst(),
                    sides.getFirst().reversed().stream().map(ShapingLinesTest::mirrored).toList());
            assertTrue(sides.getFirst().getFirst() == Origin.ONE_FROM_ONE, "no edge stitch");
        }
    }

    /** The counts of a toe from the cuff down are those of the toe-up one backwards. */
    @Repeatable
    void cuffDownIsToeUpBackwards(@ForAll("toes") Draft draft) {
        Graded toeUp = draft.with(Direction.TOE_UP).graded();
        Graded cuffDown = draft.with(Direction.CUFF_DOWN).graded();
        Assume.that(isSound(toeUp) && isSound(cuffDown));
        List<Integer> backwards = new ArrayList<>(counts(cuffDown, cuffDown.sizes().getFirst()));
        backwards.addFirst((int) cuffDown.sizes().getFirst().value(Catalogue.FOOT_STITCHES));
        backwards.remove(Integer.valueOf(0));
        assertEquals(List.copyOf(counts(toeUp, toeUp.sizes().getFirst())),
                List.copyOf(new LinkedHashSet<>(backwards)).reversed());
    }

    @Provide
    Arbitrary<Draft> toes() {
        return RandomDesigns.usual();
    }

    private static boolean isSound(Graded graded) {
        String first = graded.sizes().getFirst().label();
        return Checks.of(graded).stream()
                .noneMatch(query -> query.severity() == Severity.ERROR && query.sizes().contains(first));
    }

    private static List<Round> toe(Graded graded, GradedSize size) {
        return Rounds.of(graded, size).stream().filter(part -> part.part() == Part.TOE)
                .findFirst().orElseThrow().rounds();
    }

    private static Set<Integer> counts(Graded graded, GradedSize size) {
        Set<Integer> counts = new LinkedHashSet<>();
        toe(graded, size).forEach(round -> counts.add(round.stitches()));
        return counts;
    }

    private static List<List<Origin>> needleAfterShaping(Graded graded, GradedSize size) {
        boolean toeUp = graded.design().direction() == Direction.TOE_UP;
        Hands hands = Hands.holding(toeUp ? 0 : (int) size.value(Catalogue.FOOT_STITCHES));
        List<List<Origin>> after = new ArrayList<>();
        for (Round round : toe(graded, size)) {
            hands.round(round.steps());
            if (round.kind() == RoundKind.INCREASE || round.kind() == RoundKind.DECREASE) {
                after.add(hands.loops().stream().map(Loop::origin).toList());
            }
        }
        return after;
    }

    private static List<List<Origin>> cut(List<Origin> needle, int sections) {
        assertEquals(0, needle.size() % sections, () -> needle.size() + " loops in " + sections + " sections");
        int width = needle.size() / sections;
        List<List<Origin>> cut = new ArrayList<>();
        for (int i = 0; i < sections; i++) {
            cut.add(needle.subList(i * width, (i + 1) * width));
        }
        return cut;
    }

    private static long changes(List<Origin> section) {
        return section.stream().filter(origin -> origin != Origin.ONE_FROM_ONE).count();
    }

    private static Origin mirrored(Origin origin) {
        return switch (origin) {
            case JOINED_LEFT -> Origin.JOINED_RIGHT;
            case JOINED_RIGHT -> Origin.JOINED_LEFT;
            case NEW, ONE_FROM_ONE -> origin;
        };
    }
}
