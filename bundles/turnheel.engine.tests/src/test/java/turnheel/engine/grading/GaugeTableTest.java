package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.RibCuff;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.grading.GaugeTable.AtGauge;
import turnheel.engine.grading.GaugeTable.Closest;
import turnheel.engine.grading.GaugeTable.Printed;
import turnheel.engine.grading.GaugeTable.Row;

class GaugeTableTest {

    /** 32 stitches and 44 rounds over 100 mm; feet of 222 and 250 mm have 64 and 72 stitches. */
    private static final Draft TWO_SIZES = Designs.toeUp64()
            .withSize("L", "body.footLength = 260 mm; body.footCircumference = 250 mm");

    private static Row row(Draft draft, double stitches) {
        return GaugeTable.of(draft.graded()).rows().stream().filter(row -> Math.abs(row.stitches() - stitches) < 1e-9)
                .findFirst().orElseThrow(() -> new AssertionError("no row of " + stitches));
    }

    private static List<Integer> counts(Row row) {
        return row.sizes().stream().map(size -> size.regraded().map(SizeFit::count).orElse(0)).toList();
    }

    @ParameterizedTest(name = "{0} stitches: {1} and {2}")
    @CsvSource(textBlock = """
            # gauge, counts: feet of 222 and 250 mm less 10 %, below 30 stitches 7.5 %, to the nearest multiple of 4
            26, 52, 60
            28, 56, 64
            30, 60, 68
            32, 64, 72
            36, 72, 80
            """)
    void givesTheCountsThatThePatternWouldHave(int stitches, int first, int second) {
        assertEquals(List.of(first, second), counts(row(TWO_SIZES, stitches)));
    }

    @Test
    void givesTheCountsOfADesignBegunAtThatGauge() {
        Draft six = Designs.toeUpInSixSizes();
        for (Row row : GaugeTable.of(six.graded()).rows()) {
            Graded begun = six.withGauge(row.stitches() + "/10 cm", 44 * row.stitches() / 32 + "/10 cm").graded();
            for (int i = 0; i < row.sizes().size(); i++) {
                SizeFit fit = row.sizes().get(i).regraded().orElseThrow();
                GradedSize size = begun.sizes().get(i);
                assertEquals(size.value(Catalogue.FOOT_STITCHES), fit.count(), size.label() + " at " + row.stitches());
                assertEquals(size.value(Catalogue.FINISHED_CIRCUMFERENCE), fit.circumferenceMm(), 1e-9);
                assertEquals(size.value(Catalogue.EASE_REACHED), fit.easePercent(), 1e-9);
            }
        }
    }

    @ParameterizedTest(name = "{0} of {1} stitches")
    @CsvSource(textBlock = """
            # size, gauge, mm round: stitches over gauge; fits: that over 0.9
            M, 30, 213.333333, 237.037037
            L, 30, 240,        266.666667
            M, 36, 177.777778, 197.530864
            L, 36, 200,        222.222222
            L, 32, 225,        250
            """)
    void tellsWhatThePrintedCountsComeTo(String label, int stitches, double circumferenceMm, double fitsMm) {
        AtGauge size = row(TWO_SIZES, stitches).sizes().get("ML".indexOf(label));
        Printed printed = size.printed().orElseThrow();
        assertEquals(label, size.size());
        assertEquals(circumferenceMm, printed.circumferenceMm(), 1e-6);
        assertEquals(fitsMm, printed.fitsFootMm(), 1e-6);
    }

    @ParameterizedTest(name = "a foot of {0} at {1} stitches: {2}")
    @CsvSource(textBlock = """
            # whose foot, gauge, size to knit, ease in per cent: 64 or 72 stitches over gauge against 222 or 250 mm
            M, 32, M, -9.909910
            L, 32, L, -10
            # 237 is nearer to 250 than 266.7 is
            M, 30, M, -3.903904
            L, 30, M, -14.666667
            M, 36, L, -9.909910
            L, 36, L, -20
            """)
    void namesTheSizeThatComesClosestToAFoot(String foot, int stitches, String size, double ease) {
        Closest closest = row(TWO_SIZES, stitches).sizes().get("ML".indexOf(foot)).closest().orElseThrow();
        assertEquals(size, closest.size());
        assertEquals(ease, closest.easePercent(), 1e-6);
    }

    @Test
    void ofTwoAsNearTheFirstIsTaken() {
        // 64 and 72 stitches at 32 over 100 mm fit feet of 222.2 and 250 mm
        Graded graded = TWO_SIZES.withSize("N", "").graded();
        double between = (200 / 0.9 + 250) / 2;
        assertEquals("M", GaugeTable.closest(graded, 32, between).orElseThrow().size());
        assertEquals("L", GaugeTable.closest(graded, 32, between + 0.02).orElseThrow().size());
        assertEquals(Optional.empty(),
                GaugeTable.closest(Designs.withoutSizes().withSize("N", "").graded(), 32, between));
    }

    static List<List<Double>> gaugesByHand() {
        return List.of(
                // a fifth of 32 is 6.4: steps of 1
                List.of(32.0, 26.0, 27.0, 28.0, 29.0, 30.0, 31.0, 32.0, 33.0, 34.0, 35.0, 36.0, 37.0, 38.0),
                // of 8 over an inch 6.3; 31 and 32 stand on either side of it
                List.of(8 / 0.254, 26.0, 27.0, 28.0, 29.0, 30.0, 31.0, 8 / 0.254, 32.0, 33.0, 34.0, 35.0, 36.0, 37.0),
                // 33.9 cannot be told from 34
                List.of(33.9, 28.0, 29.0, 30.0, 31.0, 32.0, 33.0, 33.9, 35.0, 36.0, 37.0, 38.0, 39.0, 40.0),
                // of 12 2.4: steps of a half
                List.of(12.0, 10.0, 10.5, 11.0, 11.5, 12.0, 12.5, 13.0, 13.5, 14.0),
                // of 60 12: steps of 2
                List.of(60.0, 48.0, 50.0, 52.0, 54.0, 56.0, 58.0, 60.0, 62.0, 64.0, 66.0, 68.0, 70.0, 72.0));
    }

    @ParameterizedTest
    @MethodSource("gaugesByHand")
    void listsRoundGaugesAFifthAroundThePrintedOne(List<Double> printedThenAll) {
        assertEquals(printedThenAll.subList(1, printedThenAll.size()), GaugeTable.gauges(printedThenAll.getFirst()));
    }

    @Test
    void noGaugeLeavesTheRangeOfGauges() {
        List<Row> rows = GaugeTable.of(TWO_SIZES.withGauge("4.5/10 cm", "6/10 cm").graded()).rows();
        assertEquals(List.of(4.0, 4.2, 4.4, 4.5, 4.6, 4.8, 5.0, 5.2, 5.4), rows.stream().map(Row::stitches).toList());
        assertEquals(List.of(4.5), rows.stream().filter(Row::isPrinted).map(Row::stitches).toList());
        // the rounds of 4.6 and more would be denser than any
        rows = GaugeTable.of(TWO_SIZES.withGauge("4.5/10 cm", "200/10 cm").graded()).rows();
        assertEquals(4.5, rows.getLast().stitches());
    }

    @Test
    void ownCountsHoldAtThePrintedGaugeOnly() {
        Draft own = TWO_SIZES.withEachSize(size -> size.label().equals("M") ? "foot.stitches = 66" : "");
        assertEquals(List.of(66, 72), counts(row(own, 32)));
        assertEquals(List.of(60, 68), counts(row(own, 30)));
    }

    @Test
    void aSizePrintedAtAnotherGaugeHasItsPrintedCountThere() {
        Draft own = TWO_SIZES.withEachSize(size -> size.label().equals("L")
                ? "gauge.stitches = 30/10 cm; foot.stitches = 70" : "");
        assertEquals(List.of(60, 70), counts(row(own, 30)));
        assertEquals(List.of(64, 72), counts(row(own, 32)));
        // 70 stitches at 30 over 100 mm
        assertEquals(700 / 3.0, row(own, 30).sizes().getLast().printed().orElseThrow().circumferenceMm(), 1e-9);
    }

    /** 72 stitches, half of them at 40 over 100 mm, are 202.5 mm; at 28 in place of 32 the instep has 35. */
    @Test
    void allFabricsChangeAsTheMainOne() {
        Draft draft = Designs.toeUp64().with(StitchPatterns.instep(2, 0)).with("gauge.instepStitches = 40/10 cm");
        AtGauge size = row(draft, 28).sizes().getFirst();
        assertEquals(202.5 * 32 / 28, size.printed().orElseThrow().circumferenceMm(), 1e-9);
        SizeFit fit = size.regraded().orElseThrow();
        assertEquals(fit.count() / 2.0 * 100 / 35 + fit.count() / 2.0 * 100 / 28, fit.circumferenceMm(), 1e-9);
    }

    @Test
    void whereNoCountSuitsAllPartsNoneIsGiven() {
        Draft fight = TWO_SIZES.with(new RibCuff(3, 3)).with(StitchPatterns.instep(6, 3));
        assertTrue(fight.graded().queries().stream().anyMatch(query -> query.sizes().contains("M")));
        assertEquals(List.of(0, 0), counts(row(fight, 30)));
        // the printed counts are in print all the same
        assertFalse(counts(row(fight, 32)).contains(0));
    }

    @Test
    void aSizeWithoutMeasurementsHasNoNumbers() {
        Draft draft = TWO_SIZES.withSize("N", "");
        AtGauge size = row(draft, 30).sizes().getLast();
        assertEquals(Arrays.asList(Optional.empty(), Optional.empty(), Optional.empty()),
                List.of(size.regraded(), size.printed(), size.closest()));
    }
}
