package turnheel.workbench.grid;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.nebula.widgets.nattable.config.CellConfigAttributes;
import org.eclipse.nebula.widgets.nattable.config.IConfigRegistry;
import org.eclipse.nebula.widgets.nattable.style.CellStyleAttributes;
import org.eclipse.nebula.widgets.nattable.style.DisplayMode;
import org.eclipse.nebula.widgets.nattable.style.Style;
import org.eclipse.nebula.widgets.nattable.style.TextDecorationEnum;
import org.eclipse.nebula.widgets.nattable.style.theme.IThemeExtension;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;

/**
 * How the kinds of cell differ. Colour is never alone: an override is bold and has a mark, a default italic, a result
 * quiet on shaded ground, and what a query is about is underlined.
 */
final class KindStyles implements IThemeExtension {

    /** Labels of the cells that are no {@link CellKind}. */
    static final String HEADING = "turnheel.heading";
    static final String UNIT = "turnheel.unit";
    static final String ERROR = "turnheel.error";
    static final String WARNING = "turnheel.warning";

    private record Registered(String label, Style style) {
    }

    private final List<Registered> styles = new ArrayList<>();

    KindStyles(Palette palette, Font font) {
        Color quiet = GridTheme.color(palette.quiet());
        Color shaded = GridTheme.color(palette.shaded());
        Font italic = GridTheme.styled(font, SWT.ITALIC);
        Font bold = GridTheme.styled(font, SWT.BOLD);

        query(ERROR, palette, true);
        query(WARNING, palette, false);
        style(CellKind.OVERRIDE.configLabel()).setAttributeValue(CellStyleAttributes.FONT, bold);
        foreground(CellKind.OVERRIDE.configLabel(), GridTheme.color(palette.accent()));
        style(CellKind.DEFAULT.configLabel()).setAttributeValue(CellStyleAttributes.FONT, italic);
        foreground(CellKind.DEFAULT.configLabel(), quiet);
        style(CellKind.PREDICTED.configLabel()).setAttributeValue(CellStyleAttributes.FONT, italic);
        foreground(CellKind.PREDICTED.configLabel(), quiet);
        foreground(CellKind.RESULT.configLabel(), quiet);
        style(CellKind.RESULT.configLabel()).setAttributeValue(CellStyleAttributes.BACKGROUND_COLOR, shaded);
        style(CellKind.OWN.configLabel()).setAttributeValue(CellStyleAttributes.BACKGROUND_COLOR, shaded);

        foreground(UNIT, quiet);
        style(HEADING).setAttributeValue(CellStyleAttributes.FONT, bold);
        style(HEADING).setAttributeValue(CellStyleAttributes.BACKGROUND_COLOR, GridTheme.color(palette.heading()));
    }

    private void query(String label, Palette palette, boolean isError) {
        foreground(label, GridTheme.color(isError ? palette.error() : palette.warning()));
        style(label).setAttributeValue(CellStyleAttributes.BACKGROUND_COLOR,
                GridTheme.color(isError ? palette.errorGround() : palette.warningGround()));
        style(label).setAttributeValue(CellStyleAttributes.TEXT_DECORATION, TextDecorationEnum.UNDERLINE);
    }

    private void foreground(String label, Color colour) {
        style(label).setAttributeValue(CellStyleAttributes.FOREGROUND_COLOR, colour);
    }

    private Style style(String label) {
        return styles.stream().filter(registered -> registered.label().equals(label)).findFirst().orElseGet(() -> {
            Registered registered = new Registered(label, new Style());
            styles.add(registered);
            return registered;
        }).style();
    }

    @Override
    public void registerStyles(IConfigRegistry configRegistry) {
        styles.forEach(registered -> configRegistry.registerConfigAttribute(CellConfigAttributes.CELL_STYLE,
                registered.style(), DisplayMode.NORMAL, registered.label()));
    }

    @Override
    public void unregisterStyles(IConfigRegistry configRegistry) {
        styles.forEach(registered -> configRegistry.unregisterConfigAttribute(CellConfigAttributes.CELL_STYLE,
                DisplayMode.NORMAL, registered.label()));
    }
}
