package turnheel.engine.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NoBreakTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            EU 38     | EU\u00A038
            7 3/4     | 7\u00A03/4
            S/M       | S/\u2060M
            2\u20134 y | 2\u2013\u20604\u00A0y
            Lady-L    | Lady\u2011L
            -5        | -5
            \u2013    | \u2013
            """)
    void holdsOneValueTogether(String value, String whole) {
        assertEquals(whole, NoBreak.whole(value));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            K 8, pm                       | K _8, _pm
            K\u00A08, pm                 | K\u00A08, _pm
            a closed cast-on              | a _closed _cast-_on
            rows 3-4, -5 and Row 2 -      | rows _3-4, _-5 _and _Row _2 _-
            56/\u200B60                   | 56/\u200B_60
            two  blanks                   | two  _blanks
            [K6, k2tog]; \u2013 (\u2013) | [K6, _k2tog]; _\u2013 _(\u2013)
            one                           | one
            """)
    void letsALineEndAtBlanksAndInWordsWithHyphensAlone(String text, String parted) {
        List<String> lines = new ArrayList<>();
        for (int from = 0; from < text.length();) {
            int end = NoBreak.nextEnd(text, from);
            lines.add(text.substring(from, end));
            from = end;
        }
        assertEquals(parted, String.join("_", lines));
    }
}
