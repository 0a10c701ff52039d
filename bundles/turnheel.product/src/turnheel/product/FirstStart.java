package turnheel.product;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IWorkspaceRoot;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.resources.WorkspaceJob;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IStartup;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.osgi.service.prefs.BackingStoreException;

/**
 * Opens the example on the first start in an empty workspace, so that nobody meets an empty screen. Does so once: who
 * deletes the example has seen it. Does nothing in another product, should somebody install this bundle there.
 */
public final class FirstStart implements IStartup {

    private static final String BUNDLE = "turnheel.product"; //$NON-NLS-1$
    private static final String PRODUCT = "turnheel.product.turnheel"; //$NON-NLS-1$
    private static final Point ROOMY = new Point(1440, 900);
    private static final String DONE = "exampleOpened"; //$NON-NLS-1$

    @Override
    public void earlyStartup() {
        IEclipsePreferences preferences = InstanceScope.INSTANCE.getNode(BUNDLE);
        IWorkspaceRoot root = ResourcesPlugin.getWorkspace().getRoot();
        boolean isOurs = Platform.getProduct() != null && PRODUCT.equals(Platform.getProduct().getId());
        if (isOurs && !preferences.getBoolean(DONE, false) && root.getProjects().length == 0) {
            createAndOpen(root, preferences);
        }
    }

    private static void createAndOpen(IWorkspaceRoot root, IEclipsePreferences preferences) {
        WorkspaceJob job = new WorkspaceJob(Messages.FirstStart_job) {
            @Override
            public IStatus runInWorkspace(IProgressMonitor monitor) throws CoreException {
                IFile pattern = ExampleProject.create(root, monitor);
                preferences.putBoolean(DONE, true);
                try {
                    preferences.flush();
                } catch (BackingStoreException unwritable) {
                    return Status.warning(Messages.FirstStart_notRemembered, unwritable);
                }
                IWorkbench workbench = PlatformUI.getWorkbench();
                workbench.getDisplay().asyncExec(() -> open(workbench, pattern));
                return Status.OK_STATUS;
            }
        };
        job.setRule(root);
        job.schedule();
    }

    private static void open(IWorkbench workbench, IFile pattern) {
        IWorkbenchWindow window = workbench.getActiveWorkbenchWindow();
        if (window != null && window.getActivePage() != null) {
            makeRoom(window.getShell());
            try {
                IDE.openEditor(window.getActivePage(), pattern);
            } catch (PartInitException failed) {
                ILog.of(FirstStart.class).log(failed.getStatus());
            }
        }
    }

    /**
     * The platform's first window is smaller than a grid of seven sizes; afterwards the size is the person's choice.
     */
    private static void makeRoom(Shell shell) {
        Rectangle screen = shell.getMonitor().getClientArea();
        if (!shell.getMaximized()) {
            int width = Math.min(screen.width, ROOMY.x);
            int height = Math.min(screen.height, ROOMY.y);
            shell.setBounds(screen.x + (screen.width - width) / 2, screen.y + (screen.height - height) / 2, width,
                    height);
        }
    }
}
