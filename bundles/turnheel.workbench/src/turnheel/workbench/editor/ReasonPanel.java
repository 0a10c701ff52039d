package turnheel.workbench.editor;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.forms.widgets.FormToolkit;

/**
 * Under the grid: why the selected cell is what it is, or why something was not taken. The text can be selected and
 * copied, and is there for those who use no mouse and see no tooltip.
 */
final class ReasonPanel {

    private static final int LINES = 4;

    private final Label icon;
    private final Text text;

    ReasonPanel(Composite parent, FormToolkit toolkit) {
        Composite panel = toolkit.createComposite(parent);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(6, 0).applyTo(panel);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(panel);
        icon = toolkit.createLabel(panel, ""); //$NON-NLS-1$
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.BEGINNING).exclude(true).applyTo(icon);
        text = new Text(panel, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL);
        toolkit.adapt(text, true, false);
        GridDataFactory.fillDefaults().grab(true, false).hint(200, LINES * text.getLineHeight()).applyTo(text);
    }

    void showReason(String reason) {
        show(reason, false);
    }

    void showRefusal(String refusal) {
        show(refusal, true);
    }

    private void show(String shown, boolean isError) {
        icon.setImage(isError ? Dialog.getImage(Dialog.DLG_IMG_MESSAGE_ERROR) : null);
        icon.setVisible(isError);
        ((GridData) icon.getLayoutData()).exclude = !isError;
        text.setText(shown);
        text.getParent().layout();
    }

    String text() {
        return text.getText();
    }
}
