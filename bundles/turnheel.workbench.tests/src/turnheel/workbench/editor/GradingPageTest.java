package turnheel.workbench.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;

import org.eclipse.core.resources.IResource;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Count;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Size;
import turnheel.engine.grading.Cell;
import turnheel.engine.grading.Source;
import turnheel.engine.grading.Why;
import turnheel.model.Door;
import turnheel.model.PatternFiles;
import turnheel.workbench.fixture.LoggedErrors;
import turnheel.workbench.fixture.OpenPattern;
import turnheel.workbench.fixture.Patterns;
import turnheel.workbench.fixture.Screen;

class GradingPageTest {

    @RegisterExtension
    final LoggedErrors logged = new LoggedErrors();

    private OpenPattern open;
    private GradingPage page;

    @BeforeEach
    void openTheGrid() throws Exception {
        open = OpenPattern.of(Patterns.toeUp());
        page = (GradingPage) open.editor().setActivePage(GradingPage.ID);
        page.setFocus();
        Screen.rest(300);
    }

    @AfterEach
    void close() throws Exception {
        open.close();
    }

    private NatTable table() {
        return (NatTable) page.grid().control();
    }

    private Cell cell(Parameter parameter, String size) {
        return open.graded().size(size).cell(parameter).orElseThrow();
    }

    private void select(Parameter parameter, String size) {
        assertTrue(page.reveal(parameter.key(), size));
        page.setFocus();
        Screen.settle();
    }

    private void enter(String text) {
        Screen.key(text.charAt(0), text.charAt(0), SWT.NONE);
        Screen.type(text.substring(1));
        Screen.post(SWT.CR, '\r');
    }

    @Test
    void paintsTheNumbers() {
        ImageData picture = Screen.picture(table());
        Screen.keep(picture, "grid-light");
        Screen.assertDrawn(picture, 10_000);
    }

    @Test
    void typingIntoARuleMakesAnOverrideAndGradesAllAnew() {
        select(Catalogue.FOOT_STITCHES, "M");
        enter("72");
        assertEquals(72, cell(Catalogue.FOOT_STITCHES, "M").value());
        assertEquals(Source.OVERRIDE, cell(Catalogue.FOOT_STITCHES, "M").source());
        // Domain § 3, worked by hand: 72 stitches turn at 24.
        assertEquals(24, cell(Catalogue.TOE_ALTERNATE_FROM, "M").value());
        assertTrue(open.editor().isDirty());
    }

    @Test
    void aBareNumberTakesTheUnitOfItsRow() {
        select(Catalogue.FOOT_LENGTH, "S");
        enter("240.5");
        assertEquals(240.5, cell(Catalogue.FOOT_LENGTH, "S").value());
    }

    @Test
    void f2EditsTheEntryAsItWasWritten() throws Exception {
        select(Catalogue.FOOT_LENGTH, "S");
        enter("9.5in");
        assertEquals(241.3, cell(Catalogue.FOOT_LENGTH, "S").value(), 1e-9);
        select(Catalogue.FOOT_LENGTH, "S");
        Screen.key(SWT.F2, '\0', SWT.NONE);
        assertEquals("9.5 in", editorText());
        Screen.key(SWT.ESC, SWT.ESC, SWT.NONE);
        assertNull(table().getActiveCellEditor());
    }

    @Test
    void lookingAtARuleDoesNotPinIt() {
        select(Catalogue.FOOT_STITCHES, "M");
        Screen.key(SWT.F2, '\0', SWT.NONE);
        Screen.post(SWT.CR, '\r');
        assertNull(table().getActiveCellEditor());
        assertEquals(Source.CHOSEN, cell(Catalogue.FOOT_STITCHES, "M").source());
        assertFalse(open.editor().isDirty());
    }

    @Test
    void undoAndRedoAreTheWorkbenchs() throws Exception {
        double before = cell(Catalogue.FOOT_STITCHES, "M").value();
        select(Catalogue.FOOT_STITCHES, "M");
        enter("72");
        run(IWorkbenchCommandConstants.EDIT_UNDO);
        assertEquals(before, cell(Catalogue.FOOT_STITCHES, "M").value());
        assertFalse(open.editor().isDirty());
        run(IWorkbenchCommandConstants.EDIT_REDO);
        assertEquals(72, cell(Catalogue.FOOT_STITCHES, "M").value());
        assertTrue(open.editor().isDirty());
    }

    @Test
    void controlZUndoes() {
        select(Catalogue.FOOT_STITCHES, "M");
        enter("72");
        Screen.chord(SWT.MOD1, 'z');
        Screen.await("the override is undone", () -> cell(Catalogue.FOOT_STITCHES, "M").source() == Source.CHOSEN);
        Screen.chord(SWT.MOD1, 'y');
        Screen.await("the override is there again",
                () -> cell(Catalogue.FOOT_STITCHES, "M").source() == Source.OVERRIDE);
    }

    @Test
    void deleteDropsTheOverride() {
        select(Catalogue.FOOT_STITCHES, "M");
        enter("72");
        select(Catalogue.FOOT_STITCHES, "M");
        Screen.post(SWT.DEL, '\u007f');
        assertEquals(Source.CHOSEN, cell(Catalogue.FOOT_STITCHES, "M").source());
    }

    @Test
    void deleteDropsTheEntriesOfAllSelectedCellsInOneStep() throws Exception {
        select(Catalogue.FOOT_LENGTH, "XS");
        Screen.key(SWT.ARROW_RIGHT, '\0', SWT.MOD2);
        Screen.key(SWT.ARROW_DOWN, '\0', SWT.MOD2);
        Screen.key(SWT.DEL, '\u007f', SWT.NONE);
        for (String size : List.of("XS", "S")) {
            assertEquals(Map.of(), open.graded().size(size).size().inputs(), size);
        }
        run(IWorkbenchCommandConstants.EDIT_UNDO);
        assertEquals(220, cell(Catalogue.FOOT_LENGTH, "XS").value());
        assertEquals(214, cell(Catalogue.FOOT_CIRCUMFERENCE, "S").value());
        assertFalse(open.editor().isDirty());
    }

    @Test
    void tabMovesInTheTableAndWithControlLeavesIt() {
        select(Catalogue.FOOT_LENGTH, "M");
        Screen.key(SWT.TAB, '\t', SWT.NONE);
        assertEquals("L", page.grid().selectedSize().orElseThrow().label());
        Screen.key(SWT.TAB, '\t', SWT.MOD1);
        assertNotSame(table(), table().getDisplay().getFocusControl());
    }

    @Test
    void deleteOnARuleSaysThatThereIsNothingToDrop() {
        select(Catalogue.FOOT_STITCHES, "M");
        Screen.post(SWT.DEL, '\u007f');
        assertFalse(open.editor().isDirty());
        assertTrue(page.reason().contains("no entry here to drop"), page.reason());
    }

    @Test
    void savingWritesTheOverrideAndCleansTheEditor() throws Exception {
        select(Catalogue.FOOT_STITCHES, "M");
        enter("72");
        run(IWorkbenchCommandConstants.FILE_SAVE);
        assertFalse(open.editor().isDirty());
        assertEquals(Map.of(Catalogue.FOOT_STITCHES.key(), new Count(72)), saved("M").overrides());
        assertTrue(open.file().isSynchronized(IResource.DEPTH_ZERO));
    }

    @Test
    void savingTakesOverWhatIsBeingTyped() throws Exception {
        select(Catalogue.FOOT_STITCHES, "M");
        Screen.key('7', '7', SWT.NONE);
        Screen.type("2");
        assertTrue(open.editor().isDirty(), "typed text makes the editor dirty");
        run(IWorkbenchCommandConstants.FILE_SAVE);
        assertEquals(Map.of(Catalogue.FOOT_STITCHES.key(), new Count(72)), saved("M").overrides());
    }

    @Test
    void aTextThatIsNoQuantityStaysInTheEditorAndLeavesTheCell() {
        double before = cell(Catalogue.FOOT_STITCHES, "M").value();
        select(Catalogue.FOOT_STITCHES, "M");
        enter("6x");
        assertEquals("6x", editorText());
        assertEquals(before, cell(Catalogue.FOOT_STITCHES, "M").value());
        assertTrue(page.reason().contains("\"6x\""), page.reason());
        assertTrue(page.reason().contains("Foot stitches") && page.reason().contains("M"), page.reason());
        Screen.keep(Screen.picture(page.getPartControl()), "refused-text");
        Screen.key(SWT.ESC, SWT.ESC, SWT.NONE);
        assertNull(table().getActiveCellEditor());
        assertEquals(Source.CHOSEN, cell(Catalogue.FOOT_STITCHES, "M").source());
        assertFalse(open.editor().isDirty());
    }

    @Test
    void savingWithATextThatIsNoQuantityWritesNothing() throws Exception {
        String before = open.file().readString();
        select(Catalogue.FOOT_STITCHES, "M");
        Screen.key('6', '6', SWT.NONE);
        Screen.type("x");
        assertEquals("6x", editorText());
        run(IWorkbenchCommandConstants.FILE_SAVE);
        assertEquals(before, open.file().readString());
        assertEquals("6x", editorText());
    }

    @Test
    void aQuantityOfAnotherUnitIsRefused() {
        select(Catalogue.FOOT_LENGTH, "M");
        enter("5%");
        assertTrue(page.reason().contains("write a length such as 240 mm"), page.reason());
        Screen.key(SWT.ESC, SWT.ESC, SWT.NONE);
        assertEquals(244, cell(Catalogue.FOOT_LENGTH, "M").value());
    }

    @Test
    void aResultSaysWhatItFollowsFromInsteadOfOpening() {
        select(Catalogue.FINISHED_CIRCUMFERENCE, "M");
        Screen.key('1', '1', SWT.NONE);
        assertNull(table().getActiveCellEditor());
        assertTrue(page.reason().contains("Finished circumference follows from"), page.reason());
        assertTrue(page.reason().contains("Foot stitches"), page.reason());
    }

    @Test
    void theReasonOfTheSelectedCellIsShown() {
        select(Catalogue.FINISHED_CIRCUMFERENCE, "M");
        List<String> why = Why.of(open.graded(), Catalogue.FINISHED_CIRCUMFERENCE.key(), "M").lines();
        assertEquals(String.join("\n", why), page.reason().replace("\r", ""));
    }

    @Test
    void selectedCellsAreCopiedWithTabs() {
        select(Catalogue.FOOT_LENGTH, "XS");
        Screen.key(SWT.ARROW_RIGHT, '\0', SWT.MOD2);
        Screen.key(SWT.ARROW_DOWN, '\0', SWT.MOD2);
        Screen.key('c', (char) ('c' & 0x1f), SWT.MOD1);
        Clipboard clipboard = new Clipboard(table().getDisplay());
        try {
            assertEquals("220\t232" + System.lineSeparator() + "200\t214",
                    clipboard.getContents(TextTransfer.getInstance()));
        } finally {
            clipboard.dispose();
        }
    }

    @Test
    void headingsCloseAndOpenByKey() {
        select(Catalogue.FOOT_LENGTH, "M");
        int rows = table().getRowCount();
        Screen.key(SWT.ARROW_UP, '\0', SWT.NONE);
        Screen.key(' ', ' ', SWT.NONE);
        int closed = table().getRowCount();
        assertTrue(closed < rows || closed == rows && page.grid().selectedParameter().isEmpty());
        Screen.keep(Screen.picture(table()), "grid-closed-part");
        assertTrue(page.reveal(Catalogue.FOOT_LENGTH.key(), "M"), "revealing a cell opens its part");
        assertEquals(Catalogue.FOOT_LENGTH, page.grid().selectedParameter().orElseThrow());
    }

    private String editorText() {
        return ((Text) table().getActiveCellEditor().getEditorControl()).getText();
    }

    private Size saved(String label) throws Exception {
        return Door.design(PatternFiles.load(open.file().getLocation().toPath())).size(label);
    }

    private static void run(String command) throws Exception {
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(command, null);
        Screen.settle();
    }
}
