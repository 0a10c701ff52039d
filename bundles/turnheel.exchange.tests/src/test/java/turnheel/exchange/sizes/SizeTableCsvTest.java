package turnheel.exchange.sizes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import turnheel.engine.design.Quantity;
import turnheel.engine.design.Size;
import turnheel.engine.term.Key;

class SizeTableCsvTest {

    private static List<Size> read(String table) throws IOException {
        return SizeTableCsv.read(new StringReader(table));
    }

    @Test
    void keepsQuantitiesAsWrittenAndLeavesGapsOpen() throws IOException {
        List<Size> sizes = read("""
                # any remark
                size,body.footLength,body.footCircumference
                "M, wide",9 1/2 in,24.5 cm

                L,260 mm,
                """);
        assertEquals(List.of(new Size("s1", "M, wide", Map.of(new Key("body.footLength"), Quantity.parse("9 1/2 in"),
                new Key("body.footCircumference"), Quantity.parse("24.5 cm")), Map.of()),
                new Size("s2", "L", Map.of(new Key("body.footLength"), Quantity.parse("260 mm")), Map.of())), sizes);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # table, ; for a line end | what the message tells
                                                                | no sizes
            size,body.footLength                                | no sizes
            label,body.footLength;M,240 mm                      | line 1
            size                                                | line 1
            size,body.footLengh;M,240 mm                        | line 2
            size,Foot length;M,240 mm                           | line 1
            size,body.footLength;M,240 mm;L,26                  | line 3
            size,body.footLength;M,240 mm;L,4000 mm             | line 3
            size,body.footLength;M,240 mm,9                     | line 2
            size,body.footLength;M,240 mm;M,260 mm              | line 3
            size,body.footLength;,240 mm                        | line 2
            size,foot.stitches;M,64                             | line 2
            """)
    void whatIsNoTableOfSizesIsRefusedWithItsLine(String table, String told) {
        String text = table == null ? "" : table.replace(';', '\n');
        String message = assertThrows(IllegalArgumentException.class, () -> read(text)).getMessage();
        assertTrue(message.contains(told), message);
    }

    @Test
    void aQuoteThatNeverEndsIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> read("size,body.footLength\n\"M,240 mm\n"));
    }
}
