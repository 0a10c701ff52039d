package turnheel.exchange.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataValidationConstraint.ValidationType;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFDataValidation;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Role;
import turnheel.engine.grading.Graded;
import turnheel.engine.yarn.Patterns;
import turnheel.engine.grading.Source;
import turnheel.engine.grading.Why;
import turnheel.engine.term.Key;
import turnheel.exchange.Designs;

class CountsSheetTest {

    private static final Map<String, Design> DESIGNS = Designs.all();
    /** What every program allows: letters, digits, underscores, and nothing that reads as a cell. */
    private static final Pattern PORTABLE_NAME = Pattern.compile("[A-Za-z]+_[A-Za-z0-9]+_size[1-9][0-9]*");

    static Set<String> designs() {
        return DESIGNS.keySet();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("designs")
    void inputsOverridesAndChosenCountsAreValuesAndAllElseIsLive(String name) throws IOException {
        Graded graded = Patterns.grade(DESIGNS.get(name));
        Set<Source> seen = new HashSet<>();
        try (XSSFWorkbook workbook = Books.of(DESIGNS.get(name))) {
            Books.eachNumber(graded, (number, size) -> {
                boolean isValue = Set.of(Source.INPUT, Source.OVERRIDE, Source.CHOSEN).contains(number.source());
                XSSFCell cell = Books.cell(workbook, number.key(), size);
                assertEquals(isValue ? CellType.NUMERIC : CellType.FORMULA, cell.getCellType(),
                        () -> "%s of size %d, %s".formatted(number.key(), size + 1, number.source()));
                assertEquals(number.value(), cell.getNumericCellValue(), number.key().name());
                seen.add(number.source());
            });
        }
        assertTrue(seen.containsAll(Set.of(Source.INPUT, Source.DEFAULT, Source.RULE)), seen::toString);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("designs")
    void aNumberThatTheEngineLacksIsAnEmptyCell(String name) throws IOException {
        Graded graded = Patterns.grade(DESIGNS.get(name));
        try (XSSFWorkbook workbook = Books.of(DESIGNS.get(name))) {
            for (int size = 0; size < graded.sizes().size(); size++) {
                for (Parameter parameter : graded.parameters()) {
                    boolean isEmpty = Books.cell(workbook, parameter.key(), size).getCellType() == CellType.BLANK;
                    assertEquals(graded.sizes().get(size).cell(parameter).isEmpty(), isEmpty, parameter.key().name());
                }
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("designs")
    void everyNumberHasANameThatEveryProgramAllows(String name) throws IOException {
        Graded graded = Patterns.grade(DESIGNS.get(name));
        try (XSSFWorkbook workbook = Books.of(DESIGNS.get(name))) {
            Set<String> names = new HashSet<>();
            Set<String> cells = new HashSet<>();
            for (XSSFName defined : workbook.getAllNames()) {
                if (!defined.getNameName().startsWith("_xlnm.") && !defined.getNameName().startsWith("knitter_")) {
                    assertTrue(PORTABLE_NAME.matcher(defined.getNameName()).matches(), defined::getNameName);
                    assertTrue(names.add(defined.getNameName().toLowerCase(Locale.ROOT)), defined::getNameName);
                    assertTrue(cells.add(defined.getRefersToFormula()), defined::getRefersToFormula);
                    assertTrue(new CellReference(defined.getRefersToFormula()).isRowAbsolute());
                }
            }
            assertEquals(graded.parameters().size() * graded.sizes().size(), names.size());
        }
    }

    @Test
    void rowsAreGroupedByPartUnderHeadingsInTheOrderOfTheCatalogue() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.toeUp())) {
            List<String> keys = new ArrayList<>();
            List<String> headings = new ArrayList<>();
            XSSFSheet sheet = workbook.getSheet("Counts");
            for (int row = 3; sheet.getRow(row) != null; row++) {
                String first = sheet.getRow(row).getCell(0).getStringCellValue();
                (first.contains(".") ? keys : headings).add(first);
            }
            Graded graded = Patterns.grade(Designs.toeUp());
            assertEquals(graded.parameters().stream().map(parameter -> parameter.key().name()).toList(), keys);
            assertEquals(List.of("Gauge", "To fit", "Ease and fit", "Toe", "Foot", "Heel", "Leg", "Cuff", "Yarn"),
                    headings);
            assertEquals(List.of("Key", "Number", "Unit", "XS", "S", "M", "L", "XL"),
                    texts(sheet, 2));
        }
    }

    private static List<String> texts(XSSFSheet sheet, int row) {
        List<String> texts = new ArrayList<>();
        sheet.getRow(row).forEach(cell -> texts.add(cell.getStringCellValue()));
        return texts;
    }

    @Test
    void anOverrideIsMarkedInTypeAndColourAndItsCommentGivesTheRulesValue() throws IOException {
        Graded graded = Patterns.grade(Designs.overrides());
        Key stitches = Catalogue.FOOT_STITCHES.key();
        try (XSSFWorkbook workbook = Books.of(Designs.overrides())) {
            XSSFCell overridden = Books.cell(workbook, stitches, 1);
            XSSFCell chosen = Books.cell(workbook, stitches, 0);
            assertTrue(overridden.getCellStyle().getFont().getItalic());
            assertTrue(overridden.getCellStyle().getFont().getBold());
            assertNotEquals(chosen.getCellStyle().getFillForegroundColorColor(),
                    overridden.getCellStyle().getFillForegroundColorColor());
            String comment = overridden.getCellComment().getString().getString();
            // 207 mm less 10 % at 32 stitches are 59.6; 60 is the multiple of 4 for toe and rib
            assertTrue(comment.contains("would be 60"), comment);
            assertEquals(String.join("\n", Why.of(graded, stitches, "S").lines()), comment);
            XSSFCell centre = Books.cell(workbook, Catalogue.HEEL_CENTRE.key(), 2);
            assertTrue(centre.getCellComment().getString().getString().contains("would be 10"));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("designs")
    void onlyOverridesAndChosenCountsHaveComments(String name) throws IOException {
        Graded graded = Patterns.grade(DESIGNS.get(name));
        try (XSSFWorkbook workbook = Books.of(DESIGNS.get(name))) {
            Books.eachNumber(graded, (number, size) -> assertEquals(
                    number.source() == Source.OVERRIDE || number.source() == Source.CHOSEN,
                    Books.cell(workbook, number.key(), size).getCellComment() != null, number.key().name()));
        }
    }

    @Test
    void defaultsAreMarkedByAnAsteriskAndInItalics() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.cuffDown())) {
            XSSFCell ofItself = Books.cell(workbook, Catalogue.EASE_AROUND.key(), 0);
            XSSFCell entered = Books.cell(workbook, Catalogue.EASE_AROUND.key(), 1);
            assertTrue(ofItself.getCellStyle().getDataFormatString().endsWith("\"*\""));
            assertTrue(ofItself.getCellStyle().getFont().getItalic());
            assertFalse(entered.getCellStyle().getDataFormatString().contains("\"*\""));
            assertFalse(entered.getCellStyle().getFont().getItalic());
        }
    }

    @Test
    void whatCanBeSetIsValidatedWithTheCataloguesRange() throws IOException {
        Graded graded = Patterns.grade(Designs.toeUp());
        try (XSSFWorkbook workbook = Books.of(Designs.toeUp())) {
            List<XSSFDataValidation> validations = workbook.getSheet("Counts").getDataValidations();
            for (Parameter parameter : graded.parameters()) {
                XSSFCell first = Books.cell(workbook, parameter.key(), 0);
                XSSFCell last = Books.cell(workbook, parameter.key(), 4);
                List<XSSFDataValidation> ofRow = validations.stream().filter(validation -> validation.getRegions()
                        .getCellRangeAddress(0).isInRange(first)).toList();
                if (parameter.role() == Role.RESULT) {
                    assertEquals(0, ofRow.size(), parameter.key().name());
                    continue;
                }
                assertEquals(1, ofRow.size(), parameter.key().name());
                XSSFDataValidation validation = ofRow.getFirst();
                assertTrue(validation.getRegions().getCellRangeAddress(0).isInRange(last));
                assertTrue(validation.getShowErrorBox());
                assertEquals(parameter.unit().isWhole() ? ValidationType.INTEGER : ValidationType.DECIMAL,
                        validation.getValidationConstraint().getValidationType());
                assertEquals(parameter.least(),
                        Double.parseDouble(validation.getValidationConstraint().getFormula1()), 1e-12);
                assertEquals(parameter.most(),
                        Double.parseDouble(validation.getValidationConstraint().getFormula2()), 1e-12);
            }
        }
    }

    @Test
    void everyLabelOfTheCatalogueFitsTheTitleOfAnErrorBox() {
        Catalogue.all().forEach(parameter -> assertTrue(parameter.label().length() <= 32, parameter.label()));
    }

    @Test
    void aCountThatIsNotWholeDoesNotLookWhole() throws IOException {
        Design odd = Designs.with(Designs.toeUp(), "Odd", List.of(Designs.with(Designs.toeUp().sizes().getFirst(),
                Map.of(), Map.of("foot.stitches", "61"))));
        try (XSSFWorkbook workbook = Books.of(odd)) {
            XSSFCell instep = Books.cell(workbook, Catalogue.FOOT_INSTEP.key(), 0);
            assertEquals(30.5, instep.getNumericCellValue());
            assertTrue(instep.getCellStyle().getDataFormatString().startsWith("General"));
        }
    }

    @Test
    void headingsStayInSightAndAreRepeatedInPrint() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.twelve())) {
            XSSFSheet sheet = workbook.getSheet("Counts");
            assertEquals(3, sheet.getPaneInformation().getHorizontalSplitPosition());
            assertEquals(3, sheet.getPaneInformation().getVerticalSplitPosition());
            assertEquals("3:3", sheet.getRepeatingRows().formatAsString());
            assertEquals("A:C", sheet.getRepeatingColumns().formatAsString());
            assertNotNull(sheet.getRow(2).getCell(14));
            assertNull(sheet.getRow(2).getCell(15));
        }
    }
}
