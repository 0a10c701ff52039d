package turnheel.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import turnheel.engine.design.ColourPlace;
import turnheel.engine.design.Design;
import turnheel.engine.design.Length;
import turnheel.engine.design.Materials;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Fit;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.design.Stranding;
import turnheel.engine.design.Swatch;
import turnheel.engine.design.Yarn;
import turnheel.engine.design.YarnLine;
import turnheel.model.DocumentProblem.Kind;
import turnheel.model.pattern.Pattern;

/** Yarns, colours, notions, needle, swatch and stranding in a pattern file. */
class MaterialsInFilesTest {

    private static final Materials ALL = Materials.UNDECIDED.withYarns(List.of(
            new YarnLine(new Yarn("Quay Four", 210, 50, OptionalInt.of(1)), "slate & sand", OptionalInt.of(2)),
            YarnLine.of(Yarn.of("", 170, 50))))
            .withColours(Map.of(ColourPlace.INSTEP_PATTERN, 1, ColourPlace.HEEL, 2))
            .withNotions(List.of("stitch markers", "a <blunt> needle"))
            .withNeedle(Optional.of(Literals.length("1/8 in")))
            .with(new Swatch(42, 57, OptionalDouble.of(7.5),
                    Optional.of(new Swatch.Measured(Literals.length("13 cm"), Length.ofMm(128))), Swatch.Worked.FLAT, true));

    @Test
    void comeBackAsTheyWere() throws DocumentException {
        Design design = Patterns.harbour().withMaterials(ALL);
        assertEquals(design, Door.design(Patterns.read(Patterns.written(Documents.pattern(design)))));
    }

    /** A changed notion, yarn or colour is a changed line. */
    @Test
    void standOnLinesOfTheirOwn() throws DocumentException {
        List<String> lines = Patterns.written(Documents.pattern(Patterns.harbour().withMaterials(ALL))).lines()
                .map(String::strip).toList();
        assertTrue(lines.contains("<colour place=\"heel\" yarn=\"2\"/>"), lines::toString);
        assertTrue(lines.contains("<notions>stitch markers"), lines::toString);
        assertTrue(lines.contains("<yarn name=\"\" metresPerBall=\"170.0\" gramsPerBall=\"50.0\"/>"), lines::toString);
    }

    @Test
    void strandedPatternsComeBackToo() throws DocumentException {
        StitchPattern leg = new StitchPattern(Zone.LEG, 4, 0, 6, Fit.WHOLE_REPEATS, 1);
        for (Stranding stranding : List.of(Stranding.withFloatsTo(4), new Stranding(OptionalInt.empty()))) {
            Pattern pattern = Documents.pattern(Patterns.harbour());
            pattern.getStitchPatterns().add(PartElements.stitchPattern(leg.with(stranding)));
            Design design = Door.design(Patterns.read(Patterns.written(pattern)));
            assertEquals(List.of(leg.with(stranding)), design.stitchPatterns());
        }
    }

    /** Each stands before the sizes of the harbour pattern, in its line 12. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            <swatch stitches="42" rounds="57" width="13 cm"/>           | a swatch is measured both ways or not at all
            <swatch stitches="42" rounds="57"/>                         | a swatch is measured or weighed
            <colour place="heel" yarn="1"/>                             | the heel is worked in yarn 1; the pattern has 0
            <yarn metresPerBall="1" gramsPerBall="1"/><colour place="heel" yarn="1"/><colour place="heel" yarn="1"/> | two colours
            <yarn metresPerBall="1" gramsPerBall="1" balls="0"/>        | at least 1 ball
            """)
    void areRefusedWithTheirPlace(String inMaterials, String says) throws DocumentException {
        assertRefused("<materials marginPercent=\"10\">" + inMaterials + "</materials>", "Materials", says);
    }

    @Test
    void aFloatWithoutStrandingIsRefusedWithItsPlace() throws DocumentException {
        assertRefused("<stitchPattern zone=\"leg\" repeat=\"4\" longestFloat=\"3\"/>", "StitchPattern",
                "a longest float belongs to a stranded pattern only");
    }

    private static void assertRefused(String line, String element, String says) throws DocumentException {
        Pattern pattern = Patterns.read(Patterns.HARBOUR_TEXT.replace("  <size id=\"m\"", line + "\n  <size id=\"m\""));
        List<DocumentProblem> problems = assertThrows(DocumentException.class, () -> Door.design(pattern)).problems();
        assertEquals(List.of(Kind.REFUSED), problems.stream().map(DocumentProblem::kind).toList());
        DocumentProblem problem = problems.getFirst();
        assertEquals(List.of(12, element), List.of(problem.line(), problem.values().getFirst()));
        assertTrue(problem.sentence().contains(says), problem::sentence);
    }
}
