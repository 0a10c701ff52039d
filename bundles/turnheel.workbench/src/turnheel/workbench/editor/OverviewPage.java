package turnheel.workbench.editor;

import java.util.List;

import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.forms.IManagedForm;
import org.eclipse.ui.forms.IMessageManager;
import org.eclipse.ui.forms.SectionPart;
import org.eclipse.ui.forms.editor.FormPage;

import turnheel.workbench.document.GradedDocument;

/** The form page: what the designer decided about the pattern as a whole, and what it comes to. */
final class OverviewPage extends FormPage implements DocumentPage {

    static final String ID = "turnheel.workbench.overviewPage"; //$NON-NLS-1$

    private final PatternEditor editor;
    private List<DocumentSection> sections = List.of();

    OverviewPage(PatternEditor editor) {
        super(editor, ID, Messages.OverviewPage_title);
        this.editor = editor;
    }

    @Override
    protected void createFormContent(IManagedForm form) {
        GradedDocument document = editor.document();
        form.getToolkit().decorateFormHeading(form.getForm().getForm());
        Composite body = form.getForm().getBody();
        GridLayoutFactory.fillDefaults().numColumns(2).equalWidth(true).margins(12, 12).spacing(24, 16).applyTo(body);
        Composite left = column(form, body);
        Composite right = column(form, body);
        sections = List.of(place(new IdentitySection(left, form, document), false),
                place(new PartsSection(left, form, document), false),
                place(new SizesSection(right, form, document), false),
                place(new OwnRowsSection(right, form, document), false),
                place(new SummarySection(right, form, document, editor::show), true));
        showState();
    }

    private static Composite column(IManagedForm form, Composite body) {
        Composite column = form.getToolkit().createComposite(body);
        GridLayoutFactory.fillDefaults().spacing(0, 16).applyTo(column);
        GridDataFactory.fillDefaults().grab(true, true).hint(300, SWT.DEFAULT).applyTo(column);
        return column;
    }

    private static <S extends SectionPart> S place(S section, boolean takesTheRest) {
        GridDataFactory.fillDefaults().grab(true, takesTheRest).align(SWT.FILL, SWT.BEGINNING)
                .applyTo(section.getSection());
        return section;
    }

    @Override
    public void documentChanged() {
        sections.forEach(SectionPart::refresh);
        if (getManagedForm() != null) {
            showState();
            getManagedForm().dirtyStateChanged();
        }
    }

    private void showState() {
        getManagedForm().getForm().setText(editor.heading());
        IMessageManager messages = getManagedForm().getMessageManager();
        messages.removeMessage(GradedDocument.class);
        List<String> obstacles = editor.document().obstacles();
        if (!obstacles.isEmpty()) {
            messages.addMessage(GradedDocument.class, String.join(" ", obstacles), null, //$NON-NLS-1$
                    IMessageProvider.ERROR);
        }
    }

    @Override
    public boolean hasPending() {
        return sections.stream().anyMatch(DocumentSection::isDirty);
    }

    @Override
    public void commitPending() {
        sections.forEach(section -> section.commit(false));
    }

    @Override
    public void resetPending() {
        sections.forEach(DocumentSection::resetPending);
    }
}
