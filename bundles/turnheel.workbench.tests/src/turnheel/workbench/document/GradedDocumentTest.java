package turnheel.workbench.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Count;
import turnheel.engine.query.Severity;
import turnheel.model.Documents;
import turnheel.model.pattern.SizeElement;
import turnheel.workbench.fixture.LoggedErrors;
import turnheel.workbench.fixture.Patterns;

class GradedDocumentTest {

    private static final int M = 2;

    @RegisterExtension
    final LoggedErrors logged = new LoggedErrors();

    private final GradedDocument document = new GradedDocument(Documents.pattern(Patterns.toeUp()));
    private int told;

    private SizeElement size(int index) {
        return document.pattern().getSizes().get(index);
    }

    private double footStitches() {
        return document.snapshot().orElseThrow().graded().size("M").value(Catalogue.FOOT_STITCHES);
    }

    private void override(int stitches) {
        document.edit("Set Foot Stitches",
                () -> Documents.setOverride(size(M), Catalogue.FOOT_STITCHES.key(), new Count(stitches)));
    }

    @Test
    void everyEditIsGradedAndTold() {
        document.addListener(() -> told++);
        override(72);
        assertEquals(72, footStitches());
        assertEquals(1, told);
    }

    @Test
    void undoAndRedoGradeAnew() {
        double before = footStitches();
        override(72);
        assertEquals("Set Foot Stitches", document.undoLabel());
        document.undo();
        assertEquals(before, footStitches());
        assertTrue(size(M).getOverrides().isEmpty());
        document.redo();
        assertEquals(72, footStitches());
    }

    @Test
    void isDirtyUntilSavedOrUndone() {
        assertFalse(document.isDirty());
        override(72);
        assertTrue(document.isDirty());
        document.undo();
        assertFalse(document.isDirty());
        document.redo();
        document.saved();
        assertFalse(document.isDirty());
        document.undo();
        assertTrue(document.isDirty(), "undone past the saved state");
    }

    @Test
    void whatIsNoDesignKeepsTheLastSnapshotAndSaysWhy() {
        Snapshot before = document.snapshot().orElseThrow();
        document.edit("Rename Size", () -> size(0).setLabel("M"));
        assertSame(before, document.snapshot().orElseThrow());
        assertEquals(1, document.obstacles().size());
        assertTrue(document.obstacles().getFirst().contains("\"M\""), document.obstacles().getFirst());
        document.undo();
        assertEquals(List.of(), document.obstacles());
        assertNotSame(before, document.snapshot().orElseThrow());
    }

    @Test
    void aDocumentReadAnewTakesTheOldOnesPlace() {
        document.addListener(() -> told++);
        override(72);
        document.replace(Documents.pattern(Patterns.wedgeToe()));
        assertFalse(document.isDirty());
        assertFalse(document.canUndo());
        assertEquals(2, told);
        assertTrue(document.snapshot().orElseThrow().graded().rules().contains(Catalogue.TOE_TIP.key()));
    }

    @Test
    void queriesAreFoundByTheirPlace() {
        GradedDocument withQuery = new GradedDocument(Documents.pattern(Patterns.withQuery()));
        Snapshot snapshot = withQuery.snapshot().orElseThrow();
        assertEquals(Severity.ERROR, snapshot.severity(Catalogue.FOOT_STITCHES.key(), "M").orElseThrow());
        assertEquals(List.of(), snapshot.queries(Catalogue.FOOT_STITCHES.key(), "S"));
        assertEquals(snapshot.queries().size(), snapshot.count(Severity.ERROR) + snapshot.count(Severity.WARNING));
    }

    @Test
    void editsGoThroughOneEditingDomain() {
        override(72);
        assertSame(document.domain(), AdapterFactoryEditingDomain.getEditingDomainFor(size(M)));
        assertTrue(document.domain().getCommandStack().canUndo());
    }
}
