package turnheel.exchange.imprint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

import turnheel.engine.design.Design;
import turnheel.engine.writing.Caution.Matter;
import turnheel.engine.writing.Caution;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.Designs;

class CautionTest {

    private static List<Caution> of(Design design) {
        return Caution.of(Patterns.grade(design));
    }

    @Test
    void threeTravelWithEverySock() {
        assertEquals(List.of(new Caution(Matter.CIRCULATION, List.of()), new Caution(Matter.NOT_MEDICAL, List.of()),
                new Caution(Matter.SLIPPERY, List.of())), of(Designs.toeUp()));
    }

    /** 100 mm at 32 stitches: 200 mm around with 48 stitches is 150 mm, 25 % less; 52 give 162.5 mm, 18.75 % less. */
    @ParameterizedTest(name = "{0} stitches on 200 mm: tight {1}")
    @CsvSource({"48, true", "51, true", "52, false", "60, false"})
    void belowMinusTwentyPerCentTheSockIsTight(int stitches, boolean tight) {
        Design design = Designs.with(Designs.toeUp(), "Tight", List.of(Designs.with(
                Designs.size("M", "240 mm", "200 mm", "290 mm"), Map.of(), Map.of("foot.stitches",
                        Integer.toString(stitches))), Designs.size("L", "260 mm", "240 mm", "325 mm")));
        assertEquals(tight, of(design).contains(new Caution(Matter.TIGHT, List.of("M"))));
        assertEquals(tight, of(design).getFirst().matter() == Matter.TIGHT);
    }

    @ParameterizedTest(name = "a foot of {0} mm: small child {1}")
    @CsvSource({"110, true", "175, true", "176, false", "240, false"})
    void smallFeetAreWarnedOfLooseStrands(int footLength, boolean small) {
        Design design = Designs.with(Designs.toeUp(), "Small", List.of(
                Designs.size("first", footLength + " mm", "150 mm", "200 mm"),
                Designs.size("L", "260 mm", "240 mm", "325 mm")));
        assertEquals(small, of(design).contains(new Caution(Matter.LOOSE_STRANDS, List.of("first"))));
    }

    @ParameterizedTest
    @EnumSource(Matter.class)
    void hasASentenceForEveryMatter(Matter matter) {
        String sentence = new Caution(matter, List.of("M", "L's")).sentence();
        assertTrue(sentence.endsWith("."), sentence);
        assertEquals(matter == Matter.TIGHT || matter == Matter.LOOSE_STRANDS, sentence.contains("M, L's"), sentence);
    }

    @ParameterizedTest
    @EnumSource(value = Matter.class, names = {"TIGHT", "CIRCULATION", "NOT_MEDICAL"})
    void leavesHealthToAClinician(Matter matter) {
        assertTrue(new Caution(matter, List.of()).sentence().contains("clinician"));
    }
}
