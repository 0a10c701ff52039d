package turnheel.exchange.testknit;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The words of {@code testknit.properties}. */
final class Words {

    private static final ResourceBundle WORDS = ResourceBundle.getBundle("turnheel.exchange.testknit.testknit");

    private Words() {
    }

    /** A sentence with its placeholders filled. Numbers go in as text: a file must not depend on the machine. */
    static String text(String key, String... arguments) {
        return new MessageFormat(WORDS.getString(key), Locale.ROOT).format(arguments);
    }
}
