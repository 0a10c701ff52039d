package turnheel.workbench.editor;

import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.forms.IManagedForm;
import org.eclipse.ui.forms.editor.FormPage;
import org.eclipse.ui.forms.widgets.FormToolkit;

import turnheel.engine.term.Key;
import turnheel.workbench.grid.GradingGrid;
import turnheel.workbench.grid.GridFeedback;

/** The grid with its legend, and under it the reason of the selected cell. */
final class GradingPage extends FormPage implements DocumentPage {

    static final String ID = "turnheel.workbench.gradingPage"; //$NON-NLS-1$

    private final PatternEditor editor;
    private GradingGrid grid;
    private ReasonPanel reason;

    GradingPage(PatternEditor editor) {
        super(editor, ID, Messages.GradingPage_title);
        this.editor = editor;
    }

    @Override
    protected void createFormContent(IManagedForm form) {
        FormToolkit toolkit = form.getToolkit();
        toolkit.decorateFormHeading(form.getForm().getForm());
        Composite body = form.getForm().getBody();
        GridLayoutFactory.fillDefaults().margins(12, 8).spacing(0, 8).applyTo(body);
        grid = new GradingGrid(body, editor.document(), new Feedback());
        GridDataFactory.fillDefaults().grab(true, true).hint(300, 120).applyTo(grid.control());
        Label legend = toolkit.createLabel(body, Messages.GradingPage_legend, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(300, SWT.DEFAULT).applyTo(legend);
        reason = new ReasonPanel(body, toolkit);
        grid.addSelectionListener(this::showReason);
        grid.addSelectionListener(() -> editor.selection().select(grid.selectedPlace()));
        new GridHandlers(getSite(), grid);
        showState();
        showReason();
    }

    @Override
    public void setFocus() {
        if (grid != null) {
            grid.control().setFocus();
        }
    }

    /** Selects the cell; see {@link GradingGrid#reveal}. */
    boolean reveal(Key key, String size) {
        return grid != null && grid.reveal(key, size);
    }

    GradingGrid grid() {
        return grid;
    }

    String reason() {
        return reason.text();
    }

    @Override
    public void documentChanged() {
        if (grid != null) {
            showState();
        }
    }

    private void showState() {
        getManagedForm().getForm().setText(editor.heading());
        var obstacles = editor.document().obstacles();
        getManagedForm().getForm().setMessage(obstacles.isEmpty() ? null
                : NLS.bind(Messages.GradingPage_stale_0, String.join(" ", obstacles)), //$NON-NLS-1$
                obstacles.isEmpty() ? IMessageProvider.NONE : IMessageProvider.ERROR);
    }

    private void showReason() {
        var lines = grid.selectedReason();
        reason.showReason(lines.isEmpty() ? Messages.GradingPage_hint : String.join("\n", lines)); //$NON-NLS-1$
    }

    @Override
    public boolean hasPending() {
        return grid != null && grid.isTyping();
    }

    @Override
    public void commitPending() {
        if (grid != null) {
            grid.takeTyped();
        }
    }

    @Override
    public void resetPending() {
        if (grid != null) {
            grid.giveUpTyped();
        }
    }

    private final class Feedback implements GridFeedback {

        private String refusal = ""; //$NON-NLS-1$

        @Override
        public void refused(String why) {
            refusal = why;
            say(why);
        }

        @Override
        public void typing() {
            editor.editorDirtyStateChanged();
        }

        @Override
        public void givenUp(String text) {
            say(NLS.bind(Messages.GradingPage_givenUp_0_1, text, refusal));
        }

        @Override
        public void clear() {
            if (reason != null) {
                statusLine().setErrorMessage(null);
                showReason();
            }
        }

        private void say(String problem) {
            statusLine().setErrorMessage(problem);
            reason.showRefusal(problem);
        }

        private IStatusLineManager statusLine() {
            return getEditor().getEditorSite().getActionBars().getStatusLineManager();
        }
    }
}
