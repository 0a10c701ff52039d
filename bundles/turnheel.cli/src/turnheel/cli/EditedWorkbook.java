package turnheel.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import turnheel.engine.design.OwnRow;
import turnheel.engine.grading.Graded;
import turnheel.exchange.WorkbookFiles;
import turnheel.exchange.edits.Edit;
import turnheel.exchange.edits.EditProblem;
import turnheel.exchange.edits.Edits;
import turnheel.model.pattern.Pattern;

/** An exported workbook that somebody edited, as changes of the pattern's document. */
record EditedWorkbook(List<Edit> edits, List<String> notes) {

    /** No workbook was given. */
    static final EditedWorkbook NONE = new EditedWorkbook(List.of(), List.of());

    /**
     * Reads a workbook.
     *
     * @param force whether it is taken though it may not belong to this state of the pattern
     * @param all takes every problem, not only the first
     * @throws Refusal when anything in it must be put right first
     */
    static EditedWorkbook read(String name, Graded graded, boolean force, Consumer<String> all) throws Refusal {
        Edits edits = WorkbookFiles.read(PatternArgument.path(name), graded);
        List<EditProblem> errors = edits.errors(force);
        if (!errors.isEmpty()) {
            errors.stream().map(EditProblem::sentence).forEach(all);
            throw new Refusal(refusal(name, errors));
        }
        return new EditedWorkbook(edits.edits(), edits.warnings().stream().map(EditProblem::sentence).toList());
    }

    private static String refusal(String name, List<EditProblem> errors) {
        EditProblem first = errors.getFirst();
        if (first.kind().canBeForced()) {
            return Words.WORKBOOK_STALE.with(name, first.sentence());
        }
        return errors.size() == 1 ? Words.WORKBOOK_REFUSED.with(name, first.sentence())
                : Words.WORKBOOK_REFUSED_MORE.with(name, first.sentence(), errors.size() - 1);
    }

    /** Makes the changes, in the order of the pattern's rows. */
    List<Change> applyTo(Pattern document, ResultOrigins origins) throws Refusal {
        List<Change> changes = new ArrayList<>();
        for (Edit edit : edits) {
            switch (edit) {
                case Edit.Number number -> changes.addAll(new Assignment(number.place(),
                        new CellName(number.key().name(), number.size()),
                        number.value().map(Object::toString).orElse("")).applyTo(document, origins));
                case Edit.Own own -> changes.add(new OwnRowText(own.key().name(), own.row().map(OwnRow::label),
                        own.row().map(OwnRow::formula).orElse("")).applyTo(document));
            }
        }
        return changes.stream().filter(Change::isChange).toList();
    }
}
