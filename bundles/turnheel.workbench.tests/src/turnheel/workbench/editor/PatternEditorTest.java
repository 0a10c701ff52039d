package turnheel.workbench.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.jface.dialogs.ErrorDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.ide.IDE;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Count;
import turnheel.engine.design.Design;
import turnheel.model.Documents;
import turnheel.model.PatternFiles;
import turnheel.model.pattern.SizeElement;
import turnheel.workbench.fixture.Dialogs;
import turnheel.workbench.fixture.LoggedErrors;
import turnheel.workbench.fixture.OpenPattern;
import turnheel.workbench.fixture.Patterns;
import turnheel.workbench.fixture.Screen;
import turnheel.workbench.markers.QueryMarkers;

class PatternEditorTest {

    private static final String DAMAGED = """
            <?xml version="1.0" encoding="UTF-8"?>
            <turnheel:Pattern xmlns:turnheel="urn:turnheel:pattern" format="1"
                title="Harbour Light"
                direction="sideways">
            """;

    @RegisterExtension
    final LoggedErrors logged = new LoggedErrors();

    private OpenPattern open;

    @AfterEach
    void close() throws Exception {
        open.close();
    }

    private static String text(Design design) throws Exception {
        return new String(PatternFiles.bytes(Documents.pattern(design), "text"), StandardCharsets.UTF_8);
    }

    private void write(String text) throws CoreException {
        open.file().setContents(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), true, false, null);
        Screen.rest(200);
    }

    private void override(int stitches) {
        SizeElement m = open.editor().document().pattern().getSizes().get(2);
        open.editor().document().edit("Set Foot Stitches",
                () -> Documents.setOverride(m, Catalogue.FOOT_STITCHES.key(), new Count(stitches)));
        Screen.settle();
    }

    private List<IMarker> markers(String type) throws CoreException {
        Screen.awaitJobs();
        return List.of(open.file().findMarkers(type, false, IResource.DEPTH_ZERO));
    }

    private List<String> labels() {
        return Dialogs.controls(open.editor().getActivePageInstance().getPartControl()).filter(Label.class::isInstance)
                .map(control -> ((Label) control).getText()).toList();
    }

    @Test
    void theWorkbenchChoosesItForPatternFiles() throws Exception {
        open = OpenPattern.of(Patterns.toeUp());
        assertEquals("turnheel.workbench.pattern", open.file().getContentDescription().getContentType().getId());
        assertEquals("UTF-8", open.file().getCharset());
        assertEquals(OverviewPage.ID, open.editor().getActivePageInstance().getId());
        assertNotNull(open.editor().getTitleImage());
    }

    @Test
    void aQueryIsAMarkerAtItsCell() throws Exception {
        open = OpenPattern.of(Patterns.withQuery());
        IMarker marker = markers(QueryMarkers.QUERY).stream()
                .filter(found -> found.getAttribute(IMarker.MESSAGE, "").contains("overridden to 66")).findFirst()
                .orElseThrow();
        assertEquals(IMarker.SEVERITY_ERROR, marker.getAttribute(IMarker.SEVERITY, -1));
        assertEquals("Foot stitches, M", marker.getAttribute(IMarker.LOCATION, ""));
        IDE.gotoMarker(open.editor(), marker);
        GradingPage grading = assertInstanceOf(GradingPage.class, open.editor().getActivePageInstance());
        assertEquals(Catalogue.FOOT_STITCHES, grading.grid().selectedParameter().orElseThrow());
        assertEquals("M", grading.grid().selectedSize().orElseThrow().label());
        Screen.keep(Screen.picture(OpenPattern.window().getShell()), "window-query");
    }

    @Test
    void markersTellOfTheFileAndNotOfWhatIsTyped() throws Exception {
        open = OpenPattern.of(Patterns.toeUp());
        int before = markers(QueryMarkers.QUERY).size();
        override(66);
        assertEquals(before, markers(QueryMarkers.QUERY).size());
        open.editor().doSave(new NullProgressMonitor());
        assertTrue(markers(QueryMarkers.QUERY).size() > before);
        open.editor().undo();
        open.editor().doSave(new NullProgressMonitor());
        assertEquals(before, markers(QueryMarkers.QUERY).size());
    }

    @Test
    void markersThatStayRightAreLeftAlone() throws Exception {
        open = OpenPattern.of(Patterns.withQuery());
        List<Long> before = markers(QueryMarkers.QUERY).stream().map(IMarker::getId).toList();
        open.editor().doSave(new NullProgressMonitor());
        assertEquals(before, markers(QueryMarkers.QUERY).stream().map(IMarker::getId).toList());
    }

    @Test
    void aDamagedFileIsShownWithItsPlaceAndNeverWritten() throws Exception {
        open = OpenPattern.of(DAMAGED);
        assertInstanceOf(DamagedPage.class, open.editor().getActivePageInstance());
        assertTrue(labels().stream().anyMatch(label -> label.matches("Line 4, column \\d+: .*sideways.*")),
                labels().toString());
        Screen.keep(Screen.picture(open.editor().getActivePageInstance().getPartControl()), "damaged-file");
        assertFalse(open.editor().isDirty());
        assertFalse(open.editor().isSaveAsAllowed());
        assertEquals(Set.of(4, 5), markers(QueryMarkers.DAMAGE).stream()
                .map(marker -> marker.getAttribute(IMarker.LINE_NUMBER, 0)).collect(Collectors.toSet()),
                "a word that is none, and an end that is missing");
        assertEquals(DAMAGED, open.file().readString());
    }

    @Test
    void aMendedFileOpensAndADamagedOneCloses() throws Exception {
        open = OpenPattern.of(DAMAGED);
        write(text(Patterns.toeUp()));
        assertEquals(OverviewPage.ID, open.editor().getActivePageInstance().getId());
        assertEquals(List.of(), markers(QueryMarkers.DAMAGE));
        write(DAMAGED);
        assertInstanceOf(DamagedPage.class, open.editor().getActivePageInstance());
        write(text(Patterns.wedgeToe()));
        open.editor().setActivePage(GradingPage.ID);
        Screen.settle();
        assertTrue(open.graded().rules().contains(Catalogue.TOE_TIP.key()));
    }

    @Test
    void anotherProgramsChangeIsFollowedWhereNothingIsUnsaved() throws Exception {
        open = OpenPattern.of(Patterns.toeUp());
        open.editor().setActivePage(GradingPage.ID);
        Files.writeString(open.file().getLocation().toPath(), text(Patterns.withQuery()));
        open.file().refreshLocal(IResource.DEPTH_ZERO, null);
        Screen.await("the editor reads the file again",
                () -> open.graded().size("M").value(Catalogue.FOOT_STITCHES) == 66);
        assertFalse(open.editor().isDirty());
        assertEquals(GradingPage.ID, open.editor().getActivePageInstance().getId());
    }

    @Test
    void unsavedEditsAreKeptWhenAskedTo() throws Exception {
        open = OpenPattern.of(Patterns.toeUp());
        override(72);
        Dialogs.answer("Keep My Edits", () -> {
            write(text(Patterns.wedgeToe()));
            Screen.rest(600);
        });
        assertTrue(open.editor().isDirty());
        assertEquals(72, open.graded().size("M").value(Catalogue.FOOT_STITCHES));
    }

    @Test
    void unsavedEditsAreGivenUpWhenAskedTo() throws Exception {
        open = OpenPattern.of(Patterns.toeUp());
        override(72);
        Dialogs.answer("Read Again", () -> {
            write(text(Patterns.wedgeToe()));
            Screen.rest(600);
        });
        assertFalse(open.editor().isDirty());
        assertTrue(open.graded().rules().contains(Catalogue.TOE_TIP.key()));
    }

    @Test
    void aDeletedFileClosesAnEditorWithoutEdits() throws Exception {
        open = OpenPattern.of(Patterns.toeUp());
        PatternEditor editor = open.editor();
        open.file().delete(true, null);
        Screen.await("the editor is closed", () -> OpenPattern.page().findEditor(editor.getEditorInput()) == null);
    }

    @Test
    void editsOutliveTheirFileAndCanBeSaved() throws Exception {
        open = OpenPattern.of(Patterns.toeUp());
        override(72);
        open.file().delete(true, null);
        Screen.rest(300);
        assertTrue(open.editor().isDirty());
        open.editor().doSave(new NullProgressMonitor());
        assertFalse(open.editor().isDirty());
        assertTrue(open.file().exists());
    }

    @Test
    void aRenamedFileIsFollowed() throws Exception {
        open = OpenPattern.of(Patterns.toeUp());
        IFile renamed = open.file().getParent().getFile(IPath.fromOSString("breakwater.turnheel"));
        open.file().move(renamed.getFullPath(), true, null);
        Screen.await("the editor has the new name", () -> "breakwater.turnheel".equals(open.editor().getTitle()));
        override(72);
        open.editor().doSave(new NullProgressMonitor());
        assertTrue(renamed.readString().contains("72"));
        assertFalse(open.file().exists());
    }

    @Test
    void aFileThatCannotBeWrittenKeepsTheEditsAndSaysSo() throws Exception {
        open = OpenPattern.of(Patterns.toeUp());
        override(72);
        // A folder in the file's place can be written by nobody, not even by root.
        Path path = open.file().getLocation().toPath();
        Files.delete(path);
        Files.createDirectories(path.resolve("occupied"));
        ErrorDialog.AUTOMATED_MODE = false;
        try {
            Dialogs.answer("OK", () -> open.editor().doSave(new NullProgressMonitor()));
            assertTrue(open.editor().isDirty());
        } finally {
            ErrorDialog.AUTOMATED_MODE = true;
            Files.delete(path.resolve("occupied"));
            Files.delete(path);
            open.file().getParent().refreshLocal(IResource.DEPTH_INFINITE, null);
        }
    }

    @Test
    void theTitlesOfUndoAndRedoNameTheStep() throws Exception {
        open = OpenPattern.of(Patterns.toeUp());
        assertFalse(open.editor().canUndo());
        override(72);
        assertEquals("Set Foot Stitches", open.editor().undoLabel());
        open.editor().undo();
        assertEquals("Set Foot Stitches", open.editor().redoLabel());
        assertNull(open.editor().getAdapter(String.class));
    }
}
