package turnheel.engine.checks;

import java.util.ResourceBundle;

/** The words for whole repeats, the same as in reasons. */
final class Multiples {

    private static final ResourceBundle WORDS = ResourceBundle.getBundle("turnheel.engine.grading.why");

    private Multiples() {
    }

    static String of(int step) {
        return java.text.MessageFormat.format(WORDS.getString("need.multiple"), Integer.toString(step));
    }
}
