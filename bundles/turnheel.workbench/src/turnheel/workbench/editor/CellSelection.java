package turnheel.workbench.editor;

import java.util.Optional;

import org.eclipse.core.runtime.ListenerList;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;

import turnheel.workbench.document.CellPlace;

/** The selected cell of an editor as the workbench's selection; every page of the editor tells of the same one. */
final class CellSelection implements ISelectionProvider {

    private final ListenerList<ISelectionChangedListener> listeners = new ListenerList<>();
    private IStructuredSelection selection = StructuredSelection.EMPTY;

    /** The selected cell; empty when none is. */
    Optional<CellPlace> place() {
        return Optional.ofNullable((CellPlace) selection.getFirstElement());
    }

    /** The cell is selected from now on, or none. */
    void select(Optional<CellPlace> place) {
        setSelection(place.<ISelection>map(StructuredSelection::new).orElse(StructuredSelection.EMPTY));
    }

    @Override
    public ISelection getSelection() {
        return selection;
    }

    /** Anything but a cell is no selection here. */
    @Override
    public void setSelection(ISelection selected) {
        IStructuredSelection next = selected instanceof IStructuredSelection structured
                && structured.getFirstElement() instanceof CellPlace ? structured : StructuredSelection.EMPTY;
        if (!next.equals(selection)) {
            selection = next;
            SelectionChangedEvent event = new SelectionChangedEvent(this, selection);
            listeners.forEach(listener -> listener.selectionChanged(event));
        }
    }

    @Override
    public void addSelectionChangedListener(ISelectionChangedListener listener) {
        listeners.add(listener);
    }

    @Override
    public void removeSelectionChangedListener(ISelectionChangedListener listener) {
        listeners.remove(listener);
    }
}
