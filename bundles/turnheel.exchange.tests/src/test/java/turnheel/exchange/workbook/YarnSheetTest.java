package turnheel.exchange.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.grading.Graded;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.Designs;

class YarnSheetTest {

    private static final Map<String, Design> DESIGNS = Designs.all();
    private static final String SHEET = "Yarn";

    static Set<String> designs() {
        return DESIGNS.keySet();
    }

    private static List<String> labels(XSSFWorkbook workbook) {
        List<String> labels = new ArrayList<>();
        workbook.getSheet(SHEET).forEach(row -> labels.add(row.getCell(0).getStringCellValue()));
        return labels;
    }

    private static XSSFRow row(XSSFWorkbook workbook, String label) {
        for (Row row : workbook.getSheet(SHEET)) {
            if (row.getCell(0).getStringCellValue().equals(label)) {
                return (XSSFRow) row;
            }
        }
        throw new AssertionError("no row \"" + label + "\" but " + labels(workbook));
    }

    private static double number(XSSFWorkbook workbook, String label, int size) {
        return row(workbook, label).getCell(2 + size).getNumericCellValue();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("designs")
    void whatThePartsTakeWithTheEndsIsWhatASockTakes(String name) throws IOException {
        Graded graded = Patterns.grade(DESIGNS.get(name));
        try (XSSFWorkbook workbook = Books.of(DESIGNS.get(name))) {
            XSSFSheet sheet = workbook.getSheet(SHEET);
            int first = row(workbook, "In one sock").getRowNum() + 1;
            int last = row(workbook, "Metres, a sock").getRowNum();
            assertTrue(last - first >= 6, "five parts and the ends at least");
            for (int size = 0; size < graded.sizes().size(); size++) {
                if (graded.sizes().get(size).cell(Catalogue.YARN_SOCK_METRES).isEmpty()) {
                    assertEquals(CellType.BLANK, sheet.getRow(first).getCell(2 + size).getCellType());
                    continue;
                }
                double sum = 0;
                for (int row = first; row < last; row++) {
                    sum += sheet.getRow(row).getCell(2 + size).getNumericCellValue();
                }
                assertEquals(graded.sizes().get(size).value(Catalogue.YARN_SOCK_METRES), sum, 1e-9);
            }
        }
    }

    /** A yarn of 210 m and 50 g a ball; two balls are stated. */
    @Test
    void tellsHowManyBallsAreLeftOver() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.afterthought())) {
            for (int size = 0; size < 5; size++) {
                double metres = number(workbook, "Metres, the pair", size);
                assertEquals(metres * 50 / 210, number(workbook, "Grams, the pair", size), 1e-9);
                assertEquals(Math.ceil(metres / 210), number(workbook, "Balls, the pair", size));
                assertEquals(2 - Math.ceil(metres / 210), number(workbook, "Balls to spare", size));
                assertEquals(2, number(workbook, "Balls that the pattern asks for", size));
            }
            assertTrue(labels(workbook).contains(
                    "Yarn: Harbour Fingering, 210 m in a ball of 50 g, balls for the pair: 2"));
        }
    }

    @Test
    void listsEachYarnWithItsParts() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.colours())) {
            List<String> labels = labels(workbook);
            assertTrue(labels.containsAll(List.of("For the pair, 10 % added", "Metres, the pair",
                    "Yarn 3: 170 m in a ball of 50 g", "Metres of yarn 3, the pair", "Heel, yarn 3",
                    "Leg, yarn 1", "Leg, yarn 2", "Ends to weave in, yarn 2", "In other yarns: heel: yarn 3; "
                            + "pattern on the instep: yarn 3", "stitch markers", "=tapestry needle")),
                    labels::toString);
            // the heel is worked in yarn 3 alone
            assertTrue(!labels.contains("Heel, yarn 1") && !labels.contains("Heel, yarn 2"), labels::toString);
            assertEquals(2.25, number(workbook, "Needle", 0));
            assertEquals("1", row(workbook, "US number").getCell(2).getStringCellValue());
            for (int size = 0; size < 5; size++) {
                assertEquals(number(workbook, "Metres, the pair", size),
                        number(workbook, "Metres of yarn 1, the pair", size)
                        + number(workbook, "Metres of yarn 2, the pair", size)
                        + number(workbook, "Metres of yarn 3, the pair", size), 1e-9);
            }
        }
    }

    @Test
    void followsTheCountsSheetWhereThePatternHasTheRows() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.colours())) {
            workbook.getSheet(SHEET).forEach(row -> row.forEach(cell -> {
                boolean isNumber = cell.getColumnIndex() > 1 && cell.getRowIndex() > 2
                        && cell.getCellType() == CellType.NUMERIC;
                String label = row.getCell(0).getStringCellValue();
                assertTrue(!isNumber || label.startsWith("Ends to weave in") || label.startsWith("Balls that"), label);
            }));
            assertEquals("yarn_metres_size2", row(workbook, "Metres, the pair").getCell(3).getCellFormula());
        }
    }

    @Test
    void saysThatNoYarnIsChosen() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.toeUp())) {
            assertTrue(labels(workbook).get(1).startsWith("No yarn is chosen yet"));
            assertTrue(labels(workbook).stream().noneMatch(label -> label.startsWith("Balls")));
        }
    }
}
