package turnheel.engine.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;
import turnheel.engine.checks.Checks;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Parameter;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;

/** Sizes that differ by needle and gauge, not by count. */
class OneCountOnThreeNeedlesTest {

    /** 10 % less than the foot at every gauge, so that the three ideals are near 64. */
    private static final Draft SOCK = Designs.withoutSizes()
            .withSize("S", "body.footLength = 220 mm; body.footCircumference = 200 mm; body.heelCircumference = 275 mm; "
                    + "fit.easeAround = -10 %; gauge.stitches = 36/10 cm; gauge.rounds = 49/10 cm; gauge.needle = 2.25 mm")
            .withSize("M", "body.footLength = 242 mm; body.footCircumference = 222 mm; body.heelCircumference = 305 mm; "
                    + "fit.easeAround = -10 %; gauge.needle = 2.5 mm")
            .withSize("L", "body.footLength = 264 mm; body.footCircumference = 244 mm; body.heelCircumference = 335 mm; "
                    + "fit.easeAround = -10 %; gauge.stitches = 29/10 cm; gauge.rounds = 40/10 cm; gauge.needle = 2.75 mm");

    @Test
    void shareTheirCountAndNotTheirMeasurements() {
        // 180 × 0.36 = 64.8, 199.8 × 0.32 = 63.9, 219.6 × 0.29 = 63.7
        assertEquals(List.of(64.8, 63.936, 63.684), row(Catalogue.FOOT_IDEAL));
        assertEquals(List.of(64.0, 64.0, 64.0), row(Catalogue.FOOT_STITCHES));
        assertEquals(List.of(2.25, 2.5, 2.75), row(Catalogue.NEEDLE));
        // 64 / 0.36, 64 / 0.32, 64 / 0.29
        assertEquals(List.of(177.778, 200.0, 220.69), row(Catalogue.FINISHED_CIRCUMFERENCE));
    }

    @Test
    void raiseNoQuestion() {
        assertEquals(List.of(), Checks.of(SOCK.graded()));
    }

    private static List<Double> row(Parameter parameter) {
        return SOCK.graded().sizes().stream().map(size -> Math.rint(size.value(parameter) * 1000) / 1000).toList();
    }
}
