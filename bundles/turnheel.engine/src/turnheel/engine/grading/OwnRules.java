package turnheel.engine.grading;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

import turnheel.engine.design.Design;
import turnheel.engine.design.OwnRow;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Size;
import turnheel.engine.design.Spelling;
import turnheel.engine.formula.FormulaWords;
import turnheel.engine.formula.OwnFormula;
import turnheel.engine.formula.Reading;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;
import turnheel.engine.term.Key;
import turnheel.engine.term.Notation;
import turnheel.engine.term.Term;

/**
 * The designer's own rows. They may read every row of the pattern and each other; a row that cannot be computed stays
 * in the table without numbers, and a query says why. What only passes on the slip of another row is not asked about
 * again.
 */
final class OwnRules {

    /** Of a piece of a formula, in characters; more of it would hide the sentence. */
    private static final int LONGEST_PIECE = 60;

    private final List<OwnRow> rows;
    private final List<String> labels;
    private final Map<Key, Term> terms = new LinkedHashMap<>();
    private final List<Query> queries = new ArrayList<>();

    private OwnRules(Design design) {
        this.rows = design.ownRows();
        this.labels = design.sizes().stream().map(Size::label).toList();
    }

    /** Reads the formulas of the design and adds its own rows to the rules of the others. */
    static OwnRules contribute(RuleBook book, Design design) {
        OwnRules rules = new OwnRules(design);
        rules.rows.forEach(rules::read);
        rules.dropUnknown(book);
        rules.dropCircles();
        rules.rows.forEach(row -> book.own(row.parameter(), Optional.ofNullable(rules.terms.get(row.key()))));
        return rules;
    }

    /** What is wrong with the formulas, whatever the numbers. */
    List<Query> queries() {
        return List.copyOf(queries);
    }

    private void read(OwnRow row) {
        switch (OwnFormula.read(row.formula())) {
            case Reading.Read(var term) -> terms.put(row.key(), term);
            case Reading.Unread unread ->
                ask(Check.OWN_UNREAD, row.key(), FormulaWords.sentence(unread), unread.piece());
        }
    }

    private void dropUnknown(RuleBook others) {
        List<String> known = new ArrayList<>();
        others.parameters().forEach(parameter -> known.add(parameter.key().name()));
        rows.forEach(row -> known.add(row.key().name()));
        for (OwnRow row : rows) {
            Optional<String> unknown = reads(row.key()).stream().map(Key::name).filter(name -> !known.contains(name))
                    .findFirst();
            if (unknown.isPresent()) {
                ask(Check.OWN_UNKNOWN_KEY, row.key(), Spelling.nearest(unknown.get(), known), unknown.get());
                terms.remove(row.key());
            }
        }
    }

    /** A circle is asked about once, in the row of it that stands first. */
    private void dropCircles() {
        Map<Key, List<Key>> circles = new LinkedHashMap<>();
        for (OwnRow row : rows) {
            circle(row.key()).ifPresent(circle -> circles.put(row.key(), circle));
        }
        List<List<Key>> asked = new ArrayList<>();
        circles.forEach((first, circle) -> {
            terms.remove(first);
            if (asked.stream().noneMatch(other -> other.contains(first))) {
                asked.add(circle);
                ask(Check.OWN_CIRCULAR, first, "", circle.stream().map(Key::name).collect(Collectors.joining(" → ")));
            }
        });
    }

    /** The shortest way from a row back to itself, both ends included. */
    private Optional<List<Key>> circle(Key start) {
        Map<Key, Key> reachedFrom = new HashMap<>();
        Deque<Key> next = new ArrayDeque<>(List.of(start));
        while (!next.isEmpty()) {
            Key row = next.removeFirst();
            for (Key read : reads(row)) {
                if (reachedFrom.putIfAbsent(read, row) == null) {
                    next.addLast(read);
                }
            }
        }
        if (!reachedFrom.containsKey(start)) {
            return Optional.empty();
        }
        Deque<Key> circle = new ArrayDeque<>(List.of(start));
        Key before = start;
        do {
            before = reachedFrom.get(before);
            circle.addFirst(before);
        } while (!before.equals(start));
        return Optional.of(List.copyOf(circle));
    }

    private List<Key> reads(Key row) {
        Term term = terms.get(row);
        return term == null ? List.of() : List.copyOf(term.keys());
    }

    private void ask(Check check, Key row, String expected, String found) {
        queries.add(new Query(check, row, labels, expected, found));
    }

    /** What is asked of a row whose formula has no value in a size. */
    Query withoutNumber(Parameter row, SizeSheet sheet) {
        Term culprit = culprit(terms.get(row.key()), key -> sheet.value(key).orElse(Double.NaN));
        return new Query(Check.OWN_NO_NUMBER, row.key(), List.of(sheet.size().label()), "",
                shortened(Notation.formula(culprit, Key::name)));
    }

    /** The innermost part of a term without a value, as far as it reads a row: "0/0" alone would puzzle. */
    private static Term culprit(Term term, ToDoubleFunction<Key> valueOf) {
        for (Term operand : evaluated(term, valueOf)) {
            if (!operand.keys().isEmpty() && !Double.isFinite(operand.evaluate(valueOf))) {
                return culprit(operand, valueOf);
            }
        }
        return term;
    }

    private static List<Term> evaluated(Term term, ToDoubleFunction<Key> valueOf) {
        if (term instanceof Term.If(var condition, var then, var otherwise)) {
            boolean holds = condition.comparison().holds(condition.left().evaluate(valueOf),
                    condition.right().evaluate(valueOf));
            return List.of(condition.left(), condition.right(), holds ? then : otherwise);
        }
        return term.operands();
    }

    private static String shortened(String formula) {
        return formula.length() <= LONGEST_PIECE ? formula : formula.substring(0, LONGEST_PIECE) + "…";
    }
}
