package turnheel.exchange.handout;

import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;

/** The words of {@code handout.properties}. */
final class Words {

    private static final ResourceBundle WORDS = ResourceBundle.getBundle("turnheel.exchange.handout.handout");

    private Words() {
    }

    /** A sentence with its placeholders filled. Numbers go in as text: a page must not depend on the machine. */
    static String text(String key, String... arguments) {
        return new MessageFormat(WORDS.getString(key), Locale.ROOT).format(arguments);
    }

    /** The steps {@code key.1}, {@code key.2} and so on, in order; none where there is no first. */
    static List<String> steps(String key) {
        List<String> steps = new ArrayList<>();
        for (int step = 1; WORDS.containsKey(key + "." + step); step++) {
            steps.add(text(key + "." + step));
        }
        return steps;
    }
}
