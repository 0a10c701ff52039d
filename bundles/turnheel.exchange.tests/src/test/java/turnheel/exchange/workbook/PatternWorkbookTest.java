package turnheel.exchange.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TimeZone;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

import org.apache.logging.log4j.LogManager;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.engine.design.Design;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.Designs;
import turnheel.exchange.imprint.ContentHash;

class PatternWorkbookTest {

    private static final Map<String, Design> DESIGNS = Designs.all();
    private static final double MM_PER_INCH = 25.4;

    static Set<String> designs() {
        return DESIGNS.keySet();
    }

    @Test
    void hasItsSheetsInTheirOrder() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.toeUp())) {
            List<String> names = new ArrayList<>();
            workbook.forEach(sheet -> names.add(sheet.getSheetName()));
            assertEquals(List.of("Pattern", "Measurements", "Counts", "Rounds", "Instructions", "Round finder table",
                    "Gauge-by-size table", "Yarn", "Queries and sign-off", "Drawing"), names);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("designs")
    void sameDesignSameBytes(String name) throws IOException {
        assertArrayEquals(Books.write(DESIGNS.get(name)), Books.write(DESIGNS.get(name)));
    }

    @Test
    void theBytesDependOnNeitherLanguageNorTimeZone() throws IOException {
        Locale language = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        byte[] expected = Books.write(Designs.overrides());
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            TimeZone.setDefault(TimeZone.getTimeZone(ZoneId.of("Pacific/Auckland")));
            assertArrayEquals(expected, Books.write(Designs.overrides()));
        } finally {
            Locale.setDefault(language);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void nothingInTheFileTellsWhenItWasMade() throws IOException {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        List<LocalDateTime> times = new ArrayList<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(Books.write(Designs.overrides())))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                times.add(entry.getTimeLocal());
                parts.put(entry.getName(), zip.readAllBytes());
            }
        }
        assertEquals(Set.of(LocalDateTime.of(2000, 1, 1, 0, 0)), Set.copyOf(times));
        String core = new String(parts.get("docProps/core.xml"), StandardCharsets.UTF_8);
        assertTrue(core.contains(">2000-01-01T00:00:00Z</dcterms:created>"), core);
        assertTrue(core.contains(">2000-01-01T00:00:00Z</dcterms:modified>"), core);
        assertTrue(core.contains(">Turnheel</dc:creator>"), core);
        assertTrue(core.contains(">Overruled</dc:title>"), core);
        assertTrue(core.contains(">en</dc:language>"), core);
        assertTrue(core.contains(ContentHash.of(Designs.overrides()) + "</dc:subject>"), core);
        assertTrue(core.contains("toe, foot, heel, leg, cuff</cp:keywords>"), core);
        List<String> names = new ArrayList<>(parts.keySet());
        assertEquals("[Content_Types].xml", names.removeFirst());
        assertEquals(names.stream().sorted().toList(), names);
    }

    @Test
    void leavesTheStreamOpen() throws IOException {
        boolean[] closed = {false};
        ByteArrayOutputStream out = new ByteArrayOutputStream() {
            @Override
            public void close() {
                closed[0] = true;
            }
        };
        PatternWorkbook.write(Patterns.grade(Designs.toeUp()), out);
        assertFalse(closed[0]);
    }

    @Test
    void printsOnA4InsideOfALetterSheet() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.twelve())) {
            for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
                XSSFSheet sheet = workbook.getSheetAt(i);
                assertEquals(PaperSize.A4_PAPER, sheet.getPrintSetup().getPaperSizeEnum());
                boolean onItsSide = sheet.getPrintSetup().getLandscape();
                double wide = onItsSide ? 297 : 210;
                double high = onItsSide ? 210 : 297;
                double letterWide = (onItsSide ? 11 : 8.5) * MM_PER_INCH;
                double letterHigh = (onItsSide ? 8.5 : 11) * MM_PER_INCH;
                double printedWide = wide - MM_PER_INCH
                        * (sheet.getMargin(PageMargin.LEFT) + sheet.getMargin(PageMargin.RIGHT));
                double printedHigh = high - MM_PER_INCH
                        * (sheet.getMargin(PageMargin.TOP) + sheet.getMargin(PageMargin.BOTTOM));
                assertTrue(printedWide <= letterWide - 12, sheet.getSheetName());
                assertTrue(printedHigh <= letterHigh - 12, sheet.getSheetName());
                assertTrue(sheet.getFitToPage(), sheet.getSheetName());
                assertEquals("&LTwelve Lamps&R&A", sheet.getCTWorksheet().getHeaderFooter().getOddHeader());
                assertEquals("&L&8 Turnheel&C&8 " + ContentHash.of(Designs.twelve()) + "&R&8 Page &P of &N", sheet.getCTWorksheet().getHeaderFooter().getOddFooter());
                assertNotNull(sheet.getRepeatingRows(), sheet.getSheetName());
                assertTrue(sheet.getPaneInformation().isFreezePane(), sheet.getSheetName());
            }
        }
    }

    @Test
    void everyColumnIsWideEnoughForItsNumbersAndNoneFillsTheScreen() throws IOException {
        try (XSSFWorkbook workbook = Books.of(Designs.twelve())) {
            Books.cells(workbook).forEach(cell -> {
                int characters = cell.getSheet().getColumnWidth(cell.getColumnIndex()) / 256;
                assertTrue(characters >= 7 && characters <= 70,
                        () -> Books.place(cell) + " is " + characters + " wide");
            });
        }
    }

    @Test
    void theLibrarysMessagesGoToThePlatformsLogNotToTheScreen() {
        assertTrue(LogManager.getContext().getClass().getName().contains("tojul"),
                LogManager.getContext().getClass().getName());
    }
}
