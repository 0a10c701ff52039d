package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import turnheel.cli.Table.Side;
import turnheel.engine.design.Unit;

class TableTest {

    @Test
    void columnsStandStraight() {
        List<String> lines = new Table(Side.LEFT, Side.RIGHT, Side.LEFT).row("key", "M", "note").row("a.b", "1024", "")
                .row("longer.key", "8", "x").lines();
        assertEquals(List.of(
                "key            M  note",
                "a.b         1024",
                "longer.key     8  x"), lines);
    }

    @Test
    void widthsAreThoseOfATerminal() {
        List<String> lines = new Table(Side.LEFT, Side.LEFT).row("靴下", "|").row("Socke", "|")
                .row("e\u0301te\u0301", "|").lines();
        assertEquals(List.of("靴下   |", "Socke  |", "e\u0301te\u0301    |"), lines);
    }

    @ParameterizedTest(name = "{0} is {1} wide")
    @CsvSource({"'', 0", "abc, 3", "Ä–×½, 4", "ｶﾅ, 2", "ＡＢ, 4", "양말, 4", "🧦, 2", "a\u200bb, 2"})
    void countsTheColumnsOfAText(String text, int columns) {
        assertEquals(columns, TextWidth.of(text));
    }

    @Test
    void aRowOfAnotherLengthIsAMistake() {
        Table table = new Table(Side.LEFT);
        assertThrows(IllegalArgumentException.class, () -> table.row("one", "two"));
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"64, STITCHES, 64", "11.5, TIMES, 11.50", "-2, ROUNDS, −2", "228.65, MILLIMETRES, 228.7",
            "-0.04, MILLIMETRES, 0.0", "-10, PERCENT, −10.0", "1.555, RATIO, 1.56", "64.8, IDEAL_STITCHES, 64.8"})
    void figuresAreRoundedToWhatCanBeKnittedOrMeasured(double value, Unit unit, String shown) {
        assertEquals(shown, Figures.of(value, unit));
    }
}
