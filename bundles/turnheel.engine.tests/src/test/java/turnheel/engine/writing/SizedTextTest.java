package turnheel.engine.writing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import turnheel.engine.design.Direction;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.wording.HouseStyles;

class SizedTextTest {

    private static final Draft TWO_SIZES = Designs.toeUp64()
            .withSize("L", "body.footLength = 260 mm; body.footCircumference = 250 mm");

    private static PatternText text(Draft draft) {
        return Manuscripts.write(draft.graded(), HouseStyles.usual());
    }

    private static SizedText starting(String start) {
        return text(TWO_SIZES).sizedTexts().stream().filter(line -> line.text().startsWith(start)).findFirst()
                .orElseThrow();
    }

    @Test
    void setsWhatIsPrintedBesideWhatEachSizeReads() {
        // 64 stitches turn at 20, one round after the first; 72 at 24, two rounds after it
        SizedText line = starting("Rep rnd 2 1 (2) more times.");
        assertEquals(Role.INSTRUCTION, line.role());
        assertEquals(List.of(Optional.of("Rep rnd 2 once more. 20 sts."),
                Optional.of("Rep rnd 2 2 more times. 24 sts.")),
                line.each());
        assertEquals(List.of(Optional.of("Size: M"), Optional.of("Size: L")), starting("Sizes:").each());
    }

    static Stream<Draft> everyKind() {
        Draft six = Designs.toeUpInSixSizes();
        return Stream.of(Direction.values()).map(six::with).flatMap(draft -> Stream.of(
                Designs.EVERY_TOE.stream().map(draft::with), Designs.EVERY_HEEL.stream().map(draft::with),
                Designs.EVERY_LEG.stream().map(draft::with), Designs.EVERY_CUFF.stream().map(draft::with),
                Designs.EVERY_STITCH_PATTERN.stream().map(draft::with),
                Designs.EVERY_LENGTHS.stream().map(draft::with)).flatMap(drafts -> drafts));
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("everyKind")
    void aSizeReadDownIsItsEdition(Draft draft) {
        PatternText text = text(draft);
        List<SizedText> lines = text.sizedTexts();
        assertEquals(text.paragraphs().stream().map(text::text).toList(), lines.stream().map(SizedText::text).toList());
        for (int i = 0; i < text.sizes().size(); i++) {
            int size = i;
            PatternText edition = text.onlySize(text.sizes().get(size));
            assertEquals(edition.paragraphs().stream().map(edition::text).toList(),
                    lines.stream().flatMap(line -> line.each().get(size).stream()).toList());
        }
    }

    @Test
    void aSizeDoesNotHaveTheLinesOfOthers() {
        // 80 mm are about 25 stitches: the toe turns at its cast-on of 8 and no rounds that grow in a row
        List<SizedText> lines = text(Designs.toeUp64()
                .withSize("S", "body.footLength = 80 mm; body.footCircumference = 80 mm")).sizedTexts();
        assertTrue(lines.stream().anyMatch(line -> line.each().get(1).isEmpty() && line.each().get(0).isPresent()));
    }

    @Test
    void aSizeThatDoesNotWorkOutLacksTheLinesThatItHasNoNumbersFor() {
        PatternText text = text(Designs.toeUp64().withSize("N", "body.footCircumference = 250 mm")
                .withSize("O", "body.footLength = 260 mm; body.footCircumference = 250 mm; foot.rounds = 3"));
        for (String label : List.of("N", "O")) {
            String edition = Renderings.plain(text.onlySize(label));
            assertTrue(edition.contains("Size: " + label), edition);
            assertTrue(edition.contains("numbers"), edition);
        }
    }
}
