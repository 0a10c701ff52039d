package turnheel.exchange.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

import org.apache.poi.ss.usermodel.CellCopyPolicy;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.engine.design.Design;
import turnheel.engine.design.OwnRow;
import turnheel.engine.term.Key;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.Designs;
import turnheel.exchange.edits.Edit;
import turnheel.exchange.edits.EditProblem;
import turnheel.exchange.edits.EditProblem.Kind;
import turnheel.exchange.edits.Edits;

class WorkbookReaderTest {

    private static final Map<String, Design> DESIGNS = Designs.all();
    private static final String SHARE = "own.share";

    static Set<String> designs() {
        return DESIGNS.keySet();
    }

    /** {@code own.share} with a label, and one without numbers. */
    private static Design withOwnRows() {
        return Designs.toeUp().withOwnRows(List.of(
                new OwnRow(new Key(SHARE), "Cuff of leg", "= cuff.rounds / leg.rounds"),
                new OwnRow(new Key("own.unread"), "", "LOG(foot.stitches)")));
    }

    private static Edits read(Design design, Consumer<XSSFWorkbook> edit) throws IOException {
        return read(design, design, edit);
    }

    private static Edits read(Design exported, Design now, Consumer<XSSFWorkbook> edit) throws IOException {
        ByteArrayOutputStream edited = new ByteArrayOutputStream();
        try (XSSFWorkbook workbook = Books.of(exported)) {
            edit.accept(workbook);
            workbook.write(edited);
        }
        return WorkbookReader.read(edited.toByteArray(), Patterns.grade(now), "damaged");
    }

    /** The edits as assignments. */
    private static List<String> edits(Edits edits) {
        assertEquals(List.of(), edits.errors(true).stream().map(EditProblem::sentence).toList());
        return edits.edits().stream().map(WorkbookReaderTest::assignment).toList();
    }

    private static String assignment(Edit edit) {
        return switch (edit) {
            case Edit.Number number -> number.key() + number.size().map(size -> "[" + size + "]").orElse("") + "="
                    + number.value().map(Object::toString).orElse("");
            case Edit.Own own -> own.key() + own.row().map(row -> ": " + row.label() + " = " + row.formula()).orElse("=");
        };
    }

    private static EditProblem problem(Edits edits) {
        assertEquals(1, edits.problems().size(), () -> edits.problems().toString());
        return edits.problems().getFirst();
    }

    private static XSSFCell cell(XSSFWorkbook workbook, String key, int size) {
        return Books.cell(workbook, new Key(key), size - 1);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("designs")
    void anExportThatNobodyTouchedChangesNothing(String name) throws IOException {
        Edits edits = read(DESIGNS.get(name), workbook -> { });
        assertEquals(new Edits(List.of(), List.of()), edits);
    }

    @Provide
    Arbitrary<Design> anyDesigns() {
        return new PoiRecalculationTest().anyDesigns();
    }

    @Property(tries = 40)
    void anyExportThatNobodyTouchedChangesNothing(@ForAll("anyDesigns") Design design) throws IOException {
        assertEquals(new Edits(List.of(), List.of()), read(design, workbook -> { }));
    }

    @ParameterizedTest(name = "{0} {1} {2} typed {3}")
    @CsvSource(delimiter = '|', textBlock = """
            # design   | key                   | size | typed  | edit
            toe-up     | body.footLength       | 2    | 231.5  | body.footLength[S]=231.5 mm
            toe-up     | body.footLength       | 2    | 225    |
            toe-up     | body.legHeight        | 3    | 180    | body.legHeight[M]=180 mm
            toe-up     | fit.easeAround        | 1    | -12.5  | fit.easeAround[XS]=-12.5 %
            toe-up     | gauge.stitches        | 1    | 29     | gauge.stitches[XS]=29/10 cm
            toe-up     | foot.stitches         | 1    | 60     | foot.stitches[XS]=60
            toe-up     | heel.centre           | 5    | 14     | heel.centre[XL]=14
            toe-up     | cuff.height           | 5    | 32.5   | cuff.height[XL]=32.5 mm
            cuff-down  | body.footLength       | 2    | 245    | body.footLength[38/39]=245 mm
            cuff-down  | body.footLength       | 2    | 241.3  |
            overrides  | foot.stitches         | 2    | 66     | foot.stitches[S]=66
            overrides  | cuff.height           | 2    | 38.1   |
            missing    | body.heelCircumference | 2   | 290    | body.heelCircumference[no heel]=290 mm
            missing    | body.footLength       | 4    | 240    | body.footLength[no length]=240 mm
            """)
    void takesWhatIsTypedIntoInputsAndOverRules(String design, String key, int size, double typed, String edit)
            throws IOException {
        Edits edits = read(DESIGNS.get(design), workbook -> type(cell(workbook, key, size), typed));
        assertEquals(edit == null ? List.of() : List.of(edit), edits(edits));
        assertEquals(List.of(), edits.warnings());
    }

    private static void type(XSSFCell cell, double value) {
        // typing over a formula replaces it, as in every program
        cell.removeFormula();
        cell.setCellValue(value);
    }

    @ParameterizedTest(name = "{0} {1} {2}")
    @CsvSource(delimiter = '|', textBlock = """
            overrides  | foot.stitches         | 2    | foot.stitches[S]=
            overrides  | heel.centre           | 3    | heel.centre[M]=
            cuff-down  | gauge.stitches        | 2    | gauge.stitches[38/39]=
            cuff-down  | fit.easeAround        | 2    | fit.easeAround[38/39]=
            toe-up     | body.heelCircumference | 2   | body.heelCircumference[S]=
            toe-up     | foot.stitches         | 1    |
            toe-up     | heel.centre           | 1    |
            toe-up     | gauge.stitches        | 1    |
            """)
    void anEmptiedCellGivesTheNumberBackToItsRule(String design, String key, int size, String edit) throws IOException {
        Edits edits = read(DESIGNS.get(design), workbook -> cell(workbook, key, size).setBlank());
        assertEquals(edit == null ? List.of() : List.of(edit), edits(edits));
    }

    @Test
    void theRulesOwnFormulaInPlaceOfAnOverrideDropsIt() throws IOException {
        Edits edits = read(DESIGNS.get("overrides"), workbook -> cell(workbook, "foot.instep", 3)
                .setCellFormula(cell(workbook, "foot.instep", 2).getCellFormula().replace("_size2", "_size3")));
        assertEquals(List.of("foot.instep[M]="), edits(edits));
        assertEquals(List.of(), edits.warnings());
    }

    @Test
    void aGaugeThatIsTypedIntoEverySizeIsThatOfThePattern() throws IOException {
        Edits edits = read(Designs.toeUp(), workbook -> {
            for (int size = 1; size <= 5; size++) {
                type(cell(workbook, "gauge.rounds", size), 42.5);
            }
        });
        assertEquals(List.of("gauge.rounds=42.5/10 cm"), edits(edits));
    }

    @Test
    void aGaugeThatDiffersInOneSizeIsTheSizes() throws IOException {
        Edits edits = read(Designs.toeUp(), workbook -> {
            for (int size = 1; size <= 5; size++) {
                type(cell(workbook, "gauge.rounds", size), size == 5 ? 41 : 42);
            }
        });
        assertEquals(List.of("gauge.rounds[XS]=42/10 cm", "gauge.rounds[S]=42/10 cm", "gauge.rounds[M]=42/10 cm",
                "gauge.rounds[L]=42/10 cm", "gauge.rounds[XL]=41/10 cm"), edits(edits));
    }

    @Test
    void theResultOfAFormulaOfOnesOwnIsTakenAndSaid() throws IOException {
        Edits edits = read(Designs.toeUp(), workbook -> {
            XSSFCell cell = cell(workbook, "heel.centre", 2);
            cell.setCellFormula("4*3");
            cell.setCellValue(12);
        });
        assertEquals(List.of("heel.centre[S]=12"), edits(edits));
        assertEquals(Kind.RESULT_TAKEN, problem(edits).kind());
        assertTrue(problem(edits).place().matches("Counts!E\\d+"), problem(edits).place());
    }

    @ParameterizedTest(name = "{0}[{1}] {2}")
    @CsvSource(delimiter = '|', textBlock = """
            # key             | size | in the cell  | problem      | says
            body.footLength   | 2    | "24 cm"      | NOT_A_NUMBER | "24 cm" is no number
            body.footLength   | 2    | true         | NOT_A_NUMBER | "true"
            body.footLength   | 2    | #DIV/0!      | ERROR_CELL   | #DIV/0!
            body.footLength   | 2    | 24           | REFUSED      | between 60 and 400 mm
            gauge.stitches    | 2    | 900          | REFUSED      | must lie between 4 and 200
            foot.stitches     | 2    | 62.5         | NOT_WHOLE    | whole number
            foot.stitches     | 2    | -62          | REFUSED      | between 4 and 1000
            foot.sole         | 2    | 31           | RESULT       | foot.stitches, foot.instep
            foot.sole         | 2    | =30+1        | RESULT       | foot.stitches, foot.instep
            heel.centre       | 2    | =5+5         | NO_RESULT    | has no result
            own.share         | 2    | 0.4          | OWN_NUMBER   | one formula for all sizes
            own.share         | 2    | ""           | OWN_UNEVEN   | in every size
            own.share         | 2    | =1/2         | OWN_UNEVEN   | in every size
            own.share         | 2    | =Z99         | OWN_FOREIGN  | Z99
            own.share         | 2    | =E99         | OWN_FOREIGN  | E99
            own.share         | 2    | =foot_stitches_size1 | OWN_FOREIGN | foot_stitches_size1
            own.share         | 2    | =LOG(2)      | OWN_REFUSED  | LOG
            """)
    void whatCannotBeTakenIsNamedWithItsCell(String key, int size, String content, Kind kind, String says)
            throws IOException {
        Edits edits = read(withOwnRows(), workbook -> fill(cell(workbook, key, size), content));
        List<EditProblem> found = edits.problems().stream().filter(problem -> problem.kind() == kind).toList();
        assertEquals(1, found.size(), () -> edits.problems().toString());
        assertTrue(found.getFirst().sentence().contains(says), found.getFirst().sentence());
        String column = kind == Kind.OWN_UNEVEN ? "D" : "E";
        assertTrue(found.getFirst().sentence().matches("(?s)Counts!" + column + "\\d+: .*"), found.getFirst().sentence());
    }

    private static void fill(XSSFCell cell, String content) {
        if (cell.getCellType() == org.apache.poi.ss.usermodel.CellType.FORMULA) {
            cell.removeFormula();
        }
        cell.setBlank();
        if (content.startsWith("=")) {
            cell.setCellFormula(content.substring(1));
            if (cell.getCTCell().isSetV()) {
                cell.getCTCell().unsetV();
            }
        } else if (content.startsWith("\"")) {
            cell.setCellValue(content.replace("\"", ""));
        } else if (content.startsWith("#")) {
            cell.setCellErrorValue(FormulaError.DIV0);
        } else if (content.equals("true")) {
            cell.setCellValue(true);
        } else {
            cell.setCellValue(Double.parseDouble(content));
        }
    }

    @Test
    void anOwnRowTakesAFormulaOverTheNamesOrTheCellsOfItsColumn() throws IOException {
        Edits edits = read(withOwnRows(), workbook -> {
            for (int size = 1; size <= 5; size++) {
                XSSFCell rounds = cell(workbook, "cuff.rounds", size);
                cell(workbook, SHARE, size).setCellFormula(size == 3 ? rounds.getAddress() + "*2/ leg_rounds_size3"
                        : "cuff_rounds_size%d*2/ leg_rounds_size%<d".formatted(size));
            }
        });
        assertEquals(List.of("own.share: Cuff of leg = cuff.rounds*2/ leg.rounds"), edits(edits));
    }

    @Test
    void anOwnRowCanBeDroppedRenamedAndAdded() throws IOException {
        Edits dropped = read(withOwnRows(), workbook -> {
            for (int size = 1; size <= 5; size++) {
                cell(workbook, SHARE, size).setBlank();
            }
        });
        assertEquals(List.of("own.share="), edits(dropped));
        Edits renamed = read(withOwnRows(), workbook -> row(workbook, SHARE).getCell(CountsSheet.LABEL_COLUMN)
                .setCellValue("Share of the cuff"));
        assertEquals(List.of("own.share: Share of the cuff = = cuff.rounds / leg.rounds"), edits(renamed));
        Edits added = read(withOwnRows(), workbook -> {
            XSSFSheet sheet = workbook.getSheet(CountsSheet.NAME);
            XSSFRow row = sheet.createRow(sheet.getLastRowNum() + 2);
            row.createCell(CountsSheet.KEY_COLUMN).setCellValue("own.half");
            for (int size = 1; size <= 5; size++) {
                row.createCell(CountsSheet.FIRST_SIZE_COLUMN + size - 1)
                        .setCellFormula("foot_stitches_size" + size + "/2");
            }
        });
        assertEquals(List.of("own.half:  = foot.stitches/2"), edits(added));
    }

    private static XSSFRow row(XSSFWorkbook workbook, String key) {
        return cell(workbook, key, 1).getRow();
    }

    @Test
    void aRowIsKnownByItsKeyOrByItsNamesAndASizeByItsLabel() throws IOException {
        Edits edits = read(Designs.toeUp(), workbook -> {
            type(cell(workbook, "heel.centre", 4), 15);
            type(cell(workbook, "heel.corner", 4), 2);
            row(workbook, "heel.centre").getCell(CountsSheet.KEY_COLUMN).setCellValue("Ferse, Mitte");
            XSSFSheet sheet = workbook.getSheet(CountsSheet.NAME);
            sheet.shiftRows(1, sheet.getLastRowNum(), 2);
        });
        assertEquals(List.of("heel.centre[L]=15", "heel.corner[L]=2"), edits(edits));
    }

    @Test
    void sizesMayStandInAnotherOrder() throws IOException {
        Edits edits = read(Designs.toeUp(), workbook -> {
            type(cell(workbook, "body.footLength", 1), 212);
            XSSFSheet sheet = workbook.getSheet(CountsSheet.NAME);
            // names and formulas move along when a program moves a column: the label with its numbers is what counts
            sheet.forEach(row -> {
                XSSFCell first = ((XSSFRow) row).getCell(CountsSheet.FIRST_SIZE_COLUMN);
                if (first != null && row.getRowNum() > 1) {
                    ((XSSFRow) row).createCell(CountsSheet.FIRST_SIZE_COLUMN + 9)
                            .copyCellFrom(first, new CellCopyPolicy.Builder().cellStyle(false).build());
                    row.removeCell(first);
                }
            });
            workbook.getAllNames().stream().filter(name -> name.getNameName().endsWith("_size1"))
                    .forEach(name -> name.setRefersToFormula(name.getRefersToFormula().replace("$D$", "$M$")));
        });
        assertEquals(List.of("body.footLength[XS]=212 mm"), edits(edits));
    }

    private static void heading(XSSFWorkbook workbook, int size, String text) {
        workbook.getSheet(CountsSheet.NAME).getRow(2).getCell(CountsSheet.FIRST_SIZE_COLUMN + size - 1).setCellValue(text);
    }

    @Test
    void tablesWithOtherRowsAndColumnsAreRefused() throws IOException {
        Edits renamed = read(Designs.toeUp(), workbook -> heading(workbook, 2, "Small"));
        assertEquals(List.of(Kind.SIZE_UNKNOWN, Kind.SIZE_MISSING), kinds(renamed));
        assertTrue(renamed.problems().getFirst().sentence().contains("XS, S, M, L, XL"));
        Edits twice = read(Designs.toeUp(), workbook -> heading(workbook, 2, "M"));
        assertEquals(List.of(Kind.SIZE_TWICE, Kind.SIZE_MISSING), kinds(twice));
        Edits missing = read(Designs.toeUp(), workbook ->
            workbook.getSheet(CountsSheet.NAME).removeRow(row(workbook, "heel.centre")));
        assertEquals(List.of(Kind.ROW_MISSING), kinds(missing));
        assertEquals("heel.centre", missing.problems().getFirst().subject());
        Edits unknown = read(Designs.toeUp(), workbook ->
            row(workbook, "heel.centre").getCell(CountsSheet.KEY_COLUMN).setCellValue("heel.center"));
        assertEquals(List.of(Kind.KEY_UNKNOWN, Kind.ROW_MISSING), kinds(unknown));
        assertTrue(unknown.problems().getFirst().sentence().contains("did you mean heel.centre?"));
        Edits absent = read(Designs.toeUp(), workbook ->
            row(workbook, "heel.centre").getCell(CountsSheet.KEY_COLUMN).setCellValue("heel.flapRows"));
        assertEquals(List.of(Kind.KEY_ABSENT, Kind.ROW_MISSING), kinds(absent));
    }

    private static List<Kind> kinds(Edits edits) {
        assertEquals(List.of(), edits.edits());
        return edits.problems().stream().map(EditProblem::kind).toList();
    }

    @Test
    void aWorkbookWithoutFormulasIsRefused() throws IOException {
        Edits edits = read(Designs.toeUp(), workbook -> Books.formulaCells(workbook).forEach(cell -> {
            // a program that pastes values keeps what was shown, be it a number or a text
            cell.removeFormula();
        }));
        assertEquals(List.of(Kind.VALUES_ONLY), kinds(edits));
    }

    @Test
    void aNumberThatIsTypedOnTheSheetOfMeasurementsIsSentToTheOther() throws IOException {
        Edits edits = read(Designs.toeUp(), workbook -> {
            XSSFCell cell = workbook.getSheet(MeasurementsSheet.NAME).getRow(4).getCell(3);
            type(cell, 24.5);
        });
        assertEquals(Kind.TYPED_ELSEWHERE, problem(edits).kind());
        assertEquals("Measurements!D5", problem(edits).place());
        assertTrue(problem(edits).sentence().contains("Counts"), problem(edits).sentence());
    }

    @Test
    void anotherStateOrAnotherPatternIsRefusedUnlessForced() throws IOException {
        Design since = Designs.with(Designs.toeUp(), Designs.toeUp().title(), Designs.overrides().sizes());
        Edits stale = read(Designs.toeUp(), since, workbook -> type(cell(workbook, "heel.centre", 5), 14));
        assertEquals(Kind.CHANGED_SINCE, problem(stale).kind());
        assertEquals(1, stale.errors(false).size());
        assertEquals(List.of(), stale.errors(true));
        Edits other = read(Designs.overrides(), Designs.toeUp(), workbook -> { });
        assertEquals(Kind.OTHER_PATTERN, problem(other).kind());
        assertTrue(problem(other).sentence().contains("Overruled"), problem(other).sentence());
        Edits unmarked = read(Designs.toeUp(), workbook -> workbook.removeSheetAt(0));
        assertEquals(Kind.NO_HASH, problem(unmarked).kind());
    }

    @Test
    void aForcedWorkbookWins() throws IOException {
        Design since = Designs.with(Designs.toeUp(), Designs.toeUp().title(), Designs.overrides().sizes());
        Edits forced = read(Designs.toeUp(), since, workbook -> type(cell(workbook, "heel.centre", 5), 14));
        List<String> assignments = new ArrayList<>(edits(forced));
        // size S had 60 stitches before 62 were set, and its overrides go as those of the others do
        assertTrue(assignments.contains("cuff.height[S]=") && assignments.contains("foot.instep[M]=")
                && assignments.contains("heel.centre[XL]=14"), assignments.toString());
    }

    @Test
    void whatIsNoWorkbookOfOursIsSaid() throws IOException {
        Edits rubbish = WorkbookReader.read(new byte[] {1, 2, 3}, Patterns.grade(Designs.toeUp()), "it is damaged");
        assertEquals(Optional.of("it is damaged"), rubbish.errors(true).stream().map(EditProblem::sentence).findFirst());
        try (XSSFWorkbook foreign = new XSSFWorkbook(); ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            foreign.createSheet("Sheet1").createRow(0).createCell(0).setCellValue("Key");
            foreign.write(out);
            assertEquals(List.of(Kind.NO_COUNTS),
                    kinds(WorkbookReader.read(out.toByteArray(), Patterns.grade(Designs.toeUp()), "")));
        }
    }
}
