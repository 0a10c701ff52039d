package turnheel.workbench.editor;

import org.eclipse.jface.action.LegacyActionTools;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.forms.IManagedForm;
import org.eclipse.ui.forms.editor.FormPage;
import org.eclipse.ui.forms.events.IHyperlinkListener;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.Hyperlink;

import turnheel.model.DocumentException;
import turnheel.model.DocumentProblem;

/**
 * In place of all other pages when the file cannot be read: what is wrong, where, and what to do. The file is left as
 * it is.
 */
final class DamagedPage extends FormPage {

    static final String ID = "turnheel.workbench.damagedPage"; //$NON-NLS-1$

    private final PatternEditor editor;
    private final DocumentException damage;

    DamagedPage(PatternEditor editor, DocumentException damage) {
        super(editor, ID, Messages.DamagedPage_title);
        this.editor = editor;
        this.damage = damage;
    }

    @Override
    protected void createFormContent(IManagedForm form) {
        FormToolkit toolkit = form.getToolkit();
        form.getForm().setText(NLS.bind(Messages.DamagedPage_heading_0, editor.store().name()));
        form.getForm().setMessage(Messages.DamagedPage_unchanged, IMessageProvider.ERROR);
        toolkit.decorateFormHeading(form.getForm().getForm());
        Composite body = form.getForm().getBody();
        GridLayoutFactory.fillDefaults().margins(12, 12).spacing(0, 10).applyTo(body);
        for (DocumentProblem problem : damage.problems()) {
            Label label = toolkit.createLabel(body, LegacyActionTools.escapeMnemonics(sentence(problem)), SWT.WRAP);
            GridDataFactory.fillDefaults().grab(true, false).hint(300, SWT.DEFAULT).applyTo(label);
        }
        editor.textEditor().ifPresent(open -> link(toolkit, body, Messages.DamagedPage_openText, open));
        link(toolkit, body, Messages.DamagedPage_readAgain, editor::readAgain);
    }

    private static String sentence(DocumentProblem problem) {
        return problem.line() == 0 ? problem.sentence()
                : NLS.bind(Messages.DamagedPage_problem_0_1_2,
                        new Object[] { problem.line(), problem.column(), problem.sentence() });
    }

    private static void link(FormToolkit toolkit, Composite body, String text, Runnable action) {
        Hyperlink link = toolkit.createHyperlink(body, text, SWT.NONE);
        link.addHyperlinkListener(IHyperlinkListener.linkActivatedAdapter(event -> action.run()));
    }
}
