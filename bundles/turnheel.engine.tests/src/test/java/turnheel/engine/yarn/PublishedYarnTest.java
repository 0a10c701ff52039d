package turnheel.engine.yarn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Materials;
import turnheel.engine.design.Yarn;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;

/** What others measured, weighed, counted and printed; sources as in the reference tables. */
class PublishedYarnTest {

    /**
     * Yarn in a loop against hand-knit observations. Where only stitches were told, the rounds are those of wet relaxed
     * plain knitting, 1.3 to a stitch (Munden).
     */
    @ParameterizedTest(name = "{0} sts and {1} rounds: {2} mm within {3} %")
    @CsvSource(textBlock = """
            # U1, measured: 18 stitches of a sock swatch at 9 to the inch took 8 in, "rounded up": 8 × 25.4 / 18
            9/1 in,    11.7/1 in,  11.29, 3
            # U3, rule of thumb for any yarn, with a margin in it: 6 in over the rounds per inch; 6 / 7 × 25.4
            5/1 in,    7/1 in,     21.77, 10
            # U2, rule of thumb, 4.712 × the needle: 2.5 mm
            # trade's sock table on that needle: 30 stitches, 42 to 47 rounds
            30/10 cm,  44.5/10 cm, 11.78, 10
            """)
    void aLoopIsAsLongAsObserved(String stitches, String rounds, double observedMm, double percent) {
        double mm = Socks.number(Designs.toeUp64().withGauge(stitches, rounds), Materials.UNDECIDED,
                Catalogue.YARN_LOOP_LENGTH);
        assertEquals(observedMm, mm, observedMm * percent / 100);
    }

    /** The examination question of the same geometry: 0.5 cm loops give 92 to the square centimetre at 23.1. */
    @Test
    void aLoopFollowsFromTheDensityAsInTheTextbook() {
        // 92 a cm² at 21.6 in place of 23.1: sqrt(21.6 / 0.92) against 5 mm × sqrt(21.6 / 23.1)
        double mm = Socks.number(Designs.toeUp64().withGauge("80/10 cm", "115/10 cm"), Materials.UNDECIDED,
                Catalogue.YARN_LOOP_LENGTH);
        assertEquals(5 * Math.sqrt(21.6 / 23.1), mm, 0.02);
    }

    /** Metres in 100 g and tex: definition of ISO 1144, worked in the reference table. */
    @ParameterizedTest(name = "{0} m in {1} g are {2} tex")
    @CsvSource(textBlock = """
            # 25 tex: 1000 m weigh 25 g
            1000, 25,  25
            400,  100, 250
            420,  100, 238.1
            425,  100, 235.3
            280,  100, 357.1
            # Nm 4: 4 m per g
            4,    1,   250
            # 437 yd are 399.6 m
            399.6, 100, 250.3
            """)
    void aLabelIsAYarnCount(double metres, double grams, double tex) {
        assertEquals(tex, Socks.number(Designs.toeUp64(), Materials.of(Yarn.of("", metres, grams)),
                Catalogue.YARN_TEX), 0.05);
    }

    /** A pair of unknown gauge and height was counted at 42 976 stitches (Y13): the same order of magnitude. */
    @Test
    void aPairHasTensOfThousandsOfLoops() {
        double pair = 2 * Socks.number(Designs.toeUp64(), Materials.UNDECIDED, Catalogue.YARN_LOOPS);
        assertTrue(pair > 42_976 / 2.5 && pair < 42_976 * 2.5, () -> pair + " loops");
        // at a fine gauge and to the middle of the calf it is that many
        Draft high = Designs.toeUp64().withGauge("40/10 cm", "56/10 cm").with("body.legHeight = 380 mm");
        double fine = 2 * Socks.number(high, Materials.UNDECIDED, Catalogue.YARN_LOOPS);
        assertEquals(42_976, fine, 42_976 * 0.25);
    }

    /**
     * Grams of a pair against the balls of 50 g that the trade's table sells for it (Y10, yarn of 200 to 210 m per 50
     * g), with foot lengths of 200 to 270 mm for its European sizes; the table covers legs of any usual height.
     */
    @ParameterizedTest(name = "{0} × {1} mm: {2} to {3} g")
    @CsvSource(textBlock = """
            # EU 30/31 and smaller: one ball
            180, 175, 25, 50
            # EU 32/33 to 40/41: two balls
            220, 205, 50, 100
            240, 222, 50, 100
            255, 235, 50, 100
            # EU 42/43 and larger: two to three balls
            280, 255, 75, 150
            """)
    void aPairNeedsWhatTheTradeSells(int length, int girth, double least, double most) {
        String foot = "body.footLength = %d mm; body.footCircumference = %d mm".formatted(length, girth);
        Draft draft = Designs.withoutSizes().withSize(Designs.M, foot).withGauge("30/10 cm", "42/10 cm");
        double grams = Socks.number(draft, Materials.of(Socks.SOCK_YARN), Catalogue.YARN_GRAMS);
        assertTrue(grams >= least && grams <= most, () -> grams + " g");
    }

    /**
     * A weighed pair took 312 m (Y09), patterns state 350 and 375 yd for adults, margin included (Y12): half to all of
     * it.
     */
    @Test
    void anAdultPairTakesHundredsOfMetres() {
        double metres = Socks.number(Designs.toeUp64(), Materials.UNDECIDED, Catalogue.YARN_METRES);
        assertTrue(metres > 200 && metres < 375 * 0.9144, () -> metres + " m");
    }
}
