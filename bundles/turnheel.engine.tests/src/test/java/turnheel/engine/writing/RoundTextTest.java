package turnheel.engine.writing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import turnheel.engine.shaping.Round;
import turnheel.engine.shaping.RoundKind;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;

class RoundTextTest {

    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource(textBlock = """
            # the trade's usual abbreviations: reference vocabulary
            KNIT,              1, k1
            KNIT,              12, k12
            PURL,              2, p2
            KNIT_THROUGH_BACK, 1, k1 tbl
            YARN_OVER,         1, yo
            YARN_OVER,         2, yo 2 times
            MAKE_ONE_LEFT,     1, m1l
            MAKE_ONE_RIGHT,    1, m1r
            LIFTED_LEFT,       1, lli
            LIFTED_RIGHT,      1, rli
            FRONT_AND_BACK,    1, kfb
            KNIT_TWO_TOGETHER, 1, k2tog
            KNIT_TWO_TOGETHER, 3, k2tog 3 times
            SLIP_SLIP_KNIT,    1, ssk
            CAST_ON,           8, cast on 8 sts
            BIND_OFF,          64, bind off 64 sts
            GRAFT,             8, graft 8 sts to 8 sts
            DRAW_CLOSED,       8, draw the yarn through the last 8 sts
            WRAP_AND_TURN,     1, w&t
            TURN,              1, turn
            KNIT_WITH_WRAPS,   1, k1 with its wraps
            PURL_WITH_WRAPS,   1, p1 with its wraps
            SLIP_SLIP_KNIT_WITH_WRAPS,    1, ssk with its wraps
            PURL_TWO_TOGETHER_WITH_WRAPS, 1, p2tog with its wraps
            """)
    void abbreviatesEveryStitch(Stitch stitch, int count, String text) {
        assertEquals(text, RoundText.of(row(new Step.Work(stitch, count))));
    }

    @ParameterizedTest
    @EnumSource(Stitch.class)
    void hasWordsForEveryStitchWorkedOnceAndOften(Stitch stitch) {
        for (int count : new int[] {1, 2, 1000}) {
            String text = RoundText.of(row(new Step.Work(stitch, count)));
            assertFalse(text.isBlank() || text.contains("{"), text);
        }
    }

    static Stream<Arguments> rounds() {
        Step yarnOver = new Step.Work(Stitch.YARN_OVER, 1);
        Step knit = new Step.Work(Stitch.KNIT, 2);
        Step purl = new Step.Work(Stitch.PURL, 2);
        Step twice = new Step.Repeat(List.of(yarnOver, knit), 2);
        return Stream.of(
                // the sample of instructions.md
                Arguments.of(round(new Step.Repeat(List.of(yarnOver, knit), 4)), "*yo, k2; rep from * to end"),
                Arguments.of(round(new Step.Repeat(List.of(yarnOver, knit), 1)), "*yo, k2; rep from * to end"),
                Arguments.of(round(knit), "k to end"),
                Arguments.of(round(purl), "p to end"),
                Arguments.of(round(knit, purl), "k2, p2"),
                Arguments.of(round(twice, purl), "[yo, k2] 2 times, p2"),
                Arguments.of(round(new Step.Repeat(List.of(yarnOver, knit), 1), purl), "yo, k2, p2"),
                Arguments.of(row(knit), "k2"));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("rounds")
    void putsStepsIntoWords(Round round, String text) {
        assertEquals(text, RoundText.of(round));
    }

    @Test
    void wordsOfKindsAreThoseOfFilesAndScripts() {
        assertEquals("[cast-on, set-up, plain, increase, decrease, row, turn, pick-up, rib, bind-off, graft]",
                Stream.of(RoundKind.values()).map(RoundKind::word).toList().toString());
    }

    private static Round round(Step... steps) {
        return new Round(1, RoundKind.PLAIN, List.of(steps), 0, 0);
    }

    private static Round row(Step... steps) {
        return new Round(1, RoundKind.ROW, List.of(steps), 0, 0);
    }
}
