package turnheel.workbench.view;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.part.ViewPart;

import turnheel.workbench.editor.PatternEditor;

/**
 * A view of the pattern that is edited: it follows the active pattern editor, its document and its selected cell, and
 * shows the last pattern on while another kind of editor is active. What changed while it was hidden is shown when it
 * comes up; many changes at once are shown once.
 */
public abstract class PatternView extends ViewPart {

    private final IPartListener2 parts = new EditorListener();
    private final Runnable follow = this::changed;
    private Optional<PatternEditor> followed = Optional.empty();
    private Composite area;
    private Composite content;
    private Label nothing;
    private boolean isStale;
    private boolean isScheduled;

    /** Makes the view's widgets; nothing is shown yet. */
    protected abstract void createContent(Composite parent);

    /** Shows what is edited now; called only while the view can be seen. */
    protected abstract void show(Subject subject);

    @Override
    public final void createPartControl(Composite parent) {
        area = new Composite(parent, SWT.NONE);
        area.setLayout(new StackLayout());
        nothing = new Label(area, SWT.WRAP | SWT.CENTER);
        nothing.setText(Messages.PatternView_nothing);
        content = new Composite(area, SWT.NONE);
        content.setLayout(new FillLayout());
        createContent(content);
        getSite().getPage().addPartListener(parts);
        follow(getSite().getPage().getActiveEditor());
        changed();
    }

    /** What is shown, or what would be; empty when no pattern is open or it was never whole enough to be graded. */
    protected final Optional<Subject> subject() {
        return followed.flatMap(editor -> editor.opened().flatMap(document -> document.snapshot()
                .map(snapshot -> new Subject(editor, document, snapshot, editor.selectedCell()))));
    }

    /** All of the view's widgets, for tests. */
    Composite area() {
        return area;
    }

    private void follow(IEditorPart active) {
        if (active instanceof PatternEditor editor && followed.filter(editor::equals).isEmpty()) {
            forget();
            followed = Optional.of(editor);
            editor.addListener(follow);
            changed();
        }
    }

    private void forget() {
        followed.ifPresent(editor -> editor.removeListener(follow));
        followed = Optional.empty();
    }

    private void changed() {
        isStale = true;
        if (!isScheduled && area != null && !area.isDisposed()) {
            isScheduled = true;
            area.getDisplay().asyncExec(() -> {
                isScheduled = false;
                showIfVisible();
            });
        }
    }

    private void showIfVisible() {
        if (isStale && !area.isDisposed() && getSite().getPage().isPartVisible(this)) {
            isStale = false;
            Optional<Subject> subject = subject();
            Control top = subject.isPresent() ? content : nothing;
            ((StackLayout) area.getLayout()).topControl = top;
            subject.ifPresent(this::show);
            area.layout();
        }
    }

    @Override
    public void dispose() {
        getSite().getPage().removePartListener(parts);
        forget();
        super.dispose();
    }

    private final class EditorListener implements IPartListener2 {

        @Override
        public void partActivated(IWorkbenchPartReference part) {
            if (part.getPart(false) instanceof IEditorPart editor) {
                follow(editor);
            }
        }

        @Override
        public void partBroughtToTop(IWorkbenchPartReference part) {
            partActivated(part);
        }

        @Override
        public void partVisible(IWorkbenchPartReference part) {
            if (part.getPart(false) == PatternView.this) {
                changed();
            }
        }

        @Override
        public void partClosed(IWorkbenchPartReference part) {
            if (followed.filter(editor -> editor == part.getPart(false)).isPresent()) {
                forget();
                follow(getSite().getPage().getActiveEditor());
                changed();
            }
        }
    }
}
