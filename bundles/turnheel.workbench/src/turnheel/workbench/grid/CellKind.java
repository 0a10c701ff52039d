package turnheel.workbench.grid;

import java.util.Optional;

import turnheel.engine.design.Role;
import turnheel.engine.design.Size;
import turnheel.engine.grading.Cell;

/**
 * What a cell is to the person who reads the grid. Each kind has a mark and a typography beside its colour, so that no
 * colour is the only carrier of a meaning.
 */
enum CellKind {
    /** Measured or decided by the designer. */
    INPUT("•"),
    /** What an input takes that was left empty in this size: its default, or what the pattern says for all sizes. */
    DEFAULT("◦"),
    /** Estimated from another measurement. */
    PREDICTED("~"),
    /** What a rule gave and a designer may override. */
    RULE(""),
    /** Picked by the count solver; may be overridden. */
    CHOSEN("◆"),
    /** Set by the designer in place of a rule's value. */
    OVERRIDE("✎"),
    /** Follows from others and cannot be set. */
    RESULT("="),
    /** A designer's own row. */
    OWN("ƒ"),
    /** An input without value and default. */
    MISSING("");

    private final String mark;

    CellKind(String mark) {
        this.mark = mark;
    }

    /** The symbol in front of the value; empty for the two kinds that are recognised by the lack of one. */
    String mark() {
        return mark;
    }

    /** The label under which styles of this kind are registered. */
    String configLabel() {
        return "turnheel." + name();
    }

    /** The kind of a cell of this size; {@code cell} is empty where measurements are missing. */
    static CellKind of(Optional<Cell> cell, Size size) {
        return cell.map(present -> of(present, size)).orElse(MISSING);
    }

    private static CellKind of(Cell cell, Size size) {
        return switch (cell.source()) {
            // What the pattern gives to all sizes is no entry of this one: there is nothing to drop.
            case INPUT -> size.inputs().containsKey(cell.key()) ? INPUT : DEFAULT;
            case DEFAULT -> DEFAULT;
            case PREDICTED -> PREDICTED;
            case RULE -> cell.parameter().role() == Role.RESULT ? RESULT : RULE;
            case CHOSEN -> CHOSEN;
            case OVERRIDE -> OVERRIDE;
            case OWN -> OWN;
        };
    }

    /** Whether the value is the designer's own entry in this size, which can be dropped. */
    boolean isEntry() {
        return this == INPUT || this == OVERRIDE;
    }
}
