package turnheel.workbench.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Quantity;
import turnheel.engine.grading.Cell;
import turnheel.engine.grading.Reason;
import turnheel.engine.grading.Source;
import turnheel.engine.term.Key;
import turnheel.engine.term.Terms;

class CellTextTest {

    @ParameterizedTest(name = "{1} in {0} is shown as {2}")
    @CsvSource(textBlock = """
            # decimals of the unit, rounded half up, so that sizes line up
            foot.circumference, 200, 200.0
            foot.circumference, 203.25, 203.3
            foot.lengthRest, -0.04, 0.0
            fit.easeReached, -10.04, −10.0
            foot.ideal, 65.664, 65.7
            foot.stitches, 64, 64
            # a count that is not whole is not rounded away
            foot.instep, 32.5, 32.5
            toe.alternate, 10.333333, 10.33
            # a default has no more decimals than it needs
            body.legHeight, 187, 187
            body.legHeight, 213.35, 213.4
            fit.easeAround, -7.5, −7.5
            """)
    void aDerivedNumberIsShownInTheUnitOfItsRow(String key, double value, String shown) {
        assertEquals(shown, CellText.shown(derived(key, value)));
    }

    @Test
    void anEntryIsShownInTheUnitOfItsRowAndEditedAsItWasWritten() {
        Cell given = given("body.footLength", "9 1/2 in");
        assertEquals("241.3", CellText.shown(given));
        assertEquals("9.5 in", CellText.edited(given));
        Cell finer = given("body.footLength", "240.25 mm");
        assertEquals("240.25", CellText.shown(finer));
    }

    @Test
    void anOverrideIsEditedAsItWasWritten() {
        Quantity quantity = Quantity.parse("5 cm");
        Cell cell = new Cell(Catalogue.CUFF_HEIGHT, quantity.inside(), Source.OVERRIDE,
                new Reason.Overridden(quantity, Optional.empty()));
        assertEquals("5 cm", CellText.edited(cell));
        assertEquals("50.0", CellText.shown(cell));
    }

    @Test
    void anotherProgramGetsAHyphenForTheMinusSign() {
        assertEquals("-10.0", CellText.plain(derived("fit.easeReached", -10)));
    }

    private static Cell derived(String key, double value) {
        return new Cell(Catalogue.parameter(new Key(key)), value, Source.RULE,
                new Reason.Derived(Terms.number(value), Map.of(), OptionalDouble.empty()));
    }

    private static Cell given(String key, String text) {
        Quantity quantity = Quantity.parse(text);
        return new Cell(Catalogue.parameter(new Key(key)), quantity.inside(), Source.INPUT, new Reason.Given(quantity));
    }
}
