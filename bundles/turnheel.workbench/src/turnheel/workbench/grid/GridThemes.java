package turnheel.workbench.grid;

import org.eclipse.e4.core.services.events.IEventBroker;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.ui.PlatformUI;
import org.osgi.service.event.EventHandler;

/** Keeps the look of the grid in step with the theme of the workbench and of the system. */
final class GridThemes {

    private final NatTable table;
    private final MarkPainter.Marks marks;

    GridThemes(NatTable table, MarkPainter.Marks marks) {
        this.table = table;
        this.marks = marks;
        IEventBroker events = PlatformUI.getWorkbench().getService(IEventBroker.class);
        EventHandler themeChanged = event -> applyLater();
        events.subscribe(IThemeEngine.Events.THEME_CHANGED, themeChanged);
        Listener settingsChanged = event -> applyLater();
        table.getDisplay().addListener(SWT.Settings, settingsChanged);
        table.addDisposeListener(event -> {
            events.unsubscribe(themeChanged);
            event.display.removeListener(SWT.Settings, settingsChanged);
        });
        apply();
        applyLater();
    }

    /**
     * The theme engine styles the widgets around the grid only after it has said so, and a new page after it is made.
     */
    private void applyLater() {
        table.getDisplay().asyncExec(this::apply);
    }

    private void apply() {
        if (!table.isDisposed()) {
            Palette palette = Palette.on(table.getParent().getBackground().getRGB(),
                    table.getParent().getForeground().getRGB());
            table.setTheme(new GridTheme(palette, table.getParent().getFont(), marks));
            table.setBackground(GridTheme.color(palette.background()));
        }
    }
}
