package turnheel.engine.shaping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import turnheel.engine.checks.Checks;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapEdge;
import turnheel.engine.design.FlapFabric;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.FlapLength;
import turnheel.engine.design.HeelTurn;
import turnheel.engine.design.PickUp;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.Numbers;
import turnheel.engine.grading.Graded;
import turnheel.engine.query.Severity;

/**
 * A published table of fifteen sizes, cuff-down with flap, gusset and a band toe down to eight stitches. The band is a wedge
 * whose tip and turning point are the designer's: {@code toe.tip} 8 and {@code toe.alternateFrom} so that the printed
 * number of every-round decreases is left. Pick-ups are the designer's too: the table picks up 4 to 7 more than the edge
 * chain of the flap has.
 */
class TradeTableTest {

    private static final String TABLE = "trade-sock-table.csv";
    /** The table gives none; 44 is the middle of what its own rows and heights imply (42 to 48). */
    private static final double ROUNDS = 44;
    /** Heights are printed to 5 mm, and a toe is the difference of two of them. */
    private static final double HEIGHT_MM = 2.8;
    private static final double TOE_MM = 3.3;

    private static Draft sock(int castOn, int flapRows, int pickUp, int everyRound, double totalCm) {
        return Designs.withoutSizes().with(Direction.CUFF_DOWN).with(Designs.WEDGE_TOE)
                .with(new FlapHeel(HeelTurn.ROUND, new FlapLength.FromBody())).withGauge("30/10 cm", "44/10 cm")
                .withSize("M", """
                        body.footLength = %s cm; fit.easeLength = 0 mm; body.footCircumference = %d mm; \
                        foot.stitches = %d; heel.flapRows = %d; heel.pickUp = %d; toe.tip = 8; toe.alternateFrom = %d""".formatted(
                        Double.toString(totalCm), Math.round(castOn / 0.3 / 0.93), castOn, flapRows, pickUp,
                        8 + 4 * everyRound));
    }

    @ParameterizedTest(name = "size {0}: {1} stitches")
    @CsvFileSource(resources = TABLE, numLinesToSkip = 3)
    void isReproduced(String shoe, int castOn, double leg, int flap, int flapRows, double flapCm, int pickUp,
            double toToeCm, int everySecond, int everyRound, double totalCm, int toeRounds) {
        Graded graded = sock(castOn, flapRows, pickUp, everyRound, totalCm).graded();
        assertEquals(flap, Numbers.of(graded, "heel.stitches"), "half of the cast-on");
        assertEquals(everySecond, Numbers.of(graded, "toe.alternate"));
        assertEquals(everyRound, Numbers.of(graded, "toe.everyRound"));
        assertEquals(toeRounds, Numbers.of(graded, "toe.rounds"));
        assertEquals(flapCm * 10, Numbers.of(graded, "heel.height"), HEIGHT_MM);
        assertEquals((totalCm - toToeCm) * 10, Numbers.of(graded, "toe.depth"), TOE_MM);
        assertEquals(totalCm * 10, Numbers.of(graded, "foot.length"), 100 / ROUNDS / 2 + 1e-9);
        assertTrue(Checks.of(graded).stream().noneMatch(query -> query.severity() == Severity.ERROR),
                () -> Checks.of(graded).toString());
        KnittedSock.knit(graded, graded.sizes().getFirst());
    }

    /** The printed pick-ups leave a whole gusset and are more than half of the rows. */
    @ParameterizedTest(name = "size {0}")
    @CsvFileSource(resources = TABLE, numLinesToSkip = 3)
    void picksUpMoreThanTheEdgeHas(String shoe, int castOn, double leg, int flap, int flapRows, double flapCm,
            int pickUp) {
        int more = pickUp - flapRows / 2;
        assertTrue(more >= 4 && more <= 7, () -> more + " more than the chain");
    }

    /** What the table picks up, 0.71 to 0.79 for each row, is three quarters of the rows to a stitch. */
    @ParameterizedTest(name = "size {0}")
    @CsvFileSource(resources = TABLE, numLinesToSkip = 3)
    void picksUpThreeQuartersOfTheRows(String shoe, int castOn, double leg, int flap, int flapRows, double flapCm,
            int pickUp) {
        FlapHeel heel = new FlapHeel(HeelTurn.ROUND, new FlapLength.FromBody(), FlapFabric.PLAIN, FlapEdge.SLIPPED,
                new PickUp.StitchesPerRow(0.75));
        Draft draft = Designs.cuffDown64().with(heel).with("foot.stitches = %d; heel.flapRows = %d".formatted(castOn, flapRows));
        assertEquals(pickUp, Numbers.of(draft, "heel.pickUp"), 1);
    }

    /** The same 60 stitches and 19 rounds are printed as 4 and as 4.5 cm: no one gauge gives both exactly. */
    @Test
    void printsTwoDepthsOfOneToe() throws IOException {
        Map<String, Set<String>> depths = new TreeMap<>();
        try (var table = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(TradeTableTest.class.getResourceAsStream(TABLE)), StandardCharsets.UTF_8))) {
            table.lines().skip(3).map(line -> line.split(",")).forEach(row -> depths
                    .computeIfAbsent(row[1] + " stitches in " + row[11] + " rounds", toe -> new TreeSet<>())
                    .add(new BigDecimal(row[10]).subtract(new BigDecimal(row[7])).stripTrailingZeros().toPlainString()));
        }
        assertEquals(Set.of("4", "4.5"), depths.remove("60 stitches in 19 rounds"));
        depths.forEach((toe, cm) -> assertEquals(1, cm.size(), toe));
    }
}
