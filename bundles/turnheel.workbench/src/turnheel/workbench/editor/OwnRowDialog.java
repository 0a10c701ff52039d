package turnheel.workbench.editor;

import java.util.Collection;
import java.util.Optional;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

import turnheel.engine.design.OwnRow;
import turnheel.engine.formula.FormulaWords;
import turnheel.engine.formula.OwnFormula;
import turnheel.engine.formula.Reading;
import turnheel.engine.term.Key;

/**
 * Asks for name, label and formula of an own row. A formula that cannot be read yet can be kept: what is wrong with it
 * is said here, and as a query afterwards.
 */
final class OwnRowDialog extends Dialog {

    private static final String PREFIX = "own."; //$NON-NLS-1$
    private static final int WIDTH = 420;

    private final String title;
    private final OwnRow before;
    private final Collection<Key> taken;
    private Text name;
    private Text label;
    private Text formula;
    private Label message;
    private OwnRow row;

    private OwnRowDialog(Shell shell, String title, OwnRow before, Collection<Key> taken) {
        super(shell);
        this.title = title;
        this.before = before;
        this.taken = taken;
    }

    /**
     * The row as a person wants it; empty when the dialog was given up.
     *
     * @param before what the fields start with; null for a new row
     * @param taken the keys of the other rows
     */
    static Optional<OwnRow> ask(Shell shell, String title, OwnRow before, Collection<Key> taken) {
        OwnRowDialog dialog = new OwnRowDialog(shell, title, before, taken);
        return dialog.open() == Window.OK ? Optional.of(dialog.row) : Optional.empty();
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(title);
    }

    @Override
    protected boolean isResizable() {
        return true;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        Composite fields = new Composite(area, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).applyTo(fields);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(fields);
        name = field(fields, Messages.OwnRowDialog_name, Messages.OwnRowDialog_nameHint,
                before == null ? "" : before.key().name().substring(PREFIX.length())); //$NON-NLS-1$
        label = field(fields, Messages.OwnRowDialog_label, "", //$NON-NLS-1$
                before == null ? "" : before.label()); //$NON-NLS-1$
        formula = field(fields, Messages.OwnRowDialog_formula, Messages.OwnRowDialog_formulaHint,
                before == null ? "" : before.formula()); //$NON-NLS-1$
        message = new Label(fields, SWT.WRAP);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, true)
                .hint(WIDTH, message.computeSize(SWT.DEFAULT, SWT.DEFAULT).y * 3).applyTo(message);
        return area;
    }

    private Text field(Composite parent, String caption, String hint, String text) {
        new Label(parent, SWT.NONE).setText(caption);
        Text field = new Text(parent, SWT.SINGLE | SWT.BORDER);
        field.setText(text);
        field.setToolTipText(hint);
        field.setMessage(hint);
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(field);
        field.addModifyListener(event -> validate());
        return field;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        super.createButtonsForButtonBar(parent);
        validate();
    }

    private void validate() {
        String objection = objection();
        message.setText(objection != null ? objection : remark());
        getButton(IDialogConstants.OK_ID).setEnabled(objection == null && !name.getText().isBlank());
    }

    /** Why the row cannot be taken; null when it can. */
    private String objection() {
        String key = PREFIX + name.getText().strip();
        if (name.getText().isBlank()) {
            return ""; //$NON-NLS-1$
        }
        if (!Key.isKey(key)) {
            return Messages.OwnRowDialog_noName;
        }
        if (label.getText().strip().length() > OwnRow.LONGEST_LABEL) {
            return NLS.bind(Messages.OwnRowDialog_tooLong_0, OwnRow.LONGEST_LABEL);
        }
        OwnRow asked = new OwnRow(new Key(key), label.getText(), formula.getText());
        return taken.stream().anyMatch(asked::sharesNameWith)
                ? NLS.bind(Messages.OwnRowDialog_taken_0, name.getText().strip()) : null;
    }

    /** What is to be said of the formula, which may be kept all the same. */
    private String remark() {
        return OwnFormula.read(formula.getText()) instanceof Reading.Unread unread ? FormulaWords.sentence(unread)
                : Messages.OwnRowDialog_formulaHint;
    }

    @Override
    protected void okPressed() {
        row = new OwnRow(new Key(PREFIX + name.getText().strip()), label.getText(), formula.getText());
        super.okPressed();
    }
}
