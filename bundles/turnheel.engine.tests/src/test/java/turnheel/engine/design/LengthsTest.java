package turnheel.engine.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnheel.engine.fixture.Designs;

class LengthsTest {

    @ParameterizedTest(name = "{2}")
    @CsvSource({"TO_FIT, ROUNDS, leg", "ROUNDS, TO_FIT, cuff"})
    void onlyAFootIsWorkedToFit(LengthMode leg, LengthMode cuff, String part) {
        String message = assertThrows(IllegalArgumentException.class,
                () -> new Lengths(LengthMode.TO_FIT, leg, cuff, Snap.NONE)).getMessage();
        assertTrue(message.contains(part), message);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"NONE, false, false", "FOOT, true, false", "LEG, false, true", "FOOT_AND_LEG, true, true"})
    void snapsWhereItSays(Snap snap, boolean foot, boolean leg) {
        assertEquals(foot, snap.foot());
        assertEquals(leg, snap.leg());
    }

    @Test
    void aDesignSaysItsLengthsAsUsualUnlessToldOtherwise() {
        Lengths toFit = new Lengths(LengthMode.TO_FIT, LengthMode.MEASURE, LengthMode.BOTH, Snap.LEG);
        Design design = Designs.toeUp64().design();
        assertEquals(Lengths.USUAL, design.lengths());
        assertEquals(toFit, design.withLengths(toFit).lengths());
        assertEquals(design, design.withLengths(toFit).withLengths(Lengths.USUAL));
    }
}
