package turnheel.engine.yarn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Cuff;
import turnheel.engine.design.Design;
import turnheel.engine.design.Heel;
import turnheel.engine.design.Leg;
import turnheel.engine.design.Materials;
import turnheel.engine.design.Part;
import turnheel.engine.design.Share;
import turnheel.engine.design.Swatch;
import turnheel.engine.design.Toe;
import turnheel.engine.fixture.Deep;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.RandomDesigns;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.fixture.Spreadsheet;
import turnheel.engine.grading.Cell;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.grading.Grader;
import turnheel.engine.grading.Reason;
import turnheel.engine.grading.Source;
import turnheel.engine.grading.Why;
import turnheel.engine.stitch.Stitch;
import turnheel.engine.term.Key;

class YarnRowsTest {

    private static final Materials BOUGHT = Materials.of(Socks.SOCK_YARN);
    private static final Draft SOCK = Designs.toeUp64();

    static Stream<Design> oneOfEach() {
        return Socks.oneOfEach();
    }

    @Test
    void haveAFixtureForEveryKind() {
        assertCovers(Toe.class, Socks.TOES);
        assertCovers(Heel.class, Socks.HEELS);
        assertCovers(Leg.class, Socks.LEGS);
        assertCovers(Cuff.class, Socks.CUFFS);
    }

    private static void assertCovers(Class<?> kind, List<?> fixtures) {
        assertEquals(Set.of(kind.getPermittedSubclasses()),
                fixtures.stream().map(Object::getClass).collect(Collectors.toSet()));
    }

    @Test
    void countTheSockByHand() {
        GradedSize size = Socks.m(SOCK, BOUGHT);
        // 8 cast on and one set-up round; 12, 16 and 20 every round, one plain, 24 to 64 in pairs of rounds
        int toe = 8 + 8 + 12 + 16 + 20 + 20 + 2 * 11 * (24 + 64) / 2;
        int foot = 52 * 64;
        // rows of 31 to 10 stitches and of 10 to 31, each of the latter with one stitch and its wraps; 22 + 20 wraps
        int heel = 22 * (31 + 10) / 2 + 22 + 22 * (10 + 31) / 2 + 22 + 20;
        int leg = 51 * 64;
        int cuff = 17 * 64 + 64;
        assertEquals(toe + foot + heel + leg + cuff, size.value(Catalogue.YARN_LOOPS));
        // 56 yarn-overs, 8 cast-on stitches, 64 bound off and 42 wraps do not take what a knit stitch takes
        double others = 56 * (0.7 - 1) + 8 * (3 / 4.1) + 64 * 0.25 + 42 * (2 / 4.1 - 1);
        assertEquals(toe + foot + heel + leg + cuff + others, size.value(Catalogue.YARN_PLAIN_LOOPS), 1e-9);
    }

    @Test
    void goFromLoopsToBalls() {
        GradedSize size = Socks.m(SOCK, BOUGHT);
        // 21.6 / (32 × 44 / 10 000) = 153.409 mm²
        assertEquals(12.38584, size.value(Catalogue.YARN_LOOP_LENGTH), 1e-5);
        double sock = size.value(Catalogue.YARN_PLAIN_LOOPS) * 0.01238584 + 2 * 0.15;
        assertEquals(sock, size.value(Catalogue.YARN_SOCK_METRES), 1e-3);
        assertEquals(2 * 1.1 * sock, size.value(Catalogue.YARN_METRES), 1e-3);
        // 210 m weigh 50 g
        assertEquals(sock / 4.2, size.value(Catalogue.YARN_SOCK_GRAMS), 1e-3);
        assertEquals(2 * 1.1 * sock / 4.2, size.value(Catalogue.YARN_GRAMS), 1e-3);
        // 266 m
        assertEquals(2, size.value(Catalogue.YARN_BALLS));
    }

    @Test
    void addTheMarginThatTheDesignerWants() {
        double plain = Socks.number(SOCK, BOUGHT.with(new Share(0)), Catalogue.YARN_METRES);
        assertEquals(2 * Socks.number(SOCK, BOUGHT, Catalogue.YARN_SOCK_METRES), plain, 1e-9);
        assertEquals(plain * 1.25, Socks.number(SOCK, BOUGHT.with(new Share(25)), Catalogue.YARN_METRES), 1e-9);
    }

    @Test
    void estimateMetresWhenNoYarnIsChosen() {
        GradedSize size = Socks.m(SOCK, Materials.UNDECIDED);
        assertEquals(Socks.number(SOCK, BOUGHT, Catalogue.YARN_METRES), size.value(Catalogue.YARN_METRES));
        assertEquals(Set.of("yarn.loops", "yarn.plainLoops", "yarn.loopLength", "yarn.sockMetres", "yarn.metres"),
                yarn(size));
    }

    @Test
    void takeTheWeighedSwatchInPlaceOfTheGeometry() {
        // 40 × 50 stitches of 5 g at 4.2 m a gram: 21 m in 2000 loops
        GradedSize size = Socks.m(SOCK, BOUGHT.with(Swatch.weighed(40, 50, 5)));
        assertEquals(10.5, size.value(Catalogue.YARN_LOOP_LENGTH), 1e-9);
        assertEquals(size.value(Catalogue.YARN_PLAIN_LOOPS) * 0.0105 + 0.3,
                size.value(Catalogue.YARN_SOCK_METRES), 1e-9);
        // a gram is 400 loops
        assertEquals(size.value(Catalogue.YARN_PLAIN_LOOPS) / 400 + 0.3 / 4.2,
                size.value(Catalogue.YARN_SOCK_GRAMS), 1e-9);
    }

    @Test
    void weighASockByItsSwatchWhenTheYarnIsNotKnown() {
        GradedSize size = Socks.m(SOCK, Materials.UNDECIDED.with(Swatch.weighed(40, 50, 5)));
        double loops = size.value(Catalogue.YARN_PLAIN_LOOPS);
        double loopLength = 12.38584;
        assertEquals(loopLength, size.value(Catalogue.YARN_LOOP_LENGTH), 1e-5);
        // the yarn ends are 300 mm of loops of that length
        assertEquals((loops + 300 / loopLength) / 400, size.value(Catalogue.YARN_SOCK_GRAMS), 1e-5);
        assertFalse(size.cell(Catalogue.YARN_BALLS).isPresent());
    }

    @Test
    void reckonFourYarnEndsWhereTheHeelIsWorkedLast() {
        Design last = oneOfEach().filter(design -> design.heel() instanceof AfterthoughtHeel).findFirst().orElseThrow();
        GradedSize size = Patterns.grade(last).size(Designs.M);
        assertEquals(0.6, size.value(Catalogue.YARN_SOCK_METRES)
                - size.value(Catalogue.YARN_PLAIN_LOOPS) * size.value(Catalogue.YARN_LOOP_LENGTH) / 1000, 1e-9);
    }

    @Test
    void growWithTheFoot() {
        List<Double> metres = Socks.graded(Designs.toeUpInSixSizes(), BOUGHT).sizes().stream()
                .map(size -> size.value(Catalogue.YARN_METRES)).toList();
        assertEquals(6, new LinkedHashSet<>(metres).size());
        assertEquals(metres.stream().sorted().toList(), metres);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("oneOfEach")
    void areThereForEveryKindAndAreWhole(Design design) {
        GradedSize size = Patterns.grade(design).size(Designs.M);
        double loops = size.value(Catalogue.YARN_LOOPS);
        assertEquals(Math.rint(loops), loops);
        assertTrue(loops > 5_000 && loops < 40_000, () -> loops + " loops");
        // no kind of sock is all slipped or all doubled
        double plain = size.value(Catalogue.YARN_PLAIN_LOOPS) / loops;
        assertTrue(plain > 0.85 && plain < 1.05, () -> plain + " of a plain loop");
    }

    @Test
    void areAbsentWhereTheRoundsDoNotWorkOut() {
        // (20 - 10) / 4 increase rounds
        Graded graded = Socks.graded(SOCK.with("toe.castOn = 10").withSize("L",
                "body.footLength = 260 mm; body.footCircumference = 238 mm"), BOUGHT);
        assertEquals(Set.of("yarn.loopLength", "yarn.tex"), yarn(graded.size(Designs.M)));
        assertTrue(graded.size("L").cell(Catalogue.YARN_METRES).isPresent());
    }

    @Test
    void countASockWithoutLegRounds() {
        assertEquals(9762 - 51 * 64, Socks.number(SOCK.with("leg.rounds = 0"), BOUGHT, Catalogue.YARN_LOOPS));
    }

    @Test
    void standAtTheEndAndChangeNoOtherNumber() {
        Graded counts = Grader.grade(SOCK.design());
        Graded all = Socks.graded(SOCK, BOUGHT);
        assertEquals(counts.parameters(), all.parameters().subList(0, counts.parameters().size()));
        assertEquals(9, all.parameters().stream().filter(parameter -> parameter.part() == Part.YARN).count());
        counts.size(Designs.M).cells().forEach((key, cell) -> assertEquals(cell, all.size(Designs.M).cells().get(key)));
    }

    @Test
    void tellWhatTheyWereCountedFrom() {
        Graded graded = Socks.graded(SOCK, BOUGHT);
        Why loops = Why.of(graded, Catalogue.YARN_PLAIN_LOOPS.key(), Designs.M);
        assertEquals(Source.CHOSEN, loops.cell().source());
        assertTrue(loops.lines().contains("• yarn-over: 56 × 0.7 = 39.2"), () -> String.join("\n", loops.lines()));
        assertTrue(loops.basis().contains(Catalogue.FOOT_STITCHES.key()));
        List<Key> dependents = Why.of(graded, Catalogue.FOOT_STITCHES.key(), Designs.M).dependents();
        assertTrue(dependents.contains(Catalogue.YARN_LOOPS.key()), dependents::toString);
        assertEquals(List.of("Yarn count in size M is 238.0952 tex (rule).", "= 1000 × 50 ÷ 210"),
                Why.of(graded, Catalogue.YARN_TEX.key(), Designs.M).lines());
    }

    /** Every stitch that hands can do has its words. */
    @Test
    void nameEveryStitch() {
        Map<Stitch, Reason.Counted.Share> all = new HashMap<>();
        for (Stitch stitch : Stitch.values()) {
            double plainLoops = YarnUse.of(stitch).plainLoops();
            assertTrue(plainLoops >= 0 && plainLoops <= 2, () -> stitch + " takes " + plainLoops);
            all.put(stitch, new Reason.Counted.Share(1, plainLoops));
        }
        var cell = new Cell(Catalogue.YARN_LOOPS, 1, Source.CHOSEN, new Reason.Counted(all, List.of()));
        Graded sock = Socks.graded(SOCK, BOUGHT);
        GradedSize size = sock.size(Designs.M);
        Graded odd = new Graded(sock.design(), sock.rules(),
                List.of(new GradedSize(size.size(), Map.of(cell.key(), cell))),
                List.of());
        assertEquals(2 + Stitch.values().length, Why.of(odd, cell.key(), Designs.M).lines().size());
    }

    /** Somebody else's evaluator comes to the same metres, grams and balls. */
    @Property(seed = Repeatable.SEED, tries = 40, edgeCases = EdgeCasesMode.NONE)
    void comeToTheSameInASpreadsheet(@ForAll("usual") Draft draft, @ForAll boolean weighed) {
        Spreadsheet spreadsheet = new Spreadsheet();
        Graded graded = Socks.graded(draft, weighed ? BOUGHT.with(Swatch.weighed(41, 53, 4.7)) : BOUGHT);
        for (GradedSize size : graded.sizes()) {
            Map<Key, Double> values = new HashMap<>();
            size.cells().forEach((key, cell) -> values.put(key, cell.value()));
            graded.parameters().stream().filter(parameter -> parameter.part() == Part.YARN)
                    .filter(parameter -> size.cell(parameter).isPresent())
                    .forEach(parameter -> graded.rules().rule(parameter.key()).ifPresent(rule -> assertEquals(
                            size.value(parameter), spreadsheet.evaluate(rule, values), 1e-9,
                            () -> parameter.key().name())));
        }
    }

    /** Nothing that a designer can write makes the yarn fail; what there is of it is sound. */
    @Repeatable
    void areSoundWhateverIsWritten(@ForAll("unusual") Draft draft) {
        Graded graded = Socks.graded(draft, BOUGHT);
        for (GradedSize size : graded.sizes()) {
            assertEquals(size.cell(Catalogue.YARN_LOOPS).isPresent(), size.cell(Catalogue.YARN_BALLS).isPresent());
            size.cell(Catalogue.YARN_BALLS).ifPresent(balls -> {
                assertTrue(balls.value() >= 1 && balls.value() == Math.rint(balls.value()), balls::toString);
                assertTrue(balls.value() * 210 >= size.value(Catalogue.YARN_METRES) - 1e-6, balls::toString);
            });
        }
        assertEquals(Grader.grade(draft.design()).queries(), graded.queries());
    }

    @Deep
    void areSoundForManyMore(@ForAll("unusual") Draft draft) {
        areSoundWhateverIsWritten(draft);
    }

    private static Set<String> yarn(GradedSize size) {
        return size.cells().values().stream().filter(cell -> cell.parameter().part() == Part.YARN)
                .map(cell -> cell.key().name()).collect(Collectors.toSet());
    }

    @Provide
    Arbitrary<Draft> usual() {
        return RandomDesigns.usual();
    }

    @Provide
    Arbitrary<Draft> unusual() {
        return RandomDesigns.unusual();
    }
}
