package turnheel.engine.drawing;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The words in pictures: {@code drawing.properties}. */
final class Words {

    private static final ResourceBundle WORDS = ResourceBundle.getBundle("turnheel.engine.drawing.drawing");

    private Words() {
    }

    /** A text with its placeholders filled. Numbers go in as text: a picture must not depend on the machine. */
    static String text(String key, String... arguments) {
        return new MessageFormat(WORDS.getString(key), Locale.ROOT).format(arguments);
    }
}
