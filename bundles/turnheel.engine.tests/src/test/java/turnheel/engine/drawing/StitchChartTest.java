package turnheel.engine.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
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
import org.junit.jupiter.params.provider.EnumSource;
import turnheel.engine.design.Direction;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.RandomDesigns;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.grading.Graded;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;

class StitchChartTest {

    /** The texts between the word over the key and the sentence below it. */
    private static Set<String> key(Picture picture) {
        List<String> texts = Pictures.texts(picture);
        return new HashSet<>(texts.subList(texts.indexOf("Key") + 1, texts.size()).stream()
                .takeWhile(text -> !text.startsWith("Read ")).toList());
    }

    private static long filled(Picture picture, Ink ink) {
        return Pictures.shapes(picture).filter(shape -> shape instanceof Shape.Rectangle rectangle
                && rectangle.paint().fill().filter(ink::equals).isPresent()).count();
    }

    @Test
    void theKeyExplainsTheSignsThatAreUsedAndNoOthers() {
        assertEquals(Set.of("knit", "yarn over", "knit through the back loop", "no stitch"),
                key(StitchChart.of(Designs.toeUp64().graded(), ChartedPart.TOE, "M")));
        assertEquals(Set.of("knit", "knit two together", "slip, slip, knit", "no stitch"),
                key(StitchChart.of(Designs.toeUp64().with(Direction.CUFF_DOWN).with(Designs.WEDGE_TOE).graded(),
                        ChartedPart.TOE, "M")));
        assertEquals(Set.of("knit on the right side, purl on the wrong side", "wrap this stitch and turn",
                "knit (wrong side: purl) with its wraps", "turn here"),
                key(StitchChart.of(Designs.toeUp64().graded(), ChartedPart.HEEL, "M")));
    }

    /** By hand: three rounds of 3, 4 and 5, one more of 5, pairs of 6 to 15, two of 16; the rest of 26 × 16 is none. */
    @Test
    void squaresWithoutAStitchAreTinted() {
        Picture toe = StitchChart.of(Designs.toeUp64().graded(), ChartedPart.TOE, "M");
        int stitches = 3 + 4 + 5 + 5 + 2 * (15 * 16 / 2 - 15) + 32;
        // one more stands in the key
        assertEquals(26 * 16 - stitches + 1, filled(toe, Ink.NO_STITCH));
    }

    @Test
    void rowsAreNumberedWhereTheyAreReadFrom() {
        Chart chart = Chart.ofRows(3, List.of(List.of(new Step.Work(Stitch.KNIT, 3)),
                List.of(new Step.Work(Stitch.PURL, 3))));
        Picture picture = StitchChart.of(chart, "Small");
        List<Shape.Text> numbers = Pictures.shapes(picture).flatMap(shape -> shape instanceof Shape.Text text
                && text.text().matches("\\d+") ? Stream.of(text) : Stream.of()).toList();
        Shape.Text first = numbers.stream().filter(text -> text.text().equals("1")).findFirst().orElseThrow();
        Shape.Text second = numbers.stream().filter(text -> text.text().equals("2")).findFirst().orElseThrow();
        assertTrue(second.at().x() < first.at().x(), numbers::toString);
        // the first row is the lowest
        assertTrue(second.at().y() < first.at().y(), numbers::toString);
    }

    @Test
    void aLongPlainStretchIsLeftOutAndCounted() {
        Picture gusset = StitchChart.of(Designs.toeUp64().with(Direction.CUFF_DOWN).with(Designs.FLAP_HEEL).graded(),
                ChartedPart.GUSSET, "M");
        List<String> texts = Pictures.texts(gusset);
        // by hand: 32 of the instep and one beside each decrease; three are shown at both ends
        assertTrue(texts.contains("28 sts"), texts::toString);
    }

    @Test
    void everySizeIsChartedWithOneKey() {
        Draft draft = Designs.withoutSizes().withSize("S", "body.footLength = 220 mm; body.footCircumference = 200 mm")
                .withSize("L", "body.footLength = 260 mm; body.footCircumference = 250 mm");
        Picture picture = StitchChart.ofAll(draft.graded(), ChartedPart.TOE);
        List<String> texts = Pictures.texts(picture);
        assertTrue(texts.containsAll(List.of("Toe, size S", "Toe, size L")), texts::toString);
        assertEquals(1, texts.stream().filter("Key"::equals).count());
        OutlineDrawingTest.assertInside(picture);
        OutlineDrawingTest.assertNothingOverlaps(picture);
    }

    @Test
    void aPartThatIsNotThereIsSaidToBeNone() {
        Picture picture = StitchChart.of(Designs.toeUp64().graded(), ChartedPart.GUSSET, "M");
        assertTrue(Pictures.texts(picture).contains("Gusset, size M: there is nothing to chart."));
    }

    @ParameterizedTest
    @EnumSource(Stitch.class)
    void everyStitchHasASignWithAMeaning(Stitch stitch) {
        for (ChartSide side : ChartSide.values()) {
            Symbol symbol = Symbol.of(stitch, side);
            assertTrue(!symbol.meaning(false).isBlank() && !symbol.meaning(true).isBlank());
        }
    }

    @Test
    void noTwoSignsLookAlike() {
        List<Symbol> symbols = List.of(Symbol.values());
        Set<List<Shape>> looks = symbols.stream().filter(symbol -> !symbol.isTinted()).map(Symbol::shapes)
                .collect(Collectors.toSet());
        assertEquals(symbols.stream().filter(symbol -> !symbol.isTinted()).count(), looks.size());
        Set<String> meanings = symbols.stream().map(symbol -> symbol.meaning(false)).collect(Collectors.toSet());
        assertEquals(symbols.size(), meanings.size());
    }

    @ParameterizedTest
    @EnumSource(Symbol.class)
    void aSignStaysInItsSquare(Symbol symbol) {
        symbol.shapes().stream().map(Shape::bounds).forEach(bounds -> assertTrue(bounds.left() >= -0.1
                && bounds.top() >= -0.1 && bounds.right() <= 1.1 && bounds.bottom() <= 1.1, bounds::toString));
    }

    @Provide
    Arbitrary<Draft> socks() {
        return RandomDesigns.usual();
    }

    @Property(seed = Repeatable.SEED, tries = 60, edgeCases = EdgeCasesMode.NONE)
    void nothingLiesOutside(@ForAll("socks") Draft draft) {
        Graded graded = draft.graded();
        Arrays.stream(ChartedPart.values()).forEach(part ->
                OutlineDrawingTest.assertInside(StitchChart.ofAll(graded, part)));
    }
}
