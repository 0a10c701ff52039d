package turnheel.exchange.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

import turnheel.engine.design.Design;
import turnheel.exchange.Designs;

class RoundsSheetTest {

    /** 64 stitches from 8 on 4 lines, the figures of domain § 3: turning at 20, 26 rounds. */
    private static Design sixtyFour() {
        return Designs.with(Designs.toeUp(), "Rounds", List.of(Designs.with(
                Designs.size("M", "240 mm", "222 mm", "305 mm"), Map.of(), Map.of("foot.stitches", "64")),
                Designs.size("L", "255 mm", "235 mm", "322 mm")));
    }

    private static List<Row> rows(XSSFWorkbook workbook, String size, String part) {
        List<Row> rows = new ArrayList<>();
        workbook.getSheet("Rounds").forEach(row -> {
            if (row.getRowNum() > 2 && row.getCell(0).getStringCellValue().equals(size)
                    && row.getCell(1).getStringCellValue().equals(part)) {
                rows.add(row);
            }
        });
        return rows;
    }

    @Test
    void listsTheToeRoundByRound() throws IOException {
        try (XSSFWorkbook workbook = Books.of(sixtyFour())) {
            List<Row> numbered = rows(workbook, "M", "Toe").stream()
                    .filter(row -> row.getCell(2).getCellType() == CellType.NUMERIC).toList();
            assertEquals(26, numbered.size());
            assertEquals(List.of(12.0, 16.0, 20.0, 20.0, 24.0, 24.0),
                    numbered.stream().limit(6).map(row -> row.getCell(5).getNumericCellValue()).toList());
            Row first = numbered.getFirst();
            assertEquals("increase", first.getCell(3).getStringCellValue());
            assertEquals("*yo, k2; rep from * to end", first.getCell(4).getStringCellValue());
            assertEquals(4, first.getCell(6).getNumericCellValue());
            Row last = numbered.getLast();
            assertEquals(26, last.getCell(2).getNumericCellValue());
            assertEquals(64, last.getCell(5).getNumericCellValue());
            assertEquals(0, last.getCell(6).getNumericCellValue());
        }
    }

    @Test
    void partsFollowEachOtherInTheOrderOfKnitting() throws IOException {
        assertEquals(List.of("Toe", "Foot", "Heel", "Leg", "Cuff"), parts(Designs.toeUp(), "XS"));
        assertEquals(List.of("Cuff", "Leg", "Heel", "Foot", "Toe"), parts(Designs.cuffDown(), "36/37"));
    }

    private static List<String> parts(Design design, String size) throws IOException {
        List<String> parts = new ArrayList<>();
        try (XSSFWorkbook workbook = Books.of(design)) {
            workbook.getSheet("Rounds").forEach(row -> {
                if (row.getRowNum() > 2 && row.getCell(0).getStringCellValue().equals(size)) {
                    parts.add(row.getCell(1).getStringCellValue());
                }
            });
        }
        return parts.stream().distinct().toList();
    }

    @Test
    void aPartWhoseNumbersDoNotWorkOutSaysSo() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.missing())) {
            List<Row> foot = rows(workbook, "no length", "Foot");
            assertEquals(1, foot.size());
            assertTrue(foot.getFirst().getCell(4).getStringCellValue().startsWith("Not written"));
        }
    }

    @Test
    void canBeFilteredAndStartsEverySizeOnAPageOfItsOwn() throws IOException {
        try (XSSFWorkbook workbook = Books.of(sixtyFour())) {
            int last = workbook.getSheet("Rounds").getLastRowNum();
            assertEquals("A3:G" + (last + 1), workbook.getSheet("Rounds").getCTWorksheet().getAutoFilter().getRef());
            assertNotNull(workbook.getSheet("Rounds").getRowBreaks());
            int[] breaks = workbook.getSheet("Rounds").getRowBreaks();
            assertEquals(1, breaks.length);
            assertEquals("M", workbook.getSheet("Rounds").getRow(breaks[0]).getCell(0).getStringCellValue());
            assertEquals("L", workbook.getSheet("Rounds").getRow(breaks[0] + 1).getCell(0).getStringCellValue());
        }
    }
}
