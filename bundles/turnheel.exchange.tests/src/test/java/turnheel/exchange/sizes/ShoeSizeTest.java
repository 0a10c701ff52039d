package turnheel.exchange.sizes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Against a transcription of ISO/TS 19407's tables, which nobody has checked; and against worked examples. */
class ShoeSizeTest {

    /** Half a size of disagreement between sources, and half a step of rounding. */
    private static final double TABLE_SLACK = 0.75;
    /** The transcription's smallest children's sizes lie a trace further away. */
    private static final double CHILDRENS_SLACK = 0.77;

    static List<Map<String, String>> adults() {
        return rows("adult", 23);
    }

    static List<Map<String, String>> children() {
        return rows("child", 22);
    }

    private static List<Map<String, String>> rows(String group, int expected) {
        List<Map<String, String>> rows = Survey.rows("shoe-sizes.csv").stream()
                .filter(row -> row.get("group").equals(group)).toList();
        assertEquals(expected, rows.size());
        return rows;
    }

    /** Its EU column is cut down to the half, not rounded. */
    @ParameterizedTest
    @MethodSource("adults")
    void adultsEuropeanSizesAreTheTables(Map<String, String> row) {
        double eu = ShoeSystem.EU.size(Survey.number(row, "foot_length_mm"));
        assertEquals(Survey.number(row, "eu"), Math.floor(2 * eu + 1e-9) / 2);
    }

    @ParameterizedTest
    @MethodSource("adults")
    void adultsOtherSizesLieNearTheTables(Map<String, String> row) {
        double foot = Survey.number(row, "foot_length_mm");
        assertEquals(Survey.number(row, "uk"), ShoeSystem.UK.size(foot), TABLE_SLACK);
        assertEquals(Survey.number(row, "us_man_or_child"), ShoeSystem.US_MEN.size(foot), TABLE_SLACK);
        assertEquals(Survey.number(row, "us_woman_or_child"), ShoeSystem.US_WOMEN.size(foot), TABLE_SLACK);
        // the two columns of the table are one apart, as the systems are
        assertEquals(Survey.number(row, "us_woman_or_child") - Survey.number(row, "us_man_or_child"),
                ShoeSystem.US_WOMEN.size(foot) - ShoeSystem.US_MEN.size(foot), 1e-9);
    }

    /** After 13 1/2 the table goes on with the adults' 1. */
    @ParameterizedTest
    @MethodSource("children")
    void childrensSizesLieNearTheTables(Map<String, String> row) {
        double foot = Survey.number(row, "foot_length_mm");
        assertEquals(Survey.number(row, "eu"), ShoeSystem.EU.size(foot), CHILDRENS_SLACK);
        assertEquals(unbroken(row, "uk"), ShoeSystem.UK_CHILD.size(foot), CHILDRENS_SLACK);
        assertEquals(unbroken(row, "us_man_or_child"), ShoeSystem.US_CHILD.size(foot), CHILDRENS_SLACK);
        if (foot < 200) {
            // computed beside the transcription by the rule for feet
            assertEquals(Survey.number(row, "uk_by_formula"), ShoeSystem.UK_CHILD.size(foot), 0.01);
        }
    }

    private static double unbroken(Map<String, String> row, String column) {
        double size = Survey.number(row, column);
        return Survey.number(row, "foot_length_mm") > 192 && size < 10 ? size + 13 : size;
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = """
            # worked examples of the rules' sources, foot in mm
            EU 38,        240
            EU 41,        260
            UK 7,         254
            US men 10,    270.933
            US women 8,   245.533
            Mondopoint 245, 245
            us  WOMEN 8,  245.533
            UK 5 1/2,     241.3
            24.5 cm,      245
            9 1/2 in,     241.3
            """)
    void readsWhatPeopleWrite(String text, double foot) {
        assertEquals(foot, ShoeSize.footLengthMm(text), 0.001);
    }

    @ParameterizedTest(name = "[{0}]")
    @CsvSource({"EU", "EU 4", "EU -38", "EU x", "38", "FR 38", "UK 38", "20 mm", "400 mm", "64", "''", "UK child 15"})
    void refusesWhatIsNoShoeSize(String text) {
        String message = assertThrows(IllegalArgumentException.class, () -> ShoeSize.footLengthMm(text)).getMessage();
        assertTrue(message.contains(text), message);
    }

    @ParameterizedTest
    @EnumSource
    void thereAndBackIsTheSame(ShoeSystem system) {
        for (double foot = 100; foot <= 320; foot += 0.5) {
            assertEquals(foot, system.footLengthMm(system.size(foot)), 1e-9);
        }
    }

    @Test
    void aFootHasASizeInEverySystemThatReachesIt() {
        assertEquals(List.of("Mondopoint 240", "EU 38", "UK 5.5", "US men 6.5", "US women 7.5"),
                ShoeSize.of(240).stream().map(ShoeSize::toString).toList());
        assertEquals(List.of("Mondopoint 150", "EU 24.5", "UK child 7.5", "US child 8"),
                ShoeSize.of(150).stream().map(ShoeSize::toString).toList());
    }
}
