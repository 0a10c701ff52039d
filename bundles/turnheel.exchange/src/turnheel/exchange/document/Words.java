package turnheel.exchange.document;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The words of {@code document.properties}. */
final class Words {

    private static final ResourceBundle WORDS = ResourceBundle.getBundle("turnheel.exchange.document.document");

    private Words() {
    }

    /**
     * A sentence with its placeholders filled. Only text goes in: a file must not depend on the machine's number
     * format.
     */
    static String text(String key, String... arguments) {
        return new MessageFormat(WORDS.getString(key), Locale.ROOT).format(arguments);
    }
}
