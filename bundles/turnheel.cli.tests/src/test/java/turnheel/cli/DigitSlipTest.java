package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.engine.knitting.Knitted;
import turnheel.engine.knitting.Manuscript;
import turnheel.engine.knitting.Traced;

/**
 * No wrong number reaches print: in the written pattern of every example each digit is changed, one at a time, and the text
 * is knitted again.
 *
 * <p>What no count tells, and what therefore may pass: how often a round without shaping is worked; the labels of rounds,
 * which are names; where a stitch is worked that is worked anyway (a stitch more slipped, a decrease beside its gap, the
 * start of the round moved); and prose, such as notes and what the list says of an abbreviation.
 */
class DigitSlipTest {

    private static final double LEAST_PERCENT = 99;
    private static final String FIRST_DIGIT_THAT_IS_KNITTED = "\nAbbreviations\n";

    static List<Path> patterns() throws IOException {
        return LanternQuayTest.patterns();
    }

    /** One digit for each in the usual run; all the others of the ten in the deep one. */
    private static List<Character> slips(char digit) {
        List<Character> slips = new ArrayList<>();
        for (int more = 1; more <= (Boolean.getBoolean("turnheel.deep") ? 9 : 1); more++) {
            slips.add((char) ('0' + (digit - '0' + more) % 10));
        }
        return slips;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("patterns")
    void aChangedDigitThatAltersACountIsFound(Path pattern) {
        String text = Run.of("write", pattern).clean().out();
        Knitted right = Manuscript.read(text).knit();
        assertEquals(List.of(), right.queries());
        List<List<String>> counts = counts(right);
        int altering = 0;
        List<String> passed = new ArrayList<>();
        for (int at = text.indexOf(FIRST_DIGIT_THAT_IS_KNITTED); at < text.length(); at++) {
            if (text.charAt(at) < '0' || text.charAt(at) > '9') {
                continue;
            }
            for (char slip : slips(text.charAt(at))) {
                Knitted wrong = Manuscript.read(text.substring(0, at) + slip + text.substring(at + 1)).knit();
                boolean found = !wrong.queries().isEmpty();
                boolean alters = !counts(wrong).equals(counts);
                altering += found || alters ? 1 : 0;
                if (alters && !found) {
                    passed.add(slip + " in place of the " + text.charAt(at) + " at " + at + ": " + line(text, at));
                }
            }
        }
        assertTrue(altering > 200, "only " + altering + " digits altered a count");
        assertTrue(100.0 * passed.size() / altering <= 100 - LEAST_PERCENT, () -> String.join("\n", passed));
    }

    /** What lies on the needle after every round, without how often a round is worked that changes nothing. */
    private static List<List<String>> counts(Knitted knitted) {
        return knitted.traces().stream().map(size -> {
            List<String> counts = new ArrayList<>();
            for (Traced traced : size) {
                String count = traced.stitches() + "/" + traced.openYarnOvers();
                if (counts.isEmpty() || !counts.getLast().equals(count)) {
                    counts.add(count);
                }
            }
            return counts;
        }).toList();
    }

    private static String line(String text, int at) {
        return text.substring(text.lastIndexOf('\n', at) + 1, text.indexOf('\n', at));
    }
}
