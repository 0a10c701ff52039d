package turnheel.engine.formula;

/** What can be wrong with a formula before any number is known. The names are stable: their sentences hang on them. */
public enum FormulaProblem {
    /** Nothing stands there. */
    EMPTY,
    /** More text than {@link OwnFormula#LONGEST_TEXT}. */
    TOO_LONG,
    /** More parentheses within each other than {@link OwnFormula#DEEPEST_NESTING}. */
    TOO_DEEP,
    /** A term with more than {@link OwnFormula#MOST_STEPS} steps. */
    TOO_MANY_STEPS,
    /** The text ends where something must follow. */
    ENDS_EARLY,
    /** A parenthesis that is not closed. */
    NOT_CLOSED,
    /** Something stands where a number, a key, a function or a parenthesis belongs. */
    OPERAND_WANTED,
    /** Something stands where an operator, the end or the end of an argument belongs. */
    OPERATOR_WANTED,
    /** A name that is not of the shape of a key, and no function is called. */
    NOT_A_KEY,
    /** A function that is not among {@link OwnFormula#functions()}. */
    FUNCTION_UNKNOWN,
    /** Too few or too many arguments. */
    ARGUMENT_COUNT,
    /** Commas and semicolons both: one of them was probably meant as a decimal sign. */
    SEPARATORS_MIXED,
    /** A comparison that is not the first argument of IF. */
    COMPARISON_OUTSIDE_IF,
    /** A number beyond what a spreadsheet can hold. */
    NUMBER_TOO_LARGE,
    /** Decimal places that are not a fixed whole number between -6 and 6. */
    PLACES_NOT_FIXED,
    /** A step of CEILING or FLOOR that is fixed at zero or below. */
    STEP_NOT_POSITIVE
}
