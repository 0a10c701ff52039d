package turnheel.exchange.errata;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The words of {@code errata.properties}. */
final class Words {

    private static final ResourceBundle WORDS = ResourceBundle.getBundle("turnheel.exchange.errata.errata");

    private Words() {
    }

    static String text(String key, String... arguments) {
        return new MessageFormat(WORDS.getString(key), Locale.ROOT).format(arguments);
    }
}
