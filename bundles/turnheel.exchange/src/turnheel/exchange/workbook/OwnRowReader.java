package turnheel.exchange.workbook;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import turnheel.engine.design.OwnRow;
import turnheel.engine.design.Size;
import turnheel.engine.formula.FormulaWords;
import turnheel.engine.formula.OwnFormula;
import turnheel.engine.formula.Reading;
import turnheel.engine.grading.Graded;
import turnheel.engine.term.Key;
import turnheel.engine.term.Notation;
import turnheel.exchange.edits.Edit;
import turnheel.exchange.edits.EditProblem;
import turnheel.exchange.edits.EditProblem.Kind;

/**
 * Reads the designer's own rows: one formula for all sizes, over names or cells of the same column. A row whose formulas
 * are all emptied is dropped; a row that somebody added under a key of its own is new.
 */
final class OwnRowReader {

    private final Graded graded;
    private final CountsTable table;
    private final List<EditProblem> problems;

    OwnRowReader(Graded graded, CountsTable table, List<EditProblem> problems) {
        this.graded = graded;
        this.table = table;
        this.problems = problems;
    }

    /** The change of one row. */
    Optional<Edit> edit(Key key, int row, Map<String, Integer> columns) {
        Optional<OwnRow> before = graded.design().ownRows().stream().filter(own -> own.key().equals(key)).findFirst();
        Set<String> formulas = new HashSet<>();
        int kept = 0;
        int emptied = 0;
        int problemsBefore = problems.size();
        for (Size size : graded.design().sizes()) {
            int column = columns.get(size.label());
            boolean hadNumber = graded.size(size.label()).cell(key).isPresent();
            switch (table.cell(row, column)) {
                case FoundCell.Empty empty -> emptied += hadNumber ? 1 : 0;
                case FoundCell.Formula formula -> {
                    if (hadNumber && isUnchanged(formula.text(), key, size.label())) {
                        kept++;
                    } else {
                        formula(formula.text(), key, row, column, size.label()).ifPresent(formulas::add);
                    }
                }
                case FoundCell other -> problem(Kind.OWN_NUMBER, row, column, key, written(other), "");
            }
        }
        if (problems.size() > problemsBefore) {
            return Optional.empty();
        }
        boolean isUneven = formulas.size() > 1 || !formulas.isEmpty() && kept + emptied > 0 || kept > 0 && emptied > 0;
        if (isUneven) {
            problem(Kind.OWN_UNEVEN, row, columns.get(graded.sizes().getFirst().label()), key, "", "");
            return Optional.empty();
        }
        if (emptied > 0) {
            return Optional.of(new Edit.Own(table.place(row, 0), key, Optional.empty()));
        }
        return formulas.stream().findFirst().or(() -> before.map(OwnRow::formula))
                .flatMap(formula -> changed(key, row, before, formula));
    }

    private Optional<Edit> changed(Key key, int row, Optional<OwnRow> before, String formula) {
        String words = table.label(row);
        boolean sameLabel = before.map(OwnRow::parameter).filter(shown -> shown.label().strip().equals(words)).isPresent();
        String label = sameLabel ? before.get().label() : words.equals(key.name()) ? "" : words;
        try {
            OwnRow now = new OwnRow(key, label, formula);
            Optional<OwnRow> twin = graded.design().ownRows().stream()
                    .filter(other -> !other.key().equals(key) && other.sharesNameWith(key)).findFirst();
            if (twin.isPresent()) {
                problem(Kind.KEY_TWICE, row, 0, twin.get().key(), "", "");
                return Optional.empty();
            }
            return before.equals(Optional.of(now)) ? Optional.empty()
                    : Optional.of(new Edit.Own(table.place(row, 0), key, Optional.of(now)));
        } catch (IllegalArgumentException refused) {
            problem(Kind.OWN_REFUSED, row, 0, key, "", Objects.requireNonNull(refused.getMessage()));
            return Optional.empty();
        }
    }

    private boolean isUnchanged(String formula, Key key, String label) {
        return graded.rules().rule(key).map(rule -> FormulaTokens.of(Notation.formula(rule, Key::name), CountsTable::ofKey)
                .isSameAs(FormulaTokens.of(formula, word -> table.word(word, label)))).orElse(false);
    }

    /** The formula over keys; empty, with a problem, when it is none that an own row can have. */
    private Optional<String> formula(String formula, Key key, int row, int column, String label) {
        for (String operand : FormulaTokens.operands(formula)) {
            if (table.number(operand).filter(number -> number.label().strip().equals(label.strip())).isEmpty()) {
                problem(Kind.OWN_FOREIGN, row, column, key, operand, "");
                return Optional.empty();
            }
        }
        String text = FormulaTokens.translated(formula, word -> table.word(word, label));
        if (OwnFormula.read(text) instanceof Reading.Unread unread) {
            problem(Kind.OWN_REFUSED, row, column, key, text, FormulaWords.sentence(unread));
            return Optional.empty();
        }
        return Optional.of(text);
    }

    private static String written(FoundCell cell) {
        return cell instanceof FoundCell.Fault(String text) ? text : cell.words();
    }

    private void problem(Kind kind, int row, int column, Key key, String found, String detail) {
        problems.add(new EditProblem(kind, table.place(row, column), key.name(), found, detail));
    }
}
