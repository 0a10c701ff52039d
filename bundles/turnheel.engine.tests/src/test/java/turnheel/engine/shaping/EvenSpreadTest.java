package turnheel.engine.shaping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import net.jqwik.api.ForAll;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.fixture.Repeatable;
import turnheel.engine.hands.Hands;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;
import turnheel.engine.writing.RoundText;

class EvenSpreadTest {

    @ParameterizedTest(name = "{0} to {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # from, to, round: by hand, domain § 8; the first half a gap in
            60 | 64 | k7, m1l, k15, m1l, k15, m1l, k15, m1l, k8
            10 | 13 | k1, m1l, k3, m1l, k3, m1l, k3
            4  | 8  | k1, m1l, k1, m1l, k1, m1l, k1, m1l
            64 | 60 | k6, k2tog, k14, k2tog, k14, k2tog, k14, k2tog, k8
            66 | 64 | k14, k2tog, k31, k2tog, k17
            8  | 4  | k2tog, k2tog, k2tog, k2tog
            """)
    void spreadsTheChangesEvenly(int from, int to, String text) {
        assertEquals(text, RoundText.of(adjusted(from, to)));
    }

    @Repeatable
    void gapsDifferByOneStitchAtMost(@ForAll @IntRange(min = 4, max = 150) int from,
            @ForAll @IntRange(min = 4, max = 300) int to) {
        if (from == to || to > 2 * from || to < (from + 1) / 2) {
            return;
        }
        Round round = adjusted(from, to);
        Hands hands = Hands.holding(from);
        hands.round(round.steps());
        assertEquals(to, hands.loops().size());
        List<Integer> gaps = gaps(round, from);
        int changes = Math.abs(to - from);
        assertEquals(changes, gaps.size());
        assertTrue(gaps.stream().allMatch(gap -> gap == from / changes || gap == (from + changes - 1) / changes),
                () -> gaps + " in " + round);
    }

    /** Stitches of the round before from one change to the next, around the whole round. */
    private static List<Integer> gaps(Round round, int from) {
        List<Integer> places = new ArrayList<>();
        int worked = 0;
        for (Step step : round.steps()) {
            worked += step.takes();
            if (((Step.Work) step).stitch() != Stitch.KNIT) {
                places.add(worked);
            }
        }
        List<Integer> gaps = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            int next = i + 1 < places.size() ? places.get(i + 1) : places.getFirst() + from;
            gaps.add(next - places.get(i));
        }
        return gaps;
    }

    private static Round adjusted(int from, int to) {
        Needle needle = new Needle(from);
        EvenSpread.adjust(needle, to);
        return needle.rounds().getFirst();
    }
}
