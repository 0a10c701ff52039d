package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.checks.Checks;
import turnheel.engine.design.Parameter;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Numbers;

/** Every number of two whole socks, worked by hand. */
class GradedByHandTest {

    private static final double TEN_THOUSANDTH = 5e-5;
    private static final Graded TOE_UP = Designs.toeUp64().graded();
    private static final Graded CUFF_DOWN = Designs.cuffDown64().graded();

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(textBlock = """
            gauge.stitches,           32
            gauge.rounds,             44
            body.footLength,         240
            body.footCircumference,  222
            # a crew sock: 0.85 × 240
            body.legHeight,          204
            fit.easeAround,          -10
            # 4.5 % of 240, within 5 and 12
            fit.easeLength,          -10.8
            fit.circumference,       199.8
            fit.length,              229.2
            # 200 / 222 - 1
            fit.easeReached,          -9.9099
            toe.points,                4
            toe.castOn,                8
            toe.alternateFrom,        20
            toe.plainBetween,          1
            toe.everyRound,            3
            toe.alternate,            11
            # 3 + 1 + 11 × 2
            toe.rounds,               26
            # with the set-up round: 27 / 0.44
            toe.depth,                61.3636
            # 199.8 × 0.32
            foot.ideal,               63.936
            foot.stitches,            64
            foot.instep,              32
            foot.sole,                32
            foot.circumference,      200
            # (229.2 - 61.3636 - 50) × 0.44 = 51.85
            foot.rounds,              52
            foot.length,             229.5455
            foot.lengthRest,          -0.3455
            heel.stitches,            32
            heel.centre,              10
            heel.eachSide,            11
            heel.rows,                44
            # 22 / 0.44
            heel.depth,               50
            leg.stitches,             64
            # (204 - 50 - 38.964) × 0.44 = 50.6
            leg.rounds,               51
            # 0.17 × 229.2
            cuff.height,              38.964
            cuff.stitches,            64
            # 38.964 × 0.44 = 17.1
            cuff.rounds,              17
            """)
    void toeUpWithRoundToe(String key, double expected) {
        assertEquals(expected, Numbers.of(TOE_UP, key), TEN_THOUSANDTH);
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(textBlock = """
            toe.tip,                  16
            toe.alternateFrom,        32
            toe.everyRound,            4
            toe.alternate,             8
            # 8 × 2 + 4, and no set-up round: 20 / 0.44
            toe.rounds,               20
            toe.depth,                45.4545
            foot.stitches,            64
            # (229.2 - 45.4545 - 50) × 0.44 = 58.85
            foot.rounds,              59
            foot.length,             229.5455
            foot.lengthRest,          -0.3455
            heel.rows,                44
            leg.rounds,               51
            cuff.rounds,              17
            """)
    void cuffDownWithWedgeToe(String key, double expected) {
        assertEquals(expected, Numbers.of(CUFF_DOWN, key), TEN_THOUSANDTH);
    }

    @Test
    void nothingIsLeftToAskAbout() {
        assertEquals(List.of(), Checks.of(TOE_UP));
        assertEquals(List.of(), Checks.of(CUFF_DOWN));
        assertEquals(List.of(), Checks.of(Designs.toeUpInSixSizes().graded()));
    }

    @Test
    void rowsThatNoPartHasAreAbsent() {
        Set<String> toeUp = keys(TOE_UP.parameters());
        Set<String> cuffDown = keys(CUFF_DOWN.parameters());
        assertEquals(Set.of("toe.tip"), difference(cuffDown, toeUp));
        assertEquals(Set.of("toe.castOn", "toe.points", "toe.plainBetween"), difference(toeUp, cuffDown));
        assertEquals(Set.of(), toeUp.stream().filter(key -> key.startsWith("heel.flap") || key.startsWith("heel.gusset")
                || key.startsWith("yarn.") || key.equals("foot.panel")).collect(Collectors.toSet()));
    }

    private static Set<String> keys(List<Parameter> parameters) {
        return parameters.stream().map(Parameter::key).map(Object::toString).collect(Collectors.toSet());
    }

    private static Set<String> difference(Set<String> all, Set<String> without) {
        return all.stream().filter(key -> !without.contains(key)).collect(Collectors.toSet());
    }
}
