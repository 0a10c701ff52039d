package turnheel.product;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IWorkspaceRoot;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

import turnheel.engine.checks.Checks;
import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.grading.Grader;
import turnheel.engine.query.Query;
import turnheel.engine.query.Severity;
import turnheel.model.Door;
import turnheel.model.PatternFiles;

class FirstStartTest {

    private final IWorkspaceRoot root = ResourcesPlugin.getWorkspace().getRoot();

    @AfterEach
    void deleteProjects() throws Exception {
        page().closeAllEditors(false);
        for (IProject project : root.getProjects()) {
            project.delete(true, true, null);
        }
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    @Test
    void doesNothingInAnotherProduct() {
        assertTrue(Platform.getProduct() == null || !"turnheel.product.turnheel".equals(Platform.getProduct().getId()));
        new FirstStart().earlyStartup();
        while (!Job.getJobManager().isIdle()) {
            Display.getCurrent().readAndDispatch();
        }
        assertEquals(0, root.getProjects().length);
    }

    @Test
    void everyExampleIsAPatternWithoutErrors() throws Exception {
        IFile first = ExampleProject.create(root, new NullProgressMonitor());
        List<IResource> patterns = Arrays.stream(first.getProject().members())
                .filter(member -> PatternFiles.EXTENSION.equals(member.getFileExtension())).toList();
        assertTrue(patterns.size() >= 2, patterns.toString());
        for (IResource pattern : patterns) {
            Design design = Door.design(PatternFiles.load(pattern.getLocation().toPath()));
            List<Query> errors = Checks.of(Grader.grade(design)).stream()
                    .filter(query -> query.severity() == Severity.ERROR).toList();
            assertEquals(List.of(), errors, pattern.getName());
        }
    }

    @Test
    void theFirstExampleIsToeUpAndOpensInThePatternEditor() throws Exception {
        IFile first = ExampleProject.create(root, new NullProgressMonitor());
        assertEquals(Direction.TOE_UP, Door.design(PatternFiles.load(first.getLocation().toPath())).direction());
        IEditorPart editor = IDE.openEditor(page(), first);
        assertEquals("turnheel.workbench.patternEditor", editor.getSite().getId());
    }

    @Test
    void thePerspectiveHasThePatternsAtTheLeftAndTheProblemsBelow() throws Exception {
        PlatformUI.getWorkbench().showPerspective(PatternPerspective.ID, page().getWorkbenchWindow());
        assertEquals(PatternPerspective.ID, page().getPerspective().getId());
        assertNotNull(page().findView("org.eclipse.ui.navigator.ProjectExplorer"));
        assertNotNull(page().findView(IPageLayout.ID_PROBLEM_VIEW));
        assertNull(page().findView(IPageLayout.ID_TASK_LIST));
    }
}
