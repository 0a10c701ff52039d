package turnheel.engine.shaping;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapEdge;
import turnheel.engine.design.FlapFabric;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.FlapLength;
import turnheel.engine.design.HeelTurn;
import turnheel.engine.design.Part;
import turnheel.engine.design.PickUp;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.Numbers;
import turnheel.engine.stitch.Step;
import turnheel.engine.stitch.Stitch;
import turnheel.engine.writing.RoundText;

class FlapRowsTest {

    private static final Draft SOCK = Designs.cuffDown64().with("foot.stitches = 64; heel.flapRows = 32");

    private static FlapHeel flap(FlapFabric fabric, FlapEdge edge) {
        return new FlapHeel(HeelTurn.ROUND, new FlapLength.FromBody(), fabric, edge, new PickUp.HalfTheRows());
    }

    private static String row(Draft draft, int number) {
        return RoundText.of(Parts.round(draft, Part.HEEL, number));
    }

    @ParameterizedTest(name = "{0} with {1} edges on {2}: {3} / {4} / {5}")
    @CsvSource(delimiter = '|', textBlock = """
            # fabric        | edge    | sts | row 1                      | row 2       | row 3
            PLAIN           | SLIPPED | 32  | sl1, k31                   | sl1, p31    | sl1, k31
            SLIPPED         | SLIPPED | 32  | [sl1, k1] 16 times         | sl1, p31    | [sl1, k1] 16 times
            SLIPPED         | SLIPPED | 33  | [sl1, k1] 16 times, k1     | sl1, p32    | [sl1, k1] 16 times, k1
            SLIPPED_IN_TURN | SLIPPED | 32  | [sl1, k1] 16 times         | sl1, p31    | sl1, [sl1, k1] 15 times, k1
            SLIPPED_IN_TURN | SLIPPED | 33  | [sl1, k1] 16 times, k1     | sl1, p32    | sl1, [sl1, k1] 16 times
            PLAIN           | GARTER  | 32  | k32                        | k2, p28, k2 | k32
            SLIPPED         | GARTER  | 32  | k2, [sl1, k1] 14 times, k2 | k2, p28, k2 | k2, [sl1, k1] 14 times, k2
            SLIPPED         | GARTER  | 33  | k2, [sl1, k1] 14 times, k3 | k2, p29, k2 | k2, [sl1, k1] 14 times, k3
            SLIPPED_IN_TURN | GARTER  | 32  | k2, [sl1, k1] 14 times, k2 | k2, p28, k2 | k3, [sl1, k1] 13 times, k3
            """)
    void areWorkedAsTheTradeDoes(FlapFabric fabric, FlapEdge edge, int stitches, String first, String second,
            String third) {
        Draft draft = SOCK.with(flap(fabric, edge)).with("heel.stitches = " + stitches);
        assertEquals(Stream.of(first, second, third, second, first).map(row -> row + ", turn").toList(),
                Stream.of(1, 2, 3, 4, 5).map(number -> row(draft, number)).toList());
    }

    /**
     * Published: a flap of 33 toe-up slips and knits 16 pairs before its ssk and purls 31 before its p2tog (reference
     * example O16: E = (B - 1)/2, D = B - 2).
     */
    @Test
    void toeUpMatchesAPublishedFlap() {
        Draft draft = SOCK.with(Direction.TOE_UP).with(flap(FlapFabric.SLIPPED, FlapEdge.SLIPPED))
                .with("foot.stitches = 66; heel.stitches = 33; heel.gussetIncreases = 10; heel.flapRows = 20");
        int turnRows = (int) Numbers.of(draft, "heel.turnRows");
        assertEquals("[sl1, k1] 16 times, ssk, turn", row(draft, turnRows + 3));
        assertEquals("sl1, p31, p2tog, turn", row(draft, turnRows + 4));
        assertEquals("[sl1, k1] 16 times, ssk, turn", row(draft, turnRows + 5));
    }

    /** A column that is slipped on one right side is knitted on the next, all over the flap between its sides. */
    @Test
    void slippedByTurnsNoStitchIsSlippedTwiceInARow() {
        for (FlapEdge edge : FlapEdge.values()) {
            FlapRows rows = new FlapRows(FlapFabric.SLIPPED_IN_TURN);
            for (int stitches = 5; stitches <= 40; stitches++) {
                List<Stitch> first = column(rows.between(edge, 1, stitches));
                List<Stitch> next = column(rows.between(edge, 3, stitches));
                assertEquals(stitches, first.size());
                assertEquals(stitches, next.size());
                for (int i = 2; i < stitches - 3; i++) {
                    assertEquals(first.get(i) == Stitch.SLIP, next.get(i) == Stitch.KNIT, first + " " + next);
                }
            }
        }
    }

    private static List<Stitch> column(List<Step> steps) {
        return steps.stream().flatMap(step -> switch (step) {
            case Step.Work(var stitch, var count) -> Stream.generate(() -> stitch).limit(count);
            case Step.Repeat(var repeated, var times) ->
                Stream.generate(() -> column(repeated)).limit(times).flatMap(List::stream);
        }).toList();
    }
}
