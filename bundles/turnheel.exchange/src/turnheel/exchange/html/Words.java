package turnheel.exchange.html;

import java.util.ResourceBundle;

/** The words of {@code html.properties}. */
final class Words {

    private static final ResourceBundle WORDS = ResourceBundle.getBundle("turnheel.exchange.html.html");

    private Words() {
    }

    static String text(String key) {
        return WORDS.getString(key);
    }
}
