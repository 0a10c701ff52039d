package turnheel.engine.grading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import turnheel.engine.design.Parameter;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.Size;
import turnheel.engine.term.Key;
import turnheel.engine.term.Term;

/** Evaluates the rules of one size, each number once. */
final class SizeSheet {

    private final RuleBook rules;
    private final Size size;
    private final Map<Key, Optional<Cell>> cells = new HashMap<>();
    private final List<Parameter> undefined = new ArrayList<>();

    SizeSheet(RuleBook rules, Size size) {
        this.rules = rules;
        this.size = size;
    }

    Size size() {
        return size;
    }

    /** Numbers whose rule divides by zero in this size. */
    List<Parameter> undefined() {
        return undefined;
    }

    /** Sets what was picked by comparison; an override of the same number stays above it. */
    void choose(Parameter parameter, int value, Reason reason) {
        Cell chosen = new Cell(parameter, value, Source.CHOSEN, reason);
        Quantity override = size.overrides().get(parameter.key());
        cells.put(parameter.key(), Optional.of(override == null ? chosen : overridden(parameter, override, Optional.of(chosen))));
    }

    /** Takes over what is known already. */
    void hold(Cell known) {
        cells.put(known.key(), Optional.of(known));
    }

    /** What the designer set for this size, if anything. */
    OptionalDouble override(Parameter parameter) {
        Quantity override = size.overrides().get(parameter.key());
        return override == null ? OptionalDouble.empty() : OptionalDouble.of(override.inside());
    }

    OptionalDouble value(Parameter parameter) {
        return value(parameter.key());
    }

    OptionalDouble value(Key key) {
        return cell(key).map(cell -> OptionalDouble.of(cell.value())).orElse(OptionalDouble.empty());
    }

    /** The number of a key; empty when a measurement that it needs is missing. */
    Optional<Cell> cell(Key key) {
        Optional<Cell> known = cells.get(key);
        if (known == null) {
            known = make(rules.parameter(key));
            cells.put(key, known);
        }
        return known;
    }

    private Optional<Cell> make(Parameter parameter) {
        Quantity input = size.inputs().get(parameter.key());
        Optional<Quantity> given = input == null ? rules.ofPattern(parameter.key()) : Optional.of(input);
        if (given.isPresent()) {
            Quantity quantity = given.get();
            return Optional.of(new Cell(parameter, quantity.inside(), Source.INPUT, new Reason.Given(quantity)));
        }
        Optional<Cell> byRule = rules.rule(parameter.key()).flatMap(rule -> derive(parameter, rule));
        Quantity override = size.overrides().get(parameter.key());
        return override == null ? byRule : Optional.of(overridden(parameter, override, byRule));
    }

    private static Cell overridden(Parameter parameter, Quantity override, Optional<Cell> instead) {
        return new Cell(parameter, override.inside(), Source.OVERRIDE, new Reason.Overridden(override, instead));
    }

    private Optional<Cell> derive(Parameter parameter, Term rule) {
        Map<Key, Double> basis = new LinkedHashMap<>();
        for (Key key : rule.keys()) {
            Optional<Cell> cell = cell(key);
            if (cell.isEmpty()) {
                return Optional.empty();
            }
            basis.put(key, cell.get().value());
        }
        double value = rule.evaluate(basis::get);
        if (!Double.isFinite(value)) {
            undefined.add(parameter);
            return Optional.empty();
        }
        OptionalDouble unrounded = rule instanceof Term.Nearest nearest
                ? OptionalDouble.of(nearest.ideal().evaluate(basis::get))
                : OptionalDouble.empty();
        return Optional.of(new Cell(parameter, value, rules.source(parameter.key()),
                new Reason.Derived(rule, basis, unrounded)));
    }

    /** Every number that can be made, in the order of the catalogue. */
    GradedSize graded() {
        Map<Key, Cell> made = new LinkedHashMap<>();
        for (Parameter parameter : rules.parameters()) {
            cell(parameter.key()).ifPresent(cell -> made.put(parameter.key(), cell));
        }
        return new GradedSize(size, made);
    }
}
