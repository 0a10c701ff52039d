package turnheel.workbench.editor;

import java.net.URI;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IFileEditorInput;
import org.eclipse.ui.IURIEditorInput;

import turnheel.workbench.document.PatternStore;

/** From an editor's input to where the pattern is kept. */
final class EditorStores {

    private EditorStores() {
    }

    /** The file of the input; empty when it is none that can be written. */
    static Optional<PatternStore> of(IEditorInput input) {
        return switch (input) {
            case IFileEditorInput inWorkspace -> Optional.of(new PatternStore.InWorkspace(inWorkspace.getFile()));
            case IURIEditorInput outside when isLocal(outside.getURI()) ->
                Optional.of(new PatternStore.Outside(Path.of(outside.getURI())));
            default -> Optional.empty();
        };
    }

    private static boolean isLocal(URI uri) {
        return "file".equals(uri.getScheme()); //$NON-NLS-1$
    }
}
