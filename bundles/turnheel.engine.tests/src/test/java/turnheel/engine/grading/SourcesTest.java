package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.design.Catalogue;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Numbers;
import turnheel.engine.term.Key;

/** Where each number of a size comes from. */
class SourcesTest {

    private static final Graded SOME_OF_EACH = Designs.toeUp64()
            .with("fit.easeAround = -8 %; heel.stitches = 34; foot.stitches = 64").graded();

    @ParameterizedTest(name = "{0} is {1}: {2}")
    @CsvSource(textBlock = """
            gauge.stitches,     INPUT,    32
            body.footLength,    INPUT,    240
            fit.easeAround,     INPUT,    -8
            fit.easeLength,     DEFAULT,  -10.8
            body.legHeight,     DEFAULT,  204
            # 222 × 0.92 × 0.32
            foot.ideal,         RULE,     65.3568
            foot.stitches,      OVERRIDE, 64
            heel.stitches,      OVERRIDE, 34
            # 34 / 3 = 11.3
            heel.centre,        RULE,     12
            toe.rounds,         RULE,     26
            """)
    void areToldWithTheNumber(String key, Source source, double value) {
        Cell cell = cell(SOME_OF_EACH, key);
        assertEquals(source, cell.source());
        assertEquals(value, cell.value(), 1e-9);
    }

    @Test
    void keepWhatTheRuleWouldHaveGivenBesideAnOverride() {
        Reason.Overridden heel = (Reason.Overridden) cell(SOME_OF_EACH, "heel.stitches").reason();
        assertEquals(32, heel.instead().orElseThrow().value());
        assertEquals(Source.RULE, heel.instead().orElseThrow().source());
        // 65.3568 alone takes 64 as well
        Reason.Overridden foot = (Reason.Overridden) cell(SOME_OF_EACH, "foot.stitches").reason();
        assertEquals(64, foot.instead().orElseThrow().value());
        assertEquals(Source.CHOSEN, foot.instead().orElseThrow().source());
    }

    @Test
    void aSizesOwnGaugeComesBeforeThePatterns() {
        Graded graded = Designs.toeUp64().withSize("fine",
                "body.footLength = 240 mm; body.footCircumference = 222 mm; gauge.stitches = 40/10 cm").graded();
        // 222 × 0.9 × 0.4 = 79.92
        assertEquals(64, Numbers.of(graded.size("M"), "foot.stitches"));
        assertEquals(80, Numbers.of(graded.size("fine"), "foot.stitches"));
    }

    @Test
    void anOverrideStaysInItsSize() {
        Graded graded = Designs.toeUp64().with("heel.stitches = 36").withSize("L",
                "body.footLength = 260 mm; body.footCircumference = 238 mm").graded();
        assertEquals(36, Numbers.of(graded.size("M"), "heel.stitches"));
        assertEquals(34, Numbers.of(graded.size("L"), "heel.stitches"));
    }

    /** 0.7541 × 240 + 45.83 and 1.1504 × 240 + 30.04: regressions on the length. */
    @Test
    void whatWasNotMeasuredIsPredictedFromTheLength() {
        Graded graded = Designs.toeUp64().without(Catalogue.FOOT_CIRCUMFERENCE.key()).graded();
        assertEquals(Source.PREDICTED, cell(graded, "body.footCircumference").source());
        assertEquals(226.814, cell(graded, "body.footCircumference").value(), 1e-9);
        assertEquals(Source.PREDICTED, cell(graded, "body.heelCircumference").source());
        assertEquals(306.136, cell(graded, "body.heelCircumference").value(), 1e-9);
        assertEquals(Source.CHOSEN, cell(graded, "foot.stitches").source());
    }

    @Test
    void withoutALengthOnlyWhatFollowsFromTheCircumferenceIsThere() {
        GradedSize size = Designs.toeUp64().without(Catalogue.FOOT_LENGTH.key()).graded().sizes().getFirst();
        assertEquals(Set.of("gauge.stitches", "gauge.rounds", "gauge.cuffRounds", "body.footCircumference", "toe.points",
                "toe.castOn", "heel.corner", "foot.fewestRounds"), keys(size));
        assertTrue(size.cell(Catalogue.FOOT_STITCHES).isEmpty());
        assertThrows(IllegalStateException.class, () -> size.value(Catalogue.FOOT_STITCHES));
    }

    @Test
    void withoutAnyMeasurementOnlyGaugeAndWhatIsTheSameForAllAreThere() {
        GradedSize size = Designs.withoutSizes().withSize("M", "").graded().sizes().getFirst();
        assertEquals(Set.of("gauge.stitches", "gauge.rounds", "gauge.cuffRounds", "toe.points", "toe.castOn",
                "heel.corner", "foot.fewestRounds"), keys(size));
    }

    @Test
    void anUnmeasuredSizeDoesNotHinderTheOthers() {
        Graded graded = Designs.withoutSizes().withSize("S", "body.footCircumference = 205 mm").withSize("M",
                "body.footLength = 240 mm; body.footCircumference = 222 mm").graded();
        assertEquals(64, Numbers.of(graded.size("M"), "foot.stitches"));
        assertFalse(graded.size("S").cell(Catalogue.FOOT_STITCHES).isPresent());
    }

    @Test
    void aCellIsAlwaysANumber() {
        Cell cell = cell(SOME_OF_EACH, "heel.stitches");
        for (double value : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThrows(IllegalArgumentException.class,
                    () -> new Cell(cell.parameter(), value, Source.RULE, cell.reason()));
        }
    }

    @Test
    void haveAWordEach() {
        assertEquals(Map.of(Source.INPUT, "input", Source.DEFAULT, "default", Source.PREDICTED, "predicted",
                Source.RULE, "rule", Source.CHOSEN, "chosen", Source.OVERRIDE, "override", Source.OWN, "own"),
                Set.of(Source.values()).stream().collect(Collectors.toMap(source -> source, Source::word)));
    }

    private static Cell cell(Graded graded, String key) {
        return graded.sizes().getFirst().cell(new Key(key)).orElseThrow();
    }

    private static Set<String> keys(GradedSize size) {
        return size.cells().keySet().stream().map(Key::name).collect(Collectors.toSet());
    }
}
