package turnheel.exchange.workbook;

import java.util.Map;

import turnheel.engine.grading.Cell;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.term.Key;
import turnheel.engine.term.Notation;
import turnheel.engine.term.Term;
import turnheel.exchange.table.CellContent;

/**
 * Rules as live formulas on other sheets than Counts: they read its cells by name, and what is no row there from
 * elsewhere.
 */
final class LiveRule {

    /**
     * A number that is no row of the Counts sheet.
     *
     * @param expression what a formula writes for it: the name or address of a cell, or the number itself
     */
    record Outside(String expression, double value) {
    }

    private LiveRule() {
    }

    /**
     * The formula of a rule for one size with what it comes to; an empty cell where a number that it reads is missing.
     *
     * @param position of the size, from 0
     */
    static CellContent of(Term rule, GradedSize size, int position, Map<Key, Outside> outside) {
        double cached = rule.evaluate(key -> {
            Outside other = outside.get(key);
            return other != null ? other.value() : size.cell(key).map(Cell::value).orElse(Double.NaN);
        });
        if (!Double.isFinite(cached)) {
            return new CellContent.Empty();
        }
        return new CellContent.Formula(Notation.formula(rule, key -> {
            Outside other = outside.get(key);
            return other != null ? other.expression() : CellNames.of(key, position);
        }), cached);
    }
}
