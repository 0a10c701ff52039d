package turnheel.exchange.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataValidationConstraint.ValidationType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFDataValidation;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

import turnheel.engine.checks.Checks;
import turnheel.engine.design.Design;
import turnheel.engine.query.Query;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.Designs;
import turnheel.exchange.imprint.ContentHash;

class QueriesSheetTest {

    private static final String NAME = "Queries and sign-off";
    private static final int HEAD_ROW = 4;
    private static final int DONE_COLUMN = 10;

    private static List<String> texts(Row row) {
        List<String> texts = new ArrayList<>();
        row.forEach(cell -> texts.add(switch (cell.getCellType()) {
            case NUMERIC -> Integer.toString((int) cell.getNumericCellValue());
            case STRING -> cell.getStringCellValue();
            default -> "";
        }));
        return texts;
    }

    private static boolean contains(XSSFSheet sheet, String text) {
        for (Row row : sheet) {
            if (texts(row).contains(text)) {
                return true;
            }
        }
        return false;
    }

    /** 62 stitches are no count that a toe on four lines can end on; the design's other overrides break more. */
    @Test
    void listsEveryQueryWithRoomForItsAnswer() throws IOException {
        List<Query> queries = Checks.of(Patterns.grade(Designs.overrides()));
        try (XSSFWorkbook workbook = Books.of(Designs.overrides())) {
            XSSFSheet sheet = workbook.getSheet(NAME);
            assertEquals(List.of("No.", "Severity", "Place", "Sizes", "Check", "Query", "Expected", "Found",
                    "Suggested correction", "Answer", "Done"), texts(sheet.getRow(HEAD_ROW)));
            Set<String> severities = new HashSet<>();
            for (int i = 0; i < queries.size(); i++) {
                Query query = queries.get(i);
                List<String> row = texts(sheet.getRow(HEAD_ROW + 1 + i));
                assertEquals(Integer.toString(i + 1), row.get(0));
                severities.add(row.get(1));
                assertEquals(String.join(", ", query.sizes()), row.get(3));
                assertEquals(query.check().id(), row.get(4));
                assertEquals(List.of(query.expected(), query.found(), query.correction(), "", ""), row.subList(6, 11));
            }
            assertEquals(Set.of("correct", "decide"), severities);
            List<String> broken = texts(sheet.getRow(HEAD_ROW + 1 + queries.stream().map(query -> query.check().id())
                    .toList().indexOf("counts.override-breaks")));
            assertEquals("Foot stitches", broken.get(2));
            assertTrue(broken.get(5).contains("is overridden to 62"), broken::toString);
            assertEquals(CellType.BLANK, sheet.getRow(HEAD_ROW + 1 + queries.size()) == null ? CellType.BLANK
                    : sheet.getRow(HEAD_ROW + 1 + queries.size()).getCell(0).getCellType());
        }
    }

    @Test
    void aQueryIsMarkedDoneFromAList() throws IOException {
        int queries = Checks.of(Patterns.grade(Designs.overrides())).size();
        try (XSSFWorkbook workbook = Books.of(Designs.overrides())) {
            List<XSSFDataValidation> marks = workbook.getSheet(NAME).getDataValidations();
            assertEquals(1, marks.size());
            assertEquals(ValidationType.LIST, marks.getFirst().getValidationConstraint().getValidationType());
            assertEquals(List.of("yes", "no"),
                    List.of(marks.getFirst().getValidationConstraint().getExplicitListValues()));
            assertEquals("K6:K" + (HEAD_ROW + 1 + queries),
                    marks.getFirst().getRegions().getCellRangeAddress(0).formatAsString());
            assertEquals(DONE_COLUMN, marks.getFirst().getRegions().getCellRangeAddress(0).getFirstColumn());
        }
    }

    @Test
    void saysWhatIsOpenAtWhichState() throws IOException {
        List<Query> queries = Checks.of(Patterns.grade(Designs.overrides()));
        long errors = queries.stream().filter(query -> query.severity() == turnheel.engine.query.Severity.ERROR).count();
        try (XSSFWorkbook workbook = Books.of(Designs.overrides())) {
            XSSFSheet sheet = workbook.getSheet(NAME);
            assertEquals("Content hash: " + ContentHash.of(Designs.overrides()), texts(sheet.getRow(1)).getFirst());
            assertEquals("Open at this content hash: %d to correct, %d to decide.".formatted(errors,
                    queries.size() - errors), texts(sheet.getRow(2)).getFirst());
            assertTrue(errors > 0 && errors < queries.size(), queries::toString);
        }
    }

    @Test
    void whereNothingIsOpenItSaysSoAndCanBeSignedAllTheSame() throws IOException {
        Design design = Designs.titled("Clean");
        assertEquals(List.of(), Checks.of(Patterns.grade(design)));
        try (XSSFWorkbook workbook = Books.of(design)) {
            XSSFSheet sheet = workbook.getSheet(NAME);
            assertEquals("Nothing is open at this content hash.", texts(sheet.getRow(2)).getFirst());
            assertTrue(contains(sheet, "Nothing is open."));
            assertTrue(sheet.getDataValidations().isEmpty());
            for (String line : List.of("Checked by", "Approved by", "Date")) {
                assertTrue(contains(sheet, line), line);
            }
        }
        try (XSSFWorkbook workbook = Books.of(Designs.overrides())) {
            assertFalse(contains(workbook.getSheet(NAME), "Nothing is open."));
            assertTrue(contains(workbook.getSheet(NAME), "Checked by"));
        }
    }
}
