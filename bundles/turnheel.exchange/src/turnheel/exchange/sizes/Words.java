package turnheel.exchange.sizes;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The words of {@code tables.properties}. */
final class Words {

    private static final ResourceBundle WORDS = ResourceBundle.getBundle("turnheel.exchange.sizes.tables");

    private Words() {
    }

    static String text(String key, String... arguments) {
        return new MessageFormat(WORDS.getString(key), Locale.ROOT).format(arguments);
    }

    /** A text without placeholders, whose single quotes stand as they are. */
    static String plain(String key) {
        return WORDS.getString(key);
    }
}
