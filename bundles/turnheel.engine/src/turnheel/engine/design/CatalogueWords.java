package turnheel.engine.design;

import java.text.MessageFormat;
import java.util.ResourceBundle;

import turnheel.engine.term.Key;

/** Labels and descriptions of the catalogue; the words are in {@code catalogue.properties}. */
final class CatalogueWords {

    private static final ResourceBundle WORDS = ResourceBundle.getBundle("turnheel.engine.design.catalogue");

    private CatalogueWords() {
    }

    static String label(Key key) {
        return WORDS.getString(key.name());
    }

    static String description(Key key) {
        return WORDS.getString(key.name() + ".description");
    }

    /** The label of one of several like rows. */
    static String label(Key key, int number) {
        return MessageFormat.format(label(key), Integer.toString(number));
    }

    /** The description of one of several like rows. */
    static String description(Key key, int number) {
        return MessageFormat.format(description(key), Integer.toString(number));
    }
}
