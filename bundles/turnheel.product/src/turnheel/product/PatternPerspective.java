package turnheel.product;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import org.eclipse.ui.navigator.resources.ProjectExplorer;

import turnheel.workbench.view.WhyView;

/** Patterns at the left, the editor in the middle, queries below it. */
public final class PatternPerspective implements IPerspectiveFactory {

    static final String ID = "turnheel.product.perspective"; //$NON-NLS-1$

    private static final float PATTERNS = 0.2f;
    private static final float EDITOR = 0.78f;

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.addView(ProjectExplorer.VIEW_ID, IPageLayout.LEFT, PATTERNS, IPageLayout.ID_EDITOR_AREA);
        IFolderLayout below = layout.createFolder("turnheel.product.below", IPageLayout.BOTTOM, EDITOR, //$NON-NLS-1$
                IPageLayout.ID_EDITOR_AREA);
        below.addView(IPageLayout.ID_PROBLEM_VIEW);
        below.addView(WhyView.ID);
        layout.addShowViewShortcut(WhyView.ID);
        layout.addShowViewShortcut(ProjectExplorer.VIEW_ID);
        layout.addShowViewShortcut(IPageLayout.ID_PROBLEM_VIEW);
        layout.addPerspectiveShortcut(ID);
    }
}
