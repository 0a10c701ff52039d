package turnheel.workbench.grid;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;

import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

import turnheel.engine.design.Catalogue;
import turnheel.workbench.fixture.LoggedErrors;
import turnheel.workbench.fixture.OpenPattern;
import turnheel.workbench.fixture.Patterns;
import turnheel.workbench.fixture.Screen;

class GridThemesTest {

    private static final String LIGHT = "org.eclipse.e4.ui.css.theme.e4_default";
    private static final String DARK = "org.eclipse.e4.ui.css.theme.e4_dark";

    @RegisterExtension
    final LoggedErrors logged = new LoggedErrors();

    private OpenPattern open;

    @BeforeEach
    void openTheGrid() throws Exception {
        open = OpenPattern.of(Patterns.withQuery());
        open.editor().setActivePage("turnheel.workbench.gradingPage");
        open.editor().gotoMarker(open.file().createMarker("turnheel.workbench.query",
                Map.of("key", Catalogue.FOOT_STITCHES.key().name(), "size", "M")));
        Screen.rest(300);
    }

    @AfterEach
    void close() throws Exception {
        switchTo(LIGHT);
        open.close();
    }

    private static void switchTo(String theme) {
        PlatformUI.getWorkbench().getService(IThemeEngine.class).setTheme(theme, false);
        Screen.rest(500);
    }

    @Test
    void followsTheWorkbenchIntoTheDarkAndBack() {
        ImageData light = Screen.picture(OpenPattern.window().getShell());
        switchTo(DARK);
        ImageData dark = Screen.picture(OpenPattern.window().getShell());
        Screen.keep(dark, "window-dark");
        switchTo(LIGHT);
        ImageData again = Screen.picture(OpenPattern.window().getShell());
        Screen.keep(again, "window-light");
        assertTrue(Screen.brightness(light) > 200, "light: %.0f".formatted(Screen.brightness(light)));
        assertTrue(Screen.brightness(dark) < 90, "dark: %.0f".formatted(Screen.brightness(dark)));
        assertTrue(Screen.brightness(again) > 200, "light again: %.0f".formatted(Screen.brightness(again)));
        Screen.assertDrawn(dark, 20_000);
    }
}
