package turnheel.engine.shaping;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Part;
import turnheel.engine.design.RibCuff;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;

/** A leg of 66 on a foot of 64, in a cuff of 68 and rib 3×1, each two rounds high. */
class LegAndCuffRoundsTest {

    private static final Draft TOE_UP = Designs.toeUp64().with(new RibCuff(3, 1, false)).with(
            "foot.stitches = 64; foot.rounds = 4; leg.stitches = 66; leg.rounds = 2; cuff.stitches = 68; cuff.rounds = 2");

    @Test
    void toeUpChangesOverBeforeTheLegAndBeforeTheRib() {
        assertEquals(List.of("k to end: 64", "k to end: 64", "k to end: 64", "k to end: 64"),
                inWords(TOE_UP, Part.FOOT));
        assertEquals(List.of("k16, m1l, k32, m1l, k16: 66", "k to end: 66", "k to end: 66"), inWords(TOE_UP, Part.LEG));
        assertEquals(List.of("k16, m1l, k33, m1l, k17: 68", "*k3, p1; rep from * to end: 68",
                "*k3, p1; rep from * to end: 68", "bind off 68 sts: 0"), inWords(TOE_UP, Part.CUFF));
    }

    @Test
    void cuffDownChangesOverAfterThem() {
        Draft cuffDown = TOE_UP.with(Direction.CUFF_DOWN);
        assertEquals(List.of("cast on 68 sts: 68", "*k3, p1; rep from * to end: 68", "*k3, p1; rep from * to end: 68",
                "k15, k2tog, k32, k2tog, k17: 66"), inWords(cuffDown, Part.CUFF));
        assertEquals(List.of("k to end: 66", "k to end: 66", "k14, k2tog, k31, k2tog, k17: 64"),
                inWords(cuffDown, Part.LEG));
    }

    @Test
    void onlyWorkedRoundsAreNumbered() {
        assertEquals(List.of(0, 1, 2, 0), Parts.rounds(TOE_UP, Part.CUFF).stream().map(Round::number).toList());
        assertEquals(List.of(RoundKind.INCREASE, RoundKind.RIB, RoundKind.RIB, RoundKind.BIND_OFF),
                Parts.rounds(TOE_UP, Part.CUFF).stream().map(Round::kind).toList());
    }

    @Test
    void nothingChangesOverWhereTheCountsAgree() {
        assertEquals(51, Parts.rounds(Designs.toeUp64(), Part.LEG).size());
        // 17 rounds of rib and the bind-off
        assertEquals(18, Parts.rounds(Designs.toeUp64(), Part.CUFF).size());
    }

    private static List<String> inWords(Draft draft, Part part) {
        return Parts.inWords(Parts.rounds(draft, part));
    }
}
