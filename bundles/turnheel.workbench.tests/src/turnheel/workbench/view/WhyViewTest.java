package turnheel.workbench.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IViewPart;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

import turnheel.engine.term.Key;
import turnheel.workbench.document.CellPlace;
import turnheel.workbench.fixture.LoggedErrors;
import turnheel.workbench.fixture.OpenPattern;
import turnheel.workbench.fixture.Patterns;
import turnheel.workbench.fixture.Screen;
import turnheel.workbench.fixture.Widgets;

class WhyViewTest {

    private static final Key FOOT = new Key("foot.stitches");

    @RegisterExtension
    final LoggedErrors logged = new LoggedErrors();

    private OpenPattern open;
    private IViewPart view;

    @BeforeEach
    void open() throws Exception {
        open = OpenPattern.of(Patterns.toeUp());
        view = OpenPattern.page().showView(WhyView.ID);
        Screen.settle();
    }

    @AfterEach
    void close() throws Exception {
        OpenPattern.page().hideView(view);
        open.close();
    }

    private Composite area() {
        Screen.settle();
        return ((WhyView) view).area();
    }

    private String derivation() {
        return Widgets.only(area(), Text.class, text -> true).getText();
    }

    @Test
    void tellsOfTheSelectedCellInTheWordsOfTheGrid() {
        assertTrue(derivation().startsWith("Select a cell"), derivation());

        open.editor().show(new CellPlace(FOOT, "M"));
        Screen.keep(Screen.picture(area()), "why-view");

        // 64 stitches: the fixture's size M, worked by hand in the engine's tests
        assertTrue(derivation().startsWith("Foot stitches in size M is 64 stitches (chosen)."), derivation());
    }

    @Test
    void goesToWhatANumberFollowsFromAndToWhatFollowsFromIt() {
        open.editor().show(new CellPlace(FOOT, "M"));
        Link basis = Widgets.only(area(), Link.class, link -> link.getText().contains("foot.ideal"));
        Widgets.follow(basis, "foot.ideal");
        assertEquals(new CellPlace(new Key("foot.ideal"), "M"), open.editor().selectedCell().orElseThrow());

        Link dependents = Widgets.only(area(), Link.class, link -> link.getText().contains("\"foot.stitches\""));
        Widgets.follow(dependents, "foot.stitches");
        assertEquals(new CellPlace(FOOT, "M"), open.editor().selectedCell().orElseThrow());
    }

    @Test
    void saysThatNoPatternIsOpenWhenTheLastOneIsClosed() throws Exception {
        OpenPattern.page().closeAllEditors(false);

        assertTrue(Widgets.all(area(), Text.class).isEmpty());
        Widgets.only(area(), Label.class, label -> label.getText().startsWith("No pattern is open"));
    }
}
