package turnheel.exchange.imprint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

import turnheel.engine.design.Direction;
import turnheel.engine.design.Increase;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.SockLength;
import turnheel.engine.design.StraightLeg;
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
        assertEquals("Straight leg, " + name + " height",
                PartWords.leg(new StraightLeg(length)));
    }

    @ParameterizedTest
    @EnumSource(TurnMethod.class)
    void hasWordsForEveryTurn(TurnMethod turn) {
        assertTrue(PartWords.heel(new ShortRowHeel(turn)).startsWith("Short-row heel, "));
    }

    @Test
    void writesARibAsKnittersDo() {
        assertEquals("3×1 rib", PartWords.cuff(new RibCuff(3, 1)));
    }
}
