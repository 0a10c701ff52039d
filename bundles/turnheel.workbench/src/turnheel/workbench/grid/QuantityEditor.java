package turnheel.workbench.grid;

import org.eclipse.nebula.widgets.nattable.config.IConfigRegistry;
import org.eclipse.nebula.widgets.nattable.edit.EditConfigAttributes;
import org.eclipse.nebula.widgets.nattable.edit.config.RenderErrorHandling;
import org.eclipse.nebula.widgets.nattable.edit.editor.AbstractEditErrorHandler;
import org.eclipse.nebula.widgets.nattable.edit.editor.ICellEditor;
import org.eclipse.nebula.widgets.nattable.edit.editor.IEditErrorHandler;
import org.eclipse.nebula.widgets.nattable.edit.editor.TextCellEditor;
import org.eclipse.nebula.widgets.nattable.selection.SelectionLayer.MoveDirectionEnum;
import org.eclipse.nebula.widgets.nattable.selection.command.MoveSelectionCommand;
import org.eclipse.nebula.widgets.nattable.style.DisplayMode;
import org.eclipse.swt.events.FocusListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;

/**
 * The text field in a cell. Enter, Tab, the arrows up and down and a click on another cell take the text; a text that
 * cannot be taken stays, with the reason shown, until it is corrected or Escape gives it up. Who goes on to another
 * part of the window gives it up as well, and is told so: nobody is held captive in a cell.
 */
final class QuantityEditor extends TextCellEditor {

    private final GridFeedback feedback;
    private final RefusedText refusedText = new RefusedText();
    private String opened;

    /** Shows on the field and in words that its text was not taken. */
    private final class RefusedText extends RenderErrorHandling {

        @Override
        public void displayError(ICellEditor cellEditor, IConfigRegistry registry, Exception refused) {
            super.displayError(cellEditor, registry, refused);
            feedback.refused(refused.getMessage());
        }

        @Override
        public void removeError(ICellEditor cellEditor) {
            super.removeError(cellEditor);
            feedback.clear();
        }
    }

    QuantityEditor(GridFeedback feedback) {
        super(true, true);
        this.feedback = feedback;
        focusListener = FocusListener.focusLostAdapter(event -> leave());
        setInputConversionErrorHandler(new AbstractEditErrorHandler(null) {

            @Override
            public void displayError(ICellEditor cellEditor, IConfigRegistry registry, Exception unfinished) {
                // While somebody types most texts are no quantities yet: said when it is to be taken, not before.
            }

            @Override
            public void removeError(ICellEditor cellEditor) {
                refusedText.removeError(cellEditor);
            }
        });
    }

    /** Shows that the text of this editor was refused. */
    IEditErrorHandler errors() {
        return refusedText;
    }

    @Override
    protected Control activateCell(Composite parent, Object originalCanonicalValue) {
        feedback.clear();
        refusedText.setErrorStyle(configRegistry.getConfigAttribute(EditConfigAttributes.CONVERSION_ERROR_STYLE,
                DisplayMode.EDIT, labelStack));
        Control control = super.activateCell(parent, originalCanonicalValue);
        // Opened by typing, even the text that stood there before is a decision.
        opened = originalCanonicalValue instanceof Character ? null : getEditorValue();
        getEditorControl().addModifyListener(event -> feedback.typing());
        feedback.typing();
        return control;
    }

    /** Whether the text is another one than that which the editor was opened with. */
    boolean isTyping() {
        return !isClosed() && !getEditorValue().equals(opened);
    }

    @Override
    public void close() {
        super.close();
        feedback.typing();
    }

    private void leave() {
        if (!commit(MoveDirectionEnum.NONE)) {
            // Saving and switching windows take the focus for a moment: only a person who went on has left.
            Text field = getEditorControl();
            field.getDisplay().asyncExec(() -> giveUpIfLeft(field));
        }
    }

    private void giveUpIfLeft(Text field) {
        if (!field.isDisposed()) {
            Control focus = field.getDisplay().getFocusControl();
            if (focus != null && focus != field) {
                String given = field.getText();
                close();
                feedback.givenUp(given);
            }
        }
    }

    @Override
    public boolean commit(MoveDirectionEnum direction, boolean closeAfterCommit, boolean skipValidation) {
        if (!isClosed() && !isTyping()) {
            // Looked at and left: neither an edit nor an entry that pins a rule's value.
            close();
            if (direction != MoveDirectionEnum.NONE) {
                layerCell.getLayer().doCommand(new MoveSelectionCommand(direction, false, false));
            }
            return true;
        }
        return super.commit(direction, closeAfterCommit, skipValidation);
    }
}
