package turnheel.exchange.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

import turnheel.engine.design.Design;
import turnheel.exchange.Designs;
import turnheel.exchange.imprint.ContentHash;

class PatternSheetTest {

    private static Map<String, String> lines(Design design) throws IOException {
        Map<String, String> lines = new LinkedHashMap<>();
        try (XSSFWorkbook workbook = Books.of(design)) {
            workbook.getSheet("Pattern").forEach(row -> lines.put(row.getCell(0).getStringCellValue(),
                    row.getCell(1).getStringCellValue()));
        }
        return lines;
    }

    @Test
    void saysWhatWasDesigned() throws IOException {
        Map<String, String> lines = lines(Designs.cuffDown());
        assertTrue(lines.containsKey("Breakwater"));
        assertEquals("8 stitches over 1 in", lines.get("Stitch gauge"));
        assertEquals("22 rounds over 2 in", lines.get("Round gauge"));
        assertEquals("Cuff-down: cuff, leg, heel, foot, toe", lines.get("Direction"));
        assertEquals("Wedge toe", lines.get("Toe"));
        assertEquals("Short-row heel, wrapped turns", lines.get("Heel"));
        assertEquals("Straight leg, ankle height, stitches as the foot", lines.get("Leg"));
        assertEquals("1×1 rib", lines.get("Cuff"));
        assertEquals(List.of("36/37", "38/39", "40/41"),
                List.of(lines.get("Size 1"), lines.get("Size 2"), lines.get("Size 3")));
        assertEquals(ContentHash.of(Designs.cuffDown()), lines.get("Content hash"));
        assertEquals("Turnheel", lines.get("Made with"));
    }

    @Test
    void saysWhatThePairIsMadeOf() throws IOException {
        Map<String, String> lines = lines(Designs.colours());
        assertEquals("Quay Four, slate, 210 m in a ball of 50 g, category 1 (Super fine), balls for the pair: 2",
                lines.get("Yarn 1"));
        assertEquals("Quay Four, gorse, 210 m in a ball of 50 g, category 1 (Super fine)", lines.get("Yarn 2"));
        assertEquals("170 m in a ball of 50 g", lines.get("Yarn 3"));
        assertEquals("heel: yarn 3; pattern on the instep: yarn 3", lines.get("In other yarns"));
        assertEquals("2.25 mm (US 1)", lines.get("Needle"));
        assertEquals("42 stitches and 57 rounds, 13 cm wide and 128 mm high, 7.5 g, knitted flat, washed",
                lines.get("Swatch"));
        // of several lines with one label the last one is here
        assertEquals("=tapestry needle", lines.get("Notion"));
        assertFalse(lines(Designs.toeUp()).containsKey("Materials"));
    }

    @Test
    void namesTheCautionsThatApply() throws IOException {
        Map<String, String> adults = lines(Designs.toeUp());
        assertTrue(adults.get("Circulation").contains("clinician"));
        assertTrue(adults.get("No medical use").contains("clinician"));
        assertTrue(adults.containsKey("Slippery soles"));
        assertFalse(adults.containsKey("Small children"));
        assertTrue(lines(Designs.missing()).get("Small children").contains("child"));
    }

    @Test
    void aNameOnItIsTheNameOfACell() throws IOException {
        String names = lines(Designs.toeUp()).get("Names");
        assertTrue(names.contains("gauge_stitches_size1"), names);
    }
}
