package turnheel.exchange.csv;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.engine.design.Design;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Size;
import turnheel.engine.grading.Graded;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.Designs;

class CountsCsvTest {

    private static final Map<String, Design> DESIGNS = Designs.all();

    static Set<String> designs() {
        return DESIGNS.keySet();
    }

    private static byte[] write(Design design) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        CountsCsv.write(Patterns.grade(design), out);
        return out.toByteArray();
    }

    private static String text(Design design) throws IOException {
        return new String(write(design), StandardCharsets.UTF_8);
    }

    /** Fields of RFC 4180, read by the letter of its grammar. */
    private static List<List<String>> records(String table) {
        List<List<String>> records = new ArrayList<>(List.of(new ArrayList<>()));
        StringBuilder field = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < table.length(); i++) {
            char c = table.charAt(i);
            if (quoted && c == '"' && i + 1 < table.length() && table.charAt(i + 1) == '"') {
                field.append(c);
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (!quoted && (c == ',' || c == '\r')) {
                records.getLast().add(field.toString());
                field.setLength(0);
                if (c == '\r') {
                    assertEquals('\n', table.charAt(++i), "lines end in CR LF");
                    records.add(new ArrayList<>());
                }
            } else {
                field.append(c);
            }
        }
        assertTrue(records.removeLast().isEmpty() && field.isEmpty(), "the last line ends in CR LF too");
        return records;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("designs")
    void holdsEveryNumberInFullPrecision(String name) throws IOException {
        Graded graded = Patterns.grade(DESIGNS.get(name));
        List<List<String>> records = records(text(DESIGNS.get(name)));
        assertEquals(graded.parameters().size() + 1, records.size());
        for (int row = 0; row < graded.parameters().size(); row++) {
            Parameter parameter = graded.parameters().get(row);
            List<String> fields = records.get(row + 1);
            assertEquals(List.of(parameter.key().name(), parameter.part().prefix(), parameter.label(),
                    parameter.unit().symbol()), fields.subList(0, 4));
            for (int size = 0; size < graded.sizes().size(); size++) {
                String field = fields.get(4 + size);
                assertEquals(graded.sizes().get(size).cell(parameter).map(cell -> cell.value() + 0.0),
                        field.isEmpty() ? Optional.empty() : Optional.of(Double.valueOf(field)));
            }
        }
    }

    @Test
    void namesTheFieldsFirst() throws IOException {
        assertEquals(List.of("key", "part", "label", "unit", "36/37", "38/39", "40/41"),
                records(text(Designs.cuffDown())).getFirst());
    }

    @Test
    void writesWholeNumbersWithoutPointAndNegativeOnesAsNumbers() throws IOException {
        String table = text(Designs.cuffDown());
        assertTrue(table.contains("fit.easeAround,fit,Ease around,%,-10,-8,-10\r\n"), table);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            =1+1            | '=1+1
            -2              | '-2
            +2              | '+2
            @a              | '@a
            38/39           | 38/39
            a,b             | a,b
            say "M"         | say "M"
            """)
    void aLabelThatLooksLikeAFormulaBecomesPlainText(String label, String field) throws IOException {
        Size size = Designs.toeUp().sizes().getFirst();
        Design design = Designs.with(Designs.toeUp(), "", List.of(new Size("id", label, size.inputs(), Map.of())));
        assertEquals(field, records(text(design)).getFirst().getLast());
    }

    @Test
    void aLabelWithALineEndStaysOneField() throws IOException {
        Size size = Designs.toeUp().sizes().getFirst();
        Design design = Designs.with(Designs.toeUp(), "",
                List.of(new Size("id", "M\r\n=1+1", size.inputs(), Map.of())));
        assertEquals("M\r\n=1+1", records(text(design)).getFirst().getLast());
    }

    @Test
    void isUtf8WithoutByteOrderMark() throws IOException {
        Size size = Designs.toeUp().sizes().getFirst();
        Design design = Designs.with(Designs.toeUp(), "", List.of(new Size("id", "Größe 靴", size.inputs(), Map.of())));
        assertEquals('k', write(design)[0]);
        assertEquals("Größe 靴", records(text(design)).getFirst().getLast());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("designs")
    void sameDesignSameBytes(String name) throws IOException {
        assertArrayEquals(write(DESIGNS.get(name)), write(DESIGNS.get(name)));
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
        CountsCsv.write(Patterns.grade(Designs.toeUp()), out);
        assertFalse(closed[0]);
    }
}
