package turnheel.engine.knitting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Counts that a text divides into parts; the sums are added by hand. */
class AdditionsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # a note, or a cast-on | sum or count that is right, found, sizes
            # 2 + 4 x 6 + 1 + 2 = 29
            Note: work the 29 instep sts in pattern: 2 plain sts, 4 repeats of 6 sts and 1 edge st, 2 plain sts. | ''
            Note: work the 28 instep sts in pattern: 2 plain sts, 4 repeats of 6 sts and 1 edge st, 2 plain sts. | 29, 29/28, 28 S, M
            Note: work the 29 instep sts in pattern: 2 plain sts, 5 repeats of 6 sts and 1 edge st, 2 plain sts. | 35, 35/29, 29 S, M
            # 4 x 6 = 24 and 5 x 6 = 30
            Note: work the 24 (30) instep stitches in pattern: 4 (5) repeats of 6 stitches. Knit the sole stitches. | ''
            Note: work the 24 (30) instep stitches in pattern: 4 (6) repeats of 6 stitches. Knit the sole stitches. | 36/30 M
            Note: on the foot the 60 (63) sts lie on two needles: 30 (32) instep sts on needle 1, 30 (31) sole sts on needle 2. | ''
            Note: on the foot the 60 (63) sts lie on two needles: 30 (32) instep sts on needle 1, 30 (32) sole sts on needle 2. | 64/63 M
            Cast on 8 sts, 4 on each half. | ''
            Cast on 8 sts, 5 on each half. | 8, 8/10, 10 S, M
            Cast on 56 (60) sts, 14 (15) on each needle. | ''
            Cast on 56 (60) sts, 14 (16) on each needle. | 60/64 M
            Cast on 60 (63) sts, 20 (21) sts on each of 3 needles. | ''
            Cast on 60 (63) sts, 20 (20) sts on each of 3 needles. | 63/60 M
            """)
    void addUp(String sentence, String found) {
        String text = "Sock\n\nSizes: S (M)\n\nCuff\n" + sentence + "\n";
        StringBuilder said = new StringBuilder();
        Manuscript.read(text).knit().queries().forEach(query -> said.append("%s/%s %s".formatted(query.expected(),
                query.found(), String.join(", ", query.sizes()))));
        assertEquals(found, said.toString());
    }
}
