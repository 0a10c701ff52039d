package turnheel.install.probe;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IStartup;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;

/**
 * Opens the pattern named by the system property {@value #PATTERN} as soon as the workbench is up, turns to the page
 * with the grid, writes a picture of the grid to the file named by {@value #PICTURE} and closes the workbench. When
 * there is no grid to see, the reason stands in a file of the picture's name with {@code .txt} behind it.
 */
public final class GridProbe implements IStartup {

    static final String PATTERN = "turnheel.probe.pattern";
    static final String PICTURE = "turnheel.probe.picture";

    private static final String GRID_CLASS = "NatTable";
    private static final String GRID_PAGE = "Grading";
    private static final int LOOK_AGAIN_MS = 250;
    /** A machine under load takes some seconds to open its first editor; a missing grid is certain after this. */
    private static final int LOOKS = 160;
    /** The grid is painted some events after it was laid out. */
    private static final int SETTLE_MS = 1500;

    @Override
    public void earlyStartup() {
        if (System.getProperty(PATTERN) == null) {
            return;
        }
        IWorkbench workbench = PlatformUI.getWorkbench();
        workbench.getDisplay().asyncExec(() -> reporting(() -> {
            open(workbench);
            look(workbench.getDisplay(), LOOKS);
        }));
    }

    private static void open(IWorkbench workbench) throws CoreException, IOException {
        Path pattern = Path.of(System.getProperty(PATTERN));
        IProject project = ResourcesPlugin.getWorkspace().getRoot().getProject("Visitor");
        project.create(null);
        project.open(null);
        IFile file = project.getFile(pattern.getFileName().toString());
        try (InputStream content = Files.newInputStream(pattern)) {
            file.create(content, true, null);
        }
        IWorkbenchWindow window = workbench.getActiveWorkbenchWindow();
        // By hand: a virtual display has no window manager that would maximise a window.
        window.getShell().setBounds(workbench.getDisplay().getPrimaryMonitor().getClientArea());
        IDE.openEditor(window.getActivePage(), file);
    }

    private static void look(Display display, int looksLeft) {
        Optional<Control> grid = inEveryShell(display);
        if (grid.isPresent()) {
            display.timerExec(SETTLE_MS, () -> reporting(() -> {
                photograph(grid.get());
                close();
            }));
        } else if (looksLeft == 0) {
            throw new IllegalStateException("no visible " + GRID_CLASS + " in any window");
        } else {
            display.timerExec(LOOK_AGAIN_MS, () -> reporting(() -> look(display, looksLeft - 1)));
        }
    }

    private static Optional<Control> inEveryShell(Display display) {
        for (Shell shell : display.getShells()) {
            Optional<Control> grid = gridBelow(shell);
            if (grid.isPresent()) {
                return grid;
            }
        }
        return Optional.empty();
    }

    /** The visible grid at or below a control. Turns to the grid's page on the way, when that is hidden. */
    private static Optional<Control> gridBelow(Control control) {
        if (control.getClass().getSimpleName().equals(GRID_CLASS)) {
            Point size = control.getSize();
            return control.isVisible() && size.x > 0 && size.y > 0 ? Optional.of(control) : Optional.empty();
        }
        if (control instanceof CTabFolder pages) {
            turnToGrid(pages);
        }
        if (control instanceof Composite composite) {
            for (Control child : composite.getChildren()) {
                Optional<Control> grid = gridBelow(child);
                if (grid.isPresent()) {
                    return grid;
                }
            }
        }
        return Optional.empty();
    }

    private static void turnToGrid(CTabFolder pages) {
        for (CTabItem page : pages.getItems()) {
            if (page.getText().equals(GRID_PAGE) && pages.getSelection() != page) {
                pages.setSelection(page);
                // A selection by program tells nobody, so that the editor would not fill the page.
                Event selection = new Event();
                selection.item = page;
                pages.notifyListeners(SWT.Selection, selection);
                return;
            }
        }
    }

    private static void photograph(Control grid) {
        Point size = grid.getSize();
        Image picture = new Image(grid.getDisplay(), size.x, size.y);
        GC gc = new GC(grid);
        try {
            gc.copyArea(picture, 0, 0);
            ImageLoader loader = new ImageLoader();
            loader.data = new ImageData[] {picture.getImageData()};
            loader.save(System.getProperty(PICTURE), SWT.IMAGE_PNG);
        } finally {
            gc.dispose();
            picture.dispose();
        }
    }

    private static void close() {
        PlatformUI.getWorkbench().close();
    }

    /** A step that may fail in any way; whatever it throws is written down where the test looks. */
    @FunctionalInterface
    private interface Step {
        void take() throws CoreException, IOException;
    }

    private static void reporting(Step step) {
        try {
            step.take();
        } catch (CoreException | IOException | RuntimeException failure) {
            StringWriter trace = new StringWriter();
            failure.printStackTrace(new PrintWriter(trace));
            try {
                Files.writeString(Path.of(System.getProperty(PICTURE) + ".txt"), trace.toString());
            } catch (IOException unwritable) {
                unwritable.addSuppressed(failure);
                throw new UncheckedIOException(unwritable);
            } finally {
                close();
            }
        }
    }
}
