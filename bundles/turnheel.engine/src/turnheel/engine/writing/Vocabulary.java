package turnheel.engine.writing;

import java.util.ResourceBundle;

import turnheel.engine.stitch.Stitch;

/** The words of written instructions: {@code vocabulary.properties}. */
final class Vocabulary {

    private static final ResourceBundle WORDS = ResourceBundle.getBundle("turnheel.engine.writing.vocabulary");

    private Vocabulary() {
    }

    /** A stitch worked {@code count} times, as in {@code k5} or {@code k2tog}. */
    static String worked(Stitch stitch, int count) {
        String once = "stitch." + stitch.name() + ".once";
        if (count == 1 && WORDS.containsKey(once)) {
            return WORDS.getString(once);
        }
        return phrase("stitch." + stitch.name(), Integer.toString(count));
    }

    /** A phrase with its placeholders filled. */
    static String phrase(String key, String... arguments) {
        String text = WORDS.getString(key);
        for (int i = 0; i < arguments.length; i++) {
            text = text.replace("{" + i + "}", arguments[i]);
        }
        return text;
    }
}
