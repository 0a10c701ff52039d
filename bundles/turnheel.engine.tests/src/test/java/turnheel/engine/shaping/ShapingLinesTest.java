package turnheel.engine.shaping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import turnheel.engine.checks.Checks;
import turnheel.engine.design.AsymmetricToe;
import turnheel.engine.design.CastOn;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.Heel;
import turnheel.engine.design.Increase;
import turnheel.engine.design.Lean;
import turnheel.engine.design.Part;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.ShortRowToe;
import turnheel.engine.design.StarToe;
import turnheel.engine.design.Toe;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.RandomDesigns;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.hands.Hands;
import turnheel.engine.hands.Loop.Origin;
import turnheel.engine.hands.Loop;
import turnheel.engine.query.Severity;

/** What shaping looks like on the needle. */
class ShapingLinesTest {

    /** Every section between two lines changes by one stitch at the same place, every round. */
    @Repeatable
    void everyLineOfARoundOrStarToeIsWhole(@ForAll("roundOrStar") Draft draft) {
        Graded graded = draft.graded();
        Assume.that(isSound(graded));
        GradedSize size = graded.sizes().getFirst();
        for (List<Origin> needle : needleAfterShaping(graded, size)) {
            List<List<Origin>> sections = cut(needle, (int) size.value(Catalogue.TOE_POINTS));
            assertEquals(1, new LinkedHashSet<>(sections).size(), () -> "sections differ: " + sections);
            assertEquals(1, changes(sections.getFirst()), sections.getFirst()::toString);
        }
    }

    /** On the needle every line that leans left is the mirror image of one that leans right. */
    @Repeatable
    void theLeanOfASpiralIsMirrored(@ForAll("roundOrStar") Draft draft) {
        Graded right = draft.with(leaning(draft.toe(), Lean.RIGHT)).graded();
        Graded left = draft.with(leaning(draft.toe(), Lean.LEFT)).graded();
        Assume.that(isSound(right));
        List<List<Origin>> mirrored = needleAfterShaping(right, right.sizes().getFirst()).stream()
                // of one stitch knitted front and back, the new loop lies behind either way
                .map(needle -> knittedFrontAndBackOfOne(draft, needle, right) ? needle
                        : needle.reversed().stream().map(ShapingLinesTest::mirrored).toList()).toList();
        assertEquals(mirrored, needleAfterShaping(left, left.sizes().getFirst()));
    }

    private static Toe leaning(Toe toe, Lean lean) {
        return switch (toe) {
            case RoundToe round -> new RoundToe(round.lines(), round.increase(), round.castOn(), lean);
            case StarToe star -> new StarToe(star.increase(), star.castOn(), lean);
            case WedgeToe wedge -> throw new AssertionError(wedge);
            case AsymmetricToe wedge -> throw new AssertionError(wedge);
            case ShortRowToe cup -> throw new AssertionError(cup);
        };
    }

    private static boolean knittedFrontAndBackOfOne(Draft draft, List<Origin> needle, Graded graded) {
        Increase increase = draft.toe() instanceof RoundToe round ? round.increase()
                : ((StarToe) draft.toe()).increase();
        return draft.direction() == Direction.TOE_UP && increase == Increase.FRONT_AND_BACK
                && needle.size() == 2 * graded.sizes().getFirst().value(Catalogue.TOE_POINTS);
    }

    /** Both sides change by two stitches, and each side is its own mirror image: ssk answers k2tog. */
    @Repeatable
    void theLinesOfAWedgeToeLeanTowardsEachOther(@ForAll("wedges") Draft draft) {
        Graded graded = draft.graded();
        Assume.that(isSound(graded));
        for (List<Origin> needle : needleAfterShaping(graded, graded.sizes().getFirst())) {
            List<List<Origin>> sides = cut(needle, 2);
            assertEquals(sides.getFirst(), sides.getLast());
            assertEquals(2, changes(sides.getFirst()), sides.getFirst()::toString);
            assertEquals(sides.getFirst(),
                    sides.getFirst().reversed().stream().map(ShapingLinesTest::mirrored).toList());
            assertTrue(sides.getFirst().getFirst() == Origin.ONE_FROM_ONE, "no edge stitch");
        }
    }

    /** The little toe's line lies in the middle of the round; while it is alone, nothing else changes. */
    @Repeatable
    void theLineOfTheLittleToeShapesInEveryShapingRound(@ForAll("asymmetric") Draft draft) {
        Graded graded = draft.graded();
        Assume.that(isSound(graded));
        GradedSize size = graded.sizes().getFirst();
        List<List<Origin>> shaped = needleAfterShaping(graded, size);
        int alone = (int) size.value(Catalogue.TOE_SECOND_LINE_AFTER);
        List<List<Origin>> fromTheFoot = draft.direction() == Direction.TOE_UP ? shaped.reversed() : shaped;
        for (int i = 0; i < fromTheFoot.size(); i++) {
            List<Origin> needle = fromTheFoot.get(i);
            assertEquals(i < alone ? 2 : 4, changes(needle), needle::toString);
            assertEquals(needle, needle.reversed().stream().map(ShapingLinesTest::mirrored).toList());
            // two stitches in the middle, and the changes on either side of them
            int middle = needle.size() / 2;
            assertEquals(2, changes(needle.subList(middle - 2, middle + 2)), needle::toString);
        }
    }

    /** k2tog before the instep and ssk after it, a knit stitch between; increases right beside it. */
    @Repeatable
    void theGussetShapesBesideTheInstep(@ForAll("flaps") Draft draft) {
        Graded graded = draft.graded();
        Assume.that(isSound(graded));
        GradedSize size = graded.sizes().getFirst();
        boolean toeUp = draft.direction() == Direction.TOE_UP;
        int heel = (int) size.value(Catalogue.HEEL_STITCHES);
        int instep = (int) size.value(toeUp ? Catalogue.FOOT_STITCHES : Catalogue.LEG_STITCHES) - heel;
        Hands hands = Hands.holding((int) size.value(toeUp ? Catalogue.FOOT_STITCHES : Catalogue.HEEL_AFTER_PICK_UP));
        for (Round round : Parts.rounds(graded, size, Part.FOOT)) {
            hands.round(round.steps());
            List<Origin> needle = hands.loops().stream().map(Loop::origin).toList();
            if (round.kind() == RoundKind.INCREASE) {
                assertEquals(2, changes(needle));
                assertEquals(List.of(Origin.NEW, Origin.NEW), List.of(needle.get(instep), needle.getLast()));
            } else if (round.kind() == RoundKind.DECREASE) {
                assertEquals(2, changes(needle));
                int before = needle.indexOf(Origin.JOINED_RIGHT);
                assertEquals(before + instep + 3, needle.indexOf(Origin.JOINED_LEFT), needle::toString);
                // rounds begin in the middle of the sole
                int after = needle.size() - 1 - needle.indexOf(Origin.JOINED_LEFT);
                assertTrue(Math.abs(before - after) <= 1, needle::toString);
            }
        }
    }

    /**
     * The counts of a toe from the cuff down are those of the toe-up one backwards; a star of even sections for its
     * cast-on's sake is another toe cuff-down.
     */
    @Repeatable
    void cuffDownIsToeUpBackwards(@ForAll("toes") Draft draft) {
        Graded toeUp = draft.with(Direction.TOE_UP).graded();
        Graded cuffDown = draft.with(Direction.CUFF_DOWN).graded();
        Assume.that(isSound(toeUp) && isSound(cuffDown) && !(draft.toe() instanceof ShortRowToe)
                && !(draft.toe() instanceof StarToe star && star.castOn() == CastOn.HALF_WORKED));
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

    @Provide
    Arbitrary<Draft> roundOrStar() {
        return toes(RoundToe.class, StarToe.class);
    }

    @Provide
    Arbitrary<Draft> wedges() {
        return toes(WedgeToe.class);
    }

    @Provide
    Arbitrary<Draft> asymmetric() {
        return toes(AsymmetricToe.class);
    }

    @Provide
    Arbitrary<Draft> flaps() {
        List<Heel> flaps = Designs.EVERY_HEEL.stream().filter(FlapHeel.class::isInstance).toList();
        return Combinators.combine(RandomDesigns.usual(), Arbitraries.of(flaps)).as(Draft::with);
    }

    /** Designs with toes of these kinds; round toes on any number of lines. */
    private static Arbitrary<Draft> toes(Class<?>... kinds) {
        Arbitrary<Toe> toes = Arbitraries.of(Designs.EVERY_TOE.stream()
                .filter(toe -> List.of(kinds).contains(toe.getClass())).toList());
        Arbitrary<Toe> onAnyLines = Combinators.combine(toes, Arbitraries.integers().between(2, 12))
                .as((toe, lines) -> toe instanceof RoundToe round
                        ? new RoundToe(lines, round.increase(), round.castOn(), round.lean()) : toe);
        return Combinators.combine(RandomDesigns.usual(), onAnyLines).as(Draft::with);
    }

    private static boolean isSound(Graded graded) {
        String first = graded.sizes().getFirst().label();
        return Checks.of(graded).stream()
                .noneMatch(query -> query.severity() == Severity.ERROR && query.sizes().contains(first));
    }

    private static List<Round> toe(Graded graded, GradedSize size) {
        return Parts.rounds(graded, size, Part.TOE);
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
            if (round.kind() == RoundKind.SET_UP) {
                hands.restOfRound(round.steps());
            } else {
                hands.round(round.steps());
            }
            boolean adjusts = round.number() == 0;
            if (!adjusts && (round.kind() == RoundKind.INCREASE || round.kind() == RoundKind.DECREASE)) {
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
