package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.design.LegCount;
import turnheel.engine.design.SockLength;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.fixture.Numbers;

class FitRulesTest {

    @ParameterizedTest(name = "{0} over a foot of {1} mm: {2} %")
    @CsvSource(textBlock = """
            # gauge, foot length, ease around: domain § 1, on both sides of every threshold
            30/10 cm,    240,   -10
            60/10 cm,    240,   -10
            29.99/10 cm, 240,   -7.5
            25/10 cm,    240,   -7.5
            24.99/10 cm, 240,   -5
            24/10 cm,    240,   -5
            5/10 cm,     240,   -5
            # 8 and 7.5 sts/in are 31.5 and 29.5 over 10 cm
            8/1 in,      240,   -10
            7.5/1 in,    240,   -7.5
            # almost none for feet up to 130 mm, whatever the gauge
            32/10 cm,    130,   -3
            20/10 cm,    130,   -3
            32/10 cm,    130.1, -10
            20/10 cm,    130.1, -5
            """)
    void takesLessEaseAroundFromThickFabricAndSmallFeet(String gauge, double footLength, double ease) {
        Draft draft = Designs.toeUp64().withGauge(gauge, "44/10 cm")
                .with("body.footLength = %s mm".formatted(footLength));
        assertEquals(ease, Numbers.of(draft, "fit.easeAround"));
    }

    @ParameterizedTest(name = "a foot of {0} mm: {1} mm")
    @CsvSource(textBlock = """
            # foot length, ease in length: domain § 1, on both sides of every threshold
            60,      0
            130,     0
            130.1,  -5
            200,    -5
            # 4.5 % of 201
            201,    -9.045
            240,   -10.8
            266,   -11.97
            267,   -12
            400,   -12
            """)
    void takesEaseInLengthByTheFoot(double footLength, double ease) {
        Draft draft = Designs.toeUp64().with("body.footLength = %s mm".formatted(footLength));
        assertEquals(ease, Numbers.of(draft, "fit.easeLength"), 1e-9);
        assertEquals(footLength + ease, Numbers.of(draft, "fit.length"), 1e-9);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = """
            # share of foot length from floor to top of cuff: domain § 6; of 240 mm
            # 67.2, but a heel of 50 mm and a cuff of 18 mm are higher
            NO_SHOW,    68
            ANKLE,     100.8
            QUARTER,   144
            CREW,      204
            MID_CALF,  264
            KNEE,      360
            """)
    void namedSockLengthsAreSharesOfTheFoot(SockLength length, double legHeight) {
        assertEquals(legHeight, Numbers.of(Designs.toeUp64().with(new StraightLeg(length, LegCount.AS_FOOT)), "body.legHeight"), 1e-9);
    }

    @ParameterizedTest(name = "a foot of {0} mm has a cuff of {1} mm")
    @CsvSource(textBlock = """
            # 0.17 of the finished length, from 18 to 50 mm: domain § 8
            100,  18
            105,  18
            # 0.17 × 107 = 18.19
            107,  18.19
            # 0.17 × (240 - 10.8)
            240,  38.964
            # 0.17 × (306 - 12) = 49.98 and 0.17 × (307 - 12) = 50.15
            306,  49.98
            307,  50
            400,  50
            """)
    void cuffHeightStaysWithinUsualLimits(double footLength, double height) {
        Draft draft = Designs.toeUp64().with("body.footLength = %s mm".formatted(footLength));
        assertEquals(height, Numbers.of(draft, "cuff.height"), 1e-9);
    }

    @ParameterizedTest(name = "a leg of {0} has a cuff of {1}")
    @CsvSource(textBlock = """
            # whole repeats of 2×2 rib, the smaller at a tie
            64, 64
            65, 64
            66, 64
            67, 68
            """)
    void cuffTakesWholeRepeatsNearestToTheLeg(int leg, int cuff) {
        assertEquals(cuff, Numbers.of(Designs.toeUp64().with("leg.stitches = " + leg), "cuff.stitches"));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # the heel of 300 mm is 96 stitches at 32 over 10 cm; the narrowest count must become as wide
            body.heelCircumference = 300 mm                     | 1.5
            body.heelCircumference = 320 mm                     | 1.6
            body.heelCircumference = 300 mm; leg.stitches = 60  | 1.6
            body.heelCircumference = 300 mm; cuff.stitches = 48 | 2
            body.heelCircumference = 300 mm; leg.stitches = 80  | 1.5
            """)
    void stretchIsMeasuredAtTheNarrowestCount(String numbers, double stretch) {
        assertEquals(stretch, Numbers.of(Designs.toeUp64().with(numbers), "fit.stretch"), 1e-12);
    }
}
