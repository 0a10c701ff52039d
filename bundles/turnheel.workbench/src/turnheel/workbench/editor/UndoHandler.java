package turnheel.workbench.editor;

import java.util.Map;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.HandlerEvent;
import org.eclipse.jface.action.LegacyActionTools;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.IWorkbenchSite;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.contexts.IContextService;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.menus.UIElement;

/** The workbench's Undo or Redo on one editor; the menu names the step. */
final class UndoHandler extends AbstractHandler implements IElementUpdater {

    private static final String CONTEXT = "turnheel.workbench.patternContext"; //$NON-NLS-1$

    private final PatternEditor editor;
    private final boolean isUndo;

    private UndoHandler(PatternEditor editor, boolean isUndo) {
        this.editor = editor;
        this.isUndo = isUndo;
    }

    /** Connects Undo and Redo to the editor, as long as its site lives. */
    static Runnable connect(PatternEditor editor) {
        IWorkbenchSite site = editor.getSite();
        IHandlerService handlers = site.getService(IHandlerService.class);
        UndoHandler undo = new UndoHandler(editor, true);
        UndoHandler redo = new UndoHandler(editor, false);
        handlers.activateHandler(IWorkbenchCommandConstants.EDIT_UNDO, undo);
        handlers.activateHandler(IWorkbenchCommandConstants.EDIT_REDO, redo);
        // For the second key that redo has here, see plugin.xml.
        site.getService(IContextService.class).activateContext(CONTEXT);
        ICommandService commands = site.getService(ICommandService.class);
        return () -> {
            undo.fireHandlerChanged(new HandlerEvent(undo, true, false));
            redo.fireHandlerChanged(new HandlerEvent(redo, true, false));
            commands.refreshElements(IWorkbenchCommandConstants.EDIT_UNDO, null);
            commands.refreshElements(IWorkbenchCommandConstants.EDIT_REDO, null);
        };
    }

    @Override
    public boolean isEnabled() {
        return isUndo ? editor.canUndo() : editor.canRedo();
    }

    @Override
    public Object execute(ExecutionEvent event) {
        if (isUndo) {
            editor.undo();
        } else {
            editor.redo();
        }
        return null;
    }

    @Override
    public void updateElement(UIElement element, Map parameters) {
        String step = LegacyActionTools.escapeMnemonics(isUndo ? editor.undoLabel() : editor.redoLabel());
        if (isUndo) {
            element.setText(step.isEmpty() ? Messages.UndoHandler_undo : NLS.bind(Messages.UndoHandler_undo_0, step));
        } else {
            element.setText(step.isEmpty() ? Messages.UndoHandler_redo : NLS.bind(Messages.UndoHandler_redo_0, step));
        }
    }
}
