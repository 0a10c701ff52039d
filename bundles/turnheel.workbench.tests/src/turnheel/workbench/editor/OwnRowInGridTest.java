package turnheel.workbench.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

import turnheel.engine.design.Design;
import turnheel.engine.design.OwnRow;
import turnheel.engine.term.Key;
import turnheel.workbench.fixture.LoggedErrors;
import turnheel.workbench.fixture.OpenPattern;
import turnheel.workbench.fixture.Patterns;
import turnheel.workbench.fixture.Screen;
import turnheel.workbench.markers.QueryMarkers;

class OwnRowInGridTest {

    private static final Key QUARTER = new Key("own.quarter");

    @RegisterExtension
    final LoggedErrors logged = new LoggedErrors();

    private OpenPattern open;
    private GradingPage page;

    private void open(Design design) throws Exception {
        open = OpenPattern.of(design);
        page = (GradingPage) open.editor().setActivePage(GradingPage.ID);
        page.setFocus();
        Screen.rest(300);
        assertTrue(page.reveal(QUARTER, "M"));
        page.setFocus();
        Screen.settle();
    }

    @AfterEach
    void close() throws Exception {
        open.close();
    }

    @Test
    void theRowIsShownWithItsReason() throws Exception {
        open(Patterns.withOwnRow());
        Screen.keep(Screen.picture(page.getPartControl()), "grid-own-row");
        assertEquals("A quarter", page.grid().selectedParameter().orElseThrow().label());
        // a quarter of 64 stitches
        assertEquals("A quarter in size M is 16 (own row).", page.reason().lines().findFirst().orElseThrow());
    }

    @Test
    void itsNumbersCannotBeTypedOver() throws Exception {
        open(Patterns.withOwnRow());
        Screen.key('1', '1', SWT.NONE);
        assertNull(((NatTable) page.grid().control()).getActiveCellEditor());
        assertTrue(page.reason().contains("A quarter is an own row"), page.reason());
        assertTrue(page.reason().contains("Overview"), page.reason());
        assertFalse(open.editor().isDirty());
    }

    @Test
    void aFormulaThatCannotBeReadIsAskedAboutInTheGridAndAsAProblem() throws Exception {
        open(Patterns.toeUp().withOwnRows(List.of(new OwnRow(QUARTER, "A quarter", "LOG(foot.stitches)"))));
        Screen.keep(Screen.picture(page.getPartControl()), "grid-own-row-unread");
        assertTrue(page.reason().contains("own.quarter") && page.reason().contains("LOG"), page.reason());
        Screen.awaitJobs();
        IMarker marker = Stream.of(open.file().findMarkers(QueryMarkers.QUERY, true, IResource.DEPTH_ZERO))
                .filter(found -> found.getAttribute("check", "").equals("own.unread")).findFirst().orElseThrow();
        assertTrue(marker.getAttribute(IMarker.LOCATION, "").startsWith("A quarter"));
        assertEquals(QUARTER, QueryMarkers.place(marker).orElseThrow().key());
    }
}
