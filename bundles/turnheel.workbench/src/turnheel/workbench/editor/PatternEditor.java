package turnheel.workbench.editor;

import java.util.List;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.ListenerList;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.dialogs.ErrorDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.forms.editor.FormEditor;
import org.eclipse.ui.forms.editor.IFormPage;
import org.eclipse.ui.ide.IGotoMarker;
import org.eclipse.ui.part.FileEditorInput;

import turnheel.engine.query.Query;
import turnheel.engine.term.Key;
import turnheel.model.DocumentException;
import turnheel.model.DocumentProblem;
import turnheel.model.pattern.Pattern;
import turnheel.workbench.document.CellPlace;
import turnheel.workbench.document.GradedDocument;
import turnheel.workbench.document.PatternStore;
import turnheel.workbench.document.Snapshot;
import turnheel.workbench.markers.QueryMarkers;

/**
 * The editor of a pattern file: an overview and the grading grid over one document. A file that cannot be read is shown
 * as such and never written.
 */
public final class PatternEditor extends FormEditor implements IGotoMarker {

    public static final String ID = "turnheel.workbench.patternEditor"; //$NON-NLS-1$

    private static final String TEXT_EDITOR = "org.eclipse.ui.DefaultTextEditor"; //$NON-NLS-1$

    private final CellSelection selection = new CellSelection();
    private final ListenerList<Runnable> listeners = new ListenerList<>();
    private PatternStore store;
    private Optional<GradedDocument> document = Optional.empty();
    private DocumentException damage;
    private FileWatch watch;
    private Runnable undoChanged;

    @Override
    public void init(IEditorSite site, IEditorInput input) throws PartInitException {
        store = EditorStores.of(input).orElseThrow(() -> new PartInitException(
                NLS.bind(Messages.PatternEditor_noFile_0, input.getName())));
        super.init(site, input);
        site.setSelectionProvider(selection);
        selection.addSelectionChangedListener(event -> tellListeners());
        setPartName(input.getName());
        undoChanged = UndoHandler.connect(this);
        read();
        watch = new FileWatch(this);
    }

    private void read() {
        try {
            adopt(store.load());
            damage = null;
        } catch (DocumentException unreadable) {
            damage = unreadable;
        }
        mark();
    }

    private void adopt(Pattern pattern) {
        if (document.isPresent()) {
            document.get().replace(pattern);
        } else {
            GradedDocument opened = new GradedDocument(pattern);
            opened.addListener(this::documentChanged);
            document = Optional.of(opened);
        }
    }

    /** Markers tell of the file, not of what is being typed. */
    private void mark() {
        store.workspaceFile().filter(IFile::exists).ifPresent(file -> {
            if (damage != null) {
                QueryMarkers.update(file, damage.problems());
            } else {
                document().snapshot().ifPresent(snapshot -> QueryMarkers.update(file, snapshot));
            }
        });
    }

    @Override
    protected void addPages() {
        try {
            if (damage != null) {
                addPage(new DamagedPage(this, damage));
            } else {
                addPage(new OverviewPage(this));
                addPage(new GradingPage(this));
            }
        } catch (PartInitException impossible) {
            ILog.of(PatternEditor.class).log(impossible.getStatus());
        }
    }

    PatternStore store() {
        return store;
    }

    /** The document while it can be shown and edited; empty while the file cannot be read. */
    public Optional<GradedDocument> opened() {
        return damage == null ? document : Optional.empty();
    }

    /** The cell that is selected on the grading page; empty when none is. */
    public Optional<CellPlace> selectedCell() {
        return selection.place();
    }

    /** {@code listener} is run when the document, its snapshot or the selected cell changed. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    public void removeListener(Runnable listener) {
        listeners.remove(listener);
    }

    private void tellListeners() {
        listeners.forEach(Runnable::run);
    }

    CellSelection selection() {
        return selection;
    }

    /** The document; there is one on all pages but that of a file that was never readable. */
    GradedDocument document() {
        return document.orElseThrow();
    }

    /** The last state of the document that could be graded; empty when there was none. */
    public Optional<Snapshot> snapshot() {
        return document.flatMap(GradedDocument::snapshot);
    }

    /** What stands over the pages: the pattern's title, or the file's name where it has none. */
    String heading() {
        String title = document().pattern().getTitle();
        return title == null || title.isBlank() ? store.name() : title;
    }

    private List<DocumentPage> documentPages() {
        return pages == null ? List.of()
                : pages.stream().filter(DocumentPage.class::isInstance).map(DocumentPage.class::cast).toList();
    }

    private void documentChanged() {
        documentPages().forEach(DocumentPage::documentChanged);
        editorDirtyStateChanged();
        undoChanged.run();
        tellListeners();
    }

    boolean canUndo() {
        return hasPending() || damage == null && document().canUndo();
    }

    boolean canRedo() {
        return damage == null && document().canRedo();
    }

    String undoLabel() {
        return damage == null && !hasPending() ? document().undoLabel() : ""; //$NON-NLS-1$
    }

    String redoLabel() {
        return damage == null ? document().redoLabel() : ""; //$NON-NLS-1$
    }

    /** Takes back what is being typed, else the last step. */
    void undo() {
        if (hasPending()) {
            documentPages().forEach(DocumentPage::resetPending);
        } else if (damage == null) {
            document().undo();
        }
    }

    void redo() {
        if (damage == null) {
            document().redo();
        }
    }

    private boolean hasPending() {
        return documentPages().stream().anyMatch(DocumentPage::hasPending);
    }

    @Override
    public boolean isDirty() {
        return damage == null && (document.filter(GradedDocument::isDirty).isPresent() || hasPending());
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        if (takeOverPending() && mayWrite()) {
            write(monitor);
        } else {
            monitor.setCanceled(true);
        }
    }

    /** Takes over what is being typed; what cannot be taken is shown, and false returned: saving would leave it out. */
    private boolean takeOverPending() {
        documentPages().forEach(DocumentPage::commitPending);
        Optional<DocumentPage> refusing = documentPages().stream().filter(DocumentPage::hasPending).findFirst();
        refusing.ifPresent(page -> {
            if (page != getActivePageInstance()) {
                setActivePage(((IFormPage) page).getId());
            }
            getEditorSite().getActionBars().getStatusLineManager().setErrorMessage(Messages.PatternEditor_pending);
        });
        return refusing.isEmpty();
    }

    private boolean mayWrite() {
        return store.workspaceFile().filter(IFile::isReadOnly).map(file -> ResourcesPlugin.getWorkspace()
                .validateEdit(new IFile[] { file }, getSite().getShell()).isOK()).orElse(true);
    }

    private void write(IProgressMonitor monitor) {
        try {
            watch.writing(() -> store.save(document().pattern(), monitor));
            document().saved();
            mark();
        } catch (DocumentException refused) {
            monitor.setCanceled(true);
            show(new Status(IStatus.ERROR, PatternEditor.class,
                    refused.problems().stream().map(DocumentProblem::sentence).findFirst().orElseThrow(), refused));
        } catch (CoreException refused) {
            monitor.setCanceled(true);
            show(refused.getStatus());
        }
    }

    private void show(IStatus status) {
        ErrorDialog.openError(getSite().getShell(), Messages.PatternEditor_notSaved,
                NLS.bind(Messages.PatternEditor_notSaved_0, store.name()), status);
    }

    @Override
    public boolean isSaveAsAllowed() {
        return damage == null;
    }

    @Override
    public void doSaveAs() {
        if (!takeOverPending()) {
            return;
        }
        SaveAs.ask(getSite().getShell(), store).ifPresent(input -> {
            PatternStore before = store;
            store = EditorStores.of(input).orElseThrow();
            IProgressMonitor monitor = new NullProgressMonitor();
            write(monitor);
            if (monitor.isCanceled()) {
                store = before;
            } else {
                moved(input);
            }
        });
    }

    /** The file has another name or place from now on. */
    void moved(IEditorInput input) {
        store = EditorStores.of(input).orElseThrow();
        setInputWithNotify(input);
        setPartName(input.getName());
        watch.seen();
    }

    /** Reads the file again: another program wrote it, or a person mended it. What is not saved is lost. */
    void readAgain() {
        boolean wasDamaged = damage != null;
        documentPages().forEach(DocumentPage::resetPending);
        read();
        watch.seen();
        if (wasDamaged || damage != null) {
            String page = getActivePageInstance() == null ? null : getActivePageInstance().getId();
            while (getPageCount() > 0) {
                removePage(0);
            }
            addPages();
            if (page == null || setActivePage(page) == null) {
                setActivePage(0);
            }
        }
        editorDirtyStateChanged();
        undoChanged.run();
        tellListeners();
    }

    /** Opens the file as text; empty where there is no text editor. */
    Optional<Runnable> textEditor() {
        return store.workspaceFile().filter(file -> getSite().getWorkbenchWindow().getWorkbench().getEditorRegistry()
                .findEditor(TEXT_EDITOR) != null).map(file -> () -> {
                    try {
                        // Beside this editor, which has the same input.
                        getSite().getPage().openEditor(new FileEditorInput(file), TEXT_EDITOR, true,
                                IWorkbenchPage.MATCH_INPUT | IWorkbenchPage.MATCH_ID);
                    } catch (PartInitException failed) {
                        show(failed.getStatus());
                    }
                });
    }

    @Override
    public void gotoMarker(IMarker marker) {
        QueryMarkers.place(marker).ifPresent(place -> show(place.key(), place.size()));
    }

    /** Shows the cell that the query is about. */
    void show(Query query) {
        show(query.key(), query.sizes().isEmpty() ? "" : query.sizes().getFirst()); //$NON-NLS-1$
    }

    /** Shows the cell on the grading page and selects it. */
    public void show(CellPlace place) {
        show(place.key(), place.size());
    }

    private void show(Key key, String size) {
        IFormPage page = setActivePage(GradingPage.ID);
        if (page instanceof GradingPage grading) {
            grading.reveal(key, size);
            grading.setFocus();
        }
    }

    @Override
    public void dispose() {
        if (watch != null) {
            watch.dispose();
        }
        super.dispose();
    }
}
