package turnheel.exchange.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.engine.design.Design;
import turnheel.engine.wording.HouseStyles;
import turnheel.engine.writing.Manuscripts;
import turnheel.engine.writing.PatternText;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.Designs;

class InstructionsSheetTest {

    private static final Map<String, Design> DESIGNS = Designs.all();
    private static final String SHEET = "Instructions";
    private static final int HEAD = 2;

    static Set<String> designs() {
        return DESIGNS.keySet();
    }

    /** The texts of a column below its head, without the empty ones. */
    private static List<String> texts(XSSFSheet sheet, int column) {
        List<String> texts = new ArrayList<>();
        for (int row = HEAD + 1; row <= sheet.getLastRowNum(); row++) {
            XSSFCell cell = sheet.getRow(row).getCell(column);
            if (cell != null && !cell.getStringCellValue().isEmpty()) {
                texts.add(cell.getStringCellValue());
            }
        }
        return texts;
    }

    private static List<String> texts(PatternText text) {
        return text.paragraphs().stream().map(text::text).toList();
    }

    private static XSSFRow row(XSSFSheet sheet, String start) {
        for (int row = HEAD + 1; row <= sheet.getLastRowNum(); row++) {
            if (sheet.getRow(row).getCell(1).getStringCellValue().startsWith(start)) {
                return sheet.getRow(row);
            }
        }
        throw new AssertionError("no paragraph begins with " + start);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("designs")
    void aColumnIsTheWrittenPatternOrTheEditionOfASize(String name) throws IOException {
        PatternText text = Manuscripts.write(Patterns.grade(DESIGNS.get(name)), HouseStyles.usual());
        try (XSSFWorkbook workbook = Books.of(DESIGNS.get(name))) {
            XSSFSheet sheet = workbook.getSheet(SHEET);
            assertEquals(texts(text), texts(sheet, 1));
            for (int size = 0; size < text.sizes().size(); size++) {
                assertEquals(text.sizes().get(size), sheet.getRow(HEAD).getCell(2 + size).getStringCellValue());
                assertEquals(texts(text.onlySize(text.sizes().get(size))), texts(sheet, 2 + size));
            }
        }
    }

    @Test
    void aLineStandsBesideWhatEachSizeReads() throws IOException {
        // 195 mm less 10 % at 32 stitches: 56; 207: 60; 220: 64; 235: 68; 250: 72
        try (XSSFWorkbook workbook = Books.of(Designs.toeUp())) {
            XSSFRow row = row(workbook.getSheet(SHEET), "Rep inc rnd and closing rnd");
            assertEquals("Instruction", row.getCell(0).getStringCellValue());
            assertTrue(row.getCell(1).getStringCellValue().endsWith(" 56 (60, 64, 68, 72) sts."));
            // 64 turn at 20 and grow by 4 eleven times, one of them written out before
            assertEquals("Rep inc rnd and closing rnd 10 more times. 64 sts.", row.getCell(4).getStringCellValue());
        }
    }

    @Test
    void whatASizeReadsAsPrintedIsGrey() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.toeUp())) {
            XSSFSheet sheet = workbook.getSheet(SHEET);
            XSSFCell same = row(sheet, "Set-up rnd").getCell(2);
            XSSFCell other = row(sheet, "Rep inc rnd and closing rnd").getCell(2);
            assertEquals("Set-up rnd: K to end.", same.getStringCellValue());
            assertNotEquals(same.getCellStyle().getFont().getXSSFColor().getARGBHex(),
                    other.getCellStyle().getFont().getXSSFColor().getARGBHex());
        }
    }

    @Test
    void onPaperThereAreTheFirstTwoColumnsAlone() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.twelve())) {
            int last = workbook.getSheet(SHEET).getLastRowNum() + 1;
            assertEquals("Instructions!$A$1:$B$" + last,
                    workbook.getPrintArea(workbook.getSheetIndex(SHEET)).replace("'", ""));
        }
    }

    @Test
    void aPatternOfOneSizeIsItsOwnEdition() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.titled("Lone Lamp"))) {
            XSSFRow head = workbook.getSheet(SHEET).getRow(HEAD);
            assertEquals("As printed", head.getCell(1).getStringCellValue());
            assertNull(head.getCell(2));
        }
    }
}
