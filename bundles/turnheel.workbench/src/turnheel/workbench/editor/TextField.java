package turnheel.workbench.editor;

import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.fieldassist.ControlDecoration;
import org.eclipse.jface.fieldassist.FieldDecorationRegistry;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.FocusListener;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.forms.IMessageManager;

/**
 * A line of text in a form. It is taken over on Enter, on leaving the field and before saving; Escape gives it up. A
 * text that the document refuses stays in the field with the reason beside it.
 */
final class TextField implements DocumentField {

    private final Text text;
    private final String label;
    private final Supplier<String> shown;
    private final Consumer<String> take;
    private final IMessageManager messages;
    private final Runnable pendingChanged;
    private final ControlDecoration mark;
    private boolean pending;
    private boolean refreshing;

    /**
     * @param label what the field is called where its text is refused
     * @param shown the document's value
     * @param take puts a text into the document; throws IllegalArgumentException with the reason when it cannot
     * @param pendingChanged told when the field begins or ends to differ from the document
     */
    TextField(Text text, String label, Supplier<String> shown, Consumer<String> take, IMessageManager messages,
            Runnable pendingChanged) {
        this.text = text;
        this.label = label;
        this.shown = shown;
        this.take = take;
        this.messages = messages;
        this.pendingChanged = pendingChanged;
        mark = new ControlDecoration(text, SWT.LEFT | SWT.TOP);
        mark.setImage(FieldDecorationRegistry.getDefault().getFieldDecoration(FieldDecorationRegistry.DEC_ERROR)
                .getImage());
        mark.hide();
        text.addModifyListener(event -> typed());
        text.addFocusListener(FocusListener.focusLostAdapter(event -> commit()));
        text.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> commit()));
        text.addKeyListener(KeyListener.keyPressedAdapter(this::keyPressed));
        refresh();
    }

    private void keyPressed(KeyEvent event) {
        if (event.keyCode == SWT.ESC && pending) {
            reset();
            event.doit = false;
        }
    }

    private void typed() {
        if (!refreshing) {
            setPending(!text.getText().equals(shown.get()));
            if (!pending) {
                clear();
            }
        }
    }

    private void clear() {
        messages.removeMessage(this);
        mark.hide();
    }

    private void setPending(boolean isPending) {
        if (pending != isPending) {
            pending = isPending;
            pendingChanged.run();
        }
    }

    @Override
    public boolean isPending() {
        return pending;
    }

    @Override
    public boolean commit() {
        if (!pending) {
            return true;
        }
        try {
            take.accept(text.getText());
        } catch (IllegalArgumentException refused) {
            String reason = NLS.bind(Messages.TextField_refused_0_1, label, refused.getMessage());
            // Without the control: the form's head then shows the sentence instead of counting errors.
            messages.addMessage(this, reason, null, IMessageProvider.ERROR);
            mark.setDescriptionText(reason);
            mark.show();
            return false;
        }
        clear();
        setPending(false);
        refresh();
        return true;
    }

    @Override
    public void reset() {
        clear();
        setPending(false);
        refresh();
    }

    @Override
    public void refresh() {
        if (!pending && !text.getText().equals(shown.get())) {
            refreshing = true;
            text.setText(shown.get());
            refreshing = false;
        }
    }
}
