package turnheel.exchange.imprint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.CastOn;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapEdge;
import turnheel.engine.design.FlapFabric;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.FlapLength;
import turnheel.engine.design.HeelTurn;
import turnheel.engine.design.Increase;
import turnheel.engine.design.Lean;
import turnheel.engine.design.Length;
import turnheel.engine.design.LengthMode;
import turnheel.engine.design.Lengths;
import turnheel.engine.design.PickUp;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.Snap;
import turnheel.engine.design.SockLength;
import turnheel.engine.design.StarToe;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.design.Stranding;
import turnheel.engine.design.TurnMethod;
import turnheel.engine.design.WedgeToe;
import turnheel.exchange.Designs;

class PartWordsTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = """
            32/10 cm,  32 stitches over 10 cm
            7.5/1 in,  7.5 stitches over 1 in
            18/50 mm,  18 stitches over 50 mm
            """)
    void saysTheGaugeAsItWasMeasured(String written, String words) {
        assertEquals(words, PartWords.stitchGauge(Designs.gauge(written)));
        assertEquals(words.replace("stitches", "rounds"), PartWords.roundGauge(Designs.gauge(written)));
    }

    @ParameterizedTest
    @EnumSource(Increase.class)
    void saysHowAToeGrowsOnlyWhereItIsKnittedFirst(Increase increase) {
        assertTrue(PartWords.toe(new RoundToe(5, increase), Direction.TOE_UP)
                .startsWith("Round toe on 5 lines, increased with "));
        assertEquals("Round toe on 5 lines", PartWords.toe(new RoundToe(5, increase), Direction.CUFF_DOWN));
        assertTrue(PartWords.toe(new WedgeToe(increase), Direction.TOE_UP).startsWith("Wedge toe, increased with "));
        assertEquals("Wedge toe", PartWords.toe(new WedgeToe(increase), Direction.CUFF_DOWN));
    }

    @ParameterizedTest
    @EnumSource(SockLength.class)
    void hasWordsForEveryLength(SockLength length) {
        String name = length.name().toLowerCase(java.util.Locale.ROOT).replace("_", "-");
        assertEquals("Straight leg, " + name + " height, stitches as the foot",
                PartWords.leg(new StraightLeg(length)));
    }

    @ParameterizedTest
    @EnumSource(TurnMethod.class)
    void hasWordsForEveryTurn(TurnMethod turn) {
        assertTrue(PartWords.heel(new ShortRowHeel(turn), Direction.CUFF_DOWN).startsWith("Short-row heel, "));
    }

    @Test
    void writesARibAsKnittersDo() {
        assertEquals("3×1 rib", PartWords.cuff(new RibCuff(3, 1)));
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource(Direction.class)
    void everyKindHasWordsOfItsOwn(Direction direction) {
        List<String> words = new ArrayList<>();
        Designs.toes().forEach(toe -> words.add(PartWords.toe(toe, direction)));
        Designs.heels().forEach(heel -> words.add(PartWords.heel(heel, direction)));
        Designs.legs().forEach(leg -> words.add(PartWords.leg(leg)));
        Designs.cuffs().forEach(cuff -> words.add(PartWords.cuff(cuff)));
        assertEquals(words.size(), new HashSet<>(words).size(), words::toString);
        assertTrue(words.stream().noneMatch(text -> text.contains("{")), words::toString);
    }

    @Test
    void namesAFlapByWhatComesFirst() {
        FlapHeel square = new FlapHeel(HeelTurn.SQUARE, new FlapLength.Height(Length.ofMm(60)));
        assertEquals("Heel flap and gusset, square turn, flap 60 mm high", PartWords.heel(square, Direction.CUFF_DOWN));
        assertEquals("Gusset and heel flap, flap 60 mm high", PartWords.heel(square, Direction.TOE_UP));
    }

    @Test
    void saysHowLengthsAreSaid() {
        assertEquals("Foot by rounds and measure, leg by rounds and measure, cuff by rounds",
                PartWords.lengths(Lengths.USUAL));
        assertEquals("Foot to fit, leg to a measure, cuff by rounds; whole pattern repeats on foot and leg", PartWords.lengths(
                new Lengths(LengthMode.TO_FIT, LengthMode.MEASURE, LengthMode.ROUNDS, Snap.FOOT_AND_LEG)));
    }

    @ParameterizedTest
    @EnumSource(Snap.class)
    void hasWordsForEveryPlaceToSnap(Snap snap) {
        assertFalse(PartWords.lengths(new Lengths(LengthMode.BOTH, LengthMode.BOTH, LengthMode.BOTH, snap)).contains("{"));
    }

    @Test
    void addsToAPartWhatIsNotUsual() {
        assertEquals("Round toe on 4 lines, increased with lifted stitches, from a cast-on of which half is worked, "
                + "lines leaning left",
                PartWords.toe(new RoundToe(4, Increase.LIFTED, CastOn.HALF_WORKED, Lean.LEFT), Direction.TOE_UP));
        assertEquals("Star toe, lines leaning left",
                PartWords.toe(new StarToe(Increase.LIFTED, CastOn.HALF_WORKED, Lean.LEFT), Direction.CUFF_DOWN));
        FlapHeel flap = new FlapHeel(HeelTurn.ROUND, new FlapLength.Height(Length.ofMm(60)), FlapFabric.SLIPPED,
                FlapEdge.GARTER, new PickUp.StitchesPerRow(0.75));
        assertEquals("Heel flap and gusset, round turn, flap 60 mm high, every second stitch slipped, "
                + "garter stitch at its sides, 0.75 stitches/row picked up along it",
                PartWords.heel(flap, Direction.CUFF_DOWN));
        // toe-up the sides join the gusset and nothing is picked up
        assertEquals("Gusset and heel flap, flap 60 mm high, every second stitch slipped",
                PartWords.heel(flap, Direction.TOE_UP));
        assertEquals("Afterthought heel, shaped like a round toe, lines leaning left",
                PartWords.heel(new AfterthoughtHeel(AfterthoughtHeel.Cap.ROUND, Lean.LEFT), Direction.TOE_UP));
        assertEquals("Afterthought heel, shaped like a wedge toe",
                PartWords.heel(new AfterthoughtHeel(AfterthoughtHeel.Cap.WEDGE, Lean.LEFT), Direction.TOE_UP));
    }

    @Test
    void saysAStitchPatternByItsSizeAndPlace() {
        assertEquals("Instep: centred panel of 6 + 1 stitches and 8 rows",
                PartWords.stitchPattern(Designs.panel().stitchPatterns().getFirst()));
        assertEquals("Leg: repeats of 4 stitches and 6 rows",
                PartWords.stitchPattern(Designs.flapLast().stitchPatterns().getFirst()));
        StitchPattern leg = Designs.flapLast().stitchPatterns().getFirst();
        assertEquals("Leg: repeats of 4 stitches and 6 rows, stranded in two colours with floats over at most 5 stitches",
                PartWords.stitchPattern(leg.with(Stranding.withFloatsTo(5))));
        assertEquals("Leg: repeats of 4 stitches and 6 rows, stranded in two colours",
                PartWords.stitchPattern(leg.with(new Stranding(OptionalInt.empty()))));
    }
}
