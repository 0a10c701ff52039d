package turnheel.engine.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import turnheel.engine.fixture.Designs;
import turnheel.engine.term.Key;

class DesignTest {

    @Test
    void refusesAPatternWithoutSizes() {
        assertRefused("a pattern needs at least one size", () -> Designs.withoutSizes().design());
    }

    @Test
    void refusesTwoSizesOfOneLabelAndNamesIt() {
        assertRefused("two sizes have the label \"M\"",
                () -> design(size("a", "M"), size("b", "L"), size("c", "M")));
    }

    @Test
    void refusesTwoSizesOfOneIdAndNamesIt() {
        assertRefused("two sizes have the id \"a\"", () -> design(size("a", "M"), size("a", "L")));
    }

    @ParameterizedTest
    @CsvSource({"'',M", "' ',M", "a,''", "a,'  '"})
    void refusesASizeWithoutIdOrLabel(String id, String label) {
        assertRefused("a size needs an id and a label", () -> size(id, label));
    }

    @Test
    void refusesAnEndlessLabelAndQuotesItsBeginning() {
        assertEquals(40, size("a", "x".repeat(40)).label().length());
        assertRefused("the size label \"" + "x".repeat(40) + "…\" is longer than 40", () -> size("a", "x".repeat(41)));
    }

    @Test
    void findsASizeByItsLabelAndElseListsTheLabels() {
        Design design = design(size("a", "M"), size("b", "38/39"));
        assertEquals("b", design.size("38/39").id());
        assertRefused("there is no size \"XL\"; the sizes are M, 38/39", () -> design.size("XL"));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 13, 0, -4})
    void refusesARoundToeOfTooFewOrTooManyLines(int lines) {
        assertRefused("a round toe has 2 to 12 shaping lines, not " + lines,
                () -> new RoundToe(lines, Increase.YARN_OVER));
    }

    @ParameterizedTest
    @CsvSource({"0,2", "2,0", "-1,2", "13,2", "2,13"})
    void refusesARibThatIsNone(int knit, int purl) {
        assertRefused("a rib has 1 to 12 knit and 1 to 12 purl stitches, not %d×%d".formatted(knit, purl),
                () -> new RibCuff(knit, purl, false));
    }

    @Test
    void doesNotChangeWhenTheListsThatItWasMadeOfDo() {
        Map<Key, Quantity> inputs = new HashMap<>(Map.of(Catalogue.FOOT_LENGTH.key(), Length.ofMm(240)));
        Map<Key, Quantity> overrides = new HashMap<>(Map.of(Catalogue.FOOT_STITCHES.key(), new Count(64)));
        List<Size> sizes = new ArrayList<>(List.of(new Size("a", "M", inputs, overrides)));
        Design design = design(sizes);
        sizes.clear();
        inputs.clear();
        overrides.clear();
        assertEquals(Map.of(Catalogue.FOOT_LENGTH.key(), Length.ofMm(240)), design.size("M").inputs());
        assertEquals(Map.of(Catalogue.FOOT_STITCHES.key(), new Count(64)), design.size("M").overrides());
        assertThrows(UnsupportedOperationException.class, () -> design.sizes().clear());
        assertThrows(UnsupportedOperationException.class, () -> design.size("M").inputs().clear());
        assertThrows(UnsupportedOperationException.class, () -> design.size("M").overrides().clear());
    }

    private static Size size(String id, String label) {
        return new Size(id, label, Map.of(), Map.of());
    }

    private static Design design(Size... sizes) {
        return design(List.of(sizes));
    }

    private static Design design(List<Size> sizes) {
        Design base = Designs.toeUp64().design();
        return new Design("", base.direction(), base.stitchGauge(), base.roundGauge(), base.toe(), base.heel(), base.leg(),
                base.cuff(), base.stitchPatterns(), sizes);
    }

    private static void assertRefused(String beginning, Executable attempt) {
        var refused = assertThrows(IllegalArgumentException.class, attempt);
        assertTrue(refused.getMessage().startsWith(beginning), refused::getMessage);
    }
}
