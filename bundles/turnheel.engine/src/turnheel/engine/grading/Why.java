package turnheel.engine.grading;

import java.util.ArrayList;
import java.util.List;

import turnheel.engine.design.Parameter;
import turnheel.engine.term.Key;
import turnheel.engine.term.Notation;

/**
 * Why a number is what it is, and what follows from it: the same object behind the workbench's view, the workbook's
 * comment and the command line's {@code --why}.
 *
 * @param lines the derivation, a sentence or an equation a line, the result first
 * @param basis the keys that it was made from
 * @param dependents the keys whose rules read it
 */
public record Why(Cell cell, String size, List<String> lines, List<Key> basis, List<Key> dependents) {

    public Why {
        lines = List.copyOf(lines);
        basis = List.copyOf(basis);
        dependents = List.copyOf(dependents);
    }

    /**
     * The reason of one cell.
     *
     * @throws IllegalArgumentException when there is no such size, or the cell is absent
     */
    public static Why of(Graded graded, Key key, String size) {
        Cell cell = cell(graded, key, size);
        return new Why(cell, size, lines(graded, cell, size), basis(cell), dependents(graded, key));
    }

    /**
     * The derivation of one cell alone, for whoever asks for many of them: to find what reads a number takes longer.
     *
     * @throws IllegalArgumentException when there is no such size, or the cell is absent
     */
    public static List<String> lines(Graded graded, Key key, String size) {
        return lines(graded, cell(graded, key, size), size);
    }

    private static Cell cell(Graded graded, Key key, String size) {
        return graded.size(size).cell(key).orElseThrow(() -> new IllegalArgumentException(
                NeedWords.format(graded.rules().contains(key) ? "why.no-value" : "why.no-row",
                        graded.parameter(key).label(), key, size)));
    }

    private static List<String> lines(Graded graded, Cell cell, String size) {
        Parameter parameter = cell.parameter();
        List<String> lines = new ArrayList<>();
        String number = (Notation.number(cell.value()) + " " + parameter.unit().symbol()).strip();
        lines.add(NeedWords.format("why.result", parameter.label(), size, number,
                NeedWords.format("source." + cell.source().word())));
        explain(graded, cell, lines);
        return lines;
    }

    private static List<Key> basis(Cell cell) {
        return cell.reason() instanceof Reason.Overridden(var quantity, var instead)
                ? instead.map(ruled -> ruled.reason().basis()).orElse(List.of())
                : cell.reason().basis();
    }

    private static void explain(Graded graded, Cell cell, List<String> lines) {
        switch (cell.reason()) {
            case Reason.Given(var quantity) -> lines.add(NeedWords.format("why.given", quantity));
            case Reason.Derived derived -> {
                lines.add("= " + Notation.plain(derived.rule(), key -> graded.parameter(key).label()));
                if (!derived.basisValues().isEmpty()) {
                    lines.add("= " + Notation.withValues(derived.rule(), derived.basisValues()::get));
                }
                derived.unrounded().ifPresent(value -> lines.add(NeedWords.format("why.unrounded", Notation.number(value))));
            }
            case Reason.Chosen chosen -> {
                lines.add(NeedWords.format("why.chosen", Notation.number(chosen.ideal()), Notation.number(chosen.fewest()),
                        Notation.number(chosen.most())));
                chosen.needs().forEach(need -> lines.add("• " + NeedWords.of(need)));
            }
            case Reason.Fitted fitted -> lines.add(NeedWords.format("why.fitted", Notation.number(fitted.ideal()),
                    Notation.number(fitted.reached())));
            case Reason.Counted counted -> {
                lines.add(NeedWords.format("why.counted"));
                counted.stitches().forEach((stitch, share) -> lines.add("• " + NeedWords.format("why.counted.stitch",
                        NeedWords.of(stitch), share.times(), Notation.number(share.each()), Notation.number(share.sum()))));
            }
            case Reason.Overridden(var quantity, var instead) -> {
                lines.add(NeedWords.format("why.overridden", quantity));
                instead.ifPresent(ruled -> {
                    lines.add(NeedWords.format("why.instead", Notation.number(ruled.value())));
                    explain(graded, ruled, lines);
                });
            }
        }
    }

    private static List<Key> dependents(Graded graded, Key key) {
        return graded.parameters().stream().map(Parameter::key)
                .filter(other -> graded.sizes().stream().flatMap(size -> size.cell(other).stream())
                        .anyMatch(cell -> basis(cell).contains(key)))
                .toList();
    }
}
