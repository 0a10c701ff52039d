package turnheel.workbench.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PaletteTest {

    @Test
    void contrastIsThatOfTheGuidelines() {
        // The two ends of the scale, and the grey that the guidelines' own examples call just enough on white.
        assertEquals(21, Palette.contrast(new RGB(0, 0, 0), new RGB(255, 255, 255)), 1e-9);
        assertEquals(1, Palette.contrast(new RGB(9, 9, 9), new RGB(9, 9, 9)), 1e-9);
        assertEquals(4.54, Palette.contrast(new RGB(0x76, 0x76, 0x76), new RGB(255, 255, 255)), 0.01);
    }

    @ParameterizedTest(name = "background {0}, foreground {1}")
    @CsvSource({ "255, 0", "255, 60", "47, 238", "47, 170", "0, 255", "30, 20", "128, 130", "200, 255" })
    void everyTextCanBeReadOnItsGround(int background, int foreground) {
        Palette palette = Palette.on(grey(background), grey(foreground));
        readable(palette.foreground(), palette.background());
        for (RGB ground : new RGB[] { palette.background(), palette.shaded(), palette.selected() }) {
            readable(palette.quiet(), ground);
            readable(palette.accent(), ground);
            readable(palette.foreground(), ground);
        }
        readable(palette.foreground(), palette.heading());
        readable(palette.error(), palette.errorGround());
        readable(palette.warning(), palette.warningGround());
    }

    private static RGB grey(int value) {
        return new RGB(value, value, value);
    }

    private static void readable(RGB text, RGB ground) {
        double contrast = Palette.contrast(text, ground);
        assertTrue(contrast >= Palette.READABLE, "%s on %s has a contrast of %.2f".formatted(text, ground, contrast));
    }

    @Test
    void hueSurvivesOnBothKindsOfBackground() {
        for (int background : new int[] { 255, 47 }) {
            Palette palette = Palette.on(grey(background), grey(255 - background));
            assertTrue(palette.accent().blue > palette.accent().red + 40, palette.accent().toString());
            assertTrue(palette.error().red > palette.error().blue + 40, palette.error().toString());
        }
    }
}
