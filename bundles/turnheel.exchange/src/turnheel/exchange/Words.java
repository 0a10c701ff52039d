package turnheel.exchange;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.text.MessageFormat;
import java.util.Locale;
import java.util.Objects;
import java.util.ResourceBundle;

/** The words of {@code exports.properties}. */
final class Words {

    private static final ResourceBundle WORDS = ResourceBundle.getBundle("turnheel.exchange.exports");

    private Words() {
    }

    static String text(String key, String... arguments) {
        return new MessageFormat(WORDS.getString(key), Locale.ROOT).format(arguments);
    }

    /** Why writing failed; in the most common cases the platform says the path only. */
    static String reason(IOException failure) {
        String key = "reason." + failure.getClass().getSimpleName();
        if (WORDS.containsKey(key)) {
            return WORDS.getString(key);
        }
        if (failure instanceof FileSystemException named && named.getReason() != null) {
            return named.getReason();
        }
        return Objects.requireNonNullElse(failure.getMessage(), failure.getClass().getSimpleName());
    }
}
