package turnheel.workbench.document;

import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.ListenerList;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.impl.ResourceImpl;
import org.eclipse.emf.edit.command.ChangeCommand;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.eclipse.emf.edit.provider.ReflectiveItemProviderAdapterFactory;
import org.eclipse.osgi.util.NLS;

import turnheel.model.DocumentException;
import turnheel.model.DocumentProblem;
import turnheel.model.Door;
import turnheel.model.pattern.Pattern;

/**
 * A pattern that is being edited, and its snapshot. Every edit is one command of one editing domain; after each of
 * them, and after undo and redo, all sizes are graded anew and the listeners told. A document that is no design at the
 * moment keeps the last snapshot that there was and says what stands in the way.
 *
 * <p>Belongs to one thread, the one of the user interface.
 */
public final class GradedDocument {

    private final BasicCommandStack commands = new BasicCommandStack();
    private final AdapterFactoryEditingDomain domain =
            new AdapterFactoryEditingDomain(new ReflectiveItemProviderAdapterFactory(), commands);
    private final ListenerList<Runnable> listeners = new ListenerList<>();
    private Pattern pattern;
    private Optional<Snapshot> snapshot = Optional.empty();
    private List<String> obstacles = List.of();

    public GradedDocument(Pattern pattern) {
        adopt(pattern);
        commands.addCommandStackListener(event -> changed());
    }

    /** The document as it is now; another one after {@link #replace}. */
    public Pattern pattern() {
        return pattern;
    }

    public EditingDomain domain() {
        return domain;
    }

    /** The last state that could be graded; empty when there was none yet. */
    public Optional<Snapshot> snapshot() {
        return snapshot;
    }

    /** Why the document as it is now cannot be graded, a sentence each; empty when the snapshot is of this state. */
    public List<String> obstacles() {
        return obstacles;
    }

    /** Runs the change as one undoable step, named by {@code label}. */
    public void edit(String label, Runnable change) {
        ChangeCommand command = new ChangeCommand(pattern) {
            @Override
            protected void doExecute() {
                change.run();
            }
        };
        command.setLabel(label);
        commands.execute(command);
    }

    /** Takes the document that was read anew in place of this one; there is nothing to undo afterwards. */
    public void replace(Pattern readAnew) {
        adopt(readAnew);
        // Tells the listeners as well.
        commands.flush();
    }

    /** Whether the document differs from its file. */
    public boolean isDirty() {
        return commands.isSaveNeeded();
    }

    /** To be called when the document was written. */
    public void saved() {
        commands.saveIsDone();
        tellListeners();
    }

    public boolean canUndo() {
        return commands.canUndo();
    }

    public boolean canRedo() {
        return commands.canRedo();
    }

    /** The name of the step that {@link #undo} would take back; empty when there is none. */
    public String undoLabel() {
        return commands.getUndoCommand() == null ? "" : commands.getUndoCommand().getLabel();
    }

    /** The name of the step that {@link #redo} would take again; empty when there is none. */
    public String redoLabel() {
        return commands.getRedoCommand() == null ? "" : commands.getRedoCommand().getLabel();
    }

    public void undo() {
        if (commands.canUndo()) {
            commands.undo();
        }
    }

    public void redo() {
        if (commands.canRedo()) {
            commands.redo();
        }
    }

    /** {@code listener} is run after every change of the document, its snapshot or whether it is saved. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    public void removeListener(Runnable listener) {
        listeners.remove(listener);
    }

    private void adopt(Pattern adopted) {
        domain.getResourceSet().getResources().clear();
        Resource resource = adopted.eResource();
        if (resource == null) {
            resource = new ResourceImpl();
            resource.getContents().add(adopted);
        }
        domain.getResourceSet().getResources().add(resource);
        pattern = adopted;
        grade();
    }

    private void changed() {
        grade();
        tellListeners();
    }

    private void tellListeners() {
        listeners.forEach(Runnable::run);
    }

    private void grade() {
        try {
            snapshot = Optional.of(Snapshot.of(Door.design(pattern)));
            obstacles = List.of();
        } catch (DocumentException noDesign) {
            obstacles = noDesign.problems().stream().map(DocumentProblem::sentence).toList();
        } catch (RuntimeException unexpected) {
            // A fault of the program must not take the edit with it; it is shown, and logged for a report.
            ILog.of(GradedDocument.class).error(Messages.GradedDocument_failed, unexpected);
            obstacles = List.of(NLS.bind(Messages.GradedDocument_failed_0, unexpected));
        }
    }
}
