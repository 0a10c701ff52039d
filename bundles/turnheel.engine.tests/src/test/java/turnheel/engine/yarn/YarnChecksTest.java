package turnheel.engine.yarn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import turnheel.engine.checks.Checks;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Materials;
import turnheel.engine.design.Share;
import turnheel.engine.design.Yarn;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;

/** What is asked about yarn: each slip beside a neighbour that is none. */
class YarnChecksTest {

    /** The pair without margin. */
    private static final double METRES = 2 * Socks.number(Designs.toeUp64(), Materials.UNDECIDED,
            Catalogue.YARN_SOCK_METRES);

    @Test
    void asksWhereAPairTakesMoreBallsThanAreStated() {
        Materials bought = Materials.of(Socks.SOCK_YARN);
        assertEquals(List.of(new Query(Check.YARN_BALLS, Catalogue.YARN_BALLS.key(), List.of(Designs.M), "1", "2")),
                asked(Designs.toeUp64(), bought.withBalls(1)));
        assertEquals(List.of(), asked(Designs.toeUp64(), bought.withBalls(2)));
    }

    /** Balls so large that the pair leaves this share of the second. */
    @ParameterizedTest(name = "{0} % left: {1}")
    @CsvSource({"0.02, 0", "3, 3", "4.9, 4.9"})
    void asksWhereTheLastBallIsNearlyUsedUp(double leftPercent, String found) {
        assertEquals(List.of(new Query(Check.YARN_END, Catalogue.YARN_BALLS.key(), List.of(Designs.M), "5", found)),
                asked(Designs.toeUp64(), leaving(leftPercent)));
        assertEquals(List.of(), asked(Designs.toeUp64(), leaving(leftPercent).withBalls(3)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {5.1, 40, 99})
    void doesNotAskWhereEnoughIsLeft(double leftPercent) {
        assertEquals(List.of(), asked(Designs.toeUp64(), leaving(leftPercent)));
    }

    private static Materials leaving(double percentOfSecondBall) {
        return Materials.of(Yarn.of("", METRES / (2 - percentOfSecondBall / 100), 50)).with(new Share(0));
    }

    /** Category 1 is 27 to 32 over 4 in: 26.6 to 31.5 over 10 cm, for socks to 37.8. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = """
            26.5/10 cm, 26.5
            38/10 cm,   38
            """)
    void asksWhereTheGaugeIsNotThatOfTheYarn(String gauge, String found) {
        assertEquals(List.of(new Query(Check.YARN_GAUGE, Catalogue.GAUGE_STITCHES.key(), List.of(Designs.M),
                "26.6–37.8", found)),
                asked(Designs.toeUp64().withGauge(gauge, "44/10 cm"), ofCategory(1)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"27/4 in", "32/10 cm", "37.7/10 cm"})
    void doesNotAskWhereItIs(String gauge) {
        assertEquals(List.of(), asked(Designs.toeUp64().withGauge(gauge, "44/10 cm"), ofCategory(1)));
    }

    @Test
    void doesNotAskAboutAYarnOfUnknownCategory() {
        assertEquals(List.of(), asked(Designs.toeUp64().withGauge("20/10 cm", "28/10 cm"),
                Materials.of(Yarn.of("", 210, 50))));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7})
    void knowsEveryCategory(int category) {
        Categories.Band band = Categories.band(category);
        assertTrue(band.fewest() < band.most() && band.fewest() > 0, band::toString);
        assertFalse(Categories.name(category).isBlank());
        if (category > 0) {
            assertTrue(band.fewest() < Categories.band(category - 1).fewest(), "thicker yarn has fewer stitches");
        }
    }

    private static Materials ofCategory(int category) {
        return Materials.of(new Yarn("", 1000, 250, OptionalInt.of(category)));
    }

    /** What is asked about yarn; a gauge may raise other questions. */
    private static List<Query> asked(Draft draft, Materials materials) {
        return Checks.of(Socks.graded(draft, materials)).stream()
                .filter(query -> query.check().id().startsWith("yarn.")).toList();
    }
}
