package turnheel.workbench.editor;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.IResourceChangeListener;
import org.eclipse.core.resources.IResourceDelta;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.resources.WorkspaceJob;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.part.FileEditorInput;

import turnheel.model.DocumentException;

/**
 * Notices that somebody else wrote, moved or deleted the file of an editor. An editor without unsaved edits follows at
 * once; one with some asks, when it is the active one.
 */
final class FileWatch {

    /** Writes the file. */
    interface Writing {
        void run() throws DocumentException, CoreException;
    }

    private final PatternEditor editor;
    private final Display display;
    private final IResourceChangeListener resources = this::resourceChanged;
    private final IPartListener2 activation = new IPartListener2() {
        @Override
        public void partActivated(IWorkbenchPartReference part) {
            if (part.getPart(false) == editor) {
                look();
            }
        }
    };
    private volatile boolean writing;
    private boolean asking;
    private long seen;

    FileWatch(PatternEditor editor) {
        this.editor = editor;
        display = editor.getSite().getShell().getDisplay();
        seen = editor.store().stamp();
        ResourcesPlugin.getWorkspace().addResourceChangeListener(resources, IResourceChangeEvent.POST_CHANGE);
        editor.getSite().getPage().addPartListener(activation);
    }

    void dispose() {
        ResourcesPlugin.getWorkspace().removeResourceChangeListener(resources);
        editor.getSite().getPage().removePartListener(activation);
    }

    /** Runs the editor's own writing, which is no news. */
    void writing(Writing write) throws DocumentException, CoreException {
        writing = true;
        try {
            write.run();
        } finally {
            writing = false;
            seen();
        }
    }

    /** What is in the file now is known. */
    void seen() {
        seen = editor.store().stamp();
    }

    private void resourceChanged(IResourceChangeEvent event) {
        IFile file = editor.store().workspaceFile().orElse(null);
        IResourceDelta delta = file == null || writing ? null : event.getDelta().findMember(file.getFullPath());
        if (delta == null) {
            return;
        }
        if (delta.getKind() == IResourceDelta.REMOVED) {
            boolean wasMoved = (delta.getFlags() & IResourceDelta.MOVED_TO) != 0;
            IPath target = delta.getMovedToPath();
            display.asyncExec(() -> ifOpen(wasMoved ? () -> moved(target) : this::deleted));
        } else if ((delta.getFlags() & (IResourceDelta.CONTENT | IResourceDelta.REPLACED)) != 0
                || delta.getKind() == IResourceDelta.ADDED) {
            display.asyncExec(() -> ifOpen(this::look));
        }
    }

    private void ifOpen(Runnable action) {
        IWorkbenchPage page = editor.getSite().getPage();
        if (page != null && page.findEditor(editor.getEditorInput()) != null) {
            action.run();
        }
    }

    private void moved(IPath target) {
        editor.moved(new FileEditorInput(ResourcesPlugin.getWorkspace().getRoot().getFile(target)));
    }

    /** Unsaved edits outlive their file: they can still be saved. */
    private void deleted() {
        if (!editor.isDirty()) {
            editor.close(false);
        }
    }

    private void look() {
        boolean isActive = editor.getSite().getPage().getActiveEditor() == editor;
        if (asking || editor.store().stamp() == seen) {
            return;
        }
        editor.store().workspaceFile().ifPresent(FileWatch::tellWorkspace);
        if (!editor.isDirty()) {
            editor.readAgain();
        } else if (isActive) {
            ask();
        }
    }

    /** Written by another program, the file changed without the workspace knowing. */
    private static void tellWorkspace(IFile file) {
        WorkspaceJob job = new WorkspaceJob(NLS.bind(Messages.FileWatch_refresh_0, file.getName())) {
            @Override
            public IStatus runInWorkspace(IProgressMonitor monitor) throws CoreException {
                file.refreshLocal(IResource.DEPTH_ZERO, monitor);
                return Status.OK_STATUS;
            }
        };
        job.setRule(file.getWorkspace().getRuleFactory().refreshRule(file));
        job.setSystem(true);
        job.schedule();
    }

    private void ask() {
        asking = true;
        try {
            int answer = MessageDialog.open(MessageDialog.QUESTION, editor.getSite().getShell(),
                    Messages.FileWatch_title, NLS.bind(Messages.FileWatch_question_0, editor.store().name()), 0,
                    Messages.FileWatch_keep, Messages.FileWatch_readAgain);
            if (answer == 1) {
                editor.readAgain();
            } else {
                seen();
            }
        } finally {
            asking = false;
        }
    }
}
