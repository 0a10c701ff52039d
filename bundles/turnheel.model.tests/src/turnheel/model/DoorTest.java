package turnheel.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.engine.design.ColourPlace;
import turnheel.engine.design.Design;
import turnheel.engine.design.OwnRow;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.StitchPattern;
import turnheel.model.DocumentProblem.Kind;
import turnheel.model.pattern.ColourElement;
import turnheel.model.pattern.EntryElement;
import turnheel.model.pattern.OwnRowElement;
import turnheel.model.pattern.Pattern;
import turnheel.model.pattern.PatternFactory;
import turnheel.model.pattern.RibCuffElement;
import turnheel.model.pattern.RoundToeElement;
import turnheel.model.pattern.SizeElement;
import turnheel.model.pattern.StitchPatternElement;
import turnheel.model.pattern.SwatchElement;
import turnheel.model.pattern.YarnElement;

class DoorTest {

    @Test
    void theDesignIsWhatTheFileSays() throws DocumentException {
        assertEquals(Patterns.harbour(), Door.design(Patterns.read(Patterns.HARBOUR_TEXT)));
    }

    static Stream<EObject> everyClass() {
        return EveryClass.onePerConcreteClass().stream();
    }

    @ParameterizedTest
    @MethodSource("everyClass")
    void everyClassOfTheEcoreGoesThrough(EObject object) throws DocumentException {
        switch (object) {
            case SizeElement size -> {
                size.setId("s");
                size.setLabel("S");
            }
            case EntryElement entry -> {
                boolean input = entry.eClass().getName().startsWith("Input");
                entry.setKey(Patterns.key(input ? "body.legHeight" : "cuff.height"));
                entry.setValue(Quantity.parse("100 mm"));
            }
            case Pattern pattern -> {
                pattern.setDirection(Patterns.harbour().direction());
                pattern.setStitchGauge(Patterns.harbour().stitchGauge());
                pattern.setRoundGauge(Patterns.harbour().roundGauge());
            }
            case StitchPatternElement stitches -> {
                stitches.setZone(StitchPattern.Zone.LEG);
                stitches.setRepeat(6);
            }
            case YarnElement yarn -> {
                yarn.setMetresPerBall(200);
                yarn.setGramsPerBall(50);
            }
            case ColourElement colour -> {
                colour.setPlace(ColourPlace.HEEL);
                colour.setYarn(1);
            }
            case SwatchElement swatch -> {
                swatch.setStitches(30);
                swatch.setRounds(40);
                swatch.setGrams(12.5);
            }
            case OwnRowElement row -> {
                row.setKey(Patterns.key("own.half"));
                row.setLabel("Half");
                row.setFormula("foot.stitches/");
            }
            default -> assertTrue(object.eClass().getName().matches(".*(Toe|Heel|Leg|Cuff|Materials|Lengths)Element"),
                    object.toString());
        }
        Design design = Door.design(EveryClass.patternWith(object));
        // The same document again, made from the design, tells that the door took every attribute with it.
        assertEquals(design, Door.design(Documents.pattern(design)));
        if (object instanceof EntryElement entry) {
            assertTrue(List.of(design.sizes().getFirst().inputs(), design.sizes().getFirst().overrides())
                    .contains(Map.of(entry.getKey(), entry.getValue())));
        }
    }

    @Test
    void anOwnRowThatCannotBeReadIsKeptAsItIs() throws DocumentException {
        String formula = "=LOG( foot.stitches ;\t'<b>&\"";
        Design design = Patterns.harbour().withOwnRows(List.of(new OwnRow(Patterns.key("own.half"), "=1+1", formula)));
        Pattern read = Patterns.read(Patterns.written(Documents.pattern(design)));
        assertEquals(design, Door.design(read));
        assertEquals(formula, read.getOwnRows().getFirst().getFormula());
    }

    @Test
    void aDesignDoesNotChangeWithItsDocument() throws DocumentException {
        Pattern pattern = Documents.pattern(Patterns.harbour());
        Design before = Door.design(pattern);
        pattern.getSizes().getFirst().setLabel("Medium");
        Documents.setOverride(pattern.getSizes().getFirst(), Patterns.key("foot.stitches"), Quantity.parse("68"));
        assertEquals(Patterns.harbour(), before);
        assertNotEquals(before, Door.design(pattern));
    }

    /** Each is the harbour pattern with one text replaced by another; lines and columns were counted by hand. */
    static Stream<Arguments> refusedFiles() {
        return Stream.of(
                refused("<size id=\"l\" label=\"L\">", "<size id=\"m\" label=\"L\">", Kind.SAME_ID, 17, 9, "m"),
                refused("<size id=\"l\" label=\"L\">", "<size id=\"l\" label=\"M\">", Kind.SAME_LABEL, 17, 16, "M"),
                refused("<size id=\"l\" label=\"L\">", "<size label=\"L\">", Kind.MISSING, 17, 3, "id", "Size"),
                refused("<input key=\"body.footCircumference\" value=\"22.5 cm\"/>",
                        "<input key=\"body.footLength\" value=\"250 mm\"/>",
                        Kind.SAME_KEY, 14, 12, "M", "body.footLength"),
                refused("</turnheel:Pattern>", "<ownRow key=\"own.a\" formula=\"1\"/>\n  "
                        + "<ownRow key=\"own.a1\" formula=\"2\"/>\n"
                        + "<ownRow key=\"own.a\" formula=\"\"/>\n</turnheel:Pattern>",
                        Kind.SAME_ROW, 22, 9, "own.a"),
                refused("</turnheel:Pattern>", "<ownRow key=\"own.a\"/>\n</turnheel:Pattern>",
                        Kind.MISSING, 20, 1, "formula", "OwnRow"),
                refused(" value=\"255 mm\"", "", Kind.MISSING, 18, 5, "value", "Input"),
                refused("direction=\"toe-up\"\n    ", "", Kind.MISSING, 2, 1, "direction", "Pattern"),
                refused("  <heel xsi:type=\"turnheel:ShortRowHeel\" turn=\"wrapped\"/>\n", "",
                        Kind.MISSING, 2, 1, "heel", "Pattern"));
    }

    private static Arguments refused(String old, String spoilt, Kind kind, int line, int column, String... values) {
        return Arguments.of(old, spoilt, new DocumentProblem(kind, line, column, List.of(values)));
    }

    @ParameterizedTest(name = "{2}")
    @MethodSource("refusedFiles")
    void saysWhatIsWrongWhereInTheFile(String old, String spoilt, DocumentProblem expected) throws DocumentException {
        assertTrue(Patterns.HARBOUR_TEXT.contains(old), old);
        Pattern pattern = Patterns.read(Patterns.HARBOUR_TEXT.replace(old, spoilt));
        DocumentException refused = assertThrows(DocumentException.class, () -> Door.design(pattern));
        assertEquals(List.of(expected), refused.problems());
        assertEquals("harbour.turnheel:%d:%d: %s".formatted(expected.line(), expected.column(), expected.sentence()),
                refused.getMessage());
    }

    /**
     * What the engine refuses, by the line of the harbour pattern where it stands and by whom it is said to concern.
     */
    static Stream<Arguments> refusedByTheEngine() {
        return Stream.of(
                Arguments.of("lines=\"4\"", "lines=\"1\"", 8, "RoundToe"),
                Arguments.of("knit=\"2\"", "knit=\"0\"", 11, "RibCuff"),
                Arguments.of("key=\"body.footCircumference\"", "key=\"body.footCirumference\"", 14, "M"),
                Arguments.of("value=\"22.5 cm\"", "value=\"22\"", 14, "M"),
                Arguments.of("value=\"22.5 cm\"", "value=\"-10 %\"", 14, "M"),
                Arguments.of("value=\"22.5 cm\"", "value=\"22.5 mm\"", 14, "M"),
                Arguments.of("<input key=\"body.footLength\" value=\"255 mm\"/>",
                        "<override key=\"body.footLength\" value=\"255 mm\"/>", 18, "L"),
                Arguments.of("key=\"foot.stitches\"", "key=\"foot.sole\"", 15, "M"),
                Arguments.of("label=\"L\"", "label=\" \"", 17, " "),
                Arguments.of("</turnheel:Pattern>",
                        "<ownRow key=\"foot.half\" formula=\"1\"/>\n</turnheel:Pattern>", 20, "foot.half"),
                Arguments.of("</turnheel:Pattern>",
                        "<ownRow key=\"own.a\" label=\"" + "L".repeat(1000)
                                + "\" formula=\"1\"/>\n</turnheel:Pattern>", 20, "own.a"),
                Arguments.of("label=\"L\"", "label=\"" + "L".repeat(1000) + "\"", 17, "L".repeat(1000)));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("refusedByTheEngine")
    void passesOnWhatTheEngineRefusesWithItsPlace(String old, String spoilt, int line, String whom)
            throws DocumentException {
        assertTrue(Patterns.HARBOUR_TEXT.contains(old), old);
        Pattern pattern = Patterns.read(Patterns.HARBOUR_TEXT.replace(old, spoilt));
        List<DocumentProblem> problems = assertThrows(DocumentException.class, () -> Door.design(pattern)).problems();
        assertEquals(1, problems.size());
        DocumentProblem problem = problems.getFirst();
        assertEquals(List.of(Kind.REFUSED, line, whom),
                List.of(problem.kind(), problem.line(), problem.values().getFirst()));
    }

    static Stream<Arguments> editsThatLeaveNoDesign() {
        return Stream.<Arguments>of(
                edit(pattern -> pattern.setToe(null), Kind.MISSING),
                edit(pattern -> pattern.setStitchGauge(null), Kind.MISSING),
                edit(pattern -> pattern.getSizes().clear(), Kind.MISSING),
                edit(pattern -> ((RoundToeElement) pattern.getToe()).setIncrease(null), Kind.MISSING),
                edit(pattern -> ((RibCuffElement) pattern.getCuff()).setPurl(-1), Kind.REFUSED),
                edit(pattern -> pattern.getSizes().getFirst().getInputs().getFirst().setValue(null), Kind.MISSING),
                edit(pattern -> pattern.getSizes().getFirst().setLabel(null), Kind.MISSING));
    }

    private static Arguments edit(Consumer<Pattern> edit, Kind expected) {
        return Arguments.of(edit, expected);
    }

    @ParameterizedTest
    @MethodSource("editsThatLeaveNoDesign")
    void aDocumentOfNoFileHasProblemsWithoutAPlace(Consumer<Pattern> edit, Kind expected) {
        Pattern pattern = Documents.pattern(Patterns.harbour());
        edit.accept(pattern);
        List<DocumentProblem> problems = assertThrows(DocumentException.class, () -> Door.design(pattern)).problems();
        assertEquals(List.of(expected), problems.stream().map(DocumentProblem::kind).toList());
        assertEquals(0, problems.getFirst().line());
    }

    @ParameterizedTest
    @CsvSource(nullValues = "-", textBlock = """
            platform:/resource/socks/my%20harbour.turnheel, /socks/my harbour.turnheel:8:3:
            file:/tmp/harbour.turnheel,                     /tmp/harbour.turnheel:8:3:
            harbour.turnheel,                               harbour.turnheel:8:3:
            -,                                              8:3: RoundToe:
            """)
    void namesTheFileByWhatItsResourceIsCalled(String uri, String start) throws DocumentException {
        Pattern pattern = Patterns.read(Patterns.HARBOUR_TEXT.replace("lines=\"4\"", "lines=\"1\""));
        pattern.eResource().setURI(uri == null ? null : URI.createURI(uri));
        String message = assertThrows(DocumentException.class, () -> Door.design(pattern)).getMessage();
        assertTrue(message.startsWith(start), message);
    }

    @Test
    void listsAllThatIsMissingAtOnce() {
        Pattern empty = PatternFactory.eINSTANCE.createPattern();
        List<DocumentProblem> problems = assertThrows(DocumentException.class, () -> Door.design(empty)).problems();
        assertEquals(List.of("direction", "stitchGauge", "roundGauge", "toe", "heel", "leg", "cuff", "size"),
                problems.stream().map(problem -> problem.values().getFirst()).toList());
    }

    @Test
    void aPatternNeedsNoTitle() throws DocumentException {
        Pattern pattern = Documents.pattern(Patterns.harbour());
        pattern.setTitle(null);
        assertEquals("", Door.design(pattern).title());
    }
}
