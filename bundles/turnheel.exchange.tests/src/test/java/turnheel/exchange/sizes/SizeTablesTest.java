package turnheel.exchange.sizes;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.FlapLength;
import turnheel.engine.design.HeelTurn;
import turnheel.engine.design.Increase;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.Size;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.yarn.Patterns;
import turnheel.engine.grading.Source;
import turnheel.engine.query.Query;
import turnheel.engine.query.Severity;
import turnheel.exchange.Designs;
import turnheel.exchange.sizes.SizeTable.Measured;

class SizeTablesTest {

    /** Columns of the survey by our parameter. */
    private static final Map<Parameter, String> COLUMNS = Map.of(
            Catalogue.FOOT_LENGTH, "footlength",
            Catalogue.FOOT_CIRCUMFERENCE, "balloffootcircumference",
            Catalogue.ANKLE_CIRCUMFERENCE, "anklecircumference",
            Catalogue.HEEL_CIRCUMFERENCE, "heelanklecircumference");
    private static final List<String> PERCENTILES = List.of("p5", "p25", "p50", "p75", "p95");

    private static double mm(Size size, Parameter parameter) {
        return size.inputs().get(parameter.key()).inside();
    }

    static Stream<SizeTable> tables() {
        return SizeTables.builtIn().stream();
    }

    @ParameterizedTest(name = "{0} of {1}")
    @CsvSource({"women, F", "men, M"})
    void percentileTablesHoldTheSurveysPercentiles(String id, String sex) {
        List<Size> sizes = SizeTables.byId(id).sizes();
        assertEquals(List.of("XS", "S", "M", "L", "XL"), sizes.stream().map(Size::label).toList());
        COLUMNS.forEach((parameter, measure) -> {
            Map<String, String> row = Survey.rows("survey-summary.csv", sex).stream()
                    .filter(each -> each.get("measure").equals(measure)).findFirst().orElseThrow();
            for (int i = 0; i < sizes.size(); i++) {
                assertEquals(Survey.number(row, PERCENTILES.get(i)), mm(sizes.get(i), parameter), measure);
            }
        });
    }

    /** The survey's printed report, men: foot length 271.2, standard deviation 13.1; 5th, 50th, 95th 250, 271, 293. */
    @Test
    void menAgreeWithThePrintedReport() {
        List<Size> men = SizeTables.byId("men").sizes();
        assertEquals(List.of(250.0, 271.0, 293.0), Stream.of(0, 2, 4)
                .map(i -> mm(men.get(i), Catalogue.FOOT_LENGTH)).toList());
        Map<String, String> row = Survey.rows("survey-summary.csv", "M").getFirst();
        assertEquals(271.2, Survey.number(row, "mean"), 0.05);
        assertEquals(13.1, Survey.number(row, "sd"), 0.05);
    }

    /**
     * A second way to the percentiles: single people. Of 100 people drawn evenly, about as many lie below a
     * percentile as it says; three standard deviations of that count (binomial) are allowed.
     */
    @ParameterizedTest(name = "{0} of {1}")
    @CsvSource({"women, F", "men, M"})
    void singlePeopleLieAroundThePercentiles(String id, String sex) {
        List<Map<String, String>> people = Survey.rows("survey-sample.csv", sex);
        assertEquals(100, people.size());
        List<Size> sizes = SizeTables.byId(id).sizes();
        double[] shares = {0.05, 0.25, 0.5, 0.75, 0.95};
        COLUMNS.forEach((parameter, measure) -> {
            for (int i = 0; i < shares.length; i++) {
                double limit = mm(sizes.get(i), parameter);
                long below = people.stream().filter(row -> Survey.number(row, measure + "_mm") < limit).count();
                long atMost = people.stream().filter(row -> Survey.number(row, measure + "_mm") <= limit).count();
                double slack = 3 * Math.sqrt(shares[i] * (1 - shares[i]) * people.size());
                double expected = shares[i] * people.size();
                int percentile = i;
                assertTrue(below <= expected + slack && atMost >= expected - slack,
                        () -> "%s %s: %d to %d of 100".formatted(measure, PERCENTILES.get(percentile), below, atMost));
            }
        });
    }

    /**
     * A third way, for lengths: the number of people in each class of 10 mm, spread evenly within it. They are not
     * quite even: a share of 0.05 is what 1 mm makes in the middle of the range.
     */
    @ParameterizedTest(name = "{0} of {1}")
    @CsvSource({"women, F, 1986", "men, M, 4082"})
    void classesOfFootLengthPutTheSameSharesBelowThePercentiles(String id, String sex, int people) {
        List<Size> sizes = SizeTables.byId(id).sizes();
        double[] shares = {0.05, 0.25, 0.5, 0.75, 0.95};
        for (int i = 0; i < shares.length; i++) {
            double length = mm(sizes.get(i), Catalogue.FOOT_LENGTH);
            double below = Survey.rows("survey-by-foot-length.csv", sex).stream().mapToDouble(row -> {
                double from = Survey.number(row, "foot_length_from_mm");
                return Survey.number(row, "n") * Math.clamp((length - from) / 10, 0, 1);
            }).sum();
            assertEquals(shares[i], below / people, 0.05, PERCENTILES.get(i));
        }
    }

    @ParameterizedTest(name = "{0} of {1}")
    @CsvSource({"women-by-foot-length, F, 6", "men-by-foot-length, M, 7", "adults-by-foot-length, F+M, 9"})
    void classTablesHoldTheMeansOfClassesThatAreLargeEnough(String id, String sex, int classes) {
        List<Size> sizes = SizeTables.byId(id).sizes();
        List<Map<String, String>> rows = Survey.rows("survey-by-foot-length.csv", sex).stream()
                .filter(row -> Survey.number(row, "n") >= 50).toList();
        assertEquals(classes, sizes.size());
        assertEquals(classes, rows.size());
        for (int i = 0; i < classes; i++) {
            Size size = sizes.get(i);
            Map<String, String> row = rows.get(i);
            double from = Survey.number(row, "foot_length_from_mm");
            double to = Survey.number(row, "foot_length_to_mm_exclusive");
            assertEquals("%.0f-%.0f".formatted(from / 10, to / 10), size.label());
            double length = mm(size, Catalogue.FOOT_LENGTH);
            assertTrue(from <= length && length < to, size.label());
            assertAll(() -> assertEquals(Survey.number(row, "mean_foot_length_mm"), length),
                    () -> assertEquals(Survey.number(row, "balloffootcircumference_mean_mm"),
                            mm(size, Catalogue.FOOT_CIRCUMFERENCE)),
                    () -> assertEquals(Survey.number(row, "anklecircumference_mean_mm"),
                            mm(size, Catalogue.ANKLE_CIRCUMFERENCE)),
                    () -> assertEquals(Survey.number(row, "heelanklecircumference_mean_mm"),
                            mm(size, Catalogue.HEEL_CIRCUMFERENCE)));
        }
    }

    /**
     * A second way to the girths: the survey's regression lines on foot length. Single feet lie 9 to 13 mm around
     * them.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = """
            # table, then slope and intercept in mm for ball of foot, ankle, heel
            women-by-foot-length,  0.5732, 86.94, 0.5130, 89.40, 0.9883, 66.90
            men-by-foot-length,    0.5895, 92.15, 0.5468, 81.06, 1.0067, 70.49
            adults-by-foot-length, 0.7541, 45.83, 0.5411, 82.57, 1.1504, 30.04
            """)
    void girthsFollowTheRegressionOnFootLength(String id, double ball, double ball0, double ankle, double ankle0,
            double heel, double heel0) {
        for (Size size : SizeTables.byId(id).sizes()) {
            double length = mm(size, Catalogue.FOOT_LENGTH);
            assertEquals(ball * length + ball0, mm(size, Catalogue.FOOT_CIRCUMFERENCE), 3, size.label());
            assertEquals(ankle * length + ankle0, mm(size, Catalogue.ANKLE_CIRCUMFERENCE), 3, size.label());
            assertEquals(heel * length + heel0, mm(size, Catalogue.HEEL_CIRCUMFERENCE), 3, size.label());
        }
    }

    @ParameterizedTest
    @MethodSource("tables")
    void everyMeasureGrowsFromSizeToSize(SizeTable table) {
        COLUMNS.keySet().forEach(parameter -> {
            double[] values = table.sizes().stream().filter(size -> size.inputs().containsKey(parameter.key()))
                    .mapToDouble(size -> mm(size, parameter)).toArray();
            // The trade casts on the same for two or three sizes.
            boolean may = table.measured() == Measured.SOCK && !parameter.equals(Catalogue.FOOT_LENGTH);
            assertTrue(may || DoubleStream.of(values).distinct().count() == values.length, parameter.key().name());
            for (int i = 1; i < values.length; i++) {
                assertTrue(values[i - 1] <= values[i], parameter.key().name());
            }
        });
    }

    @ParameterizedTest
    @MethodSource("tables")
    void everyTableSaysWhatItIsAndGradesWithoutErrors(SizeTable table) {
        assertTrue(table.note().startsWith(table.measured() == Measured.BODY ? "Body measures." : "Finished socks"),
                table.note());
        assertTrue(!table.source().isBlank() && !table.name().isBlank());
        List<Query> errors = Patterns.grade(Designs.with(Designs.toeUp(), table.name(), table.sizes())).queries().stream()
                .filter(query -> query.severity() == Severity.ERROR).toList();
        assertEquals(List.of(), errors);
    }

    @Test
    void childrenHaveTheMeansOfTheirAge() {
        List<Size> sizes = SizeTables.byId("children-by-age").sizes();
        List<Map<String, String>> rows = Survey.rows("children-foot-length.csv", "both");
        assertEquals(13, sizes.size());
        for (int i = 0; i < sizes.size(); i++) {
            Map<String, String> row = rows.get(i);
            assertEquals(row.get("age_from_years") + " years", sizes.get(i).label());
            assertEquals(Survey.number(row, "mean_mm"), mm(sizes.get(i), Catalogue.FOOT_LENGTH));
        }
    }

    /** A second way: of single children about half lie below the mean of their age (binomial, three deviations). */
    @Test
    void singleChildrenLieAroundTheMeanOfTheirAge() {
        List<Size> sizes = SizeTables.byId("children-by-age").sizes();
        List<Map<String, String>> children = Survey.rows("children-sample.csv").stream()
                .filter(child -> Survey.number(child, "age_years") < 15).toList();
        long below = children.stream().filter(child -> Survey.number(child, "foot_length_mm")
                < mm(sizes.get((int) Survey.number(child, "age_years") - 2), Catalogue.FOOT_LENGTH)).count();
        assertEquals(99, children.size());
        assertEquals(children.size() / 2.0, below, 3 * Math.sqrt(children.size()) / 2);
    }

    @Test
    void whatChildrenLackIsPredictedAndMarkedSo() {
        Graded graded = Patterns.grade(Designs.with(Designs.toeUp(), "", SizeTables.byId("children-by-age").sizes()));
        graded.sizes().forEach(size -> {
            assertEquals(Source.INPUT, size.cell(Catalogue.FOOT_LENGTH).orElseThrow().source());
            assertEquals(Source.PREDICTED, size.cell(Catalogue.FOOT_CIRCUMFERENCE).orElseThrow().source());
        });
    }

    /** At 30 stitches over 10 cm the table gives its own cast-ons again: its ease is not taken a second time. */
    @Test
    void theTradesSocksKeepTheirCountsLengthsAndEase() {
        Design plain = Designs.toeUp();
        Graded graded = Patterns.grade(new Design("", Direction.CUFF_DOWN, Designs.gauge("30/10 cm"),
                Designs.gauge("42/10 cm"), new WedgeToe(Increase.MAKE_ONE),
                new FlapHeel(HeelTurn.SQUARE, new FlapLength.FromBody()), plain.leg(), new RibCuff(2, 2),
                SizeTables.byId("trade-by-shoe-size").sizes()));
        List<Map<String, String>> rows = Survey.rows("trade-sock-table.csv");
        assertEquals(15, rows.size());
        for (int i = 0; i < rows.size(); i++) {
            GradedSize size = graded.sizes().get(i);
            Map<String, String> row = rows.get(i);
            assertEquals(row.get("eu_shoe_size"), size.label());
            assertEquals(Survey.number(row, "cast_on"), size.value(Catalogue.FOOT_IDEAL), 0.02, size.label());
            assertEquals(Survey.number(row, "cast_on"), size.value(Catalogue.FOOT_STITCHES), size.label());
            assertEquals(10 * Survey.number(row, "foot_total_cm"), size.value(Catalogue.WANTED_LENGTH), size.label());
            assertEquals(10 * (Survey.number(row, "leg_cm") + Survey.number(row, "heel_flap_cm")),
                    size.value(Catalogue.LEG_HEIGHT), size.label());
        }
    }

    @Test
    void idsAreThoseOfTheTables() {
        assertEquals(SizeTables.ids(), SizeTables.builtIn().stream().map(SizeTable::id).toList());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"wmen, did you mean women?", "men-by-foot-lenght, did you mean men-by-foot-length?", "xyzzy, women"})
    void anUnknownTableIsAnsweredWithTheNearestAndAll(String id, String expected) {
        String message = assertThrows(IllegalArgumentException.class, () -> SizeTables.byId(id)).getMessage();
        assertTrue(message.contains("\"" + id + "\"") && message.contains(expected), message);
        assertTrue(message.contains("women, men, women-by-foot-length"), message);
    }
}
