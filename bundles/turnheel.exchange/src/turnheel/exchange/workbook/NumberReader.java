package turnheel.exchange.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

import turnheel.engine.design.Count;
import turnheel.engine.design.Gauge;
import turnheel.engine.design.Length;
import turnheel.engine.design.LengthUnit;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.Role;
import turnheel.engine.design.Share;
import turnheel.engine.design.Size;
import turnheel.engine.grading.Cell;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.Source;
import turnheel.engine.term.Key;
import turnheel.engine.term.Notation;
import turnheel.exchange.edits.Edit;
import turnheel.exchange.edits.EditProblem;
import turnheel.exchange.edits.EditProblem.Kind;

/** Reads the rows of the catalogue: what was typed into inputs, and over rules. */
final class NumberReader {

    /** Programs keep 15 digits, and some tidy up the last of them. */
    private static final double SAME = 1e-9;
    private static final Length TEN_CENTIMETRES = new Length(10, LengthUnit.CENTIMETRE);

    private final Graded graded;
    private final CountsTable table;
    private final List<EditProblem> problems;
    /** Whether the rules in the workbook are those of the pattern; else any formula counts as its rule. */
    private final boolean sameState;

    NumberReader(Graded graded, CountsTable table, List<EditProblem> problems, boolean sameState) {
        this.graded = graded;
        this.table = table;
        this.problems = problems;
        this.sameState = sameState;
    }

    /** The changes of one row. */
    List<Edit.Number> edits(Parameter parameter, int row, Map<String, Integer> columns) {
        List<Edit.Number> edits = new ArrayList<>();
        for (Size size : graded.design().sizes()) {
            Place place = new Place(parameter, size, row, columns.get(size.label()));
            edit(place).ifPresent(edits::add);
        }
        return isOfPattern(parameter, edits) ? List.of(new Edit.Number(edits.getFirst().place(), parameter.key(),
                Optional.empty(), edits.getFirst().value())) : edits;
    }

    private record Place(Parameter parameter, Size size, int row, int column) {

        /** Whether the size itself says what the number is. */
        boolean isGiven() {
            return size.inputs().containsKey(parameter.key()) || size.overrides().containsKey(parameter.key());
        }
    }

    /** Whether all sizes changed from the pattern's own quantity to one and the same other. */
    private boolean isOfPattern(Parameter parameter, List<Edit.Number> edits) {
        Key key = parameter.key();
        return graded.rules().ofPattern(key).isPresent() && edits.size() == graded.design().sizes().size()
                && edits.stream().allMatch(edit -> edit.value().isPresent())
                && edits.stream().map(Edit.Number::value).distinct().count() == 1
                && graded.design().sizes().stream().noneMatch(size -> size.inputs().containsKey(key));
    }

    private Optional<Edit.Number> edit(Place place) {
        return switch (table.cell(place.row(), place.column())) {
            case FoundCell.Empty empty -> givenBack(place);
            case FoundCell.Figure(double value) -> typed(place, value);
            case FoundCell.Formula formula -> isRule(formula.text(), place) ? givenBack(place) : taken(place, formula);
            case FoundCell.Other(String text) -> problem(Kind.NOT_A_NUMBER, place, text, unit(place.parameter()));
            case FoundCell.Fault(String text) -> problem(Kind.ERROR_CELL, place, text, "");
        };
    }

    private Optional<Edit.Number> givenBack(Place place) {
        return place.isGiven() ? Optional.of(edit(place, Optional.empty())) : Optional.empty();
    }

    private Optional<Edit.Number> typed(Place place, double value) {
        Parameter parameter = place.parameter();
        OptionalDouble before = writtenAsValue(place);
        if (before.isPresent() && same(before.getAsDouble(), value)) {
            return Optional.empty();
        }
        if (parameter.role() == Role.RESULT) {
            // what was counted for another state is another number, though nobody typed it
            boolean isCounted = graded.rules().rule(parameter.key()).isEmpty();
            return isCounted && !sameState ? Optional.empty() : problem(Kind.RESULT, place, Notation.number(value), origins(parameter));
        }
        if (parameter.unit().isWhole() && !same(value, Math.rint(value))) {
            return problem(Kind.NOT_WHOLE, place, Notation.number(value), parameter.unit().symbol());
        }
        try {
            Quantity quantity = quantity(parameter, value);
            parameter.require(parameter.role(), quantity);
            return Optional.of(edit(place, Optional.of(quantity)));
        } catch (IllegalArgumentException refused) {
            return problem(Kind.REFUSED, place, Notation.number(value), Objects.requireNonNull(refused.getMessage()));
        }
    }

    /** The result of a formula that a person wrote. */
    private Optional<Edit.Number> taken(Place place, FoundCell.Formula formula) {
        if (place.parameter().role() == Role.RESULT) {
            return problem(Kind.RESULT, place, formula.text(), origins(place.parameter()));
        }
        if (formula.result().isEmpty()) {
            return problem(Kind.NO_RESULT, place, "", "");
        }
        return switch (formula.result().get()) {
            case FoundCell.Figure(double value) -> {
                Optional<Edit.Number> edit = typed(place, value);
                edit.ifPresent(made -> problem(Kind.RESULT_TAKEN, place, Notation.number(value), ""));
                yield edit;
            }
            case FoundCell.Fault(String text) -> problem(Kind.ERROR_CELL, place, text, "");
            case FoundCell other -> problem(Kind.NOT_A_NUMBER, place, other.words(), unit(place.parameter()));
        };
    }

    /** What the export writes as a value, not as a formula. */
    private OptionalDouble writtenAsValue(Place place) {
        Optional<Cell> cell = graded.size(place.size().label()).cell(place.parameter());
        return cell.isPresent() && isValue(cell.get().source()) ? OptionalDouble.of(cell.get().value())
                : OptionalDouble.empty();
    }

    private static boolean isValue(Source source) {
        return switch (source) {
            case INPUT, CHOSEN, OVERRIDE -> true;
            case DEFAULT, PREDICTED, RULE, OWN -> false;
        };
    }

    private boolean isRule(String formula, Place place) {
        return graded.rules().rule(place.parameter().key()).map(rule -> !sameState
                || FormulaTokens.of(Notation.formula(rule, Key::name), CountsTable::ofKey)
                        .isSameAs(FormulaTokens.of(formula, word -> table.word(word, place.size().label()))))
                .orElse(false);
    }

    private static boolean same(double one, double other) {
        return Math.abs(one - other) <= SAME * Math.max(1, Math.abs(one));
    }

    private static Quantity quantity(Parameter parameter, double value) {
        return switch (parameter.unit()) {
            case PER_100_MM -> new Gauge(value, TEN_CENTIMETRES);
            case MILLIMETRES -> Length.ofMm(value);
            case PERCENT -> new Share(value);
            case STITCHES, ROUNDS, ROWS, LINES, TIMES, LOOPS, BALLS -> new Count((int) Math.rint(value));
            case RATIO, IDEAL_STITCHES, PLAIN_LOOPS, METRES, GRAMS, TEX, NUMBER -> throw new IllegalStateException(
                    "%s is kept in %s, which nothing can be set in".formatted(parameter.key(), parameter.unit()));
        };
    }

    private static String unit(Parameter parameter) {
        return parameter.unit().symbol();
    }

    private String origins(Parameter result) {
        return graded.rules().rule(result.key()).map(rule -> rule.keys().stream().map(Key::name)
                .collect(Collectors.joining(", "))).orElse("");
    }

    private Edit.Number edit(Place place, Optional<Quantity> value) {
        return new Edit.Number(table.place(place.row(), place.column()), place.parameter().key(),
                Optional.of(place.size().label()), value);
    }

    private Optional<Edit.Number> problem(Kind kind, Place place, String found, String detail) {
        problems.add(new EditProblem(kind, table.place(place.row(), place.column()), place.parameter().key() + "["
                + place.size().label() + "]", found, detail));
        return Optional.empty();
    }
}
