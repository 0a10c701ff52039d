package turnheel.model;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.text.MessageFormat;
import java.util.List;
import java.util.Objects;
import java.util.ResourceBundle;

/** The sentences of {@code problems.properties}. */
final class ProblemWords {

    private static final ResourceBundle SENTENCES = ResourceBundle.getBundle("turnheel.model.problems");

    private ProblemWords() {
    }

    static String sentence(DocumentProblem.Kind kind, List<String> values) {
        return new MessageFormat(SENTENCES.getString(kind.name()), SENTENCES.getLocale()).format(values.toArray());
    }

    /** Why reading or writing failed; the platform says nothing, or the path only, in the most common cases. */
    static String reason(IOException failure) {
        String key = failure.getClass().getSimpleName();
        if (SENTENCES.containsKey(key)) {
            return SENTENCES.getString(key);
        }
        if (failure instanceof FileSystemException named && named.getReason() != null) {
            return named.getReason();
        }
        return Objects.requireNonNullElse(failure.getMessage(), key);
    }

    /** What an empty list is called. */
    static String nothing() {
        return SENTENCES.getString("nothing");
    }
}
