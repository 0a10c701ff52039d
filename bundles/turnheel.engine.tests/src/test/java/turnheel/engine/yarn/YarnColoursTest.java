package turnheel.engine.yarn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Function;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.checks.Checks;
import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.ColourPlace;
import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Lengths;
import turnheel.engine.design.Materials;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Part;
import turnheel.engine.design.Share;
import turnheel.engine.design.Snap;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Fit;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.design.Stranding;
import turnheel.engine.design.Swatch;
import turnheel.engine.design.Yarn;
import turnheel.engine.design.YarnLine;
import turnheel.engine.design.YarnRows;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.RandomDesigns;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.fixture.Spreadsheet;
import turnheel.engine.grading.Cell;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;
import turnheel.engine.term.Key;

/** Several yarns in one sock, and two in one round. */
class YarnColoursTest {

    /** Toe-up, 64 stitches, round toe, short-row heel, crew leg, 2×2 rib; its parts are counted in {@link YarnRowsTest}. */
    private static final Draft SOCK = Designs.toeUp64();
    private static final double LOOP_MM = 12.38584;
    private static final double TOE = 8 + 8 + 12 + 16 + 20 + 20 + 2 * 11 * (24 + 64) / 2 + 56 * (0.7 - 1) + 8 * 3 / 4.1;
    private static final double FOOT = 52 * 64;
    private static final double HEEL = 22 * 41 + 22 + 22 + 20 + 42 * (2 / 4.1 - 1);
    private static final double LEG = 51 * 64;
    private static final double CUFF = 17 * 64 + 64 * 1.25;

    private static final Yarn THIN = Yarn.of("Quay Two", 210, 50);
    private static final Yarn THICK = Yarn.of("Quay Four", 60, 25);
    private static final Materials TWO = Materials.of(THIN).withYarns(List.of(YarnLine.of(THIN), YarnLine.of(THICK)));
    private static final Materials THREE = TWO.withYarns(List.of(YarnLine.of(THIN), YarnLine.of(THICK), YarnLine.of(THIN)));

    @Test
    void countEachPart() {
        GradedSize size = Socks.m(SOCK, TWO);
        assertEquals(TOE, size.value(Catalogue.YARN_TOE_LOOPS), 1e-9);
        assertEquals(FOOT, size.value(Catalogue.YARN_FOOT_LOOPS), 1e-9);
        assertEquals(HEEL, size.value(Catalogue.YARN_HEEL_LOOPS), 1e-9);
        assertEquals(LEG, size.value(Catalogue.YARN_LEG_LOOPS), 1e-9);
        assertEquals(CUFF, size.value(Catalogue.YARN_CUFF_LOOPS), 1e-9);
    }

    @Test
    void goByParts() {
        GradedSize size = Socks.m(SOCK, THREE.withColours(
                Map.of(ColourPlace.TOE, 2, ColourPlace.HEEL, 2, ColourPlace.CUFF, 3)));
        assertYarn(size, 1, FOOT + LEG, 4, THIN);
        assertYarn(size, 2, TOE + HEEL, 4, THICK);
        assertYarn(size, 3, CUFF, 2, THIN);
        assertEquals((TOE + FOOT + HEEL + LEG + CUFF) * LOOP_MM / 1000 + 10 * 0.15,
                size.value(Catalogue.YARN_SOCK_METRES), 1e-2);
    }

    /** From loops to balls, each by its own label; the margin is 10 %. */
    private static void assertYarn(GradedSize size, int number, double loops, int ends, Yarn yarn) {
        YarnRows rows = Catalogue.YARN_COLOURS.get(number - 1);
        double metres = loops * LOOP_MM / 1000 + ends * 0.15;
        double grams = metres * yarn.gramsPerBall() / yarn.metresPerBall();
        assertEquals(loops, size.value(rows.plainLoops()), 1e-9);
        assertEquals(metres, size.value(rows.sockMetres()), 1e-2);
        assertEquals(metres * 2.2, size.value(rows.metres()), 1e-2);
        assertEquals(grams, size.value(rows.sockGrams()), 1e-2);
        assertEquals(grams * 2.2, size.value(rows.grams()), 1e-2);
        assertEquals(Math.ceil(metres * 2.2 / yarn.metresPerBall()), size.value(rows.balls()));
    }

    /** A yarn is begun and ended wherever another comes between; ends are 150 mm. */
    @ParameterizedTest(name = "{0} {1}: main {2}, second {3}")
    @CsvSource(textBlock = """
            # toe, foot, heel, leg, cuff and back
            TOE_UP,    HEEL,      4, 2
            CUFF_DOWN, HEEL,      4, 2
            TOE_UP,    TOE HEEL,  4, 4
            TOE_UP,    TOE CUFF,  2, 4
            TOE_UP,    LEG CUFF,  2, 2
            CUFF_DOWN, FOOT TOE,  2, 2
            """)
    void haveEndsWhereTheyMeet(Direction direction, String inSecond, int main, int second) {
        GradedSize size = Socks.m(SOCK.with(direction), TWO.withColours(places(inSecond)));
        assertEquals(main, ends(size, 1));
        assertEquals(second, ends(size, 2));
    }

    /** A heel worked last begins anew, even in the yarn of the part before it. */
    @ParameterizedTest(name = "{0}: main {1}, second {2}")
    @CsvSource({"CUFF, 4, 2", "HEEL, 2, 2", "CUFF HEEL, 2, 4"})
    void haveEndsOfAHeelWorkedLast(String inSecond, int main, int second) {
        GradedSize size = Socks.m(SOCK.with(new AfterthoughtHeel(AfterthoughtHeel.Cap.WEDGE)),
                TWO.withColours(places(inSecond)));
        assertEquals(main, ends(size, 1));
        assertEquals(second, ends(size, 2));
    }

    private static Map<ColourPlace, Integer> places(String words) {
        Map<ColourPlace, Integer> places = new HashMap<>();
        for (String word : words.split(" ")) {
            places.put(ColourPlace.valueOf(word), 2);
        }
        return places;
    }

    private static int ends(GradedSize size, int number) {
        YarnRows rows = Catalogue.YARN_COLOURS.get(number - 1);
        double ends = (size.value(rows.sockMetres()) * 1000 - size.value(rows.plainLoops())
                * size.value(Catalogue.YARN_LOOP_LENGTH)) / Materials.YARN_END_MM;
        assertEquals(Math.rint(ends), ends, 1e-6);
        return (int) Math.rint(ends);
    }

    @Test
    void haveNoRowsOfTheirOwnWhereThereIsOne() {
        Graded graded = Socks.graded(SOCK, Materials.of(THIN));
        assertFalse(graded.parameters().stream().anyMatch(parameter -> parameter.key().name().startsWith("yarn.colour")));
        assertFalse(graded.parameters().contains(Catalogue.YARN_LEG_LOOPS));
    }

    /** Half of the stitches are knitted in each yarn, and the other lies behind them, 1 / 4.1 of a loop for each. */
    @Test
    void shareTheRoundsOfAStrandedLeg() {
        GradedSize size = Socks.m(SOCK.with(pattern(Zone.LEG).with(Stranding.withFloatsTo(3))), TWO);
        assertEquals(LEG / 4.1, size.value(Catalogue.YARN_FLOATS), 1e-9);
        assertEquals(TOE + FOOT + HEEL + CUFF + LEG / 2 + LEG / 2 / 4.1, loops(size, 1), 1e-9);
        assertEquals(LEG / 2 + LEG / 2 / 4.1, loops(size, 2), 1e-9);
        assertEquals(2, ends(size, 1));
        assertEquals(2, ends(size, 2));
    }

    /** On 32 of 64 stitches lies the pattern; the second yarn runs behind the sole as well. */
    @Test
    void shareTheRoundsOfAStrandedInstep() {
        GradedSize size = Socks.m(SOCK.with(pattern(Zone.INSTEP).with(Stranding.withFloatsTo(3))), TWO);
        double figures = 52 * 32 / 2;
        assertEquals(FOOT / 4.1, size.value(Catalogue.YARN_FLOATS), 1e-9);
        assertEquals(TOE + HEEL + LEG + CUFF + FOOT - figures + figures / 4.1, loops(size, 1), 1e-9);
        assertEquals(figures + (FOOT - figures) / 4.1, loops(size, 2), 1e-9);
    }

    /** Where the heel comes last, foot and leg follow each other, and so does their second yarn. */
    @Test
    void runOnFromFootToLeg() {
        Draft allOver = SOCK.with(pattern(Zone.ALL).with(Stranding.withFloatsTo(3)));
        assertEquals(4, ends(Socks.m(allOver, TWO), 2));
        assertEquals(2, ends(Socks.m(allOver.with(new AfterthoughtHeel(AfterthoughtHeel.Cap.WEDGE)), TWO), 2));
    }

    @Test
    void takeTheWholeOfAPatternInOneColour() {
        Materials second = TWO.withColours(Map.of(ColourPlace.INSTEP_PATTERN, 2, ColourPlace.LEG_PATTERN, 2));
        GradedSize instep = Socks.m(SOCK.with(pattern(Zone.INSTEP)), second);
        assertEquals(52 * 32, loops(instep, 2), 1e-9);
        assertEquals(TOE + HEEL + LEG + CUFF + FOOT - 52 * 32, loops(instep, 1), 1e-9);
        GradedSize leg = Socks.m(SOCK.with(pattern(Zone.LEG)), second);
        assertEquals(LEG, loops(leg, 2), 1e-9);
        assertEquals(4, ends(leg, 1));
    }

    /** Without a second yarn the first is carried along, and the pair takes more all the same. */
    @Test
    void addTheFloatsOfASingleYarn() {
        StitchPattern plain = pattern(Zone.LEG);
        double more = Socks.number(SOCK.with(plain.with(Stranding.withFloatsTo(3))), Materials.UNDECIDED,
                Catalogue.YARN_SOCK_METRES) - Socks.number(SOCK.with(plain), Materials.UNDECIDED,
                        Catalogue.YARN_SOCK_METRES);
        // and two more ends
        assertEquals(LEG / 4.1 * LOOP_MM / 1000 + 0.3, more, 1e-3);
    }

    /** Of 51 leg rounds six repeats of 8 are stranded, and three rounds plain. */
    @Test
    void strandWholeRepeatsOnly() {
        Design snapped = SOCK.with(pattern(Zone.LEG).with(Stranding.withFloatsTo(3))).design().withMaterials(TWO)
                .withLengths(new Lengths(Lengths.USUAL.foot(), Lengths.USUAL.leg(), Lengths.USUAL.cuff(), Snap.LEG));
        GradedSize size = Patterns.grade(snapped).size(Designs.M);
        assertEquals(48 * 64 / 4.1, size.value(Catalogue.YARN_FLOATS), 1e-9);
        assertEquals(48 * 32 + 48 * 32 / 4.1, loops(size, 2), 1e-9);
    }

    private static StitchPattern pattern(Zone zone) {
        return new StitchPattern(zone, 4, 0, 8, Fit.WHOLE_REPEATS, 1);
    }

    private static double loops(GradedSize size, int number) {
        return size.value(Catalogue.YARN_COLOURS.get(number - 1).plainLoops());
    }

    @Test
    void areAskedAboutOneByOne() {
        // foot and leg alone take more than one ball of 210 m
        Materials stated = TWO.withYarns(List.of(YarnLine.of(THIN).withBalls(1), YarnLine.of(THICK).withBalls(9)))
                .withColours(Map.of(ColourPlace.HEEL, 2));
        assertEquals(List.of(new Query(Check.YARN_BALLS, Catalogue.YARN_COLOURS.get(0).balls().key(), List.of(Designs.M),
                "1", "2")), asked(stated));
        double metres = Socks.number(SOCK, stated, Catalogue.YARN_COLOURS.get(1).metres()) / 1.1;
        Yarn justEnough = Yarn.of("", metres / 0.99, 50);
        Materials close = TWO.withYarns(List.of(YarnLine.of(THIN).withBalls(9), YarnLine.of(justEnough)))
                .withColours(Map.of(ColourPlace.HEEL, 2)).with(new Share(0));
        assertEquals(List.of(new Query(Check.YARN_END, Catalogue.YARN_COLOURS.get(1).balls().key(), List.of(Designs.M),
                "5", "1")), asked(close));
    }

    @Test
    void areAskedAboutWhereNothingIsWorkedInThem() {
        Materials stated = TWO.withYarns(List.of(YarnLine.of(THIN).withBalls(9), YarnLine.of(THICK)));
        assertEquals(List.of(new Query(Check.YARN_UNUSED, Catalogue.YARN_COLOURS.get(1).plainLoops().key(),
                List.of(Designs.M), "", "0")), asked(stated));
        // there is no pattern that could be worked in it
        assertEquals(Check.YARN_UNUSED, asked(stated.withColours(Map.of(ColourPlace.LEG_PATTERN, 2))).getFirst().check());
    }

    private static List<Query> asked(Materials materials) {
        return Checks.of(Socks.graded(SOCK, materials)).stream()
                .filter(query -> query.check().id().startsWith("yarn.")).toList();
    }

    /** 10 mm a loop, so that a gram of the main yarn, 1 m long, is 100 loops and a gram of the second 200. */
    @Test
    void tellHowHighALegCanBe() {
        Materials weighed = TWO.withYarns(List.of(YarnLine.of(Yarn.of("", 100, 100)), YarnLine.of(Yarn.of("", 200, 100))))
                .with(Swatch.weighed(100, 10, 10));
        // the leg's own yarn: 51 rounds of 64 and two ends of 15 loops, nothing after it
        Graded ownYarn = Socks.graded(SOCK, weighed.withColours(Map.of(ColourPlace.LEG, 2)));
        assertEquals(OptionalInt.of(51), LegFromYarn.rounds(ownYarn, Designs.M, (51 * 64 + 30) / 200.0 + 0.001));
        assertEquals(OptionalInt.of(50), LegFromYarn.rounds(ownYarn, Designs.M, (51 * 64 + 30) / 200.0 - 0.001));
        // a stranded leg's main yarn: the cuff's 1168 and an end, and of each round of 64 a half and 32 floats
        Graded stranded = Socks.graded(SOCK.with(pattern(Zone.LEG).with(Stranding.withFloatsTo(3))), weighed);
        double tenRounds = (1168 + 15 + 10 * (32 + 32 / 4.1)) / 100;
        assertEquals(OptionalInt.of(10), LegFromYarn.rounds(stranded, Designs.M, tenRounds + 0.001));
        assertEquals(OptionalInt.of(9), LegFromYarn.rounds(stranded, Designs.M, tenRounds - 0.001));
    }

    /** What the yarns take together is what the sock takes, and what the parts take. */
    @Repeatable
    void addUp(@ForAll("usual") Draft draft, @ForAll("materials") Materials materials) {
        Graded graded = Socks.graded(draft, materials);
        List<YarnRows> yarns = materials.yarns().size() < 2 ? List.of()
                : Catalogue.YARN_COLOURS.subList(0, materials.yarns().size());
        for (GradedSize size : graded.sizes()) {
            if (yarns.isEmpty() || size.cell(Catalogue.YARN_LOOPS).isEmpty()) {
                continue;
            }
            double floats = size.cell(Catalogue.YARN_FLOATS).map(Cell::value).orElse(0.0);
            double plain = size.value(Catalogue.YARN_PLAIN_LOOPS);
            assertEquals(plain + floats, sum(size, yarns, YarnRows::plainLoops), 1e-6);
            assertEquals(plain, List.of(Catalogue.YARN_TOE_LOOPS, Catalogue.YARN_FOOT_LOOPS, Catalogue.YARN_HEEL_LOOPS,
                    Catalogue.YARN_LEG_LOOPS, Catalogue.YARN_CUFF_LOOPS).stream().mapToDouble(size::value).sum(), 1e-6);
            assertEquals(size.value(Catalogue.YARN_SOCK_METRES), sum(size, yarns, YarnRows::sockMetres), 1e-6);
            assertEquals(size.value(Catalogue.YARN_METRES), sum(size, yarns, YarnRows::metres), 1e-6);
            assertEquals(size.value(Catalogue.YARN_GRAMS), sum(size, yarns, YarnRows::grams), 1e-6);
            assertEquals(size.value(Catalogue.YARN_BALLS), sum(size, yarns, YarnRows::balls), 1e-6);
            yarns.forEach(rows -> assertTrue(size.value(rows.plainLoops()) >= 0));
        }
    }

    private static double sum(GradedSize size, List<YarnRows> yarns, Function<YarnRows, Parameter> row) {
        return yarns.stream().mapToDouble(rows -> size.value(row.apply(rows))).sum();
    }

    /** Somebody else's evaluator comes to the same rows. */
    @Property(seed = Repeatable.SEED, tries = 30, edgeCases = EdgeCasesMode.NONE)
    void comeToTheSameInASpreadsheet(@ForAll("usual") Draft draft, @ForAll("materials") Materials materials) {
        Spreadsheet spreadsheet = new Spreadsheet();
        Graded graded = Socks.graded(draft, materials);
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

    /** Nothing that a designer can write makes the yarns fail. */
    @Repeatable
    void areSoundWhateverIsWritten(@ForAll("unusual") Draft draft, @ForAll("materials") Materials materials) {
        Graded graded = Socks.graded(draft, materials);
        for (Query query : Checks.of(graded)) {
            assertTrue(graded.parameters().stream().map(Parameter::key).anyMatch(query.key()::equals), query::toString);
        }
    }

    @Provide
    Arbitrary<Draft> usual() {
        return RandomDesigns.usual();
    }

    @Provide
    Arbitrary<Draft> unusual() {
        return RandomDesigns.unusual();
    }

    @Provide
    Arbitrary<Materials> materials() {
        return RandomDesigns.materials();
    }
}
