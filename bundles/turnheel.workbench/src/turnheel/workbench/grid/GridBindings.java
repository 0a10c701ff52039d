package turnheel.workbench.grid;

import org.eclipse.nebula.widgets.nattable.config.AbstractUiBindingConfiguration;
import org.eclipse.nebula.widgets.nattable.grid.GridRegion;
import org.eclipse.nebula.widgets.nattable.ui.binding.UiBindingRegistry;
import org.eclipse.nebula.widgets.nattable.ui.matcher.IKeyEventMatcher;
import org.eclipse.nebula.widgets.nattable.ui.matcher.KeyEventMatcher;
import org.eclipse.nebula.widgets.nattable.ui.matcher.LetterOrDigitKeyEventMatcher;
import org.eclipse.nebula.widgets.nattable.ui.matcher.MouseEventMatcher;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

/**
 * What keys and clicks do beyond moving the selection, which the table brings along. Typing, F2 and a double click
 * edit; Delete drops an entry; Space, Enter and a click open and close a heading; Ctrl+Tab leaves the table, since Tab
 * moves in it.
 */
final class GridBindings extends AbstractUiBindingConfiguration {

    /** What there is to do; the grid does it. */
    interface Actions {

        /** Opens the editor in the selected cell; with {@code typed} as its text unless null. */
        void edit(Character typed);

        void drop();

        boolean isHeadingSelected();

        void toggleSelected();

        boolean isHeading(int row);

        void toggle(int row);
    }

    private final Actions actions;

    GridBindings(Actions actions) {
        this.actions = actions;
    }

    @Override
    public void configureUiBindings(UiBindingRegistry bindings) {
        bindings.registerKeyBinding(key(SWT.F2), (table, event) -> actions.edit(null));
        bindings.registerKeyBinding(GridBindings::isTyped, (table, event) -> actions.edit(event.character));
        bindings.registerDoubleClickBinding(MouseEventMatcher.bodyLeftClick(SWT.NONE),
                (table, event) -> actions.edit(null));

        bindings.registerKeyBinding(key(SWT.DEL), (table, event) -> actions.drop());
        bindings.registerKeyBinding(key(SWT.BS), (table, event) -> actions.drop());

        bindings.registerFirstKeyBinding(onHeading(SWT.CR), (table, event) -> actions.toggleSelected());
        bindings.registerFirstKeyBinding(onHeading(SWT.KEYPAD_CR), (table, event) -> actions.toggleSelected());
        bindings.registerFirstKeyBinding(onHeading(' '), (table, event) -> actions.toggleSelected());
        bindings.registerFirstSingleClickBinding(
                (table, event, regions) -> regions != null && regions.hasLabel(GridRegion.ROW_HEADER)
                        && actions.isHeading(table.getRowIndexByPosition(table.getRowPositionByY(event.y))),
                (table, event) -> actions.toggle(table.getRowIndexByPosition(table.getRowPositionByY(event.y))));

        for (int modifiers : new int[] { SWT.MOD1, SWT.MOD1 | SWT.MOD2 }) {
            KeyEventMatcher leave = new KeyEventMatcher(modifiers, SWT.TAB);
            bindings.unregisterKeyBinding(leave);
            bindings.registerKeyBinding(leave, (table, event) -> table.traverse(
                    (modifiers & SWT.MOD2) == 0 ? SWT.TRAVERSE_TAB_NEXT : SWT.TRAVERSE_TAB_PREVIOUS));
        }
    }

    /** A key without modifiers; whether a mouse button is down as well is no matter. */
    private static IKeyEventMatcher key(int keyCode) {
        return event -> modifiers(event) == SWT.NONE && event.keyCode == keyCode;
    }

    private IKeyEventMatcher onHeading(int keyCode) {
        return event -> key(keyCode).matches(event) && actions.isHeadingSelected();
    }

    /** A character that a text can begin with, with or without Shift or AltGr. */
    private static boolean isTyped(KeyEvent event) {
        int modifiers = modifiers(event);
        return LetterOrDigitKeyEventMatcher.isLetterOrDigit(event.character)
                && (modifiers == SWT.NONE || modifiers == SWT.MOD2 || modifiers == (SWT.MOD1 | SWT.MOD3));
    }

    private static int modifiers(KeyEvent event) {
        return event.stateMask & SWT.MODIFIER_MASK;
    }
}
