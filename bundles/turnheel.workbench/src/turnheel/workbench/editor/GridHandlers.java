package turnheel.workbench.editor;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.IHandler;
import org.eclipse.swt.events.FocusListener;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.IWorkbenchSite;
import org.eclipse.ui.handlers.IHandlerActivation;
import org.eclipse.ui.handlers.IHandlerService;

import turnheel.workbench.grid.GradingGrid;

/**
 * Connects the workbench's Copy, Delete and Select All to the grid while it has the focus. In its cell editor, which is
 * another control, they mean the text.
 */
final class GridHandlers {

    private final IHandlerService handlers;
    private final GradingGrid grid;
    private final List<IHandlerActivation> active = new ArrayList<>();

    GridHandlers(IWorkbenchSite site, GradingGrid grid) {
        this.handlers = site.getService(IHandlerService.class);
        this.grid = grid;
        grid.control().addFocusListener(FocusListener.focusGainedAdapter(event -> activate()));
        grid.control().addFocusListener(FocusListener.focusLostAdapter(event -> deactivate()));
        grid.control().addDisposeListener(event -> deactivate());
    }

    private void activate() {
        if (active.isEmpty()) {
            active.add(handlers.activateHandler(IWorkbenchCommandConstants.EDIT_COPY, handler(grid::copy)));
            active.add(handlers.activateHandler(IWorkbenchCommandConstants.EDIT_DELETE, handler(grid::dropSelected)));
            active.add(handlers.activateHandler(IWorkbenchCommandConstants.EDIT_SELECT_ALL, handler(grid::selectAll)));
        }
    }

    private void deactivate() {
        handlers.deactivateHandlers(active);
        active.clear();
    }

    private static IHandler handler(Runnable action) {
        return new AbstractHandler() {
            @Override
            public Object execute(ExecutionEvent event) {
                action.run();
                return null;
            }
        };
    }
}
