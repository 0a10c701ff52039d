package turnheel.model;

import java.util.List;
import java.util.StringJoiner;

/**
 * A document that cannot be read, saved or turned into a design. Its message is for people: the place and sentence of
 * the first problem, in one line.
 */
public final class DocumentException extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient List<DocumentProblem> problems;

    /**
     * @param source the file's name as the reader knows it; empty when the document came from none
     * @param problems at least one, in the order of the document
     */
    public DocumentException(String source, List<DocumentProblem> problems) {
        super(message(source, problems.getFirst()));
        this.problems = List.copyOf(problems);
    }

    /** Everything that is wrong, as far as it was looked for; never empty. */
    public List<DocumentProblem> problems() {
        return problems;
    }

    private static String message(String source, DocumentProblem first) {
        StringJoiner place = new StringJoiner(":", "", ": ").setEmptyValue("");
        if (!source.isEmpty()) {
            place.add(source);
        }
        if (first.line() > 0) {
            place.add(Integer.toString(first.line())).add(Integer.toString(first.column()));
        }
        return place + first.sentence();
    }
}
