package turnheel.product;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.Collections;
import java.util.List;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IWorkspaceRoot;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.osgi.util.NLS;
import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;

/** The example patterns of an invented studio, as a project of the workspace. */
final class ExampleProject {

    private static final String NAME = "Lantern Quay"; //$NON-NLS-1$
    private static final String FOLDER = "examples/lantern-quay"; //$NON-NLS-1$
    private static final String PATTERNS = "*.turnheel"; //$NON-NLS-1$
    private static final String FIRST = "gullwick-stairs.turnheel"; //$NON-NLS-1$

    private ExampleProject() {
    }

    /**
     * Makes the project with all its patterns.
     *
     * @return the pattern to begin with
     * @throws CoreException when the workspace refuses, or the build has left the examples out
     */
    static IFile create(IWorkspaceRoot root, IProgressMonitor monitor) throws CoreException {
        Bundle bundle = FrameworkUtil.getBundle(ExampleProject.class);
        List<URL> patterns = Collections.list(bundle.findEntries(FOLDER, PATTERNS, false));
        SubMonitor steps = SubMonitor.convert(monitor, patterns.size() + 2);
        IProject project = root.getProject(NAME);
        project.create(steps.split(1));
        project.open(steps.split(1));
        for (URL pattern : patterns) {
            copy(pattern, project, steps.split(1));
        }
        return project.getFile(FIRST);
    }

    private static void copy(URL pattern, IProject project, IProgressMonitor monitor) throws CoreException {
        String name = pattern.getPath().substring(pattern.getPath().lastIndexOf('/') + 1);
        try (InputStream content = pattern.openStream()) {
            project.getFile(name).create(content, false, monitor);
        } catch (IOException unreadable) {
            throw new CoreException(Status.error(NLS.bind(Messages.ExampleProject_unreadable_0, name), unreadable));
        }
    }
}
