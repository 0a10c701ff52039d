package turnheel.workbench.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.forms.widgets.Hyperlink;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Increase;
import turnheel.engine.design.LengthMode;
import turnheel.engine.term.Key;
import turnheel.model.pattern.Pattern;
import turnheel.model.pattern.RoundToeElement;
import turnheel.model.pattern.SizeElement;
import turnheel.model.pattern.WedgeToeElement;
import turnheel.workbench.fixture.Dialogs;
import turnheel.workbench.fixture.LoggedErrors;
import turnheel.workbench.fixture.OpenPattern;
import turnheel.workbench.fixture.Patterns;
import turnheel.workbench.fixture.Screen;

class OverviewPageTest {

    @RegisterExtension
    final LoggedErrors logged = new LoggedErrors();

    private OpenPattern open;
    private OverviewPage page;

    private void open(Design design) throws Exception {
        open = OpenPattern.of(design);
        page = (OverviewPage) open.editor().setActivePage(OverviewPage.ID);
        Screen.rest(200);
    }

    @AfterEach
    void close() throws Exception {
        open.close();
    }

    private Pattern pattern() {
        return open.editor().document().pattern();
    }

    private <C extends Control> List<C> all(Class<C> kind) {
        return Dialogs.controls(page.getPartControl()).filter(kind::isInstance).map(kind::cast).toList();
    }

    /** The control that follows a label of this text. */
    private <C extends Control> C beside(String label, Class<C> kind) {
        List<Control> all = new ArrayList<>(Dialogs.controls(page.getPartControl()).toList());
        int at = 0;
        while (!(all.get(at) instanceof Label found && found.getText().equals(label))) {
            at++;
        }
        return all.subList(at, all.size()).stream().filter(kind::isInstance).map(kind::cast).findFirst().orElseThrow();
    }

    private Button button(String text) {
        return all(Button.class).stream().filter(button -> button.getText().replace("&", "").equals(text)).findFirst()
                .orElseThrow();
    }

    private static void choose(Combo combo, String item) {
        combo.select(combo.indexOf(item));
        combo.notifyListeners(SWT.Selection, new Event());
        Screen.settle();
    }

    private static void press(Button button) {
        button.notifyListeners(SWT.Selection, new Event());
        Screen.settle();
    }

    private static void leave(Control control) {
        control.notifyListeners(SWT.FocusOut, new Event());
        Screen.settle();
    }

    private void run(String command) throws Exception {
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(command, null);
        Screen.settle();
    }

    @Test
    void showsThePatternAndWhatItComesTo() throws Exception {
        open(Patterns.toeUp());
        ImageData picture = Screen.picture(page.getPartControl());
        Screen.keep(picture, "overview-light");
        Screen.assertDrawn(picture, 20_000);
        assertEquals("Harbour Light", beside("Title", Text.class).getText());
        assertEquals("32/10 cm", beside("Stitch gauge", Text.class).getText());
        Table sizes = all(Table.class).getFirst();
        assertEquals(5, sizes.getItemCount());
        // 64 stitches at 32 over 10 cm are 200 mm.
        assertEquals(List.of("M", "64", "200 mm"), List.of(sizes.getItem(2).getText(0), sizes.getItem(2).getText(1),
                sizes.getItem(2).getText(2)));
    }

    @Test
    void aTextIsTakenOverOnLeavingTheFieldAndUndone() throws Exception {
        open(Patterns.toeUp());
        Text title = beside("Title", Text.class);
        title.setText("Breakwater");
        assertTrue(open.editor().isDirty(), "typed text makes the editor dirty");
        assertEquals("Harbour Light", pattern().getTitle());
        leave(title);
        assertEquals("Breakwater", pattern().getTitle());
        assertEquals("Breakwater", page.getManagedForm().getForm().getText());
        run(IWorkbenchCommandConstants.EDIT_UNDO);
        assertEquals("Harbour Light", pattern().getTitle());
        assertEquals("Harbour Light", title.getText());
        assertFalse(open.editor().isDirty());
    }

    @Test
    void undoFirstTakesBackWhatIsBeingTyped() throws Exception {
        open(Patterns.toeUp());
        Text title = beside("Title", Text.class);
        title.setText("Breakwater");
        leave(title);
        title.setText("Breakwater Two");
        run(IWorkbenchCommandConstants.EDIT_UNDO);
        assertEquals("Breakwater", title.getText());
        assertEquals("Breakwater", pattern().getTitle());
    }

    @Test
    void escapeGivesUpWhatIsBeingTyped() throws Exception {
        open(Patterns.toeUp());
        Text gauge = beside("Stitch gauge", Text.class);
        gauge.setFocus();
        gauge.setText("30/10 c");
        Screen.key(SWT.ESC, SWT.ESC, SWT.NONE);
        assertEquals("32/10 cm", gauge.getText());
        assertFalse(open.editor().isDirty());
    }

    @Test
    void aNewGaugeGradesAllSizesAnew() throws Exception {
        open(Patterns.toeUp());
        Text gauge = beside("Stitch gauge", Text.class);
        gauge.setText("8/1 in");
        leave(gauge);
        assertEquals("8/1 in", pattern().getStitchGauge().toString());
        // 8 over 25.4 mm are 31.496 over 10 cm, as measured and never converted.
        assertEquals(31.496, open.graded().size("M").value(Catalogue.GAUGE_STITCHES), 0.001);
    }

    @Test
    void aTextThatIsNoGaugeStaysWithTheReasonAndIsNotSaved() throws Exception {
        open(Patterns.toeUp());
        String before = open.file().readString();
        Text gauge = beside("Stitch gauge", Text.class);
        gauge.setText("32 sts");
        leave(gauge);
        assertEquals("32 sts", gauge.getText());
        assertEquals("32/10 cm", pattern().getStitchGauge().toString());
        assertTrue(page.getManagedForm().getForm().getMessage().contains("\"32 sts\" is no gauge"),
                page.getManagedForm().getForm().getMessage());
        Screen.keep(Screen.picture(page.getPartControl()), "overview-refused");
        run(IWorkbenchCommandConstants.FILE_SAVE);
        assertEquals(before, open.file().readString());
        assertEquals("32 sts", gauge.getText());
    }

    @Test
    void choicesAreEdits() throws Exception {
        open(Patterns.toeUp());
        choose(beside("Direction", Combo.class), "Cuff-down");
        assertEquals(Direction.CUFF_DOWN, pattern().getDirection());
        Spinner lines = beside("Shaping lines", Spinner.class);
        lines.setSelection(6);
        Screen.settle();
        assertEquals(6, ((RoundToeElement) pattern().getToe()).getLines());
        run(IWorkbenchCommandConstants.EDIT_UNDO);
        assertEquals(4, lines.getSelection());
        run(IWorkbenchCommandConstants.EDIT_UNDO);
        assertEquals("Toe-up", beside("Direction", Combo.class).getText());
        assertFalse(open.editor().isDirty());
    }

    @Test
    void lengthsAreSaidInAnotherWay() throws Exception {
        open(Patterns.toeUp());
        Combo foot = beside("Foot worked by", Combo.class);
        assertEquals("Rounds and measure", foot.getText());
        assertFalse(List.of(beside("Leg worked by", Combo.class).getItems()).contains("To fit the wearer"));
        choose(foot, "To fit the wearer");
        assertEquals(LengthMode.TO_FIT, pattern().getLengths().getFoot());
        assertTrue(open.graded().rules().contains(Catalogue.FOOT_TO_FIT_LESS.key()));
        run(IWorkbenchCommandConstants.EDIT_UNDO);
        assertEquals("Rounds and measure", foot.getText());
        assertFalse(open.editor().isDirty());
    }

    @Test
    void anotherKindOfToeKeepsWhatBothKnow() throws Exception {
        open(Patterns.toeUp());
        choose(beside("Increases", Combo.class), "Lifted stitch below");
        choose(beside("Toe", Combo.class), "Wedge toe");
        assertEquals(Increase.LIFTED, assertInstanceOf(WedgeToeElement.class, pattern().getToe()).getIncrease());
        assertTrue(all(Label.class).stream().noneMatch(label -> label.getText().equals("Shaping lines")));
        assertTrue(open.graded().rules().contains(Catalogue.TOE_TIP.key()));
        run(IWorkbenchCommandConstants.EDIT_UNDO);
        assertInstanceOf(RoundToeElement.class, pattern().getToe());
        assertEquals(4, beside("Shaping lines", Spinner.class).getSelection());
    }

    @Test
    void sizesAreAddedRenamedMovedAndRemoved() throws Exception {
        open(Patterns.toeUp());
        Table sizes = all(Table.class).getFirst();
        Dialogs.type("2XL", () -> press(button("Add...")));
        assertEquals(List.of("XS", "S", "M", "L", "XL", "2XL"), labels());
        assertEquals(5, sizes.getSelectionIndex());
        press(button("Up"));
        assertEquals(List.of("XS", "S", "M", "L", "2XL", "XL"), labels());
        String id = pattern().getSizes().get(4).getId();
        Dialogs.type("XXL", () -> press(button("Rename...")));
        assertEquals("XXL", pattern().getSizes().get(4).getLabel());
        assertEquals(id, pattern().getSizes().get(4).getId(), "a renamed size keeps its id");
        press(button("Remove"));
        assertEquals(List.of("XS", "S", "M", "L", "XL"), labels());
        for (int step = 0; step < 4; step++) {
            run(IWorkbenchCommandConstants.EDIT_UNDO);
        }
        assertFalse(open.editor().isDirty());
        assertEquals(5, sizes.getItemCount());
    }

    @Test
    void aLabelThatIsTakenCannotBeGiven() throws Exception {
        open(Patterns.toeUp());
        Table sizes = all(Table.class).getFirst();
        sizes.setSelection(0);
        sizes.notifyListeners(SWT.Selection, new Event());
        Dialogs.type("M", () -> press(button("Rename...")));
        assertEquals("XS", pattern().getSizes().getFirst().getLabel());
    }

    @Test
    void aQueryLeadsToItsCell() throws Exception {
        open(Patterns.withQuery());
        Screen.keep(Screen.picture(page.getPartControl()), "overview-queries");
        Hyperlink link = all(Hyperlink.class).stream().filter(found -> found.getText().startsWith("Error, M: "))
                .findFirst().orElseThrow();
        link.notifyListeners(SWT.DefaultSelection, new Event());
        link.setFocus();
        Screen.key(SWT.CR, '\r', SWT.NONE);
        GradingPage grading = assertInstanceOf(GradingPage.class, open.editor().getActivePageInstance());
        assertEquals("M", grading.grid().selectedSize().orElseThrow().label());
    }

    @Test
    void ownRowsAreAddedChangedAndRemoved() throws Exception {
        open(Patterns.toeUp());
        Table rows = all(Table.class).get(1);
        Dialogs.fill(List.of("quarter", "A quarter", "foot.stitches/4"), () -> press(button("Add Row...")));
        Key quarter = new Key("own.quarter");
        // 64 stitches in M
        assertEquals(16, open.graded().size("M").cell(quarter).orElseThrow().value());
        assertEquals(List.of("A quarter", "foot.stitches/4"),
                List.of(rows.getItem(0).getText(0), rows.getItem(0).getText(1)));
        Screen.keep(Screen.picture(page.getPartControl()), "overview-own-row");
        Dialogs.fill(List.of("quarter", "=1+1", "foot.stitches/"), () -> press(button("Edit Row...")));
        assertEquals("foot.stitches/", pattern().getOwnRows().getFirst().getFormula(), "kept as it was written");
        assertEquals("=1+1", rows.getItem(0).getText(0));
        assertTrue(all(Hyperlink.class).stream().anyMatch(link -> link.getText().contains("own.quarter")));
        press(button("Remove Row"));
        assertEquals(0, rows.getItemCount());
        for (int step = 0; step < 3; step++) {
            run(IWorkbenchCommandConstants.EDIT_UNDO);
        }
        assertFalse(open.editor().isDirty());
    }

    @Test
    void aNameThatAnOwnRowHasOrCannotHaveIsNotGiven() throws Exception {
        open(Patterns.withOwnRow());
        for (String name : List.of("quarTer", "Half", "a-b", "")) {
            Dialogs.fill(List.of(name, "", "1"), () -> press(button("Add Row...")));
            assertEquals(1, pattern().getOwnRows().size(), name);
        }
        assertFalse(open.editor().isDirty());
    }

    private List<String> labels() {
        return pattern().getSizes().stream().map(SizeElement::getLabel).toList();
    }
}
