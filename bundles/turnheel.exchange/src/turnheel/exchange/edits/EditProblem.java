package turnheel.exchange.edits;

import turnheel.engine.query.Severity;

/**
 * Something in an edited workbook that a person should see.
 *
 * @param place a cell such as {@code Counts!D12}, or a sheet; empty when it is the whole file
 * @param subject the number, size or row that it is about; may be empty
 * @param found what stands there; may be empty
 * @param detail what would do instead, depending on the kind; may be empty
 */
public record EditProblem(Kind kind, String place, String subject, String found, String detail) {

    /** What is wrong. */
    public enum Kind {
        /** The file cannot be read, for the reason in {@code detail}. */
        UNREADABLE,
        /** There is no table of counts in it. */
        NO_COUNTS,
        /** It does not say which state of a pattern it was made from. */
        NO_HASH,
        /** It was made from a pattern of another title. */
        OTHER_PATTERN,
        /** The pattern was changed since the workbook was made. */
        CHANGED_SINCE,
        /** Every formula is gone, so that nobody can tell a typed number from a computed one. */
        VALUES_ONLY,
        /** A size of the pattern has no column. */
        SIZE_MISSING,
        /** A column with numbers whose heading is no size of the pattern. */
        SIZE_UNKNOWN,
        /** Two columns with one label. */
        SIZE_TWICE,
        /** A row whose key is no key at all. */
        KEY_UNKNOWN,
        /** A row whose key no part of the pattern has. */
        KEY_ABSENT,
        /** Two rows with one key. */
        KEY_TWICE,
        /** A row of the pattern that is not there. */
        ROW_MISSING,
        /** Text, a date or a truth value where a number belongs. */
        NOT_A_NUMBER,
        /** A cell that shows an error. */
        ERROR_CELL,
        /** A formula that nothing has computed. */
        NO_RESULT,
        /** A fraction where only whole numbers make sense. */
        NOT_WHOLE,
        /** A number that cannot be this one, for the reason in {@code detail}. */
        REFUSED,
        /** A number that follows from others was typed over. */
        RESULT,
        /** A number in place of the formula of an own row. */
        OWN_NUMBER,
        /** An own row that does not have one formula in all sizes. */
        OWN_UNEVEN,
        /** The formula of an own row reads what is no number of the same size. */
        OWN_FOREIGN,
        /** The formula, key or label of an own row cannot be read, for the reason in {@code detail}. */
        OWN_REFUSED,
        /** A number was typed over a formula of another sheet. */
        TYPED_ELSEWHERE,
        /** A formula that is not the rule's: its result was taken. */
        RESULT_TAKEN;

        public Severity severity() {
            return this == RESULT_TAKEN ? Severity.WARNING : Severity.ERROR;
        }

        /**
         * Whether it says no more than that the workbook may not belong to this state of the pattern; a person who knows
         * better can go on.
         */
        public boolean canBeForced() {
            return this == NO_HASH || this == OTHER_PATTERN || this == CHANGED_SINCE;
        }
    }

    /** The problem and its remedy in one sentence that begins with the place, without a full stop. */
    public String sentence() {
        String sentence = Words.text("problem." + kind.name(), subject, found, detail);
        return place.isEmpty() ? sentence : Words.text("placed", place, sentence);
    }
}
