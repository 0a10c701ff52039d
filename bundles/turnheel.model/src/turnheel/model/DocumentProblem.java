package turnheel.model;

import java.util.List;

/**
 * One thing that is wrong with a document, and where. Tests and programs look at {@link #kind} and {@link #values};
 * people read {@link #sentence}.
 *
 * @param line counted from 1; 0 when the document, or this object of it, did not come from a file
 * @param column counted from 1, in UTF-16 units; 0 as above
 * @param values what the sentence is about, in the order of its placeholders
 */
public record DocumentProblem(Kind kind, int line, int column, List<String> values) {

    /** What can be wrong. The sentence to each, with its placeholders, stands in {@code problems.properties}. */
    public enum Kind {
        NOT_THERE, UNREADABLE, TOO_LARGE, NOT_UTF8, MALFORMED, FOREIGN, NO_FORMAT, BAD_FORMAT, NEWER_FORMAT,
        DOCTYPE, REFERENCE, COMMENT, STRAY_TEXT, TOO_DEEP, UNKNOWN_ELEMENT, UNKNOWN_ATTRIBUTE, REPEATED, NO_KIND,
        UNKNOWN_KIND,
        BAD_VALUE, NOT_WHOLE,
        MISSING, SAME_ID, SAME_LABEL, SAME_KEY, SAME_ROW, REFUSED,
        UNWRITABLE, UNWRITABLE_TEXT
    }

    public DocumentProblem {
        values = List.copyOf(values);
    }

    static DocumentProblem at(Position position, Kind kind, String... values) {
        return new DocumentProblem(kind, position.line(), position.column(), List.of(values));
    }

    /** What is wrong and what to do about it, in the reader's language, without the place. */
    public String sentence() {
        return ProblemWords.sentence(kind, values);
    }
}
