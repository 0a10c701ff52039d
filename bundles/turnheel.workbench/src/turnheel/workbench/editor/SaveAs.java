package turnheel.workbench.editor;

import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.IPath;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.dialogs.SaveAsDialog;
import org.eclipse.ui.part.FileEditorInput;

import turnheel.model.PatternFiles;
import turnheel.workbench.document.PatternStore;

/** Asks for another file of the workspace. */
final class SaveAs {

    private SaveAs() {
    }

    /** The chosen file, with the extension of pattern files; empty when nobody chose. */
    static Optional<IEditorInput> ask(Shell shell, PatternStore store) {
        SaveAsDialog dialog = new SaveAsDialog(shell);
        store.workspaceFile().ifPresentOrElse(dialog::setOriginalFile, () -> dialog.setOriginalName(store.name()));
        if (dialog.open() != Window.OK || dialog.getResult() == null) {
            return Optional.empty();
        }
        IPath path = dialog.getResult();
        IPath named = PatternFiles.EXTENSION.equals(path.getFileExtension()) ? path
                : path.addFileExtension(PatternFiles.EXTENSION);
        IFile file = ResourcesPlugin.getWorkspace().getRoot().getFile(named);
        return Optional.of(new FileEditorInput(file));
    }
}
