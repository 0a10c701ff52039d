package turnheel.exchange.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.xml.sax.SAXException;

import turnheel.engine.design.Design;
import turnheel.exchange.Designs;

/** Every part of a workbook is valid against the standard's own schemas. */
class OfficeSchemasTest {

    private static final Map<String, Design> DESIGNS = Designs.all();
    private static OfficeSchemas schemas;

    static Set<String> designs() {
        return DESIGNS.keySet();
    }

    @BeforeAll
    static void readSchemas() throws SAXException {
        schemas = new OfficeSchemas();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("designs")
    void everyPartIsValid(String name) throws IOException, SAXException {
        assertEquals(List.of(), schemas.faults(Books.write(DESIGNS.get(name))));
    }

    @Test
    void nastyTextsAreValidToo() throws IOException, SAXException {
        for (String text : List.of("=1+1 & <b> \u0007 _x0041_ \uD83E", "  blanks around  ", "שלום 靴下 🧦", "")) {
            assertEquals(List.of(), schemas.faults(Books.write(Designs.titled(text))), text);
        }
    }

    @Test
    void commentsDrawingsStylesAndPropertiesAreAmongTheParts() throws IOException, SAXException {
        OfficeSchemas own = new OfficeSchemas();
        own.faults(Books.write(Designs.overrides()));
        for (String part : List.of("xl/workbook.xml", "xl/styles.xml", "xl/sharedStrings.xml", "xl/comments3.xml",
                "xl/worksheets/sheet1.xml", "docProps/app.xml", "_rels/.rels")) {
            assertTrue(own.validated().contains(part), () -> part + " is not among " + own.validated());
        }
        assertTrue(own.validated().stream().anyMatch(part -> part.matches("xl/drawings/drawing\\d.xml")));
    }

    /** A fault of each kind, planted into a part that was valid. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            xl/worksheets/sheet1.xml | defaultRowHeight="15.0" | defaultRowHeight="high"
            xl/worksheets/sheet3.xml | orientation="portrait" | orientation="upside"
            xl/styles.xml            | rgb="FF | rgb="
            xl/workbook.xml          | sheetId="1" | sheetId="one"
            xl/sharedStrings.xml     | <t>     | <t lang="en">
            """)
    void aPlantedFaultIsFound(String part, String valid, String broken) throws IOException, SAXException {
        byte[] planted = planted(Books.write(Designs.toeUp()), part, valid, broken);
        assertFalse(schemas.faults(planted).isEmpty());
    }

    private static byte[] planted(byte[] workbook, String name, String valid, String broken) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipInputStream from = new ZipInputStream(new ByteArrayInputStream(workbook));
                ZipOutputStream to = new ZipOutputStream(out)) {
            for (ZipEntry entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
                byte[] content = from.readAllBytes();
                to.putNextEntry(new ZipEntry(entry.getName()));
                if (entry.getName().equals(name)) {
                    String text = new String(content, StandardCharsets.UTF_8);
                    assertTrue(text.contains(valid), () -> name + " has no " + valid);
                    content = text.replaceFirst(Pattern.quote(valid), broken)
                            .getBytes(StandardCharsets.UTF_8);
                }
                to.write(content);
            }
        }
        return out.toByteArray();
    }
}
