package turnheel.workbench.view;

import java.util.Optional;

import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.workbench.document.CellPlace;
import turnheel.workbench.document.GradedDocument;
import turnheel.workbench.document.Snapshot;
import turnheel.workbench.editor.PatternEditor;

/**
 * What a view shows.
 *
 * @param document for edits; its snapshot is {@code snapshot}
 * @param place the selected cell; empty when none is
 */
public record Subject(PatternEditor editor, GradedDocument document, Snapshot snapshot, Optional<CellPlace> place) {

    public Graded graded() {
        return snapshot.graded();
    }

    /** The size of the selected cell, else the first. */
    public GradedSize size() {
        return graded().sizes().stream()
                .filter(size -> place.filter(cell -> cell.size().equals(size.label())).isPresent()).findFirst()
                .orElseGet(() -> graded().sizes().getFirst());
    }
}
