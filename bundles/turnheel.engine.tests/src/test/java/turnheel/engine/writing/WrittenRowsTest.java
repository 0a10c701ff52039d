package turnheel.engine.writing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Fit;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.grading.PatternWidths;
import turnheel.engine.knitting.Manuscript;
import turnheel.engine.knitting.PatternRows;
import turnheel.engine.knitting.PatternRows.Worked;
import turnheel.engine.knitting.ReadLine;
import turnheel.engine.wording.HouseStyle;
import turnheel.engine.wording.HouseStyles;

/** The rows of a stitch pattern, taken out of the written text and knitted again over the stitches of every size. */
class WrittenRowsTest {

    private static final List<String> LACE = List.of("*K1, yo, ssk, sl 1, p2tog, yo; rep from * to last st, k1 tbl",
            "K to end", "*P1, m1r, k2, k3tog, yo; rep from * to last st, p1",
            "*[K1, p1] 3 times; rep from * to last st, k1");
    private static final HouseStyle UK = HouseStyles.read("uk", Map.of("english", "UK", "lengths", "cm",
            "sized.opening", "/", "sized.separator", "/", "sized.closing", ""));

    @ParameterizedTest
    @EnumSource(Fit.class)
    void knitOverThePanelOfEverySize(Fit fit) {
        Draft draft = Designs.toeUp64().with(new StitchPattern(Zone.INSTEP, 6, 1, 4, fit, 1).withInstructions(LACE))
                .withSize("L", "body.footLength = 260 mm; body.footCircumference = 245 mm; "
                        + "body.ankleCircumference = 230 mm; body.heelCircumference = 330 mm");
        Graded graded = draft.graded();
        for (HouseStyle style : List.of(HouseStyles.usual(), HouseStyles.shipped("longhand"), UK)) {
            knits(graded, Renderings.plain(Manuscripts.write(graded, style)));
        }
    }

    private static void knits(Graded graded, String text) {
        Manuscript manuscript = Manuscript.read(text);
        assertTrue(manuscript.lines().stream().noneMatch(line -> line.kind() == ReadLine.Kind.UNREAD), text);
        assertEquals(List.of(), manuscript.knit().queries(), text);
        List<String> lines = text.lines().toList();
        int heading = lines.indexOf(lines.stream().filter(line -> line.contains("Stitch pattern:")).findFirst()
                .orElseThrow());
        List<String> rows = lines.subList(heading + 1, lines.size()).stream().filter(line -> !line.isBlank())
                .limit(LACE.size()).map(line -> line.substring(line.indexOf(':') + 1).strip()).toList();
        StitchPattern pattern = graded.design().stitchPatterns().getFirst();
        for (GradedSize size : graded.sizes()) {
            int stitches = PatternWidths.instep(pattern, size).orElseThrow();
            Worked typed = assertInstanceOf(Worked.class, PatternRows.read(LACE).over(stitches));
            assertEquals(typed, PatternRows.read(rows).over(stitches), text);
        }
    }

    /** What the checks ask about stays as it was typed, so that the designer finds it again. */
    @ParameterizedTest
    @EnumSource(value = Zone.class)
    void whatCannotBeReadIsWrittenAsItWasTyped(Zone zone) {
        Graded graded = Designs.toeUp64().with(new StitchPattern(zone, 4, 0, 2, Fit.WHOLE_REPEATS, 1)
                .withInstructions(List.of("K to end", "Knot the yarn"))).graded();
        String text = Renderings.plain(Manuscripts.write(graded, HouseStyles.usual()));
        List<String> lines = Arrays.asList(text.split("\n"));
        assertTrue(lines.containsAll(List.of("Rnd 1: K to end.", "Rnd 2: Knot the yarn")), text);
    }
}
