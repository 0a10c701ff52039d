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
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.engine.design.Design;
import turnheel.exchange.Designs;

class RoundFinderSheetTest {

    private static final Map<String, Design> DESIGNS = Designs.all();
    private static final String SHEET = "Round finder table";

    static Set<String> designs() {
        return DESIGNS.keySet();
    }

    private static List<Row> rows(XSSFWorkbook workbook, String size) {
        List<Row> rows = new ArrayList<>();
        workbook.getSheet(SHEET).forEach(row -> {
            if (row.getRowNum() > 2 && row.getCell(0).getStringCellValue().equals(size)) {
                rows.add(row);
            }
        });
        return rows;
    }

    /** What a person reads in a row, from the stitches on. */
    private static List<String> texts(Row row) {
        List<String> texts = new ArrayList<>();
        for (int column = 1; column <= 10; column++) {
            texts.add(switch (row.getCell(column).getCellType()) {
                case NUMERIC -> Long.toString(Math.round(row.getCell(column).getNumericCellValue()));
                case STRING -> row.getCell(column).getStringCellValue();
                default -> "";
            });
        }
        return texts;
    }

    /** 64 stitches from 8: 12, 16 and 20 in rounds 1 to 3, closed in round 4, 24 in round 5. */
    @Test
    void leadsFromTheStitchesOnTheNeedlesToTheNextRound() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.toeUp())) {
            List<List<String>> twenty = rows(workbook, "M").stream().map(RoundFinderSheetTest::texts)
                    .filter(row -> row.getFirst().equals("20")).toList();
            assertEquals(List.of(
                    List.of("20", "4", "open yarn-overs on the needle", "Toe", "increase", "3", "3", "Toe", "4",
                            "*k1 tbl, k4; rep from * to end"),
                    List.of("20", "0", "no shaping directly under the needle", "Toe", "plain", "4", "4", "Toe", "5",
                            "*yo, k5; rep from * to end")), twenty);
        }
    }

    @Test
    void roundsThatLookAlikeStandInOneRowAndTheLastHasNoNext() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.toeUp())) {
            List<Row> rows = rows(workbook, "M");
            List<String> foot = rows.stream().map(RoundFinderSheetTest::texts).filter(row -> row.get(3).equals("Foot"))
                    .findFirst().orElseThrow();
            assertEquals("1", foot.get(5));
            assertTrue(Integer.parseInt(foot.get(6)) > 30, foot::toString);
            assertEquals("Heel", foot.get(7));
            assertEquals(List.of("the end", "", ""), texts(rows.getLast()).subList(7, 10));
        }
    }

    /** Counted on the other sheet: every round of every part is in one row, and no row has others. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("designs")
    void everyRoundOfTheRoundsSheetIsInOneRow(String name) throws IOException {
        try (XSSFWorkbook workbook = Books.of(DESIGNS.get(name))) {
            List<String> listed = new ArrayList<>();
            workbook.getSheet("Rounds").forEach(row -> {
                if (row.getRowNum() > 2 && row.getCell(5) != null && row.getCell(5).getCellType() == CellType.NUMERIC) {
                    listed.add(line(row, 0, 1, row.getCell(2).getNumericCellValue(), 5, 6));
                }
            });
            List<String> found = new ArrayList<>();
            XSSFSheet sheet = workbook.getSheet(SHEET);
            sheet.forEach(row -> {
                if (row.getRowNum() > 2) {
                    double from = row.getCell(6).getNumericCellValue();
                    for (double round = from; round <= row.getCell(7).getNumericCellValue(); round++) {
                        found.add(line(row, 0, 4, round, 1, 2));
                    }
                }
            });
            assertEquals(listed.stream().sorted().toList(), found.stream().sorted().toList());
        }
    }

    private static String line(Row row, int size, int part, double round, int stitches, int yarnOvers) {
        return "%s %s %.0f: %.0f, %.0f".formatted(row.getCell(size).getStringCellValue(),
                row.getCell(part).getStringCellValue(), round, row.getCell(stitches).getNumericCellValue(),
                row.getCell(yarnOvers).getNumericCellValue());
    }

    @Test
    void canBeFilteredAndStartsEverySizeOnAPageOfItsOwn() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.toeUp())) {
            XSSFSheet sheet = workbook.getSheet(SHEET);
            assertEquals("A3:K" + (sheet.getLastRowNum() + 1), sheet.getCTWorksheet().getAutoFilter().getRef());
            assertEquals(4, sheet.getRowBreaks().length);
            assertEquals("XS", sheet.getRow(sheet.getRowBreaks()[0]).getCell(0).getStringCellValue());
            assertEquals("S", sheet.getRow(sheet.getRowBreaks()[0] + 1).getCell(0).getStringCellValue());
        }
    }
}
