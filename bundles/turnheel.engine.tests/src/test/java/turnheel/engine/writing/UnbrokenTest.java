package turnheel.engine.writing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.wording.HouseStyles;

/** Where lines may end: {@code ~} is a blank, {@code =} a hyphen at which none does. Braces hold values. */
class UnbrokenTest {

    private static final List<String> LABELS = List.of("EU 38", "EU 38 wide", "S-M", "L");

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            # {a;b} is a value of each size
            {60;64} sts.                                 | 60~(64)~sts.
            18 cm / 7 1/4 in;                            | 18~cm~/ 7~1/4~in;
            Rep rnds 3-4 {9;10} more times.              | Rep rnds~3=4 9~(10) more times.
            Rep rnds {3;4}-{5;6} twice                   | Rep rnds~3~(4)=5~(6) twice
            *K1 tbl, k to marker; rep from * to end.     | *K1~tbl, k to marker; rep from~* to end.
            [K6, k2tog] 3 times, k5.                     | [K6, k2tog] 3~times, k5.
            a rib of 2 x 2 and 3 × 1                     | a rib of 2~x~2 and 3~×~1
            Sizes EU 38 and EU 38 wide only: K1.         | Sizes EU~38 and EU~38~wide only: K1.
            Sizes S-M and L only: Set-up                 | Sizes S=M and L only: Set-up
            Needles: {2 mm (US 0);2.5 mm}                | Needles: 2~mm~(US~0)~(2.5~mm)
            on needle 1, 16 sts on needle 2              | on needle~1, 16~sts on needle~2
            """)
    void holdsNumbersUnitsAndLabelsTogether(String pieces, String expected) {
        String text = Unbroken.of(HouseStyles.usual(), LABELS).text(pieces(pieces));
        assertEquals(expected, text.replace('\u00A0', '~').replace('\u2011', '='));
    }

    private static List<Piece> pieces(String text) {
        Phrase phrase = new Phrase();
        for (String part : text.split("(?=\\{)|(?<=})")) {
            if (part.startsWith("{")) {
                String[] each = part.substring(1, part.length() - 1).split(";");
                phrase.add(List.of(new Piece.Values(Arrays.stream(each).map(Optional::of).toList())));
            } else {
                phrase.add(part);
            }
        }
        return phrase.pieces();
    }
}
